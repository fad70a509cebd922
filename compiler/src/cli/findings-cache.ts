// What a check found, kept from one run to the next. It may be deleted at any time. A file that is damaged, of another
// version or of other settings is never used: its findings are made anew.
import { stillHolds } from './check-file.js';
import type { CheckedFile, FileFact } from './checked-file.js';
import type { OpenLibrary } from './libraries.js';
import { join } from './paths.js';
import { CannotRun, type Shell } from './shell.js';

export interface FindingsCache {
  /** What is known of files that need not be opened again. */
  readonly facts: ReadonlyMap<string, FileFact>;
  /** What is known of a file, when all that it rests on is as it was. */
  get(path: string): CheckedFile | undefined;
  put(checked: CheckedFile): void;
  /** Writes what is known of these files, and forgets others. Quietly nothing where no folder can be written to. */
  save(files: readonly string[]): void;
}

/** A cache that outlives one check and no more, for `--fresh` and for a world without a place for it. */
export function memoryCache(shell: Shell, library: OpenLibrary): FindingsCache {
  return cacheOf(shell, library, new Map(), () => {});
}

const NAME = 'findings.json';

/** The cache of a library, in `.cache/baywright/` below its root or in the user's own folder for caches. */
export function diskCache(shell: Shell, library: OpenLibrary): FindingsCache {
  const places = shell.cacheFolders?.(library.root, library.hasSettings) ?? [];
  const key = shell.hash(JSON.stringify([FORMAT, shell.stamp, library.settings, library.root]));
  const kept = places
    .map((place) => readKept(shell, join(place, NAME), key))
    .find((one) => one !== undefined);
  return cacheOf(shell, library, kept ?? new Map(), (lines) => {
    const body = lines.join('\n');
    const text = `${JSON.stringify({ key, sum: shell.hash(body) })}\n${body}\n`;
    for (const place of places) {
      try {
        shell.write(join(place, NAME), text, true);
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
const FORMAT = 3;

/** What is kept of a file, with the line it is written in: most lines go out again as they came in. */
interface Entry {
  readonly checked: CheckedFile;
  line?: string;
}

function readKept(shell: Shell, path: string, key: string): Map<string, Entry> | undefined {
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
        const checked = JSON.parse(line) as CheckedFile;
        return [checked.path, { checked, line }];
      }),
    );
  } catch {
    return undefined;
  }
}

function cacheOf(
  shell: Shell,
  library: OpenLibrary,
  entries: Map<string, Entry>,
  write: (lines: readonly string[]) => void,
): FindingsCache {
  let isChanged = false;
  return {
    facts: factsOf(entries),
    get(path) {
      const checked = entries.get(path)?.checked;
      if (checked === undefined) return undefined;
      if (!stillHolds(shell, library, library.numberOf(path), checked.rests)) return undefined;
      const mark = library.mark(path);
      if (mark === undefined || mark === checked.mark) return checked;
      // Written over with the same text: the next run knows it by its new mark.
      const renewed = { ...checked, mark };
      entries.set(path, { checked: renewed });
      isChanged = true;
      return renewed;
    },
    put(checked) {
      entries.set(checked.path, { checked });
      isChanged = true;
    },
    save(files) {
      const known = new Set(files);
      for (const path of entries.keys()) {
        if (known.has(path)) continue;
        entries.delete(path);
        isChanged = true;
      }
      if (isChanged) write([...entries.values()].map(lineOf));
      isChanged = false;
    },
  };
}

function lineOf(entry: Entry): string {
  entry.line ??= JSON.stringify(entry.checked);
  return entry.line;
}

function factsOf(entries: ReadonlyMap<string, Entry>): Map<string, FileFact> {
  const facts = new Map<string, FileFact>();
  for (const [path, { checked }] of entries) {
    const { mark, number, rests } = checked;
    const hash = rests.files[path];
    if (mark !== undefined && hash !== undefined)
      facts.set(path, { mark, hash, ...(number === undefined ? {} : { number }) });
  }
  return facts;
}
