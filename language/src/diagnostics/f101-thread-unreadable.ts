// F101: text behind `of` that is neither a thread nor a retainer.
import { boltCatalogue } from './bolt-example.js';
import { defineDiagnostic } from './define.js';

export const threadUnreadable = defineDiagnostic<{
  readonly problem: string;
  readonly nearest: string | undefined;
}>({
  code: 'F101',
  name: 'thread-unreadable',
  severity: 'warning',
  message: (d) => d.problem,
  advice: (d) => (d.nearest === undefined ? undefined : `did you mean \`${d.nearest}\`?`),
  why: `The thread decides the strength of the joint, the tap that cleans it and the bolt that is pulled from the bin. A thread that no standard knows is checked against nothing.

Threads are read by ISO 261 (\`M12x1.75\`), ASME B1.1 (\`1/2-13 UNC\`), ASME B1.20.1 (\`1/4-18 NPT\`) and ISO 228-1 (\`G1/4\`); what holds without a thread is named in a word, such as \`clip\`, \`clamp\` or \`split-pin\`.`,
  wrong: boltCatalogue('2 of M13.2, class 8.8, hex 13 mm', '#        ^^^^^ F101', 'torque 25 N·m, per "S-1"'),
  right: boltCatalogue('2 of M8x1.25, class 8.8, hex 13 mm', 'torque 25 N·m, per "S-1"'),
});
