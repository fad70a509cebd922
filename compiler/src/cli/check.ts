// Checks what a command line names and gathers the findings in the order in which they are shown. A file is looked at
// again only when something that its findings rest on has changed.
import { type Finding, findingsOfParts, type LibraryPart, severityOf } from '@baywright/language';
import { checkFile } from './check-file.js';
import type { CheckedFile } from './checked-file.js';
import { collectKept, type FileCache } from './file-cache.js';
import type { Collection, OpenLibrary, Shelf, Trouble } from './libraries.js';
import { nextTurn, shareOut, startThreads } from './sharing.js';
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
type Progress = (done: number, all: number) => void;

export interface CheckChoice {
  readonly progress?: Progress;
  /** Look at every file again. */
  readonly fresh?: boolean;
  /** How many threads work; where not given, one or as many as the machine has, whichever is done sooner. */
  readonly jobs?: number;
}

/**
 * Under this many files one thread is done sooner: each compiles the whole checker for itself while it works, which takes
 * it as long as several hundred files. Measured on two cores with files of 150 lines.
 */
const WORTH_SHARING = 1500;

export async function checkPaths(
  shell: Shell,
  typed: readonly string[],
  choice: CheckChoice = {},
): Promise<Checked> {
  const { collection, cacheFor } = collectKept<CheckedFile>(shell, typed, 'findings', choice.fresh);
  return checkCollection(shell, collection, choice, cacheFor);
}

async function checkCollection(
  shell: Shell,
  collection: Collection,
  choice: CheckChoice,
  cacheFor: (shelf: Shelf) => FileCache<CheckedFile>,
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
  step: (count: number) => void = () => {},
): CheckedFile[] {
  return files.flatMap((path) => {
    const checked = checkFile(shell, library, path);
    step(1);
    return checked ?? [];
  });
}

async function checkShared(
  shell: Shell,
  shelf: Shelf,
  { jobs }: CheckChoice,
  cache: FileCache<CheckedFile>,
  step: (count: number) => void,
): Promise<Finding[]> {
  const known = new Map(shelf.files.flatMap((path) => cache.get(path) ?? []).map((one) => [one.path, one]));
  step(known.size);
  const left = shelf.files.filter((path) => !known.has(path));
  const wanted = jobs ?? (left.length < WORTH_SHARING ? 1 : shell.threads);
  const threads = shell.startThread ? Math.max(1, Math.min(wanted, left.length, MOST_THREADS)) : 1;
  const made =
    threads === 1
      ? checkFiles(shell, shelf, left, step)
      : await checkTogether(shell, shelf, left, threads, step);
  for (const checked of made) cache.put(checked);
  // A check of one file does not throw away what is known of the others.
  cache.save(isWhole(shelf) || !shelf.hasSettings ? shelf.files : shelf.library.host.list());
  const all = new Map([...known, ...made.map((one): [string, CheckedFile] => [one.path, one])]);
  const inOrder = shelf.files.flatMap((path) => all.get(path) ?? []);
  const wide = wideFindings(
    shelf,
    inOrder.map(({ part }) => part),
  );
  return [
    ...settingsFindings(shelf),
    ...merged(
      inOrder.flatMap(({ findings }) => findings),
      wide,
    ),
  ];
}

const MOST_THREADS = 16;

/** This thread works too. */
async function checkTogether(
  shell: Shell,
  shelf: Shelf,
  left: readonly string[],
  count: number,
  step: (count: number) => void,
): Promise<CheckedFile[]> {
  const [own = [], ...chunks] = shareOut(left, count);
  const { root, hasSettings, files: asked } = shelf;
  const threads = startThreads(
    shell,
    chunks.map((files) => ({ kind: 'check', root, hasSettings, asked, files })),
  );
  try {
    await nextTurn();
    const made = checkFiles(shell, shelf, own, () => step(count));
    for (const thread of threads) made.push(...((await thread.heard()) as CheckedFile[]));
    return made;
  } finally {
    for (const thread of threads) thread.end();
  }
}

/** Findings of the whole library take their place among those of their files. */
function merged(own: readonly Finding[], wide: readonly Finding[]): Finding[] {
  if (wide.length === 0) return [...own];
  const files = [...new Set([...own, ...wide].map(({ file }) => file))].sort();
  const byFile = new Map(files.map((file): [string, Finding[]] => [file, []]));
  for (const finding of [...own, ...wide]) byFile.get(finding.file)?.push(finding);
  return files.flatMap((file) => (byFile.get(file) ?? []).sort((a, b) => a.span.start - b.span.start));
}

/** What only the whole library can tell; nothing where a part of it was asked for. */
export function wideFindings(shelf: Shelf, parts: readonly LibraryPart[]): Finding[] {
  return isWhole(shelf) ? findingsOfParts(parts, shelf.settings) : [];
}

const isWhole = ({ hasSettings, library, files }: Shelf): boolean =>
  hasSettings && library.host.list().length <= files.length;

export function settingsFindings(shelf: Shelf): Finding[] {
  return shelf.settingsFindings.flatMap((finding) => severityOf(finding, shelf.settings) ?? []);
}
