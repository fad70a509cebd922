// Two identification numbers that are not the ends of a range.
import { defineDiagnostic } from './define.js';

export const vinRange = defineDiagnostic<{ readonly fault: 'two lines' | 'reversed' }>({
  code: 'V108',
  name: 'vin-range',
  severity: 'warning',
  message: ({ fault }) =>
    fault === 'reversed' ? 'the later number stands first' : 'the two numbers are of different vehicle lines',
  advice: ({ fault }) => (fault === 'reversed' ? undefined : 'write an entry for each line of vehicles'),
  why: `Both ends of a range agree in their first eight characters, which say maker and vehicle line; then the model year and the serial number decide what lies between (ISO 3779). Ends that do not agree, or stand the wrong way round, take in no vehicle at all.`,
  wrong: `catalogue: Van

vehicles
  van: Delivery van
    years 2018 to 2025
    vin SX7M300ALS1999999 to SX7M300ALJ1000001
#       ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ V108
`,
  right: `catalogue: Van

vehicles
  van: Delivery van
    years 2018 to 2025
    vin SX7M300ALJ1000001 to SX7M300ALS1999999
`,
});
