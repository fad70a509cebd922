// F204: a torque with no sheet named that it comes from.
import { boltCatalogue } from './bolt-example.js';
import { defineDiagnostic } from './define.js';

export const torqueWithoutSource = defineDiagnostic<{ readonly torque: string; readonly name: string }>({
  code: 'F204',
  name: 'torque-without-source',
  severity: 'question',
  message: (d) => `where does ${d.torque} for \`${d.name}\` come from?`,
  advice: () => 'name the sheet: `per "HL-114"`',
  why: `A torque from memory or from a similar vehicle is the commonest wrong figure in a shop. With the sheet beside it anyone can look it up, and when the sheet changes its issue, \`where-used\` finds every figure taken from it.`,
  wrong: boltCatalogue('2 of M8x1.25, class 8.8, hex 13 mm', 'torque 25 N·m', '#   ^^^^^^^^^^^^^ F204'),
  right: boltCatalogue('2 of M8x1.25, class 8.8, hex 13 mm', 'torque 25 N·m, per "S-1"'),
});
