// `baywright sign`: takes a procedure from draft to proved to released to withdrawn, by the rules of the house.
import { STATUSES } from '@baywright/language';
import { findProcedures } from '../../desk/find.js';
import { signProcedure } from '../../desk/sign.js';
import { defineCommand, text } from '../command.js';
import { join, relativeTo } from '../paths.js';
import { CannotRun } from '../shell.js';

export default defineCommand({
  name: 'sign',
  summary: 'take a procedure from draft to proved, released or withdrawn',
  docs: `Writes the status line with initials and day, if the rules of the house allow it: who may prove and release, two different people or one with a note, no errors and no questions. The settings are under \`release\` in baywright.json.

A procedure is proved by the one who worked through it on a vehicle, then released by another. The exit code is 1 when the house's rules stand in the way; nothing is changed then.`,
  takes: [
    { name: 'procedure', docs: 'its number or its path' },
    { name: 'status', docs: 'draft, proved, released or withdrawn', values: STATUSES },
  ],
  options: {
    by: text('--by <initials>', 'who signs'),
    note: text('--note <words>', 'what is to be said of it, printed with the status'),
  },
  examples: [
    ['baywright sign FH-12 proved --by RB', 'worked through on a vehicle by RB'],
    ['baywright sign FH-12 released --by TK', 'may be issued'],
    ['baywright sign FH-12 withdrawn --by TK --note "Replaced by FH-13"', 'no more prints of it'],
  ],
  run({ shell, paint }, [name = '', word = ''], { by, note }) {
    const to = STATUSES.find((status) => status === word);
    if (to === undefined)
      throw new CannotRun(`there is no status “${word}”; there are ${STATUSES.join(', ')}`);
    if (by === undefined && to !== 'draft') throw new CannotRun('the initials are missing; write --by RB');
    const procedure = findProcedures(shell, [name])[0];
    if (procedure === undefined) throw new CannotRun(`there is no procedure ${name} here`);
    const signed = signProcedure(shell, procedure, { to, by: by ?? '', note: note ?? '' });
    if (signed.state === 'refused') {
      const reasons = signed.reasons.map((one) => `  ${one}\n`).join('');
      shell.out.write(`${paint.bold(procedure.number)} stays ${signed.from}:\n${reasons}`);
      return 1;
    }
    const file = join(procedure.shelf.root, procedure.analysis.path);
    shell.write(file, signed.text);
    shell.out.write(`${relativeTo(shell.folder, file)}: ${signed.line}\n`);
    return 0;
  },
});
