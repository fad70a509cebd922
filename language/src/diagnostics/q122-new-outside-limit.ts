// The figure of a new part that its own limit would reject.
import { defineDiagnostic } from './define.js';

const discs = (fresh: string, mark = ''): string => `catalogue: Discs

sources
  HL-1: Brake sheet

limits
  disc-thickness: Disc thickness
    at least 22.0 mm, new ${fresh}, per "HL-1"
${mark}`;

export const newOutsideLimit = defineDiagnostic<{
  readonly written: string;
  readonly name: string;
  readonly side: 'below' | 'above';
}>({
  code: 'Q122',
  name: 'new-outside-limit',
  severity: 'warning',
  message: ({ written, name, side }) =>
    `a new part with ${written} is ${side} the limit of \`${name}\` already`,
  advice: () =>
    'read both figures on the sheet again: one may have slipped by a digit, or they have changed places',
  why: `A limit says what is still good. A new part that its own limit rejects would be thrown away in the bay, or a worn one kept.`,
  wrong: discs('20.0 mm', '#                         ^^^^^^^ Q122\n'),
  right: discs('24.0 mm'),
});
