// F211: a stage that the torque of the set does not have.
import { boltJob } from './bolt-example.js';
import { defineDiagnostic } from './define.js';

export const stageBeyond = defineDiagnostic<{
  readonly stage: string;
  readonly name: string;
  readonly stages: number;
}>({
  code: 'F211',
  name: 'stage-beyond',
  severity: 'error',
  message: (d) =>
    `\`${d.name}\` has ${d.stages === 1 ? 'one stage' : `${d.stages} stages`}, no stage ${d.stage}`,
  why: `The guide prints the figure of the stage at the line that asks for it. A stage that does not exist has no figure.`,
  wrong: boltJob(
    ['2 of M8x1.25, class 8.8, hex 13 mm', 'torque 10 N·m then 25 N·m, per "S-1"'],
    'torque bracket-bolt',
    'torque bracket-bolt, stage 3',
    '#                              ^ F211',
  ),
  right: boltJob(
    ['2 of M8x1.25, class 8.8, hex 13 mm', 'torque 10 N·m then 25 N·m, per "S-1"'],
    'torque bracket-bolt, stage 1',
    'torque bracket-bolt, stage 2',
  ),
});
