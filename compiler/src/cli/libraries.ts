// Finds the files a command is about and the library, with its settings, that each belongs to.
import {
  createLibrary,
  DEFAULT_SETTINGS,
  DIAGNOSTICS,
  type Finding,
  globMatcher,
  type Library,
  readSettings,
  SETTINGS_FILE,
  type Settings,
} from '@baywright/language';
import { below, fileName, join, parent, relativeTo, upward } from './paths.js';
import type { Shell } from './shell.js';

/** A library: the folder with the settings file, or the current folder where there is none. */
export interface Shelf {
  readonly root: string;
  readonly settings: Settings;
  /** What is wrong with the settings file. */
  readonly settingsFindings: readonly Finding[];
  readonly library: Library;
  /** Library paths of the files asked for, sorted. */
  readonly files: readonly string[];
  /** The text of a library file as last read. */
  text(path: string): string | undefined;
  /** Forgets a text, after it was written. */
  forget(path: string): void;
}

/** A path that could not be used, and why: printed to standard error, exit code 2. */
export interface Trouble {
  readonly path: string;
  readonly problem: string;
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
 * outright is taken whatever its name.
 */
export function collect(shell: Shell, typed: readonly string[]): Collection {
  const troubles: Trouble[] = [];
  const shelves = new Map<string, OpenShelf>();
  for (const name of typed.length === 0 ? ['.'] : typed) {
    const path = shell.resolve(name);
    const kind = shell.kind(path);
    if (kind === undefined) troubles.push({ path: name, problem: 'does not exist' });
    else if (kind === 'file') addFile(path);
    else walk(path, shelfOf(path));
  }
  return { shelves: [...shelves.values()].map((shelf) => shelf.close()), troubles };

  function addFile(path: string): void {
    const shelf = shelfOf(parent(path));
    if (fileName(path) !== SETTINGS_FILE) take(shelf, path);
  }

  function take(shelf: OpenShelf, path: string): void {
    const reading = shelf.read(relativeTo(shelf.root, path));
    if ('problem' in reading)
      troubles.push({ path: relativeTo(shell.folder, path), problem: reading.problem });
    else shelf.paths.add(relativeTo(shelf.root, path));
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
    const opened = open(shell, root, owner !== undefined);
    if (opened.problem !== undefined) {
      troubles.push({ path: relativeTo(shell.folder, join(root, SETTINGS_FILE)), problem: opened.problem });
    }
    shelves.set(root, opened);
    return opened;
  }
}

interface OpenShelf {
  readonly root: string;
  readonly paths: Set<string>;
  /** Why the settings file could not be read at all. */
  readonly problem: string | undefined;
  read(path: string): { readonly text: string } | { readonly problem: string };
  ignores(path: string): boolean;
  close(): Shelf;
}

function open(shell: Shell, root: string, hasSettings: boolean): OpenShelf {
  const texts = new Map<string, { readonly text: string } | { readonly problem: string }>();
  const read = (path: string) => {
    const known = texts.get(path);
    if (known !== undefined) return known;
    // A library with a settings file is whole in itself: nothing outside its folder can be read through it.
    const isOutside = hasSettings && (path.startsWith('../') || path.startsWith('/'));
    const reading = isOutside ? { problem: 'lies outside the library' } : shell.read(join(root, path));
    texts.set(path, reading);
    return reading;
  };
  const textOf = (path: string): string | undefined => {
    const reading = read(path);
    return 'text' in reading ? reading.text : undefined;
  };
  const written = hasSettings ? read(SETTINGS_FILE) : undefined;
  const { settings, findings } =
    written !== undefined && 'text' in written
      ? readSettings(SETTINGS_FILE, written.text, DIAGNOSTICS)
      : { settings: DEFAULT_SETTINGS, findings: [] };
  const isIgnored = globMatcher([...settings.ignore, settings.output]);
  const paths = new Set<string>();
  let known: readonly string[] | undefined;
  const list = () => {
    known ??= hasSettings ? proceduresIn(shell, root, isIgnored) : [...paths].sort();
    return known;
  };
  const library = createLibrary({ read: textOf, list }, settings);
  return {
    root,
    paths,
    problem: written !== undefined && 'problem' in written ? written.problem : undefined,
    read,
    ignores: (path) => {
      const inside = below(root, path);
      return inside !== undefined && isIgnored(inside);
    },
    close: () => ({
      root,
      settings,
      settingsFindings: findings,
      library,
      files: [...paths].sort(),
      text: textOf,
      forget: (path) => {
        texts.delete(path);
        library.changed(path);
      },
    }),
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
