// Where a code is explained: its page of the reference, below the one address that the editor's settings name.
import { type Finding, findingFile } from '@baywright/language';

/** The reference as the project publishes it; a shop may keep its own copy. */
const PUBLISHED = 'https://baywright.example/docs/reference/';

/** The address of the page of a code. `reference` is the address of the reference; empty for the published one. */
export function explainPage(reference: string, finding: Pick<Finding, 'code' | 'name'>): string {
  const base = reference === '' ? PUBLISHED : reference;
  return `${base}${base.endsWith('/') ? '' : '/'}findings/${findingFile(finding)}`;
}
