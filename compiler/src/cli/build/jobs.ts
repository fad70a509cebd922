// Makes the guides of many procedures, two at a time, each file whole or not at all.
import type { Engine } from '../../pdf/engine.js';
import type { Checked } from '../check.js';
import type { Shelf } from '../libraries.js';
import { below, fileName, join } from '../paths.js';
import { type Format, type MadeGuide, makeGuide, type Wanted } from '../publish.js';
import { CannotRun, type Shell } from '../shell.js';
import { type Options, wantedOf } from './choices.js';
import { entryOf, type GuideEntry } from './entry.js';

/** A procedure with the folder its guides go to. */
export interface Job {
  readonly shelf: Shelf;
  /** Library path. */
  readonly path: string;
  readonly folder: string;
  readonly counts: Readonly<Record<'error' | 'warning' | 'question', number>>;
}

export interface BuiltFile {
  readonly path: string;
  readonly label: string;
  readonly pages?: number;
}

export interface Result {
  readonly job: Job;
  readonly state: 'written' | 'refused' | 'failed';
  readonly files: readonly BuiltFile[];
  /** What the list of guides says of the procedure. */
  readonly entry: GuideEntry;
  readonly notes: readonly string[];
}

export function jobsOf(
  folderOf: (path: string) => string,
  here: string,
  checked: Checked,
  options: Options,
): Job[] {
  const { shelves } = checked.collection;
  const outer = shelves.map(({ root }) => root).sort((a, b) => a.length - b.length)[0] ?? here;
  return shelves.flatMap((shelf) => {
    const counts = countsOf(checked, shelf);
    // Libraries in a library keep their place below a common output folder, so that no two guides meet there.
    const folder =
      options.out === undefined
        ? join(shelf.root, shelf.settings.output)
        : join(folderOf(options.out), below(outer, shelf.root) ?? '');
    return shelf.files
      .filter((path) => shelf.library.model(path)?.kind === 'procedure')
      .map(
        (path): Job => ({
          shelf,
          path,
          folder,
          counts: counts.get(path) ?? { error: 0, warning: 0, question: 0 },
        }),
      );
  });
}

/** How many findings of each gravity a library's files have. */
function countsOf(
  { found }: Checked,
  shelf: Shelf,
): Map<string, Record<'error' | 'warning' | 'question', number>> {
  const counts = new Map<string, Record<'error' | 'warning' | 'question', number>>();
  for (const { shelf: of, finding } of found) {
    if (of !== shelf || finding.severity === 'hint') continue;
    const own = counts.get(finding.file) ?? { error: 0, warning: 0, question: 0 };
    own[finding.severity]++;
    counts.set(finding.file, own);
  }
  return counts;
}

/** Two typesetters at most: each takes a core and some hundred megabytes. */
const MOST_LANES = 2;

/** Makes the guides of all jobs, some at a time, and tells of each in the order of the files. */
export async function runJobs(
  shell: Shell,
  jobs: readonly Job[],
  options: Options,
  formats: readonly Format[],
  tell: (result: Result) => void,
): Promise<Result[]> {
  const results: (Result | undefined)[] = jobs.map(() => undefined);
  let [next, told] = [0, 0];
  const lane = async (): Promise<void> => {
    const engine = formats.includes('pdf') ? (await import('../../pdf/engine.js')).openEngine() : undefined;
    try {
      for (let i = next++; i < jobs.length; i = next++) {
        const job = jobs[i];
        if (!job) continue;
        results[i] = await runJob(shell, job, options, formats, engine);
        for (let done = results[told]; done; done = results[++told]) tell(done);
      }
    } finally {
      engine?.close();
    }
  };
  const lanes = Math.max(1, Math.min(MOST_LANES, shell.threads, jobs.length));
  await Promise.all(Array.from({ length: lanes }, lane));
  return results.filter((result) => result !== undefined);
}

async function runJob(
  shell: Shell,
  job: Job,
  options: Options,
  formats: readonly Format[],
  engine: Engine | undefined,
): Promise<Result> {
  const { shelf, path, counts } = job;
  const analysis = shelf.library.analyse(path);
  if (!analysis) throw new CannotRun(`${path} cannot be read any more`);
  const entry = entryOf(analysis);
  const files: BuiltFile[] = [];
  const notes = new Set<string>();
  if (counts.error > 0) return { job, state: 'refused', files, entry, notes: [] };
  let statusText = '';
  try {
    const { prints, problem } = wantedOf(shell.env.SOURCE_DATE_EPOCH, shelf, analysis, options);
    if (problem !== undefined) notes.add(problem);
    for (const [wanted, label] of prints) {
      const made = await makeGuide(shell, shelf, analysis, wanted, formats, engine);
      for (const said of made.notes) notes.add(said);
      statusText = made.statusText;
      files.push(...writeGuide((path, data) => shell.write(path, data, true), job, wanted, made, label));
    }
    return { job, state: 'written', files, entry: { ...entry, statusText }, notes: [...notes] };
  } catch (error) {
    if (error instanceof CannotRun) throw error;
    const problem = `could not be made: ${error instanceof Error ? error.message : String(error)}`;
    return { job, state: 'failed', files, entry, notes: [...notes, problem] };
  } finally {
    // A library of a thousand procedures is built in the memory of a few.
    shelf.library.release(path);
  }
}

function writeGuide(
  write: (path: string, data: string | Uint8Array) => void,
  job: Job,
  { choice: chosen, print }: Wanted,
  made: MadeGuide,
  label: string,
): BuiltFile[] {
  const { shelf, folder } = job;
  const base = [
    fileName(job.path).replace(/\.bay$/, ''),
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
