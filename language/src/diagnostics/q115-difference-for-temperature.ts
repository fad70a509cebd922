// A temperature difference where a temperature is meant.
import { defineDiagnostic } from './define.js';

export const differenceForTemperature = defineDiagnostic<{ readonly written: string }>({
  code: 'Q115',
  name: 'difference-for-temperature',
  severity: 'error',
  message: ({ written }) => `${written} is a temperature difference; here goes a temperature`,
  advice: () => 'a temperature is written in °C or °F',
  why: `80 K warmer and 80 °C are not the same: the first is counted from where the part is now.`,
  wrong: `procedure A-1: Bearing, warm

places
  bore: Bore

preparation
  step: Warm the bore
    heat bore to 80 K
#                ^^^^ Q115
`,
  right: `procedure A-1: Bearing, warm

places
  bore: Bore

preparation
  step: Warm the bore
    heat bore to 80 °C
`,
});
