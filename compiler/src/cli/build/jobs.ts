// Makes the guides of whole libraries: shares the files out among threads and typesetters, and tells of each procedure
// in the order of the files.
import type { Finding, LibraryPart } from '@baywright/language';
import type { Engine } from '../../pdf/engine.js';
import { type Found, settingsFindings, wideFindings } from '../check.js';
import type { Collection, Shelf } from '../libraries.js';
import { below, join } from '../paths.js';
import type { Format } from '../publish.js';
import { nextTurn, shareOut, startThreads } from '../sharing.js';
import type { OtherThread, Shell } from '../shell.js';
import type { Options } from './choices.js';
import { type FileResult, type GuideOrder, type GuideResult, guidesOf, partsOf } from './guides.js';

/** The guides of one procedure. */
export interface Result extends GuideResult {
  readonly shelf: Shelf;
  /** Library path. */
  readonly path: string;
  readonly folder: string;
}

export interface Built {
  readonly results: readonly Result[];
  /** The errors for which guides were refused, in order. */
  readonly errors: readonly Found[];
}

/** Typesetters at most: each takes a core and some two hundred megabytes. */
const MOST_TYPESETTERS = 2;
/** Under this many files a second thread takes longer to start than it saves. */
const WORTH_SHARING = 40;
const MOST_THREADS = 16;

/** `tell` is called for each procedure, `step` after each file. */
export async function buildGuides(
  shell: Shell,
  collection: Collection,
  options: Options,
  formats: readonly Format[],
  tell: (result: Result) => void,
  step: (done: number, all: number) => void,
): Promise<Built> {
  const all = collection.shelves.reduce((sum, { files }) => sum + files.length, 0);
  const engine = formats.includes('pdf') && all > 0 ? await startEngine(shell, all) : undefined;
  const results: Result[] = [];
  const errors: Found[] = [];
  let done = 0;
  try {
    for (const shelf of collection.shelves) {
      const folder = folderOf(shell, collection, shelf, options.out);
      errors.push(
        ...settingsFindings(shelf)
          .filter(isError)
          .map((finding) => ({ shelf, finding })),
      );
      await buildShelf(
        shell,
        shelf,
        { folder, options, formats },
        engine,
        ({ path, guide, errors: found }) => {
          errors.push(...found.map((finding) => ({ shelf, finding })));
          if (guide) {
            results.push({ ...guide, shelf, path, folder });
            tell({ ...guide, shelf, path, folder });
          }
          step(++done, all);
        },
      );
    }
  } finally {
    engine?.close();
  }
  return { results, errors };
}

const isError = ({ severity }: Finding): boolean => severity === 'error';

/** Opened before anything is checked: the typesetters get ready meanwhile. */
async function startEngine(shell: Shell, files: number): Promise<Engine> {
  const { openEngine } = await import('../../pdf/engine.js');
  return openEngine({ processes: Math.max(1, Math.min(MOST_TYPESETTERS, shell.threads, files)) });
}

/** Libraries in a library keep their place below a common output folder, so that no two guides meet there. */
function folderOf(shell: Shell, { shelves }: Collection, shelf: Shelf, out: string | undefined): string {
  if (out === undefined) return join(shelf.root, shelf.settings.output);
  const outer = shelves.map(({ root }) => root).sort((a, b) => a.length - b.length)[0] ?? shell.folder;
  return join(shell.resolve(out), below(outer, shelf.root) ?? '');
}

/**
 * The typesetters are processes of their own and keep the machine busy, so that pages alone are shared out among
 * threads. Each thread first reads its files: only then is it known what the library as a whole says of each.
 */
async function buildShelf(
  shell: Shell,
  shelf: Shelf,
  order: GuideOrder,
  engine: Engine | undefined,
  hear: (result: FileResult) => void,
): Promise<void> {
  const { root, hasSettings, files } = shelf;
  const canShare = engine === undefined && files.length >= WORTH_SHARING && shell.startThread !== undefined;
  const count = canShare ? Math.max(1, Math.min(shell.threads, MOST_THREADS)) : 1;
  const [own = [], ...chunks] = shareOut(files, count);
  const threads = startThreads(
    shell,
    chunks.map((chunk) => ({ kind: 'build', root, hasSettings, asked: files, files: chunk, order })),
  );
  const said = inOrder(files, hear);
  try {
    await nextTurn();
    const parts = partsOf(shelf, own);
    for (const thread of threads) parts.push(...((await thread.heard()) as LibraryPart[]));
    const wide = wideByFile(shelf, parts);
    for (const thread of threads) thread.say(wide);
    const listened = threads.map((thread, at) => listen(thread, chunks[at]?.length ?? 0, said));
    await Promise.all([makeOwn(shell, shelf, order, own, wide, engine, said), ...listened]);
  } finally {
    for (const thread of threads) thread.end();
  }
}

function wideByFile(shelf: Shelf, parts: readonly LibraryPart[]): ReadonlyMap<string, readonly Finding[]> {
  const byPath = new Map(parts.map((part) => [part.path, part]));
  const wide = wideFindings(
    shelf,
    shelf.files.flatMap((path) => byPath.get(path) ?? []),
  );
  const byFile = new Map<string, Finding[]>();
  for (const finding of wide) byFile.set(finding.file, [...(byFile.get(finding.file) ?? []), finding]);
  return byFile;
}

async function listen(thread: OtherThread, count: number, said: (result: FileResult) => void): Promise<void> {
  for (let i = 0; i < count; i++) said((await thread.heard()) as FileResult);
}

/** One guide more than there are typesetters is under way, so that none of them waits for the next. */
async function makeOwn(
  shell: Shell,
  shelf: Shelf,
  order: GuideOrder,
  files: readonly string[],
  wide: ReadonlyMap<string, readonly Finding[]>,
  engine: Engine | undefined,
  said: (result: FileResult) => void,
): Promise<void> {
  let next = 0;
  const lane = async (): Promise<void> => {
    for (let path = files[next++]; path !== undefined; path = files[next++]) {
      said(await guidesOf(shell, shelf, order, path, wide.get(path) ?? [], engine));
      await nextTurn();
    }
  };
  const lanes = engine ? Math.min(MOST_TYPESETTERS, shell.threads) + 1 : 1;
  await Promise.all(Array.from({ length: lanes }, lane));
}

/** Hands results on in the order of the files, as soon as those before are there. */
function inOrder(files: readonly string[], hear: (result: FileResult) => void): (result: FileResult) => void {
  const waiting = new Map<string, FileResult>();
  let next = 0;
  return (result) => {
    waiting.set(result.path, result);
    for (let one = waiting.get(files[next] ?? ''); one; one = waiting.get(files[next] ?? '')) {
      waiting.delete(one.path);
      next += 1;
      hear(one);
    }
  };
}
