// What features see beyond one document: other documents, all libraries, findings, the renderers that the command
// line lends, and whether the answer is still wanted.
import type { Analysis, Finding } from '@baywright/language';
import type { SettingsFile } from './features/settings-file/place.js';
import type { Renderers } from './renderers.js';
import type { Shelf } from './shelf.js';
import type { ClientFacts, Snapshot } from './snapshot.js';
import type { Texts } from './texts/index.js';

export interface View {
  readonly client: ClientFacts;
  /** The server's own words, in the language of the client. */
  readonly say: Texts;
  snapshot(uri: string): Snapshot | undefined;
  /** A settings file, unless the client reads it by its schema and would have every answer twice. */
  settingsFile(uri: string): SettingsFile | undefined;
  /** A file of a library, open or not. */
  file(shelf: Shelf, path: string): Snapshot | undefined;
  shelves(): Iterable<Shelf>;
  /** A file has been looked at among many: what was read of a closed procedure is dropped, to save memory. */
  looked(shelf: Shelf, path: string): void;
  /** All that is known of a document, made in slices so that others are served in between. Throws when it is edited meanwhile. */
  analysed(snapshot: Snapshot): Promise<Analysis>;
  /** Findings of a file, checked now if need be. */
  findings(shelf: Shelf, path: string): readonly Finding[];
  readBase64(uri: string): Promise<string | undefined>;
  /** Findings of a document that only the whole library can tell, as far as it has been looked at. */
  wide(snapshot: Snapshot): readonly Finding[];
  readonly renderers: Renderers;
  /** True once the client has taken the request back. */
  isCancelled(): boolean;
  /** Tells how far long work has come. */
  progress(done: number, all: number, what: string): void;
  /** Sends a part of the answer ahead, where the client asked for parts; the answer itself then leaves it out. */
  partial(items: readonly unknown[]): boolean;
  /** Lets other messages through during long work. */
  pause(): Promise<void>;
}
