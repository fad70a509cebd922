// What a run found or made of each file, kept for the next. It may be deleted at any time. A cache that is damaged, of
// another version or of other settings is never used: everything is made anew.
import { stillHolds } from './check-file.js';
import type { FileFact, KeptFile } from './checked-file.js';
import { type Collection, collect, type OpenLibrary, type Shelf } from './libraries.js';
import { join } from './paths.js';
import { CannotRun, type Shell } from './shell.js';

export interface FileCache<Kept extends KeptFile> {
  /** What is known of files that need not be opened again. */
  readonly facts: ReadonlyMap<string, FileFact>;
  /** What is known of a file, when all that it rests on is as it was. */
  get(path: string): Kept | undefined;
  put(kept: Kept): void;
  /** Knows nothing more of these files, so that they are looked at anew. */
  forget(files: readonly string[]): void;
  /** Writes what is known of these files, and forgets others. Quietly nothing where no folder can be written to. */
  save(files: readonly string[]): void;
}

/**
 * What paths lead to, and what an earlier run kept of each library. With `isFresh` nothing is taken from it for the files
 * that the paths lead to; what comes of them is kept as ever.
 */
export function collectKept<Kept extends KeptFile>(
  shell: Shell,
  typed: readonly string[],
  name: 'findings' | 'guides',
  isFresh = false,
): { readonly collection: Collection; readonly cacheFor: (shelf: Shelf) => FileCache<Kept> } {
  const caches = new Map<string, FileCache<Kept>>();
  const collection = collect(shell, typed, (library) => {
    const cache = diskCache<Kept>(shell, library, name);
    caches.set(library.root, cache);
    // Without facts every file is opened.
    return isFresh ? new Map() : cache.facts;
  });
  const cacheFor = (shelf: Shelf): FileCache<Kept> => {
    const cache = caches.get(shelf.root) ?? diskCache<Kept>(shell, shelf, name);
    if (isFresh) cache.forget(shelf.files);
    return cache;
  };
  return { collection, cacheFor };
}

/** A cache of a library, in `.cache/baywright/` below its root or in the user's own folder for caches. */
function diskCache<Kept extends KeptFile>(
  shell: Shell,
  library: OpenLibrary,
  name: 'findings' | 'guides',
): FileCache<Kept> {
  const places = shell.cacheFolders?.(library.root, library.hasSettings) ?? [];
  const key = shell.hash(JSON.stringify([FORMAT, shell.stamp, library.settings, library.root]));
  const kept = places
    .map((place) => readKept<Kept>(shell, join(place, `${name}.json`), key))
    .find((one) => one !== undefined);
  return cacheOf(shell, library, kept ?? new Map<string, Entry<Kept>>(), (lines) => {
    const body = lines.join('\n');
    const text = `${JSON.stringify({ key, sum: shell.hash(body) })}\n${body}\n`;
    for (const place of places) {
      try {
        shell.write(join(place, `${name}.json`), text, true);
        const ignore = join(place, '.gitignore');
        if (library.hasSettings && shell.kind(ignore) === undefined) shell.write(ignore, '*\n', true);
        return;
      } catch (error) {
        // A library on a drive that cannot be written to is checked all the same.
        if (!(error instanceof CannotRun)) throw error;
      }
    }
  });
}

/** Raised whenever the shape of an entry changes. */
const FORMAT = 5;

/** What is kept of a file, with the line it is written in: most lines go out again as they came in. */
interface Entry<Kept> {
  readonly kept: Kept;
  line?: string;
}

function readKept<Kept extends KeptFile>(
  shell: Shell,
  path: string,
  key: string,
): Map<string, Entry<Kept>> | undefined {
  const reading = shell.read(path);
  if ('problem' in reading) return undefined;
  const end = reading.text.indexOf('\n');
  const body = reading.text.slice(end + 1, -1);
  try {
    const head: unknown = JSON.parse(reading.text.slice(0, end));
    if (typeof head !== 'object' || head === null || !('key' in head) || !('sum' in head)) return undefined;
    if (head.key !== key || head.sum !== shell.hash(body)) return undefined;
    // The sum says that these are the entries as this version wrote them.
    const lines = body === '' ? [] : body.split('\n');
    return new Map(
      lines.map((line) => {
        const kept = JSON.parse(line) as Kept;
        return [kept.path, { kept, line }];
      }),
    );
  } catch {
    return undefined;
  }
}

function cacheOf<Kept extends KeptFile>(
  shell: Shell,
  library: OpenLibrary,
  entries: Map<string, Entry<Kept>>,
  write: (lines: readonly string[]) => void,
): FileCache<Kept> {
  let isChanged = false;
  return {
    facts: factsOf(entries),
    get(path) {
      const kept = entries.get(path)?.kept;
      if (kept === undefined) return undefined;
      if (!stillHolds(shell, library, library.numberOf(path), kept.rests)) return undefined;
      const mark = library.mark(path);
      if (mark === undefined || mark === kept.mark) return kept;
      // Written over with the same text: the next run knows it by its new mark.
      const renewed = { ...kept, mark };
      entries.set(path, { kept: renewed });
      isChanged = true;
      return renewed;
    },
    put(kept) {
      entries.set(kept.path, { kept });
      isChanged = true;
    },
    forget(files) {
      for (const path of files) if (entries.delete(path)) isChanged = true;
    },
    save(files) {
      const known = new Set(files);
      this.forget([...entries.keys()].filter((path) => !known.has(path)));
      if (isChanged) write([...entries.values()].map(lineOf));
      isChanged = false;
    },
  };
}

function lineOf(entry: Entry<KeptFile>): string {
  entry.line ??= JSON.stringify(entry.kept);
  return entry.line;
}

function factsOf(entries: ReadonlyMap<string, Entry<KeptFile>>): Map<string, FileFact> {
  const facts = new Map<string, FileFact>();
  for (const [path, { kept }] of entries) {
    const { mark, number, rests } = kept;
    const hash = rests.files[path];
    if (mark !== undefined && hash !== undefined)
      facts.set(path, { mark, hash, ...(number === undefined ? {} : { number }) });
  }
  return facts;
}
