// `baywright build`: checked procedures to guides.
import { type Analysis, LANGUAGES, type Language } from '@baywright/language';
import { SHEETS } from '../../document/document.js';
import type { Engine } from '../../pdf/engine.js';
import { PRINTS } from '../../print-options.js';
import { type Checked, checkPaths } from '../check.js';
import { type Context, choice, defineCommand, flag, list, type OptionValues, text } from '../command.js';
import type { Shelf } from '../libraries.js';
import { below, fileName, join, relativeTo } from '../paths.js';
import { progressLine } from '../progress.js';
import { FORMATS, type Format, type MadeGuide, makeGuide, type Wanted } from '../publish.js';
import { plural, textReport } from '../report/text.js';
import { CannotRun } from '../shell.js';

const UNITS = ['settings', 'metric', 'US', 'written'] as const;
const PAGES = ['settings', 'A4', 'Letter'] as const;
const MADE_SHEETS = SHEETS.filter((sheet) => sheet !== 'off-now');

const OPTIONS = {
  out: text(
    '-o, --out <folder>',
    'where guides are written; the output folder of baywright.json where not given',
  ),
  format: list('-f, --format <forms>', 'html, pdf or both: "html,pdf", which is usual; may be repeated'),
  only: choice('--only <sheet>', 'one sheet in place of the guide', MADE_SHEETS, 'guide'),
  side: text('--side <side>', 'left, right or both; usual is a guide for each side and one for both'),
  option: list('--option <name=value>', 'an option of the vehicle, such as axle=heavy; may be repeated'),
  page: choice('--page <paper>', 'the paper', PAGES, 'settings'),
  units: choice('--units <system>', 'which system stands first', UNITS, 'settings'),
  print: choice(
    '--print <kind>',
    'bay is short, training tells why, walk leaves room to write',
    PRINTS,
    'bay',
  ),
  language: list('--language <code>', 'en, es, fr or de; the languages of baywright.json where not given'),
  colour: flag('--colour', 'one accent colour in print; black carries all meaning without it'),
  json: flag('--json', 'say what was made as JSON'),
};
type Options = OptionValues<typeof OPTIONS>;

export default defineCommand({
  name: 'build',
  summary: 'make guides from procedures',
  docs: `Checks procedures and writes their guides. A procedure with errors gets none: the exit code is then 1. One with open questions prints as a draft.

A file is written whole or not at all, and the same source gives the same bytes; SOURCE_DATE_EPOCH sets the time stamp in a PDF, else it is the day of the revision. For a folder, a page that lists all guides is written as index.html.`,
  takes: [
    {
      name: 'paths',
      docs: 'files and folders; the current folder where none is given',
      optional: true,
      many: true,
    },
  ],
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
    const progress = progressLine(context, 'checked');
    const checked = await checkPaths(shell, args, progress.step);
    progress.end();
    const refused = errorsOf(checked);
    if (refused.found.length > 0 && !options.json) {
      shell.out.write(
        textReport(refused, { ...context, columns: shell.out.columns, folder: shell.folder, limit: 100 }),
      );
    }
    const jobs = jobsOf(context, checked, options);
    const results = await runJobs(context, jobs, options, formats);
    for (const { path, problem } of checked.troubles)
      shell.err.write(`${paintErr.red('baywright:')} ${path} ${problem}\n`);
    const written = results.filter(({ state }) => state === 'written');
    const isWhole = args.length === 0 || args.some((arg) => shell.kind(shell.resolve(arg)) === 'folder');
    const listed = isWhole && formats.includes('html') && options.only === 'guide' && written.length > 0;
    const pages = listed
      ? (await import('../guide-index.js')).indexPages(
          shell,
          written.map((result) => ({ ...result, ...result.job })),
        )
      : [];
    if (options.json) shell.out.write(`${JSON.stringify(asData(results, pages), null, 2)}\n`);
    else shell.out.write(summary(context, results, pages));
    if (checked.troubles.length > 0 || results.some(({ state }) => state === 'failed')) return 2;
    return results.some(({ state }) => state === 'refused') ? 1 : 0;
  },
});

/** A procedure with the folder its guides go to. */
interface Job {
  readonly shelf: Shelf;
  readonly analysis: Analysis;
  readonly folder: string;
  readonly counts: Readonly<Record<'error' | 'warning' | 'question', number>>;
}

export interface BuiltFile {
  readonly path: string;
  readonly label: string;
  readonly pages?: number;
}

interface Result {
  readonly job: Job;
  readonly state: 'written' | 'refused' | 'failed';
  readonly files: readonly BuiltFile[];
  readonly statusText: string;
  readonly notes: readonly string[];
}

function jobsOf({ shell }: Context, checked: Checked, options: Options): Job[] {
  const { shelves } = checked.collection;
  const outer = shelves.map(({ root }) => root).sort((a, b) => a.length - b.length)[0] ?? shell.folder;
  return shelves.flatMap((shelf) =>
    shelf.files.flatMap((path): Job[] => {
      const analysis = shelf.library.analyse(path);
      if (analysis?.model.kind !== 'procedure') return [];
      const own = checked.found.filter(({ shelf: of, finding }) => of === shelf && finding.file === path);
      const count = (severity: string): number =>
        own.filter(({ finding }) => finding.severity === severity).length;
      // Libraries in a library keep their place below a common output folder, so that no two guides meet there.
      const inside = options.out === undefined ? '' : (below(outer, shelf.root) ?? '');
      const folder =
        options.out === undefined
          ? join(shelf.root, shelf.settings.output)
          : join(shell.resolve(options.out), inside);
      return [
        {
          shelf,
          analysis,
          folder,
          counts: { error: count('error'), warning: count('warning'), question: count('question') },
        },
      ];
    }),
  );
}

/** Two typesetters at most: each takes a core and some hundred megabytes. */
const MOST_LANES = 2;

/** Makes the guides of all jobs, some at a time, and tells of each in the order of the files. */
async function runJobs(
  context: Context,
  jobs: readonly Job[],
  options: Options,
  formats: readonly Format[],
): Promise<Result[]> {
  const { shell } = context;
  const results: (Result | undefined)[] = jobs.map(() => undefined);
  let [next, told] = [0, 0];
  const lane = async (): Promise<void> => {
    const engine = formats.includes('pdf') ? (await import('../../pdf/engine.js')).openEngine() : undefined;
    try {
      for (let i = next++; i < jobs.length; i = next++) {
        const job = jobs[i];
        if (!job) continue;
        results[i] = await runJob(context, job, options, formats, engine);
        for (let done = results[told]; done; done = results[++told])
          if (!options.json) shell.out.write(lineOf(context, done));
      }
    } finally {
      engine?.close();
    }
  };
  await Promise.all(
    Array.from({ length: Math.max(1, Math.min(MOST_LANES, shell.threads, jobs.length)) }, lane),
  );
  return results.filter((result) => result !== undefined);
}

async function runJob(
  { shell }: Context,
  job: Job,
  options: Options,
  formats: readonly Format[],
  engine: Engine | undefined,
): Promise<Result> {
  const { shelf, analysis } = job;
  const none = { job, files: [], statusText: '' };
  if (job.counts.error > 0) return { ...none, state: 'refused', notes: [] };
  const files: BuiltFile[] = [];
  const notes = new Set<string>();
  let statusText = '';
  try {
    for (const [wanted, label] of wantedOf(shell.env.SOURCE_DATE_EPOCH, job, options)) {
      const made = await makeGuide(shell, shelf, analysis, wanted, formats, engine);
      for (const said of made.notes) notes.add(said);
      statusText = made.statusText;
      files.push(...writeGuide(shell.write, job, wanted, made, label));
    }
    return { job, state: 'written', files, statusText, notes: [...notes] };
  } catch (error) {
    if (error instanceof CannotRun) throw error;
    return {
      job,
      state: 'failed',
      files,
      statusText,
      notes: [`could not be made: ${error instanceof Error ? error.message : String(error)}`],
    };
  }
}

/** The guides of a procedure: for each side and both, in each language. */
function wantedOf(epoch: string | undefined, { shelf, analysis }: Job, options: Options): [Wanted, string][] {
  const { settings } = shelf;
  const { sides } = analysis.model;
  const timestamp = readEpoch(epoch);
  const all: (string | undefined)[] = sides.length > 1 ? [...sides, 'both'] : [undefined];
  const asked = options.side === undefined || sides.length === 0 ? all : [options.side];
  const unknown =
    options.side !== undefined &&
    sides.length > 0 &&
    options.side !== 'both' &&
    !sides.includes(options.side);
  const languages = options.language.length > 0 ? options.language.map(readLanguage) : settings.languages;
  const page = options.page === 'settings' ? settings.page : options.page;
  const units = {
    settings: settings.units,
    metric: 'metric first',
    US: 'US first',
    written: 'as written',
  } as const;
  if (unknown) return [];
  return languages.flatMap((language) =>
    asked.map((side): [Wanted, string] => [
      {
        choice: {
          sheet: options.only,
          ...(side === undefined ? {} : { side }),
          option: optionsFor(analysis, readOptions(options.option)),
          units: units[options.units],
          language,
        },
        print: {
          paper: page === 'A4' ? 'a4' : 'letter',
          print: options.print,
          colour: options.colour,
          ...(timestamp === undefined ? {} : { timestamp }),
        },
      },
      [side, languages.length > 1 ? language : undefined].filter((part) => part !== undefined).join(' '),
    ]),
  );
}

/** The options that this procedure knows: one command prints a library in which only some have an axle. */
function optionsFor(analysis: Analysis, option: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(option).filter(([name]) => analysis.job.universe.axis(name) !== undefined),
  );
}

function writeGuide(
  write: (path: string, data: string | Uint8Array) => void,
  job: Job,
  { choice: chosen, print }: Wanted,
  made: MadeGuide,
  label: string,
): BuiltFile[] {
  const { shelf, analysis, folder } = job;
  const base = [
    fileName(analysis.path).replace(/\.bay$/, ''),
    ...(chosen.sheet === 'guide' ? [] : [chosen.sheet]),
    ...(chosen.side === undefined ? [] : [chosen.side]),
    ...Object.entries(chosen.option).map(([name, value]) => `${name}-${value}`),
    ...(print.print === 'bay' ? [] : [print.print]),
    ...(chosen.language === shelf.settings.languages[0] ? [] : [chosen.language]),
  ].join('.');
  const files: BuiltFile[] = [];
  if (made.html !== undefined) {
    const path = join(folder, `${base}.html`);
    write(path, made.html);
    files.push({ path, label: label === '' ? 'Page' : `${upper(label)}` });
  }
  if (made.pdf !== undefined) {
    const path = join(folder, `${base}.pdf`);
    write(path, made.pdf.bytes);
    files.push({ path, label: label === '' ? 'PDF' : `${upper(label)}, PDF`, pages: made.pdf.pages });
  }
  return files;
}

const upper = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** What is said of a procedure: what was found, what was written. */
function lineOf({ shell, paint }: Context, { job, state, files, notes }: Result): string {
  const { number, title, status } = job.analysis.model;
  const { counts } = job;
  const name = `${paint.bold(number ?? fileName(job.analysis.path))} ${title}`;
  if (state === 'refused') return `${name}: ${paint.red(`refused, ${plural(counts.error, 'error')}`)}\n`;
  const checked = [
    status?.status?.text === 'released' ? '' : paint.yellow(status?.status?.text ?? 'draft'),
    counts.warning > 0 ? plural(counts.warning, 'warning') : '',
    counts.question > 0 ? plural(counts.question, 'question') : '',
  ].filter((part) => part !== '');
  const head = `${name}: ${checked.length > 0 ? checked.join(', ') : 'in order'}`;
  const lines = files.map(
    ({ path, pages }) =>
      `  ${relativeTo(shell.folder, path)}${pages === undefined ? '' : ` (${plural(pages, 'page')})`}`,
  );
  const said = notes.map((note) => `  ${paint.yellow('note:')} ${note}`);
  return `${[head, ...lines, ...said].join('\n')}\n`;
}

function summary({ shell }: Context, results: readonly Result[], pages: readonly string[]): string {
  if (results.length === 0) return 'No procedures here: nothing was made.\n';
  const count = (state: Result['state']): number => results.filter((result) => result.state === state).length;
  const files = results.reduce((sum, result) => sum + result.files.length, 0);
  const said = [
    `${count('written')} written (${plural(files, 'file')})`,
    `${count('refused')} refused`,
    ...(count('failed') > 0 ? [`${count('failed')} failed`] : []),
  ];
  const index = pages.map((page) => `Open ${relativeTo(shell.folder, page)} in a browser to see them all.\n`);
  return `${plural(results.length, 'procedure')}: ${said.join(', ')}.\n${index.join('')}`;
}

function asData(results: readonly Result[], pages: readonly string[]): unknown {
  return {
    procedures: results.map(({ job, state, files, notes }) => ({
      number: job.analysis.model.number ?? null,
      title: job.analysis.model.title,
      source: join(job.shelf.root, job.analysis.path),
      state,
      ...job.counts,
      files: files.map(({ path, pages: count }) => ({
        path,
        ...(count === undefined ? {} : { pages: count }),
      })),
      notes,
    })),
    index: pages,
  };
}

/** The errors of a check alone. */
function errorsOf(checked: Checked): Checked {
  return { ...checked, found: checked.found.filter(({ finding }) => finding.severity === 'error') };
}

function readFormats(given: readonly string[]): readonly Format[] {
  const names = given.flatMap((one) => one.split(',')).map((one) => one.trim());
  const unknown = names.find((name) => !FORMATS.some((format) => format === name));
  if (unknown !== undefined)
    throw new CannotRun(`there is no format “${unknown}”; there are ${FORMATS.join(' and ')}`);
  const formats = FORMATS.filter((format) => names.includes(format));
  return formats.length === 0 ? FORMATS : formats;
}

function readOptions(given: readonly string[]): Record<string, string> {
  const pairs = given.map((one): [string, string] => {
    const match = /^([^=\s]+)=([^=\s]+)$/.exec(one);
    if (!match?.[1] || !match[2])
      throw new CannotRun(`“${one}” is no option of a vehicle; write name=value, as in axle=heavy`);
    return [match[1], match[2]];
  });
  return Object.fromEntries(pairs);
}

function readLanguage(code: string): Language {
  const language = LANGUAGES.find((known) => known === code);
  if (language === undefined)
    throw new CannotRun(`there is no language “${code}”; there are ${LANGUAGES.join(', ')}`);
  return language;
}

function readEpoch(value: string | undefined): number | undefined {
  if (value === undefined || value === '') return undefined;
  if (!/^\d{1,11}$/.test(value))
    throw new CannotRun(`SOURCE_DATE_EPOCH is “${value}”: seconds since 1970 are expected`);
  return Number(value);
}
