// One library the server looks after: its root, settings, texts and what is known of them.
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
import { pathIn, uriOf } from './uris.js';

export interface Shelf {
  /** URI of the root folder, with a slash at its end. */
  readonly root: string;
  readonly settings: Settings;
  readonly settingsText: string | undefined;
  readonly settingsFindings: readonly Finding[];
  readonly library: Library;
  /** Library paths of all files, sorted; ignored ones are left out. */
  paths(): readonly string[];
  uri(path: string): string;
  path(uri: string): string | undefined;
  /** A file came or went: lists and what depends on them are made anew. */
  listChanged(): void;
}

/** Where a shelf finds texts: open documents before files. Keys are normal URIs. */
export interface Texts {
  get(uri: string): string | undefined;
  keys(): Iterable<string>;
}

export function openShelf(root: string, texts: Texts, isInner: (uri: string) => boolean): Shelf {
  const settingsText = texts.get(root + SETTINGS_FILE);
  const { settings, findings } =
    settingsText === undefined
      ? { settings: DEFAULT_SETTINGS, findings: [] }
      : readSettings(SETTINGS_FILE, settingsText, DIAGNOSTICS);
  const isIgnored = globMatcher([...settings.ignore, settings.output, settings.issues]);
  let known: readonly string[] | undefined;
  const paths = (): readonly string[] => {
    known ??= [...texts.keys()]
      .filter((uri) => uri.endsWith('.bay') && !isInner(uri))
      .map((uri) => pathIn(root, uri))
      .filter((path) => path !== undefined && !isIgnored(path))
      .map(String)
      .sort();
    return known;
  };
  const library = createLibrary({ read: (path) => texts.get(uriOf(root, path)), list: paths }, settings);
  return {
    root,
    settings,
    settingsText,
    settingsFindings: findings,
    library,
    paths,
    uri: (path) => uriOf(root, path),
    path: (uri) => pathIn(root, uri),
    listChanged: () => {
      known = undefined;
      library.changed();
    },
  };
}
