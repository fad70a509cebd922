// The name of the page that explains a kind of finding, in the reference and in links to it.
import type { Finding } from './define.js';

/** In lower case, so that it serves as an address: `f203-torque-low.md`. */
export function findingFile({ code, name }: Pick<Finding, 'code' | 'name'>): string {
  return `${code.toLowerCase()}-${name}.md`;
}
