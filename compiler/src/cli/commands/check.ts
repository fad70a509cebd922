// `baywright check`: findings of procedures and catalogues.
import { acceptedIn, DIAGNOSTICS, nearest, VERSION } from '@baywright/language';
import { dayOf } from '@baywright/server/day';
import { type Checked, checkPaths, type Found } from '../check.js';
import {
  type Context,
  choice,
  count,
  defineCommand,
  flag,
  list,
  type OptionValues,
  PATHS,
  text,
} from '../command.js';
import { fixShelf } from '../fix.js';
import { troubleLines } from '../libraries.js';
import { join, relativeTo } from '../paths.js';
import { progressLine } from '../progress.js';
import { githubReport } from '../report/github.js';
import { makeReport, sourceLines } from '../report/report.js';
import { plural, textReport } from '../report/text.js';
import { CannotRun } from '../shell.js';
import { printStateAt } from '../state-at.js';
import { waiting, watchPaths } from '../watch.js';

const OPTIONS = {
  format: choice(
    '-f, --format <form>',
    'how findings are written',
    ['text', 'json', 'github', 'sarif'],
    'text',
  ),
  only: list(
    '--only <codes>',
    'only these codes, names or letters, "S301,F" or "never-torqued"; may be repeated',
  ),
  fix: flag('--fix', 'make the changes that are safe, then check again'),
  strict: flag('--strict', 'exit with 1 for questions and hints too'),
  report: text('--report <file>', 'also write all findings as a page to print or send'),
  watch: flag('-w, --watch', 'check again whenever a file changes, until ended'),
  jobs: count(
    '-j, --jobs <count>',
    'how many threads work; 0 for one, or as many as the machine has where that is quicker',
    0,
  ),
  fresh: flag('--fresh', 'look at every file again, whatever is kept from the last run'),
  stateAt: text(
    '--state-at <file:line>',
    'instead, tell what is off, loose, drained, raised or owed just before the work of a line; text or json',
  ),
  limit: count('--limit <count>', 'the most findings shown as text; 0 for all', 100),
};
type Options = OptionValues<typeof OPTIONS>;

export default defineCommand({
  name: 'check',
  summary: 'find what is wrong or missing in procedures',
  docs: `Checks procedures and catalogues and tells what is wrong, where, and what to do.

A folder stands for all .bay files in it. Files that cannot have changed since the last check are not looked at again: what was found is kept in .cache/baywright below the library, which may be deleted at any time. The exit code is 1 when there are errors or warnings; questions (what a draft may still leave open) and hints count only with --strict.`,
  takes: [PATHS],
  options: OPTIONS,
  examples: [
    ['baywright check', 'the whole library'],
    ['baywright check procedures/FH-12-front-hub.bay', 'one procedure'],
    ['baywright check --fix', 'mend what can be mended safely'],
    ['baywright check --watch', 'keep looking while you write'],
    ['baywright check --report review.html', 'a page of all findings'],
    ['baywright check --state-at FH-12.bay:64', 'how the vehicle stands before line 64'],
    ['baywright check --format sarif > findings.sarif', 'for a code-scanning service'],
  ],
  async run(context, args, options) {
    const { shell } = context;
    if (options.stateAt !== undefined) return printStateAt(context, options.stateAt, options.format);
    const isWanted = filterOf(options.only);
    const progress = progressLine(context, 'checked');
    const chosen = {
      progress: progress.step,
      fresh: options.fresh,
      ...(options.jobs > 0 ? { jobs: options.jobs } : {}),
    };
    const tell = async (all: Checked): Promise<number> => {
      progress.end();
      const checked = { ...all, found: all.found.filter(isWanted) };
      await writeReport(context, checked, options);
      shell.err.write(troubleLines(checked.troubles, context.paintErr));
      return exitCode(checked, options.strict);
    };
    if (options.watch) {
      if (options.fix)
        throw new CannotRun(
          '--fix and --watch do not go together: a file would change while you write in it',
        );
      let { fresh } = options;
      await watchPaths(shell, args, async () => {
        await tell(await checkPaths(shell, args, { ...chosen, fresh }));
        fresh = false;
        shell.err.write(waiting(shell.now()));
      });
      return 0;
    }
    let checked = await checkPaths(shell, args, chosen);
    if (options.fix) {
      const fixed = checked.collection.shelves.map((shelf) => fixShelf(shell, shelf));
      const fixes = fixed.reduce((sum, one) => sum + one.fixes, 0);
      const files = fixed.reduce((sum, one) => sum + one.files.length, 0);
      shell.err.write(`${plural(fixes, 'finding')} mended in ${plural(files, 'file')}.\n`);
      if (fixes > 0) checked = await checkPaths(shell, args, chosen);
    }
    return tell(checked);
  },
});

async function writeReport(
  context: Context,
  checked: Checked,
  { format, limit, report: page }: Options,
): Promise<void> {
  const { shell, paint } = context;
  if (page !== undefined) await writePage(context, checked, page);
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

async function writePage({ shell }: Context, checked: Checked, page: string): Promise<void> {
  const { reportPage } = await import('../report/page.js');
  const { shelves } = checked.collection;
  const accepted = shelves.flatMap(({ root, library, files }) =>
    files.flatMap((path) => {
      const model = library.model(path);
      const file = relativeTo(shell.folder, join(root, path));
      return model === undefined ? [] : acceptedIn(model).map(({ code, reason }) => ({ file, code, reason }));
    }),
  );
  const shops = [...new Set(shelves.map(({ settings }) => settings.shop.name))].filter((name) => name !== '');
  const html = reportPage(makeReport(checked, shell.folder), {
    shop: shops.join('; '),
    day: dayOf(shell.now()),
    program: VERSION,
    lineOf: sourceLines(checked, shell.folder),
    accepted,
  });
  shell.write(shell.resolve(page), html);
}

/** Findings that `--only` asks for; all where it does not. */
function filterOf(only: readonly string[]): (found: Found) => boolean {
  const wanted = only
    .flatMap((one) => one.split(','))
    .map((one) => one.trim())
    .filter((one) => one !== '');
  const known = DIAGNOSTICS.flatMap(({ code, name }) => [code as string, name, code.slice(0, 1)]);
  const unknown = wanted.find((one) => !known.includes(one));
  if (unknown !== undefined) {
    const near = nearest(unknown, known);
    throw new CannotRun(
      `no finding has the code, name or letter “${unknown}”${near.length > 0 ? `; near it: ${near.join(', ')}` : ''}`,
    );
  }
  return ({ finding: { code, name } }) =>
    wanted.length === 0 || wanted.some((one) => one === code || one === name || one === code.slice(0, 1));
}

function exitCode(checked: Checked, strict: boolean): number {
  if (checked.troubles.length > 0) return 2;
  const grave = checked.found.some(
    ({ finding }) => strict || finding.severity === 'error' || finding.severity === 'warning',
  );
  return grave ? 1 : 0;
}
