// `baywright build`: checked procedures to guides.
import { OPTIONS, readFormats } from '../build/choices.js';
import { buildGuides } from '../build/jobs.js';
import { asData, lineOf, summary } from '../build/told.js';
import type { Found } from '../check.js';
import { type Context, defineCommand, PATHS } from '../command.js';
import { type Collection, collect, troubleLines } from '../libraries.js';
import { progressLine } from '../progress.js';
import { textReport } from '../report/text.js';

export default defineCommand({
  name: 'build',
  summary: 'make guides from procedures',
  docs: `Checks procedures and writes their guides. A procedure with errors gets none: the exit code is then 1. One with open questions prints as a draft.

A file is written whole or not at all, and the same source gives the same bytes; SOURCE_DATE_EPOCH sets the time stamp in a PDF, else it is the day of the revision. For a folder, a page that lists all guides is written as index.html.`,
  takes: [PATHS],
  options: OPTIONS,
  examples: [
    ['baywright build', 'guides of the whole library'],
    [
      'baywright build procedures/FH-12-front-hub.bay --side left --format pdf',
      'one guide, for the left side',
    ],
    ['baywright build --option axle=heavy --out heavy', 'for one variant'],
    ['baywright build --only torque-card', 'torque cards alone'],
  ],
  async run(context, args, options) {
    const { shell, paintErr } = context;
    const formats = readFormats(options.format);
    const collection = collect(shell, args);
    const progress = progressLine(context, 'files done');
    const { results, errors } = await buildGuides(
      shell,
      collection,
      options,
      formats,
      (result) => {
        if (!options.json) progress.above(() => shell.out.write(lineOf(context, result)));
      },
      progress.step,
    );
    progress.end();
    if (errors.length > 0 && !options.json)
      shell.out.write(`\n${errorReport(context, collection, errors)}\n`);
    shell.err.write(troubleLines(collection.troubles, paintErr));
    const written = results.filter(({ state }) => state === 'written');
    const isWhole = args.length === 0 || args.some((arg) => shell.kind(shell.resolve(arg)) === 'folder');
    const listed = isWhole && formats.includes('html') && options.only === 'guide' && written.length > 0;
    const pages = listed ? (await import('../build/index-page.js')).indexPages(shell, written) : [];
    if (options.json) shell.out.write(`${JSON.stringify(asData(results, pages), null, 2)}\n`);
    else shell.out.write(summary(context, results, pages));
    if (collection.troubles.length > 0 || results.some(({ state }) => state === 'failed')) return 2;
    return results.some(({ state }) => state === 'refused') ? 1 : 0;
  },
});

/** Why guides were refused. */
function errorReport(context: Context, collection: Collection, found: readonly Found[]): string {
  const { shell } = context;
  const files = collection.shelves.reduce((sum, shelf) => sum + shelf.files.length, 0);
  return textReport(
    { collection, found, files, troubles: [] },
    { ...context, columns: shell.out.columns, folder: shell.folder, limit: 100 },
  );
}
