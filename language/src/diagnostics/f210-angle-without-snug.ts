// F210: an angle stage with no torque before it to count from.
import { boltCatalogue } from './bolt-example.js';
import { defineDiagnostic } from './define.js';

export const angleWithoutSnug = defineDiagnostic<{ readonly angle: string; readonly name: string }>({
  code: 'F210',
  name: 'angle-without-snug',
  severity: 'error',
  message: (d) => `\`${d.name}\` is turned ${d.angle} from nowhere: no torque comes first`,
  advice: () => 'write the snug torque before it: `torque 20 N·m then 90°`',
  why: `An angle stretches the bolt by a known length only when it starts from a joint that is already closed. From a loose joint the same turn may give any clamp force at all.`,
  wrong: boltCatalogue('2 of M8x1.25, class 8.8, hex 13 mm', 'torque 90°, per "S-1"', '#          ^^^ F210'),
  right: boltCatalogue('2 of M8x1.25, class 8.8, hex 13 mm', 'torque 15 N·m then 90°, per "S-1"', 'renew'),
});
