// Checks what a command line names and gathers the findings in the order in which they are shown.
import { type Finding, type Library, severityOf } from '@baywright/language';
import { type Collection, collect, type Shelf, type Trouble } from './libraries.js';
import type { Shell } from './shell.js';

/** A finding with the library it was found in. */
export interface Found {
  readonly shelf: Shelf;
  readonly finding: Finding;
}

export interface Checked {
  readonly collection: Collection;
  /** By library, then file, then place. */
  readonly found: readonly Found[];
  readonly troubles: readonly Trouble[];
  /** How many files were checked. */
  readonly files: number;
}

/** Called after each file, for progress. */
export type Progress = (done: number, all: number) => void;

/** Under this many files a second thread takes longer to start than it saves. */
const WORTH_SHARING = 100;

export async function checkPaths(
  shell: Shell,
  typed: readonly string[],
  progress: Progress = () => {},
): Promise<Checked> {
  const collection = collect(shell, typed);
  const files = collection.shelves.reduce((sum, shelf) => sum + shelf.files.length, 0);
  let done = 0;
  const found: Found[] = [];
  for (const shelf of collection.shelves) {
    const threads =
      shelf.files.length < WORTH_SHARING || shell.checkElsewhere === undefined ? 1 : shell.threads;
    const findings = await checkShared(shell, shelf, threads, () => {
      done += threads;
      progress(Math.min(done, files), files);
    });
    found.push(...findings.map((finding) => ({ shelf, finding })));
  }
  return { collection, found, troubles: collection.troubles, files };
}

/** The findings of a library's files asked for, and of its settings. */
export function checkShelf(shelf: Shelf): Found[] {
  return [...settingsFindings(shelf), ...checkFiles(shelf.library, shelf.files)].map((finding) => ({
    shelf,
    finding,
  }));
}

/** The findings of files in one thread, file by file. */
export function checkFiles(
  library: Library,
  files: readonly string[],
  step: () => void = () => {},
): Finding[] {
  return files.flatMap((path) => {
    const findings = library.analyse(path)?.findings ?? [];
    step();
    return findings;
  });
}

/** Every n-th file goes to the same thread, so that neighbours that cost much are shared out; this thread works too. */
async function checkShared(
  shell: Shell,
  shelf: Shelf,
  threads: number,
  step: () => void,
): Promise<Finding[]> {
  const chunks = Array.from({ length: threads }, (_, n) => shelf.files.filter((_, at) => at % threads === n));
  const { root, hasSettings, files: asked } = shelf;
  const elsewhere = chunks
    .slice(1)
    .map((files) => shell.checkElsewhere?.({ root, hasSettings, asked, files }));
  // The threads are started on the next turn of the event loop.
  if (elsewhere.length > 0) await new Promise((next) => setImmediate(next));
  const own = checkFiles(shelf.library, chunks[0] ?? [], step);
  const answers = await Promise.all(elsewhere);
  const all = [...own, ...answers.flatMap((answer) => answer?.findings ?? [])];
  if (threads > 1) all.sort((a, b) => (a.file < b.file ? -1 : a.file > b.file ? 1 : 0));
  return [...settingsFindings(shelf), ...all];
}

function settingsFindings(shelf: Shelf): Finding[] {
  return shelf.settingsFindings.flatMap((finding) => severityOf(finding, shelf.settings) ?? []);
}
