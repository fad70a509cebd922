// A colon at the end of a line whose block is code.
import { defineDiagnostic } from './define.js';

export const colonBeforeBlock = defineDiagnostic<{ readonly head: string }>({
  code: 'G108',
  name: 'colon-before-block',
  severity: 'warning',
  message: ({ head }) => `no colon goes after \`${head}\`: what is below it is code, not text`,
  why: `A colon that ends a line says that text follows below. Sections, \`when\`, \`if\`, \`otherwise\` and \`repeat\` hold lines for the checker.`,
  wrong: `procedure A-1: Mirror, replace

parts:
#    ^ G108
  mirror: Door mirror`,
  right: `procedure A-1: Mirror, replace

parts
  mirror: Door mirror`,
});
