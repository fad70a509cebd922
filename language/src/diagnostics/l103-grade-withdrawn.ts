// L103: a supply of a grade that is no longer licensed.
import { defineDiagnostic } from './define.js';

export const gradeWithdrawn = defineDiagnostic<{ readonly grade: string; readonly source: string }>({
  code: 'L103',
  name: 'grade-withdrawn',
  severity: 'hint',
  message: (d) => `${d.grade} is no longer licensed`,
  advice: (d) => `name what is filled instead; by ${d.source}`,
  tag: 'deprecated',
  why: `A supply is a can that the shop buys. Of a category that is no longer licensed there is no can with the mark, and what the pull sheet asks for cannot be found on the shelf. The maker's sheet may go on naming the old category: the fluid of the vehicle keeps it, and the supply names what is filled instead.

Categories are those of API 1509 and 1560, and of ACEA.`,
  wrong: `catalogue: Store

supplies
  engine-oil: Engine oil
    SAE 10W-40, API SG
#                   ^^ L103
`,
  right: `catalogue: Store

supplies
  engine-oil: Engine oil
    SAE 10W-40, API SN
`,
});
