// Finds the files a command is about and the library, with its settings, that each belongs to.
import {
  createLibrary,
  DEFAULT_SETTINGS,
  DIAGNOSTICS,
  type Finding,
  globMatcher,
  type Library,
  numberIn,
  readSettings,
  SETTINGS_FILE,
  type Settings,
} from '@baywright/language';
import { dayOf } from '@baywright/server/day';
import { changesSince } from '../desk/changes-since.js';
import { newestEdition } from '../desk/issue-store.js';
import type { FileFact } from './checked-file.js';
import { below, fileName, join, parent, relativeTo, upward } from './paths.js';
import { settledMark } from './reads.js';
import type { Reading, Shell } from './shell.js';

/** A library with the files of it that were asked for. */
export interface Shelf extends OpenLibrary {
  /** Library paths, sorted. */
  readonly files: readonly string[];
}

/** A path that could not be used, and why: printed to standard error, exit code 2. */
export interface Trouble {
  readonly path: string;
  readonly problem: string;
}

/** One line of standard error for each. */
export const troubleLines = (troubles: readonly Trouble[], paint: { red(text: string): string }): string =>
  troubles.map(({ path, problem }) => `${paint.red('baywright:')} ${path} ${problem}\n`).join('');

interface OpenShelf extends OpenLibrary {
  readonly paths: Set<string>;
}

export interface Collection {
  readonly shelves: readonly Shelf[];
  readonly troubles: readonly Trouble[];
}

/** The suffix of procedures and catalogues. */
export const SUFFIX = '.bay';

/**
 * The files under the paths typed, by library. Folders are walked in order of name; hidden folders, `node_modules`,
 * the output folder and what the settings ignore are left out, links to folders are not followed. A file named
 * outright is taken whatever its name. Files of which `factsOf` knows enough are not opened before something asks for
 * their text.
 */
export function collect(
  shell: Shell,
  typed: readonly string[],
  factsOf: (library: OpenLibrary) => ReadonlyMap<string, FileFact> = () => new Map(),
): Collection {
  const troubles: Trouble[] = [];
  const shelves = new Map<string, OpenShelf>();
  for (const name of typed.length === 0 ? ['.'] : typed) {
    const path = shell.resolve(name);
    const kind = shell.kind(path);
    if (kind === undefined) troubles.push({ path: name, problem: 'does not exist' });
    else if (kind === 'file') addFile(path);
    else walk(path, shelfOf(path));
  }
  const found = [...shelves.values()].map(({ paths, ...shelf }) => ({ ...shelf, files: [...paths].sort() }));
  return { shelves: found, troubles };

  function addFile(path: string): void {
    const shelf = shelfOf(parent(path));
    if (fileName(path) !== SETTINGS_FILE) take(shelf, path);
  }

  function take(shelf: OpenShelf, path: string): void {
    const inside = relativeTo(shelf.root, path);
    const reading = shelf.fact(inside) === undefined ? shelf.read(inside) : undefined;
    if (reading !== undefined && 'problem' in reading)
      troubles.push({ path: relativeTo(shell.folder, path), problem: reading.problem });
    else shelf.paths.add(inside);
  }

  function walk(folder: string, around: OpenShelf): void {
    const entries = shell.list(folder);
    if ('problem' in entries) {
      troubles.push({ path: relativeTo(shell.folder, folder) || folder, problem: entries.problem });
      return;
    }
    const isRoot = folder !== around.root && entries.some((entry) => entry.name === SETTINGS_FILE);
    const shelf = isRoot ? shelfOf(folder) : around;
    for (const { name, kind } of entries) {
      const path = join(folder, name);
      if (isHidden(name) || shelf.ignores(path)) continue;
      if (kind === 'folder') walk(path, shelf);
      else if (kind === 'file' && name.endsWith(SUFFIX)) take(shelf, path);
    }
  }

  /** The library that a folder belongs to: the nearest settings file upward, no merge. */
  function shelfOf(folder: string): OpenShelf {
    const owner = upward(folder).find((above) => shell.kind(join(above, SETTINGS_FILE)) === 'file');
    const root = owner ?? shell.folder;
    const known = shelves.get(root);
    if (known !== undefined) return known;
    const paths = new Set<string>();
    const opened = { ...openLibrary(shell, root, owner !== undefined, paths), paths };
    opened.trust(factsOf(opened));
    if (opened.problem !== undefined) {
      troubles.push({ path: relativeTo(shell.folder, join(root, SETTINGS_FILE)), problem: opened.problem });
    }
    shelves.set(root, opened);
    return opened;
  }
}

/** A library with its settings and its texts. */
export interface OpenLibrary {
  readonly root: string;
  readonly hasSettings: boolean;
  readonly settings: Settings;
  readonly settingsFindings: readonly Finding[];
  /** Why the settings file could not be read at all. */
  readonly problem: string | undefined;
  readonly library: Library;
  read(path: string): Reading;
  text(path: string): string | undefined;
  /** Takes over what an earlier run knew of files. */
  trust(facts: ReadonlyMap<string, FileFact>): void;
  /** What is known of a file that was not read and is as it was. */
  fact(path: string): FileFact | undefined;
  /** By what the file is known in the state in which it was read; undefined where a change might not show. */
  mark(path: string): string | undefined;
  forget(path: string): void;
  ignores(path: string): boolean;
  /** The file that a procedure number leads to, and the number that a file opens with; read from opening lines alone. */
  pathOf(number: string): string | undefined;
  numberOf(path: string): string | undefined;
  /** Whether there is a file of any kind. */
  exists(path: string): boolean;
  /** What is made of a file goes by its name; where another of the library has the same one, by its folders and name. */
  outputName(path: string): string;
}

/** Opens the library at a root. `asked` holds the library paths asked for, and may still grow until a check begins. */
export function openLibrary(
  shell: Shell,
  root: string,
  hasSettings: boolean,
  asked: Iterable<string>,
): OpenLibrary {
  const texts = new Map<string, Reading>();
  const marks = new Map<string, string>();
  const trusted = new Map<string, FileFact>();
  // A library with a settings file is whole in itself: nothing outside its folder can be read through it.
  const isOutside = (path: string): boolean =>
    hasSettings && (path.startsWith('../') || path.startsWith('/'));
  const read = (path: string): Reading => {
    const known = texts.get(path);
    if (known !== undefined) return known;
    // Looked at before it is read: a change between the two shows in the next run.
    const mark = settledMark(shell, join(root, path));
    if (mark !== undefined) marks.set(path, mark);
    const reading = isOutside(path) ? { problem: 'lies outside the library' } : shell.read(join(root, path));
    texts.set(path, reading);
    return reading;
  };
  const text = (path: string): string | undefined => {
    const reading = read(path);
    return 'text' in reading ? reading.text : undefined;
  };
  const written = hasSettings ? read(SETTINGS_FILE) : undefined;
  const { settings, findings } =
    written !== undefined && 'text' in written
      ? readSettings(SETTINGS_FILE, written.text, DIAGNOSTICS)
      : { settings: DEFAULT_SETTINGS, findings: [] };
  const isIgnored = globMatcher([...settings.ignore, settings.output, settings.issues]);
  let known: readonly string[] | undefined;
  const list = (): readonly string[] => {
    known ??= hasSettings ? proceduresIn(shell, root, isIgnored) : [...asked].sort();
    return known;
  };
  const exists = (path: string): boolean => !isOutside(path) && shell.kind(join(root, path)) === 'file';
  const library = createLibrary(
    {
      read: text,
      list,
      numbered: (number) => pathOf(number),
      exists,
      today: () => dayOf(shell.now()),
      issued: (number) => newestEdition(shell, { root, settings }, number),
      changedSince: (issued, job, isSameText) =>
        changesSince(shell, { root, settings }, issued, job, { isSameText }),
    },
    settings,
  );
  let numbers: Map<string, string> | undefined;
  const confirmed = new Set<string>();
  const fact = (path: string): FileFact | undefined => {
    const known = texts.has(path) ? undefined : trusted.get(path);
    if (known === undefined || confirmed.has(path)) return known;
    if (known.mark === shell.seen?.(join(root, path))?.mark) {
      confirmed.add(path);
      return known;
    }
    trusted.delete(path);
    return undefined;
  };
  const numberOf = (path: string): string | undefined => {
    const known = fact(path);
    return known === undefined ? numberIn(text(path) ?? '') : known.number;
  };
  const pathOf = (number: string): string | undefined => {
    if (numbers === undefined) {
      numbers = new Map();
      for (const path of list()) {
        const one = numberOf(path);
        if (one !== undefined && !numbers.has(one)) numbers.set(one, path);
      }
    }
    return numbers.get(number);
  };
  let bearers: Map<string, number> | undefined;
  const outputName = (path: string): string => {
    const plain = (one: string): string => (one.endsWith(SUFFIX) ? one.slice(0, -SUFFIX.length) : one);
    // Some drives do not tell capitals apart.
    const key = (one: string): string => plain(fileName(one)).toLowerCase();
    if (bearers === undefined) {
      bearers = new Map();
      for (const one of list()) bearers.set(key(one), (bearers.get(key(one)) ?? 0) + 1);
    }
    const isAlone = (bearers.get(key(path)) ?? 0) <= 1;
    const name = isAlone
      ? plain(fileName(path))
      : plain(path)
          .replace(/^[./]+/, '')
          .replaceAll('/', '-');
    // The list of all guides has that name.
    return name === 'index' ? 'index-guide' : name;
  };
  return {
    root,
    hasSettings,
    settings,
    settingsFindings: findings,
    problem: written !== undefined && 'problem' in written ? written.problem : undefined,
    library,
    read,
    text,
    trust: (facts) => {
      for (const [path, one] of facts) trusted.set(path, one);
    },
    fact,
    mark: (path) => marks.get(path),
    pathOf,
    numberOf,
    exists,
    outputName,
    forget: (path) => {
      texts.delete(path);
      marks.delete(path);
      trusted.delete(path);
      numbers = undefined;
      library.changed(path);
    },
    ignores: (path) => {
      const inside = below(root, path);
      return inside !== undefined && isIgnored(inside);
    },
  };
}

/**
 * Library paths of all procedures and catalogues under a library's root, but not those of a library inside it. Only
 * a root with a settings file is walked: without one the current folder may be anything, a whole drive too.
 */
function proceduresIn(shell: Shell, root: string, isIgnored: (path: string) => boolean): readonly string[] {
  const found: string[] = [];
  const walk = (folder: string): void => {
    const entries = shell.list(folder);
    if ('problem' in entries) return;
    if (folder !== root && entries.some(({ name }) => name === SETTINGS_FILE)) return;
    for (const { name, kind } of entries) {
      const path = below(root, join(folder, name));
      if (path === undefined || isHidden(name) || isIgnored(path)) continue;
      if (kind === 'folder') walk(join(folder, name));
      else if (kind === 'file' && name.endsWith(SUFFIX)) found.push(path);
    }
  };
  walk(root);
  return found;
}

const isHidden = (name: string): boolean => name.startsWith('.') || name === 'node_modules';
