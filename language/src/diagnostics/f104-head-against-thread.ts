// F104: a head or socket size that no common table gives for the thread.
import { boltCatalogue } from './bolt-example.js';
import { defineDiagnostic } from './define.js';

export const headAgainstThread = defineDiagnostic<{
  readonly head: string;
  readonly thread: string;
  readonly usual: readonly string[];
  readonly suggests: readonly string[];
}>({
  code: 'F104',
  name: 'head-against-thread',
  severity: 'warning',
  message: (d) => `no common ${d.thread} fastener has a head of ${d.head}`,
  advice: (d) => {
    const suggests = d.suggests.length === 0 ? '' : `; ${d.head} is usual on ${d.suggests.join(', ')}`;
    return `usual for ${d.thread}: ${d.usual.join(', ')}${suggests}`;
  },
  why: `One of the two is likely a slip of the pen, and the wrong one sends the technician to the wrong socket or the wrong bolt. The tables are ISO 4014 and 4017, the older DIN 931, flange heads, JIS B 1180, ASME B18.2.1, wheel nuts and ISO 10664; a pair found in any of them is silent.`,
  wrong: boltCatalogue(
    '2 of M8x1.25, class 8.8, hex 19 mm',
    '#                                ^^^^^ F104',
    'torque 25 N·m, per "S-1"',
  ),
  right: boltCatalogue('2 of M8x1.25, class 8.8, hex 13 mm', 'torque 25 N·m, per "S-1"'),
});
