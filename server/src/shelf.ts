// One library the server looks after: its root, settings, texts and what is known of them.
import {
  createLibrary,
  DEFAULT_SETTINGS,
  DIAGNOSTICS,
  type Finding,
  globMatcher,
  type IssuedEdition,
  type Library,
  type LibraryHost,
  readSettings,
  SETTINGS_FILE,
  type Settings,
  type SettingsReading,
} from '@baywright/language';
import { renderers } from './renderers.js';
import { pathIn, uriOf } from './uris.js';

export interface Shelf {
  /** URI of the root folder, with a slash at its end. */
  readonly root: string;
  readonly settings: Settings;
  readonly settingsText: string | undefined;
  readonly settingsFindings: readonly Finding[];
  /** Reads the settings file again: true when it says something else now. One that is being written may be unreadable for a while. */
  settingsChanged(isOpen: boolean): boolean;
  readonly library: Library;
  /** Library paths of all files, sorted; ignored ones are left out. */
  paths(): readonly string[];
  uri(path: string): string;
  path(uri: string): string | undefined;
  /** A file came or went, or a procedure was issued: lists and what depends on them are made anew. */
  listChanged(): void;
}

/** Where a shelf finds texts: open documents before files. Keys are normal URIs. */
export interface Texts {
  get(uri: string): string | undefined;
  keys(): Iterable<string>;
  /** Whether there is a file of any kind; absent where that is not known. */
  readonly exists?: ((uri: string) => boolean) | undefined;
  /** The day it is, `2026-10-05`; absent where that is not known. */
  readonly today?: (() => string) | undefined;
}

export function openShelf(root: string, texts: Texts, isInner: (uri: string) => boolean): Shelf {
  let text = texts.get(root + SETTINGS_FILE);
  let reading = readingOf(text);
  const { settings } = reading;
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
  const { exists, today } = texts;
  const issued = new Map<string, IssuedEdition | undefined>();
  const host: LibraryHost = {
    read: (path) => texts.get(uriOf(root, path)),
    list: paths,
    ...(exists ? { exists: (path) => exists(uriOf(root, path)) } : {}),
    ...(today ? { today } : {}),
    issued(number) {
      if (!issued.has(number)) issued.set(number, renderers().issued?.({ number, settings, rootUri: root }));
      return issued.get(number);
    },
    changedSince: (edition, job, isSameText) =>
      renderers().changedSince?.({ settings, rootUri: root, issued: edition, job, isSameText }),
  };
  const library = createLibrary(host, settings);
  return {
    root,
    settings,
    get settingsText() {
      return text;
    },
    get settingsFindings() {
      return reading.findings;
    },
    settingsChanged(isOpen) {
      text = texts.get(root + SETTINGS_FILE);
      reading = readingOf(text);
      const isUnreadable = reading.findings.some((f) => f.code === 'R801');
      return !(isOpen && isUnreadable) && JSON.stringify(reading.settings) !== JSON.stringify(settings);
    },
    library,
    paths,
    uri: (path) => uriOf(root, path),
    path: (uri) => pathIn(root, uri),
    listChanged: () => {
      known = undefined;
      issued.clear();
      library.changed();
    },
  };
}

function readingOf(text: string | undefined): SettingsReading {
  return text === undefined
    ? { settings: DEFAULT_SETTINGS, findings: [] }
    : readSettings(SETTINGS_FILE, text, DIAGNOSTICS);
}
