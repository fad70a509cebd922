// `baywright fitting-half`: the lines that put back together what a procedure takes apart.
import { fittingEdits, fittingHalf, fittingText } from '@baywright/language';
import { defineCommand, flag } from '../command.js';
import { applyEdits } from '../fix.js';
import { oneProcedure } from '../one-procedure.js';
import { plural } from '../report/text.js';

export default defineCommand({
  name: 'fitting-half',
  summary: 'write the fitting half of a job from its taking-off half',
  docs: `Proposes the steps that put back together what a procedure leaves apart, in an order that can be done: what came off last goes on first, held things before their fasteners, torque, fluids, posture. It prints them, or writes them at the end of the sections installation and completion.

A proposal is a start: torque sources, cautions and what the eye should look for are for a technician to add. The exit code is 1 where something is left that no line can bring back, named on standard error.`,
  takes: [{ name: 'file', docs: 'a procedure' }],
  options: {
    write: flag('--write', 'write the lines into the procedure instead of printing them'),
  },
  examples: [
    ['baywright fitting-half FH-12.bay', 'see what is proposed'],
    ['baywright fitting-half FH-12.bay --write', 'put it into the file'],
  ],
  run({ shell }, [file = ''], { write }) {
    const { run, analysis } = oneProcedure(shell, file);
    const half = fittingHalf(run);
    const edits = fittingEdits(analysis.model, half);
    if (edits.length === 0) shell.err.write('Nothing is left to put back.\n');
    else if (write) {
      shell.write(shell.resolve(file), applyEdits(analysis.text, edits));
      const steps = half.installation.length + half.completion.length;
      shell.err.write(`${plural(steps, 'step')} written to ${file}.\n`);
    } else shell.out.write(fittingText(half));
    if (half.left.length > 0)
      shell.err.write(
        `To settle by hand: ${half.left.map(({ name, title }) => `${name} (${title})`).join(', ')}.\n`,
      );
    return half.left.length > 0 ? 1 : 0;
  },
});
