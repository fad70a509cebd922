// The shape of a feature: one file each, one row in the table. The table registers them and computes what the server
// says it can do.
import type { ServerCapabilities } from 'vscode-languageserver';
import type { Snapshot } from '../snapshot.js';
import type { View } from '../view.js';
import type { SettingsFile } from './settings-file/place.js';

/** Answers a request about one document, from its snapshot alone. */
export interface DocumentFeature<Params = never> {
  readonly about: 'document';
  readonly method: string;
  readonly capability: Partial<ServerCapabilities>;
  run(snapshot: Snapshot, params: Params, view: View): unknown;
  /** The same question about a settings file, where it has an answer. */
  readonly inSettings?: ((file: SettingsFile, params: Params) => unknown) | undefined;
}

/** Answers a request about all libraries, or about a thing handed out before. */
export interface LibraryFeature<Params = never> {
  readonly about: 'library';
  readonly method: string;
  readonly capability: Partial<ServerCapabilities>;
  run(view: View, params: Params): unknown;
}

export type Feature = DocumentFeature | LibraryFeature;

export function documentFeature<Params>(
  method: string,
  capability: Partial<ServerCapabilities>,
  run: DocumentFeature<Params>['run'],
  inSettings?: DocumentFeature<Params>['inSettings'],
): DocumentFeature<Params> {
  return Object.freeze({ about: 'document', method, capability, run, inSettings });
}

export function libraryFeature<Params>(
  method: string,
  capability: Partial<ServerCapabilities>,
  run: LibraryFeature<Params>['run'],
): LibraryFeature<Params> {
  return Object.freeze({ about: 'library', method, capability, run });
}
