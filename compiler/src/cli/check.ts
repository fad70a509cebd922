// Checks what a command line names and gathers the findings in the order in which they are shown. A file is looked at
// again only when something that its findings rest on has changed.
import { type Finding, findingsOfParts, severityOf } from '@baywright/language';
import { checkFile } from './check-file.js';
import type { CheckedFile } from './checked-file.js';
import { diskCache, type FindingsCache, memoryCache } from './findings-cache.js';
import { type Collection, collect, type OpenLibrary, type Shelf, type Trouble } from './libraries.js';
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

export interface CheckChoice {
  readonly progress?: Progress;
  /** Keep every analysis in memory, for what is made from it afterwards; nothing is then taken from the cache. */
  readonly keep?: boolean;
  /** Look at every file again. */
  readonly fresh?: boolean;
  /** How many threads may work; as many as the machine has where not given. */
  readonly jobs?: number;
}

/** Under this many files a second thread takes longer to start than it saves. */
const WORTH_SHARING = 100;

export async function checkPaths(
  shell: Shell,
  typed: readonly string[],
  choice: CheckChoice = {},
): Promise<Checked> {
  return checkCollection(shell, collect(shell, typed), choice);
}

export async function checkCollection(
  shell: Shell,
  collection: Collection,
  choice: CheckChoice,
  cacheFor: (shelf: Shelf) => FindingsCache = (shelf) =>
    choice.fresh || choice.keep ? memoryCache(shell, shelf) : diskCache(shell, shelf),
): Promise<Checked> {
  const files = collection.shelves.reduce((sum, shelf) => sum + shelf.files.length, 0);
  let done = 0;
  const found: Found[] = [];
  for (const shelf of collection.shelves) {
    const findings = await checkShared(shell, shelf, choice, cacheFor(shelf), (count) => {
      done += count;
      choice.progress?.(Math.min(done, files), files);
    });
    found.push(...findings.map((finding) => ({ shelf, finding })));
  }
  return { collection, found, troubles: collection.troubles, files };
}

/** The findings of a library's files asked for, and of its settings; analyses stay in memory. */
export function checkShelf(shelf: Shelf): Found[] {
  const own = shelf.files.flatMap((path) => shelf.library.analyse(path)?.findings ?? []);
  return [...settingsFindings(shelf), ...own].map((finding) => ({ shelf, finding }));
}

/** Files checked in one thread, file by file. */
export function checkFiles(
  shell: Shell,
  library: OpenLibrary,
  files: readonly string[],
  keep = false,
  step: (count: number) => void = () => {},
): CheckedFile[] {
  return files.flatMap((path) => {
    const checked = checkFile(shell, library, path, keep);
    step(1);
    return checked ?? [];
  });
}

async function checkShared(
  shell: Shell,
  shelf: Shelf,
  { jobs, keep = false }: CheckChoice,
  cache: FindingsCache,
  step: (count: number) => void,
): Promise<Finding[]> {
  const known = new Map(
    shelf.files.flatMap((path) => (keep ? [] : (cache.get(path) ?? []))).map((one) => [one.path, one]),
  );
  step(known.size);
  const left = shelf.files.filter((path) => !known.has(path));
  const canShare = !keep && left.length >= WORTH_SHARING && shell.checkElsewhere !== undefined;
  const threads = canShare ? Math.max(1, Math.min(jobs ?? shell.threads, MOST_THREADS)) : 1;
  const made =
    threads === 1
      ? checkFiles(shell, shelf, left, keep, step)
      : await shareOut(shell, shelf, left, threads, step);
  for (const checked of made) cache.put(checked);
  // A check of one file does not throw away what is known of the others.
  const isWhole = shelf.hasSettings && shelf.library.host.list().length <= shelf.files.length;
  cache.save(isWhole || !shelf.hasSettings ? shelf.files : shelf.library.host.list());
  const all = new Map([...known, ...made.map((one): [string, CheckedFile] => [one.path, one])]);
  const inOrder = shelf.files.flatMap((path) => all.get(path) ?? []);
  const wide = isWhole
    ? findingsOfParts(
        inOrder.map(({ part }) => part),
        shelf.settings,
      )
    : [];
  return [
    ...settingsFindings(shelf),
    ...merged(
      inOrder.flatMap(({ findings }) => findings),
      wide,
    ),
  ];
}

const MOST_THREADS = 16;

/** Every n-th file goes to the same thread, so that neighbours that cost much are shared out; this thread works too. */
async function shareOut(
  shell: Shell,
  shelf: Shelf,
  left: readonly string[],
  threads: number,
  step: (count: number) => void,
): Promise<CheckedFile[]> {
  const chunks = Array.from({ length: threads }, (_, n) => left.filter((_, at) => at % threads === n));
  const { root, hasSettings, files: asked } = shelf;
  const elsewhere = chunks
    .slice(1)
    .map((files) => shell.checkElsewhere?.({ root, hasSettings, asked, files }));
  // The threads are started on the next turn of the event loop.
  await new Promise((next) => setImmediate(next));
  const own = checkFiles(shell, shelf, chunks[0] ?? [], false, () => step(threads));
  const answers = await Promise.all(elsewhere);
  return [...own, ...answers.flatMap((answer) => answer?.files ?? [])];
}

/** Findings of the whole library take their place among those of their files. */
function merged(own: readonly Finding[], wide: readonly Finding[]): Finding[] {
  if (wide.length === 0) return [...own];
  const files = [...new Set([...own, ...wide].map(({ file }) => file))].sort();
  const byFile = new Map(files.map((file): [string, Finding[]] => [file, []]));
  for (const finding of [...own, ...wide]) byFile.get(finding.file)?.push(finding);
  return files.flatMap((file) => (byFile.get(file) ?? []).sort((a, b) => a.span.start - b.span.start));
}

function settingsFindings(shelf: Shelf): Finding[] {
  return shelf.settingsFindings.flatMap((finding) => severityOf(finding, shelf.settings) ?? []);
}
