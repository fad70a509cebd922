// A vehicle identification number that cannot be one.
import { defineDiagnostic } from './define.js';

export const vinUnreadable = defineDiagnostic<{ readonly vin: string; readonly problem: string }>({
  code: 'V107',
  name: 'vin-unreadable',
  severity: 'warning',
  message: ({ vin, problem }) => `\`${vin}\`: ${problem}`,
  advice: () => 'write both ends in full, as in `1M8GDM9AXKP042788 to 1M8GDM9AXKP049999`',
  why: `The range of identification numbers says which vehicles a procedure is for. A number has 17 characters and neither I, O nor Q (ISO 3779); where the first is 1 to 5 or L, the ninth is a check digit (49 CFR 565). One that does not add up was misread, and the range then takes in the wrong vehicles.`,
  wrong: `catalogue: Van

vehicles
  van: Delivery van
    years 2018 to 2025
    vin SX7M3OOALJ1000001 to SX7M300ALS1999999
#       ^^^^^^^^^^^^^^^^^ V107
`,
  right: `catalogue: Van

vehicles
  van: Delivery van
    years 2018 to 2025
    vin SX7M300ALJ1000001 to SX7M300ALS1999999
`,
});
