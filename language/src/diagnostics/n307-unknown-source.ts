// A sheet that is not among the sources.
import { defineDiagnostic } from './define.js';

export const unknownSource = defineDiagnostic<{ readonly source: string }>({
  code: 'N307',
  name: 'unknown-source',
  severity: 'question',
  message: ({ source }) => `which sheet is ${source}?`,
  advice: () => 'declare it in section sources',
  why: `A figure is as good as its sheet. One that is not listed cannot be looked up, nor found again when a new issue comes.`,
  wrong: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 115 N·m, per "HL-2"
#                       ^^^^^^ N307
`,
  right: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 115 N·m, per "HL-1"
`,
});
