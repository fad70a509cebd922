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
import { type GuideCache, type GuideKeeper, guideKeeper } from './kept-guides.js';

/** The guides of one procedure. */
export interface Result extends GuideResult {
  /** They were made in an earlier run and hold. */
  readonly isKept: boolean;
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

/** `tell` is called for each procedure, `step` after each file. Guides that `cacheFor` knows and that hold are not made again. */
export async function buildGuides(
  shell: Shell,
  collection: Collection,
  options: Options,
  formats: readonly Format[],
  cacheFor: (shelf: Shelf) => GuideCache,
  tell: (result: Result) => void,
  step: (done: number, all: number) => void,
): Promise<Built> {
  const all = collection.shelves.reduce((sum, { files }) => sum + files.length, 0);
  const results: Result[] = [];
  const errors: Found[] = [];
  const typesetters = formats.includes('pdf') ? new Typesetters(shell) : undefined;
  let done = 0;
  try {
    for (const shelf of collection.shelves) {
      const folder = folderOf(shell, collection, shelf, options.out);
      const order = { folder, options, formats };
      const keeper = guideKeeper(shell, shelf, cacheFor(shelf), order);
      errors.push(
        ...settingsFindings(shelf)
          .filter(isError)
          .map((finding) => ({ shelf, finding })),
      );
      await buildShelf(
        { shell, shelf, order, keeper, typesetters },
        ({ path, guide, errors: found, isKept }) => {
          errors.push(...found.map((finding) => ({ shelf, finding })));
          if (guide) {
            const result = { ...guide, isKept, shelf, path, folder };
            results.push(result);
            tell(result);
          }
          step(++done, all);
        },
      );
      keeper.save();
    }
  } finally {
    typesetters?.close();
  }
  return { results, errors };
}

const isError = ({ severity }: Finding): boolean => severity === 'error';

/** Opened as soon as something is to be printed, before it is checked: the typesetters get ready meanwhile. */
class Typesetters {
  readonly #shell: Shell;
  #engine: Engine | undefined;

  constructor(shell: Shell) {
    this.#shell = shell;
  }

  async open(files: number): Promise<Engine> {
    const { openEngine } = await import('../../pdf/engine.js');
    this.#engine ??= openEngine({
      processes: Math.max(1, Math.min(MOST_TYPESETTERS, this.#shell.threads, files)),
    });
    return this.#engine;
  }

  close(): void {
    this.#engine?.close();
  }
}

/** Libraries in a library keep their place below a common output folder, so that no two guides meet there. */
function folderOf(shell: Shell, { shelves }: Collection, shelf: Shelf, out: string | undefined): string {
  if (out === undefined) return join(shelf.root, shelf.settings.output);
  const outer = shelves.map(({ root }) => root).sort((a, b) => a.length - b.length)[0] ?? shell.folder;
  return join(shell.resolve(out), below(outer, shelf.root) ?? '');
}

/** All that the work on one library needs. */
interface Work {
  readonly shell: Shell;
  readonly shelf: Shelf;
  readonly order: GuideOrder;
  readonly keeper: GuideKeeper;
  readonly typesetters: Typesetters | undefined;
}

/** What came of a file, now or in an earlier run. */
type Heard = FileResult & { readonly isKept: boolean };

/**
 * The typesetters are processes of their own and keep the machine busy, so that pages alone are shared out among
 * threads. Each thread first reads its files: only then is it known what the library as a whole says of each.
 */
async function buildShelf(work: Work, hear: (result: Heard) => void): Promise<void> {
  const { shell, shelf, order, keeper, typesetters } = work;
  const { root, hasSettings, files } = shelf;
  const left = files.filter((path) => keeper.file(path) === undefined);
  const canShare = !typesetters && left.length >= WORTH_SHARING && shell.startThread !== undefined;
  const count = canShare ? Math.max(1, Math.min(shell.threads, MOST_THREADS)) : 1;
  const [own = [], ...chunks] = shareOut(left, count);
  const threads = startThreads(
    shell,
    chunks.map((chunk) => ({ kind: 'build', root, hasSettings, asked: files, files: chunk, order })),
  );
  const said = inOrder(files, hear);
  try {
    if (left.length > 0) await typesetters?.open(left.length);
    await nextTurn();
    const parts = [...files.flatMap((path) => keeper.file(path)?.part ?? []), ...partsOf(shelf, own)];
    for (const thread of threads) parts.push(...((await thread.heard()) as LibraryPart[]));
    const wide = wideByFile(shelf, parts);
    for (const thread of threads) thread.say(wide);
    const made = (result: FileResult): void => {
      keeper.keep(result, wide.get(result.path) ?? []);
      said({ ...result, isKept: false });
    };
    for (const path of files) {
      if (keeper.file(path) === undefined) continue;
      const kept = keeper.result(path, wide.get(path) ?? []);
      if (kept) said({ ...kept, isKept: true });
      else own.push(path);
    }
    const listened = threads.map((thread, at) => listen(thread, chunks[at]?.length ?? 0, made));
    await Promise.all([makeOwn(work, own, wide, made), ...listened]);
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

/** Each typesetter has a second guide at hand, so that none of them waits for the next. */
async function makeOwn(
  { shell, shelf, order, typesetters }: Work,
  files: readonly string[],
  wide: ReadonlyMap<string, readonly Finding[]>,
  made: (result: FileResult) => void,
): Promise<void> {
  const engine = files.length > 0 ? await typesetters?.open(files.length) : undefined;
  let next = 0;
  const lane = async (): Promise<void> => {
    for (let path = files[next++]; path !== undefined; path = files[next++]) {
      made(await guidesOf(shell, shelf, order, path, wide.get(path) ?? [], engine));
      await nextTurn();
    }
  };
  const lanes = engine ? 2 * Math.min(MOST_TYPESETTERS, shell.threads) : 1;
  await Promise.all(Array.from({ length: lanes }, lane));
}

/** Hands results on in the order of the files, as soon as those before are there. */
function inOrder(files: readonly string[], hear: (result: Heard) => void): (result: Heard) => void {
  const waiting = new Map<string, Heard>();
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
