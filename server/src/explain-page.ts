// Where a code is explained: its page of the reference, below the address that the editor's settings name, else in the
// editor itself where it can show one.
import { type Finding, findingFile } from '@baywright/language';
import { PAGE_SCHEME } from './protocol.js';

/** Where the pages are for a client that shows them itself. */
export const SHOWN_BY_CLIENT = `${PAGE_SCHEME}:/`;

/** The address of the page of a code, below the address of the reference; undefined where there is no reference. */
export function explainPage(reference: string, finding: Pick<Finding, 'code' | 'name'>): string | undefined {
  if (reference === '') return undefined;
  return `${reference}${reference.endsWith('/') ? '' : '/'}findings/${findingFile(finding)}`;
}
