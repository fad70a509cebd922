// F102: a thread whose pitch the standard does not list.
import { boltCatalogue } from './bolt-example.js';
import { defineDiagnostic } from './define.js';

export const threadNotListed = defineDiagnostic<{
  readonly thread: string;
  readonly standard: string;
  readonly nearest: string | undefined;
}>({
  code: 'F102',
  name: 'thread-not-listed',
  severity: 'warning',
  message: (d) => `${d.thread} is not listed in ${d.standard}`,
  advice: (d) => (d.nearest === undefined ? undefined : `the nearest listed one is \`${d.nearest}\``),
  why: `Most often two figures were swapped or a pitch was copied from the line above. A bolt of the wrong pitch goes in two turns and then tears the thread out.

A special thread exists now and then. Then \`accept F102\` says so, with the reason.`,
  wrong: boltCatalogue(
    '2 of M12x1.3, class 8.8, hex 18 mm',
    '#        ^^^^^^^ F102',
    'torque 80 N·m, per "S-1"',
  ),
  right: boltCatalogue('2 of M12x1.25, class 8.8, hex 18 mm', 'torque 80 N·m, per "S-1"'),
});
