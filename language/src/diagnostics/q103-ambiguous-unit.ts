// A spelling that is more than one unit where it stands.
import { defineDiagnostic } from './define.js';

export const ambiguousUnit = defineDiagnostic<{
  readonly spelling: string;
  readonly meanings: readonly string[];
}>({
  code: 'Q103',
  name: 'ambiguous-unit',
  severity: 'error',
  message: ({ spelling, meanings }) =>
    `\`${spelling}\` can be ${meanings.slice(0, -1).join('; ')} or ${meanings.at(-1)}`,
  advice: () => 'write the one that the sheet means',
  why: `Foot-pounds and inch-pounds differ by a factor of twelve, the US gallon and the imperial one by a fifth. The sheet says which is meant; a guess does not.`,
  wrong: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 85 lb, per "HL-1"
#             ^^ Q103
`,
  right: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 85 ft·lbf, per "HL-1"
`,
});
