// `baywright build`: checked procedures to guides.
import { checkChoices, OPTIONS, type Options, readFormats } from '../build/choices.js';
import { buildGuides, type Result } from '../build/jobs.js';
import type { KeptGuides } from '../build/kept-guides.js';
import type { LeftOver } from '../build/left-over.js';
import { asData, lineOf, summary } from '../build/told.js';
import type { Found } from '../check.js';
import { type Context, defineCommand, PATHS } from '../command.js';
import { collectKept } from '../file-cache.js';
import { type Collection, troubleLines } from '../libraries.js';
import { progressLine } from '../progress.js';
import { textReport } from '../report/text.js';
import { waiting, watchPaths } from '../watch.js';

export default defineCommand({
  name: 'build',
  summary: 'make guides from procedures',
  docs: `Checks procedures and writes their guides. A procedure with errors gets none, and the exit code is 1 where there are any. One with open questions prints as a draft.

Guides that cannot have changed since they were written are not made again: what they were made from is kept in .cache/baywright below the library, which may be deleted at any time.

A file is written whole or not at all, and the same source gives the same bytes; SOURCE_DATE_EPOCH sets the time stamp in a PDF, else it is the day of the revision. For a folder, a page that lists all guides is written as index.html.

What an earlier build of the folder wrote and nothing prints any more (its procedure was renamed or deleted, a side or a language is gone) is named, and --tidy deletes it. Files that the command did not write, or that were changed since, are never touched.`,
  takes: [PATHS],
  options: OPTIONS,
  examples: [
    ['baywright build', 'guides of the whole library'],
    [
      'baywright build procedures/FH-12-front-hub.bay --side left --format pdf',
      'one guide, for the left side',
    ],
    ['baywright build --option axle=heavy --out heavy', 'for one variant'],
    ['baywright build --watch', 'keep the guides up to date while you write'],
    ['baywright build --fresh', 'every guide anew'],
    ['baywright build --only torque-card', 'torque cards alone'],
  ],
  async run(given, args, options) {
    checkChoices(options);
    const context = options.jobs > 0 ? { ...given, shell: { ...given.shell, threads: options.jobs } } : given;
    if (!options.watch) return buildOnce(context, args, options);
    let { fresh } = options;
    await watchPaths(context.shell, args, async () => {
      await buildOnce(context, args, { ...options, fresh });
      fresh = false;
      context.shell.err.write(waiting(context.shell.now()));
    });
    return 0;
  },
});

async function buildOnce(context: Context, args: readonly string[], options: Options): Promise<number> {
  const { shell, paintErr } = context;
  const formats = readFormats(options.format);
  const { collection, cacheFor } = collectKept<KeptGuides>(shell, args, 'guides', options.fresh);
  const progress = progressLine(context, 'files done');
  const { results, errors } = await buildGuides(
    shell,
    collection,
    options,
    formats,
    cacheFor,
    (result) => {
      // While a library is watched, only what is new is of interest.
      if (!options.json && !(options.watch && result.isKept))
        progress.above(() => shell.out.write(lineOf(context, result)));
    },
    progress.step,
  );
  progress.end();
  if (errors.length > 0 && !options.json) shell.out.write(`\n${errorReport(context, collection, errors)}\n`);
  shell.err.write(troubleLines(collection.troubles, paintErr));
  const written = results.filter(({ state }) => state === 'written');
  const isWhole = args.length === 0 || args.some((arg) => shell.kind(shell.resolve(arg)) === 'folder');
  const listed = isWhole && formats.includes('html') && options.only === 'guide' && written.length > 0;
  const pages = listed ? (await import('../build/index-page.js')).indexPages(shell, written) : [];
  const old = isWhole && !options.watch ? await olderGuides(context, collection, results, options) : [];
  if (options.json) shell.out.write(`${JSON.stringify(asData(results, pages, old), null, 2)}\n`);
  else if (results.length > 0 || collection.troubles.length === 0)
    shell.out.write(summary(context, results, pages));
  const unknown = unknownToAll(results);
  for (const name of unknown)
    shell.err.write(
      `${paintErr.red('baywright:')} no vehicle of these procedures has the option “${name}”: nothing was left out for it\n`,
    );
  const isNothing = results.length > 0 && results.every(({ state }) => state === 'passed over');
  const hasFailed = results.some(({ state }) => state === 'failed');
  if (collection.troubles.length > 0 || hasFailed || isNothing || unknown.length > 0) return 2;
  return errors.length > 0 ? 1 : 0;
}

/** What is left of earlier builds; deleted where that was asked for. */
async function olderGuides(
  { shell }: Context,
  { shelves }: Collection,
  results: readonly Result[],
  options: Options,
): Promise<readonly LeftOver[]> {
  const { clearAway, leftOver, leftOverText } = await import('../build/left-over.js');
  const old = shelves.flatMap((shelf) =>
    leftOver(
      shell,
      shelf,
      results.filter((result) => result.shelf === shelf),
      options,
    ),
  );
  if (options.tidy) clearAway(shell, old);
  if (!options.json) shell.out.write(leftOverText(shell, old, options.tidy));
  return old;
}

/** Options asked for that no vehicle of any procedure has. */
function unknownToAll([first, ...more]: readonly Result[]): readonly string[] {
  const unknown = first?.unknownOptions ?? [];
  return unknown.filter((name) => more.every((result) => result.unknownOptions.includes(name)));
}

/** Why guides were refused. */
function errorReport(context: Context, collection: Collection, found: readonly Found[]): string {
  const { shell } = context;
  const files = collection.shelves.reduce((sum, shelf) => sum + shelf.files.length, 0);
  return textReport(
    { collection, found, files, troubles: [] },
    { ...context, columns: shell.out.columns, folder: shell.folder, limit: 100 },
  );
}
