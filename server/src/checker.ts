// Decides what is checked when, and what is sent: the edited document first, then open documents that depend on it,
// then the rest of the library while nothing else happens. Checks go on in slices, so that no question waits for a
// whole one; one of a text that was edited meanwhile is left undone. Only what changed is sent.
import {
  type Analysis,
  type Finding,
  SETTINGS_FILE,
  type Settings,
  type Span,
  severityOf,
} from '@baywright/language';
import type { Diagnostic } from 'vscode-languageserver';
import { diagnosticsOf } from './features/diagnostics.js';
import { LibraryWide } from './library-wide.js';
import { politely, SLICE } from './manners.js';
import { Rehearsal } from './rehearsal.js';
import type { Shelf } from './shelf.js';
import { positionsFor, type Snapshot } from './snapshot.js';
import { movedFindings } from './standing.js';
import { unusedSuppressions } from './suppression.js';
import { normalUri } from './uris.js';
import type { Workspace } from './workspace.js';

/** What the checker needs from outside. */
export interface CheckerHost {
  publish(uri: string, version: number | null, diagnostics: Diagnostic[]): void;
  /** Findings, procedures or texts changed: views should ask again. */
  checked(uris: readonly string[]): void;
  /** Background work: how many files are done of how many. */
  progress(done: number, all: number): void;
  unused(entries: readonly string[]): void;
  /** Milliseconds of a clock that only goes forward. */
  now(): number;
  later(milliseconds: number, work: () => void): () => void;
}

/** What is kept of a checked file. */
interface Known {
  readonly findings: readonly Finding[];
  readonly dependencies: readonly string[];
  readonly cost: number;
}

/** Edits that cost less than this, in milliseconds, are checked as soon as the message is read: less than between two keys. */
const AT_ONCE = 100;
/** A question that follows an edit at once, as completion does, goes first. Milliseconds. */
const MANNERS = 2;
/** The longest wait after an edit. */
const LONGEST_WAIT = 400;

/** What a JSON Schema finds in a settings file. */
const BY_SCHEMA: ReadonlySet<string> = new Set([
  'settings-not-json',
  'setting-not-usable',
  'setting-unknown',
]);

export class Checker {
  readonly #workspace: Workspace;
  readonly #host: CheckerHost;
  readonly #known = new Map<string, Known>();
  /** What was sent last, where it matters: an open document is told of every version. */
  readonly #sent = new Map<string, string | undefined>();
  /** Milliseconds spent so far on a check that is not ready. */
  readonly #spent = new Map<string, number>();
  /** The document whose edit is being checked: all else waits for it. */
  #pressing: string | undefined;
  /** Files that wait for a check, the most pressing first. */
  readonly #waiting = new Set<string>();
  #cancelEdit: (() => void) | undefined;
  #cancelBackground: (() => void) | undefined;
  #cancelSettings: (() => void) | undefined;
  #cancelWide: (() => void) | undefined;
  #rehearsal: Rehearsal | undefined;
  readonly #wide = new WeakMap<Shelf, LibraryWide>();
  /** The settings that each library was last checked by. */
  readonly #checkedBy = new Map<string, Settings>();
  #all = 0;

  constructor(workspace: Workspace, host: CheckerHost) {
    this.#workspace = workspace;
    this.#host = host;
  }

  /** A document was opened or edited. Cheap ones are checked at once, others after a pause that grows with their cost. */
  edited(uri: string): void {
    const at = normalUri(uri);
    if (at.endsWith(`/${SETTINGS_FILE}`)) {
      this.#settingsEdited(at);
      return;
    }
    const cost = this.#known.get(at)?.cost ?? 0;
    this.#cancelEdit?.();
    this.#rehearsal?.stop();
    this.#spent.delete(at);
    // The document edited before, if another one, takes its place among those that wait.
    if (this.#pressing !== undefined && this.#pressing !== at) this.#waiting.add(this.#pressing);
    this.#pressing = at;
    if (cost > AT_ONCE) this.#syntaxFirst(at);
    const wait = cost > AT_ONCE ? Math.min(LONGEST_WAIT, cost / 20) : MANNERS;
    this.#cancelEdit = this.#host.later(wait, () => this.#press(at));
  }

  /** Goes on with the edited document, letting messages through between slices. */
  #press(uri: string): void {
    this.#cancelEdit = politely(this.#host.later, () => {
      if (!this.#goOn(uri)) {
        this.#press(uri);
        return;
      }
      this.#pressing = undefined;
      if (this.#waiting.size > 0) this.#background();
      else this.#lookAtAll();
    });
  }

  /** A settings file was opened, edited or closed: its own findings at once, those of its library when it says something else. */
  #settingsEdited(uri: string): void {
    const shelf = this.#workspace.place(uri)?.shelf;
    if (!shelf) return;
    this.#settings(shelf);
    if (shelf.settings === this.#checkedBy.get(shelf.root)) return;
    this.#cancelSettings?.();
    this.#cancelSettings = this.#host.later(LONGEST_WAIT, () => this.everything());
  }

  /** Everything may be different: folders, settings or files came or went. */
  everything(): void {
    this.#cancelBackground?.();
    this.#waiting.clear();
    const live = new Set<string>();
    for (const document of this.#workspace.documents()) this.#enqueue(normalUri(document.uri), live);
    for (const shelf of this.#workspace.shelves()) this.#checkedBy.set(shelf.root, shelf.settings);
    if (this.#workspace.options.scope === 'whole library') {
      for (const shelf of this.#workspace.shelves()) {
        for (const path of shelf.paths()) this.#enqueue(shelf.uri(path), live);
        this.#settings(shelf);
        if (shelf.settingsText !== undefined) live.add(`${shelf.root}${SETTINGS_FILE}`);
      }
    }
    for (const uri of [...this.#sent.keys()]) if (!live.has(uri)) this.#send(uri, null, []);
    for (const uri of [...this.#known.keys()]) if (!live.has(uri)) this.#known.delete(uri);
    this.#all = this.#waiting.size;
    this.#background();
  }

  /** A document was closed: its findings stay in a library, and go with a lone document. */
  closed(uri: string): void {
    const at = normalUri(uri);
    if (at.endsWith(`/${SETTINGS_FILE}`)) {
      this.#settingsEdited(at);
      return;
    }
    const place = this.#workspace.place(at);
    if (this.#workspace.options.scope === 'open files' || !place?.shelf.paths().includes(place.path)) {
      this.#send(at, null, []);
      this.#known.delete(at);
      return;
    }
    this.#waiting.add(at);
    this.#background();
  }

  /** Findings of a file: those known when it is up to date, else fresh ones. */
  findingsOf(shelf: Shelf, path: string): readonly Finding[] {
    const uri = shelf.uri(path);
    const known = this.#waiting.has(uri) ? undefined : this.#known.get(uri);
    const own = known ?? this.#check(uri);
    return this.#withWide(shelf, path, own?.findings ?? []);
  }

  /** Findings of a file that only the whole library can tell, as far as it has been looked at. */
  wideOf(shelf: Shelf, path: string): readonly Finding[] {
    const text = this.#workspace.text(shelf.uri(path));
    return text === undefined ? [] : (this.#wide.get(shelf)?.findingsOf(path, text) ?? []);
  }

  /** Findings of a file with those that only the whole library can tell, in the order of the text. */
  #withWide(shelf: Shelf, path: string, own: readonly Finding[]): readonly Finding[] {
    const wide = this.wideOf(shelf, path);
    return wide.length === 0 ? own : [...own, ...wide].sort((a, b) => a.span.start - b.span.start);
  }

  #enqueue(uri: string, live: Set<string>): void {
    live.add(uri);
    this.#waiting.add(uri);
  }

  /** Findings of the syntax from the new text, those of the last whole check beside them until it is made again. */
  #syntaxFirst(uri: string): void {
    const snapshot = this.#workspace.snapshot(uri);
    if (!snapshot) return;
    const syntax = snapshot.library.syntaxFindings(snapshot.path);
    const before = this.#stamps.get(`${snapshot.shelf.root}#${snapshot.path}`);
    const kept =
      before === undefined
        ? []
        : movedFindings(this.#known.get(uri)?.findings ?? [], snapshot.path, before, snapshot.text).filter(
            (f) => !f.code.startsWith('G'),
          );
    // Without a version: only a whole check of this text may be told apart as the answer to it.
    this.#send(uri, null, diagnosticsOf(snapshot, [...syntax, ...kept]));
  }

  #check(uri: string): Known | undefined {
    while (!this.#goOn(uri));
    return this.#known.get(uri);
  }

  /** Goes on with a check for one slice; true when it is done and what it found is sent. */
  #goOn(uri: string): boolean {
    const begin = this.#host.now();
    const snapshot = this.#workspace.snapshot(uri);
    let isReady = !snapshot;
    while (snapshot && !isReady) {
      isReady = snapshot.library.advance(snapshot.path);
      if (this.#host.now() - begin > SLICE) break;
    }
    const cost = (this.#spent.get(uri) ?? 0) + this.#host.now() - begin;
    if (!isReady) {
      this.#spent.set(uri, cost);
      return false;
    }
    this.#spent.delete(uri);
    this.#waiting.delete(uri);
    if (snapshot) this.#conclude(uri, snapshot, cost);
    else this.#known.delete(uri);
    return true;
  }

  #conclude(uri: string, snapshot: Snapshot, cost: number): void {
    const analysis = snapshot.analysis();
    const known: Known = { findings: analysis.findings, dependencies: analysis.dependencies, cost };
    const isNews = this.#known.get(uri)?.findings !== known.findings;
    this.#known.set(uri, known);
    const isOpen = this.#workspace.document(uri) !== undefined;
    if (isOpen || this.#workspace.options.scope === 'whole library')
      this.#publish(uri, snapshot, analysis.findings);
    this.#note(snapshot.shelf, analysis);
    // One that was closed unsaved says again what its file does.
    if (isOpen || this.#stamps.size > 0) this.#dependents(snapshot, analysis);
    if (isOpen) {
      if (isNews) this.#host.checked([snapshot.uri]);
    } else if (analysis.model.kind === 'procedure') snapshot.library.release(snapshot.path);
  }

  #publish(uri: string, snapshot: Snapshot, findings: readonly Finding[]): void {
    const all = this.#withWide(snapshot.shelf, snapshot.path, findings);
    this.#send(uri, snapshot.version, diagnosticsOf(snapshot, all));
  }

  /** Notes what the rest of the library must know of a file; a folder without settings is no library. */
  #note(shelf: Shelf, { model, text }: Analysis): void {
    if (this.#workspace.options.scope !== 'whole library' || shelf.settingsText === undefined) return;
    const wide = this.#wide.get(shelf) ?? new LibraryWide();
    this.#wide.set(shelf, wide);
    wide.note(model, text);
  }

  /** Looks at the library as a whole once nothing else has been going on for a while. */
  #lookAtAll(): void {
    this.#cancelWide?.();
    this.#cancelWide = this.#host.later(LONGEST_WAIT, () => {
      if (this.#pressing !== undefined || this.#waiting.size > 0) return;
      for (const shelf of this.#workspace.shelves()) {
        for (const path of this.#wide.get(shelf)?.refresh(shelf) ?? []) {
          const uri = shelf.uri(path);
          const known = this.#known.get(uri);
          const snapshot = known && this.#workspace.snapshot(uri);
          if (!known || !snapshot) continue;
          this.#publish(uri, snapshot, known.findings);
          if (this.#workspace.document(uri) === undefined) snapshot.library.release(path);
        }
      }
      this.#tellUnused();
      this.#rehearse();
    });
  }

  /** Once, with a procedure that is open: gets ready what its edits will run. */
  #rehearse(): void {
    for (const { uri } of this.#rehearsal ? [] : this.#workspace.documents()) {
      const snapshot = this.#workspace.snapshot(uri);
      if (snapshot?.analysis().model.kind !== 'procedure') continue;
      this.#rehearsal = new Rehearsal(snapshot, this.#host);
      break;
    }
    this.#rehearsal?.goOn();
  }

  /** Files that use an edited one wait for a check: open ones at the head. */
  #dependents(snapshot: Snapshot, analysis: Analysis): void {
    const stamp = `${snapshot.shelf.root}#${analysis.path}`;
    // Until a document was checked, those that use it know the file: it may be edited as soon as it is opened, and an
    // editor that was shut brings back what it kept unsaved.
    const text = this.#stamps.get(stamp) ?? this.#workspace.fileText(snapshot.uri);
    this.#stamps.set(stamp, analysis.text);
    if (text === undefined || text === analysis.text) return;
    const open: string[] = [];
    const closed: string[] = [];
    for (const [uri, known] of this.#known) {
      const place = this.#workspace.place(uri);
      if (place?.shelf !== snapshot.shelf || !known.dependencies.includes(analysis.path)) continue;
      (this.#workspace.document(uri) ? open : closed).push(uri);
    }
    const rest = [...this.#waiting];
    this.#waiting.clear();
    for (const uri of [...open, ...closed, ...rest]) this.#waiting.add(uri);
    this.#all = this.#waiting.size;
    this.#background();
  }

  /** The text of a file when those that use it were last sent to be checked. */
  readonly #stamps = new Map<string, string>();

  #background(): void {
    this.#cancelBackground?.();
    if (this.#waiting.size === 0) return;
    this.#cancelBackground = politely(this.#host.later, () => {
      // It goes on when the edited document has its findings.
      if (this.#pressing !== undefined) return;
      const begin = this.#host.now();
      for (const uri of this.#waiting) {
        this.#goOn(uri);
        if (this.#host.now() - begin > SLICE) break;
      }
      this.#host.progress(this.#all - this.#waiting.size, this.#all);
      if (this.#waiting.size === 0) this.#finish();
      else this.#background();
    });
  }

  #finish(): void {
    this.#host.checked([]);
    this.#lookAtAll();
  }

  #tellUnused(): void {
    const { options } = this.#workspace;
    if (options.suppress.length === 0) return;
    const files = new Map<string, readonly Finding[]>();
    for (const [uri, known] of this.#known) {
      const place = this.#workspace.place(uri);
      if (place) files.set(place.path, this.#withWide(place.shelf, place.path, known.findings));
    }
    this.#host.unused(unusedSuppressions(options, files));
  }

  #settings(shelf: Shelf): void {
    const uri = `${shelf.root}${SETTINGS_FILE}`;
    if (shelf.settingsText === undefined) return;
    const document = this.#workspace.document(uri);
    // An editor that reads an open one by its schema shows what a schema can say; it is not said twice.
    const own = document !== undefined && this.#workspace.client.readsSettings;
    const findings = shelf.settingsFindings
      .filter((f) => !own || !BY_SCHEMA.has(f.name))
      .flatMap((f) => severityOf(f, shelf.settings) ?? []);
    const positions = positionsFor(shelf.settingsText, this.#workspace.client.encoding);
    const { options } = this.#workspace;
    const location = (_path: string, span: Span) => ({ uri, range: positions.range(span) });
    const site = { path: SETTINGS_FILE, shelf, options, range: positions.range, location };
    this.#send(uri, document?.version ?? null, diagnosticsOf(site, findings));
  }

  /** An edited document is told its version even when nothing changed, so that a client knows the answer is of now. */
  #send(uri: string, version: number | null, diagnostics: Diagnostic[]): void {
    const isOpen = this.#workspace.document(uri) !== undefined;
    const key = isOpen ? undefined : JSON.stringify(diagnostics);
    if (!isOpen && (this.#sent.has(uri) ? this.#sent.get(uri) === key : diagnostics.length === 0)) return;
    if (diagnostics.length === 0 && !isOpen) this.#sent.delete(uri);
    else this.#sent.set(uri, key);
    this.#host.publish(
      this.#workspace.document(uri)?.uri ?? this.#workspace.spoken(uri),
      version,
      diagnostics,
    );
  }
}
