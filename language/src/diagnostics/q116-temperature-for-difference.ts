// A temperature where a difference is meant.
import { defineDiagnostic } from './define.js';

export const temperatureForDifference = defineDiagnostic<{ readonly written: string }>({
  code: 'Q116',
  name: 'temperature-for-difference',
  severity: 'error',
  message: ({ written }) => `${written} is a temperature; here goes a difference`,
  advice: () => 'a difference is written in K, or in Δ°F',
  why: `By how much is counted in kelvins. Written in °C it converts to the wrong number of °F: 80 °C is 176 °F, a rise of 80 K is one of 144 °F.`,
  wrong: `procedure A-1: Bearing, warm

places
  bore: Bore

preparation
  step: Warm the bore
    heat bore by 80 °C
#                ^^^^^ Q116
`,
  right: `procedure A-1: Bearing, warm

places
  bore: Bore

preparation
  step: Warm the bore
    heat bore by 80 K
`,
});
