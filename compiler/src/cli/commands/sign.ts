// `baywright sign`: takes a procedure from draft to proved to released to withdrawn, by the rules of the house.
import { type FileModel, STATUSES, type Status } from '@baywright/language';
import { findProcedures } from '../../desk/find.js';
import { releaseObstacles, stepObstacle } from '../../desk/release-rules.js';
import { defineCommand, text } from '../command.js';
import { openLibrary } from '../libraries.js';
import { join, relativeTo } from '../paths.js';
import { CannotRun } from '../shell.js';

export default defineCommand({
  name: 'sign',
  summary: 'take a procedure from draft to proved, released or withdrawn',
  docs: `Writes the status line with initials and day, if the rules of the house allow it: who may prove and release, two different people or one with a note, no errors and no questions. The settings are under \`release\` in baywright.json.

A procedure is proved by the one who worked through it on a vehicle, then released by another. The exit code is 1 when the house's rules stand in the way; nothing is changed then.`,
  takes: [
    { name: 'procedure', docs: 'its number or its path' },
    { name: 'status', docs: 'draft, proved, released or withdrawn' },
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
    if (by !== undefined && !/^[\p{L}][\p{L}\p{N}-]{0,15}$/u.test(by))
      throw new CannotRun(`“${by}” are no initials; write them as RB`);
    const said = (note ?? '').trim().replace(/\s+/g, ' ');
    const procedure = findProcedures(shell, [name])[0];
    if (procedure === undefined) throw new CannotRun(`there is no procedure ${name} here`);
    const { shelf, analysis, number } = procedure;
    const { model } = analysis;
    const file = join(shelf.root, analysis.path);
    const from = statusOf(model);
    const signed = from === 'proved' ? (model.status?.by ?? []).map((one) => one.text) : [];
    const obstacle = stepObstacle(from, to, by ?? '', signed, said, shelf.settings);
    const day = shell.now().toISOString().slice(0, 10);
    const people = to === 'released' ? [...new Set([...signed, by ?? ''])] : [by ?? ''];
    const line =
      to === 'draft'
        ? 'status draft'
        : `status ${to} by ${people.join(', ')} on ${day}${said === '' ? '' : `: ${said}`}`;
    const changed = withStatus(model, line);
    // The rules are asked of the text as it would stand: a release is judged by the checks of a release.
    const after = to === 'released' ? judged() : [];
    const obstacles = obstacle === undefined ? after : [obstacle];
    if (obstacles.length > 0) {
      shell.out.write(
        `${paint.bold(number)} stays ${from}:\n${obstacles.map((one) => `  ${one}\n`).join('')}`,
      );
      return 1;
    }
    shell.write(file, changed);
    shell.out.write(`${relativeTo(shell.folder, file)}: ${line}\n`);
    return 0;

    function judged(): string[] {
      const trial = openLibrary(
        { ...shell, read: (path) => (path === file ? { text: changed } : shell.read(path)) },
        shelf.root,
        shelf.hasSettings,
        shelf.files,
      );
      const checked = trial.library.analyse(analysis.path);
      return checked === undefined ? [] : releaseObstacles(checked, shelf.settings);
    }
  },
});

function statusOf(model: FileModel): Status {
  return STATUSES.find((status) => status === model.status?.status?.text) ?? 'draft';
}

/** The text with its status line put in place of the one it has, or below the opening line. */
function withStatus({ tree, status, head }: FileModel, line: string): string {
  const { text } = tree;
  if (status !== undefined)
    return text.slice(0, status.start) + line + text.slice(status.end).replace(/^[^\r\n]*/, '');
  const end = /\r\n|\r|\n/.exec(text.slice(head?.end ?? 0));
  const at = (head?.end ?? 0) + (end?.index ?? text.length);
  const newline = end?.[0] ?? '\n';
  return `${text.slice(0, at)}${newline}${newline}${line}${text.slice(at)}`;
}
