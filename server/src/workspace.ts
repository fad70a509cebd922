// The texts the server knows and the libraries they belong to: open documents before files, one shelf for each
// settings file or folder. All waiting for files happens here, before a feature is asked.
import { type Analysis, SETTINGS_FILE } from '@baywright/language';
import type { TextDocumentContentChangeEvent } from 'vscode-languageserver';
import { type Files, isOurs, isPicture } from './files.js';
import { DEFAULT_OPTIONS, type Options } from './options.js';
import { openShelf, type Shelf } from './shelf.js';
import { type ClientFacts, positionsFor, type Snapshot, snapshotOf } from './snapshot.js';
import { above, folderOf, normalUri } from './uris.js';

export interface OpenDocument {
  /** The client's spelling. */
  readonly uri: string;
  text: string;
  version: number;
  /** The last analysis made of it, unless a file that it depends on was changed since. */
  last: Analysis | undefined;
}

export interface Place {
  readonly shelf: Shelf;
  readonly path: string;
}

export class Workspace {
  client: ClientFacts = {
    encoding: 'utf-16',
    snippets: false,
    insertReplace: false,
    documentChanges: false,
    linkTargets: false,
    resolvesEdits: false,
    asksAgain: false,
    showsUses: false,
    showsPages: false,
    readsSettings: false,
    language: 'en',
  };
  options: Options = DEFAULT_OPTIONS;
  readonly #files: Files;
  readonly #today: (() => string) | undefined;
  /** Texts of files, by normal URI. */
  readonly #disk = new Map<string, string>();
  readonly #open = new Map<string, OpenDocument>();
  readonly #folders = new Set<string>();
  /** Roots: folders with a settings file, workspace folders, and folders of lone documents. */
  readonly #shelves = new Map<string, Shelf>();
  readonly #spoken = new Map<string, string>();
  #loading: Promise<void> = Promise.resolve();

  /** `today` gives the day it is, `2026-10-05`; without it no review is overdue. */
  constructor(files: Files, today?: () => string) {
    this.#files = files;
    this.#today = today;
  }

  /** Done when every folder and document announced so far has been read. */
  get ready(): Promise<void> {
    return this.#loading;
  }

  addFolder(uri: string): void {
    const folder = withSlash(normalUri(uri));
    if (this.#folders.has(folder)) return;
    this.#folders.add(folder);
    this.#then(async () => {
      const root = (await this.#settingsAbove(folder)) ?? folder;
      await this.#load(root, true);
      if (!this.#shelves.has(root)) this.#addShelf(root);
      for (const found of this.#disk.keys())
        if (found.startsWith(root) && found.endsWith('/baywright.json')) this.#addShelf(folderOf(found));
      this.#relist();
    });
  }

  removeFolder(uri: string): void {
    const folder = withSlash(normalUri(uri));
    if (!this.#folders.delete(folder)) return;
    this.#then(async () => {
      const kept = (at: string): boolean =>
        [...this.#folders].some((f) => at.startsWith(f) || f.startsWith(at)) ||
        [...this.#open.keys()].some((o) => o.startsWith(at));
      for (const root of [...this.#shelves.keys()])
        if (root.startsWith(folder) && !kept(root)) this.#shelves.delete(root);
      for (const at of [...this.#disk.keys()])
        if (at.startsWith(folder) && !kept(folderOf(at))) this.#disk.delete(at);
      this.#relist();
    });
  }

  open(uri: string, version: number, text: string): void {
    const at = normalUri(uri);
    this.#spoken.set(at, uri);
    const isNew = this.#textAt(at) === undefined;
    this.#open.set(at, { uri, text, version, last: undefined });
    this.#then(async () => {
      if (!this.place(at)) await this.#adopt(at);
      this.#changed(at, isNew);
    });
    this.#changed(at, isNew);
  }

  /** Applies the client's edits in their order. False when the document is not open. */
  change(uri: string, version: number, changes: readonly TextDocumentContentChangeEvent[]): boolean {
    const at = normalUri(uri);
    const document = this.#open.get(at);
    if (!document) return false;
    for (const change of changes) {
      if (!('range' in change)) {
        document.text = change.text;
        continue;
      }
      const { start, end } = positionsFor(document.text, this.client.encoding).span(change.range);
      document.text = document.text.slice(0, start) + change.text + document.text.slice(end);
    }
    document.version = version;
    this.#changed(at, false);
    return true;
  }

  /** False when it was not open: a document just saved under its name may be, when its unsaved form is closed. */
  close(uri: string): boolean {
    const at = normalUri(uri);
    const document = this.#open.get(at);
    if (!document || schemeOf(document.uri) !== schemeOf(uri)) return false;
    this.#open.delete(at);
    const onDisk = this.#disk.get(at) !== undefined;
    this.#changed(at, !onDisk);
    return true;
  }

  /** A file was made, written or deleted outside the editor. */
  fileChanged(uri: string): void {
    const at = normalUri(uri);
    // A picture that came or went is noticed by the lines that show it; translations by the guide that was issued.
    if (isPicture(at) || at.endsWith('.po'))
      this.#then(async () => {
        if (isPicture(at)) await this.#files.noticed?.(at);
        this.place(at)?.shelf.listChanged();
      });
    if (!isOurs(at)) return;
    this.#then(async () => {
      const before = this.#disk.get(at);
      const text = await this.#files.read(at);
      if (text === before) return;
      if (text === undefined) this.#disk.delete(at);
      else this.#disk.set(at, text);
      if (at.endsWith(`/${SETTINGS_FILE}`)) {
        if (this.#open.has(at)) return;
        this.#shelves.delete(folderOf(at));
        if (text !== undefined || this.#folders.has(folderOf(at))) this.#addShelf(folderOf(at));
        this.#relist();
        return;
      }
      if (!this.#open.has(at)) this.#changed(at, (text === undefined) !== (before === undefined));
    });
  }

  /** The shelf and path of a document; undefined when no library holds it. */
  place(uri: string): Place | undefined {
    const at = normalUri(uri);
    for (let folder: string | undefined = folderOf(at); folder !== undefined; folder = above(folder)) {
      const shelf = this.#shelves.get(folder);
      const path = shelf?.path(at);
      if (shelf && path !== undefined) return { shelf, path };
    }
    return undefined;
  }

  /** The document as it is now; undefined when it is not a file of any library. */
  snapshot(uri: string): Snapshot | undefined {
    const at = normalUri(uri);
    const text = this.#textAt(at);
    const place = this.place(at);
    if (text === undefined || !place || !at.endsWith('.bay')) return undefined;
    const document = this.#open.get(at);
    return snapshotOf({
      uri: document?.uri ?? this.spoken(at),
      version: document?.version ?? null,
      path: place.path,
      text,
      shelf: place.shelf,
      client: this.client,
      options: this.options,
      spoken: (other) => this.spoken(other),
      textAt: (other) => this.#textAt(other),
      last: () => document?.last,
      made: (analysis) => this.remember(at, analysis),
    });
  }

  /** Text of a settings file; undefined for every other document. */
  settingsText(uri: string): string | undefined {
    const at = normalUri(uri);
    return at.endsWith(`/${SETTINGS_FILE}`) ? this.#textAt(at) : undefined;
  }

  /** Remembers the analysis just made of an open document. */
  remember(uri: string, analysis: Analysis): void {
    const document = this.#open.get(normalUri(uri));
    if (document && document.text === analysis.text) document.last = analysis;
  }

  document(uri: string): OpenDocument | undefined {
    return this.#open.get(normalUri(uri));
  }

  documents(): Iterable<OpenDocument> {
    return this.#open.values();
  }

  shelves(): Iterable<Shelf> {
    return this.#shelves.values();
  }

  /** A URI in the client's own spelling, where it has been heard. */
  spoken(uri: string): string {
    return this.#spoken.get(uri) ?? uri;
  }

  text(uri: string): string | undefined {
    return this.#textAt(normalUri(uri));
  }

  /** What the file itself says, whatever an open document of it does. */
  fileText(uri: string): string | undefined {
    return this.#disk.get(normalUri(uri));
  }

  readBase64(uri: string): Promise<string | undefined> {
    return this.#files.readBase64(uri);
  }

  #textAt(uri: string): string | undefined {
    return this.#open.get(uri)?.text ?? this.#disk.get(uri);
  }

  #then(work: () => Promise<void>): void {
    // One after the other, so that a folder is read before a document in it is placed. What fails leaves the rest whole.
    this.#loading = this.#loading.then(work).catch(() => undefined);
  }

  async #load(folder: string, deep: boolean): Promise<void> {
    const uris = (await this.#files.list(folder, deep)).filter((uri) => !this.#disk.has(uri));
    for (let i = 0; i < uris.length; i += 64) {
      const some = uris.slice(i, i + 64);
      const texts = await Promise.all(some.map((uri) => this.#files.read(uri)));
      some.forEach((uri, j) => {
        const text = texts[j];
        if (text !== undefined) this.#disk.set(uri, text);
      });
    }
  }

  /** A document outside every folder: the library around it, else the files beside it. */
  async #adopt(uri: string): Promise<void> {
    const folder = folderOf(uri);
    const root = await this.#settingsAbove(folder);
    await this.#load(root ?? folder, root !== undefined);
    this.#addShelf(root ?? folder);
  }

  /** The nearest folder upward with a settings file. */
  async #settingsAbove(folder: string): Promise<string | undefined> {
    for (let at: string | undefined = folder; at !== undefined; at = above(at)) {
      if (
        this.#disk.has(`${at}baywright.json`) ||
        (await this.#files.read(`${at}baywright.json`)) !== undefined
      )
        return at;
    }
    return undefined;
  }

  #addShelf(root: string): void {
    const texts = {
      get: (uri: string) => this.#textAt(uri),
      keys: () => new Set([...this.#disk.keys(), ...this.#open.keys()]),
      exists: this.#files.exists,
      today: this.#today,
    };
    this.#shelves.set(
      root,
      openShelf(root, texts, (uri) => this.#ownerOf(uri) !== root),
    );
  }

  #ownerOf(uri: string): string | undefined {
    for (let folder: string | undefined = folderOf(uri); folder !== undefined; folder = above(folder))
      if (this.#shelves.has(folder)) return folder;
    return undefined;
  }

  #relist(): void {
    for (const shelf of this.#shelves.values()) shelf.listChanged();
    for (const document of this.#open.values()) document.last = undefined;
  }

  #changed(uri: string, cameOrWent: boolean): void {
    if (uri.endsWith(`/${SETTINGS_FILE}`)) {
      const root = folderOf(uri);
      const shelf = this.#shelves.get(root);
      // While it is written most of its texts mean what the one before did: the library is kept as it is then.
      if (shelf && !shelf.settingsChanged(this.#open.has(uri))) return;
      if (shelf || this.#textAt(uri) !== undefined) this.#addShelf(root);
      this.#relist();
      return;
    }
    const place = this.place(uri);
    if (!place) return;
    if (cameOrWent) place.shelf.listChanged();
    else place.shelf.library.changed(place.path);
    if (cameOrWent || place.path.length > 0) this.#forgetOthers(uri, place, cameOrWent);
  }

  /** Open documents that use a changed file have no usable last analysis. */
  #forgetOthers(uri: string, place: Place, all: boolean): void {
    for (const [at, document] of this.#open) {
      if (at === uri || !document.last) continue;
      if (all || document.last.dependencies.includes(place.path)) document.last = undefined;
    }
  }
}

function schemeOf(uri: string): string {
  return uri.slice(0, uri.indexOf(':')).toLowerCase();
}

function withSlash(uri: string): string {
  return uri.endsWith('/') ? uri : `${uri}/`;
}
