// `baywright check`: findings of procedures and catalogues.
import { DIAGNOSTICS } from '@baywright/language';
import { type Checked, checkPaths } from '../check.js';
import { type Context, choice, count, defineCommand, flag } from '../command.js';
import { fixShelf } from '../fix.js';
import { progressLine } from '../progress.js';
import { githubReport } from '../report/github.js';
import { makeReport, sourceLines } from '../report/report.js';
import { plural, textReport } from '../report/text.js';

export default defineCommand({
  name: 'check',
  summary: 'find what is wrong or missing in procedures',
  docs: `Checks procedures and catalogues and tells what is wrong, where, and what to do.

A folder stands for all .bay files in it. The exit code is 1 when there are errors or warnings; questions (what a draft may still leave open) and hints count only with --strict.`,
  takes: [
    {
      name: 'paths',
      docs: 'files and folders; the current folder where none is given',
      optional: true,
      many: true,
    },
  ],
  options: {
    format: choice(
      '-f, --format <form>',
      'how findings are written',
      ['text', 'json', 'github', 'sarif'],
      'text',
    ),
    fix: flag('--fix', 'make the changes that are safe, then check again'),
    strict: flag('--strict', 'exit with 1 for questions and hints too'),
    limit: count('--limit <count>', 'the most findings shown as text; 0 for all', 100),
  },
  examples: [
    ['baywright check', 'the whole library'],
    ['baywright check procedures/FH-12-front-hub.bay', 'one procedure'],
    ['baywright check --fix', 'mend what can be mended safely'],
    ['baywright check --format sarif > findings.sarif', 'for a code-scanning service'],
  ],
  async run(context, args, options) {
    const { shell } = context;
    const progress = progressLine(context, 'checked');
    let checked = await checkPaths(shell, args, progress.step);
    if (options.fix) {
      const fixed = checked.collection.shelves.map((shelf) => fixShelf(shell, shelf));
      const fixes = fixed.reduce((sum, one) => sum + one.fixes, 0);
      const files = fixed.reduce((sum, one) => sum + one.files.length, 0);
      shell.err.write(`${plural(fixes, 'finding')} mended in ${plural(files, 'file')}.\n`);
      if (fixes > 0) checked = await checkPaths(shell, args, progress.step);
    }
    progress.end();
    await writeReport(context, checked, options);
    for (const { path, problem } of checked.troubles)
      shell.err.write(`${context.paintErr.red('baywright:')} ${path} ${problem}\n`);
    return exitCode(checked, options.strict);
  },
});

interface Shown {
  readonly format: 'text' | 'json' | 'github' | 'sarif';
  readonly limit: number;
}

async function writeReport(
  { shell, paint }: Context,
  checked: Checked,
  { format, limit }: Shown,
): Promise<void> {
  if (format === 'text') {
    shell.out.write(textReport(checked, { paint, columns: shell.out.columns, folder: shell.folder, limit }));
    return;
  }
  const report = makeReport(checked, shell.folder);
  if (format === 'json') shell.out.write(`${JSON.stringify(report, undefined, 2)}\n`);
  else if (format === 'github') shell.out.write(githubReport(report));
  else {
    const { sarifReport } = await import('../report/sarif.js');
    shell.out.write(await sarifReport(report, DIAGNOSTICS, sourceLines(checked, shell.folder)));
  }
}

function exitCode(checked: Checked, strict: boolean): number {
  if (checked.troubles.length > 0) return 2;
  const grave = checked.found.some(
    ({ finding }) => strict || finding.severity === 'error' || finding.severity === 'warning',
  );
  return grave ? 1 : 0;
}
