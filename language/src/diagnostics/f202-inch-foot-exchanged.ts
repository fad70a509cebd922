// F202: a torque that makes sense only with inch and foot exchanged.
import { boltCatalogue } from './bolt-example.js';
import { defineDiagnostic } from './define.js';
import type { JointWords } from './f201-over-yield.js';

/** `low`: the torque is a twelfth of what the joint asks for, and `percent` is of its proof load. */
export const inchFootExchanged = defineDiagnostic<
  JointWords & { readonly meant: string; readonly low?: boolean }
>({
  code: 'F202',
  name: 'inch-foot-exchanged',
  severity: 'error',
  message: (d) =>
    `${d.torque} takes ${d.joint} to ${d.low ? 'only ' : ''}${d.percent} % of its ${d.low ? 'proof' : 'yield'} load; \`${d.meant}\` is ordinary for it`,
  advice: (d) =>
    `inch and foot look exchanged; look at the sheet, then write \`${d.meant}\` if that is what it says`,
  why: `A foot is twelve inches, so a slip between \`in·lbf\` and \`ft·lbf\` is twelve times too much: a small bolt breaks before the wrench clicks, and the stub is drilled out of a housing.

The other way round it is a twelfth, and the joint comes loose on the road. That is a question, not an error: a few joints, such as a soft cover, are meant to be as loose as that. Then say so with \`accept F202\` and the reason.`,
  wrong: boltCatalogue(
    '2 of 1/4-20 UNC, grade 5, hex 7/16 in',
    'torque 85 ft·lbf, per "S-1"',
    '#          ^^^^^^^^^ F202',
  ),
  right: boltCatalogue('2 of 1/4-20 UNC, grade 5, hex 7/16 in', 'torque 85 in·lbf, per "S-1"'),
});
