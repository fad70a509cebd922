// `baywright format`: files in the one form that the formatter settles.
import { format } from '@baywright/language';
import { type Context, defineCommand, flag, PATHS } from '../command.js';
import { collect } from '../libraries.js';
import { join, relativeTo } from '../paths.js';
import { plural } from '../report/text.js';
import { CannotRun } from '../shell.js';

export default defineCommand({
  name: 'format',
  summary: 'put files into their one form',
  docs: `Settles blanks, indents, commas and the form of quantities; what a file means never changes, and lines that cannot be read are left as they are. Names the files that it changed.

With - in place of paths, reads standard input and writes the result to standard output.`,
  takes: [PATHS],
  options: { check: flag('--check', 'change nothing; exit with 1 when a file is not in its form') },
  examples: [
    ['baywright format', 'the whole library'],
    ['baywright format --check', 'only tell'],
    ['baywright format - < draft.bay', 'from standard input'],
  ],
  async run(context, paths, { check }) {
    if (paths.includes('-')) {
      if (paths.length > 1) throw new CannotRun('- stands alone: standard input cannot be mixed with files');
      return formatInput(context, check);
    }
    return formatFiles(context, paths, check);
  },
});

async function formatInput({ shell }: Context, check: boolean): Promise<number> {
  const reading = await shell.readStdin();
  if ('problem' in reading) throw new CannotRun(`standard input ${reading.problem}`);
  const { text } = format(reading.text, '-');
  if (check) return text === reading.text ? 0 : 1;
  shell.out.write(text);
  return 0;
}

function formatFiles({ shell, paintErr }: Context, paths: readonly string[], check: boolean): number {
  const { shelves, troubles } = collect(shell, paths);
  let all = 0;
  let changed = 0;
  for (const shelf of shelves) {
    for (const path of shelf.files) {
      all++;
      const before = shelf.text(path) ?? '';
      const { text } = format(before, path);
      if (text === before) continue;
      changed++;
      const file = join(shelf.root, path);
      if (!check) shell.write(file, text);
      shell.out.write(`${relativeTo(shell.folder, file)}\n`);
    }
  }
  const of = `${changed} of ${plural(all, 'file')}`;
  shell.err.write(
    all === 0
      ? 'No procedures here: nothing to format.\n'
      : check
        ? `${of} not in form.\n`
        : `${of} changed.\n`,
  );
  for (const { path, problem } of troubles)
    shell.err.write(`${paintErr.red('baywright:')} ${path} ${problem}\n`);
  if (troubles.length > 0) return 2;
  return check && changed > 0 ? 1 : 0;
}
