// A clause that is given names where it takes a quantity, or the other way.
import { defineDiagnostic } from './define.js';

export const operandForm = defineDiagnostic<{
  readonly word: string;
  readonly expected: string;
  /** The words that stand there. */
  readonly written?: string;
}>({
  code: 'G208',
  name: 'operand-form',
  severity: 'error',
  message: ({ word, expected }) => `\`${word}\` takes ${expected}`,
  advice: ({ word, written }) =>
    word === 'for' && written !== undefined
      ? `what to look for stands below: \`reject: ${written}\``
      : undefined,
  why: `Each clause takes one kind of thing: names of what is declared, a quantity with its unit, or text that a standard defines.`,
  wrong: `procedure A-1: Mirror, replace

parts
  mirror: Door mirror
    held by 3 mm
#           ^^^^ G208`,
  right: `procedure A-1: Mirror, replace

parts
  mirror: Door mirror
    held by mirror-screw

fasteners
  mirror-screw: Mirror screw`,
});
