// What a feature may look at: one document with its library, as they are now. Features are pure functions of it.
import type { Analysis, Library, Span, Tree } from '@baywright/language';
import type { Location, Range } from 'vscode-languageserver';
import type { Options } from './options.js';
import { type Encoding, type Positions, positionsOf } from './positions.js';
import type { Shelf } from './shelf.js';

/** What the client can do, as far as answers differ by it. */
export interface ClientFacts {
  readonly encoding: Encoding;
  readonly snippets: boolean;
  readonly documentChanges: boolean;
  readonly linkTargets: boolean;
  /** The client asks for the edit of a code action once it is chosen. */
  readonly resolvesEdits: boolean;
  /** The client knows the command that opens the list of completions again. */
  readonly asksAgain: boolean;
}

export interface Snapshot {
  /** The document's URI in the client's spelling. */
  readonly uri: string;
  readonly version: number | null;
  readonly path: string;
  readonly text: string;
  readonly shelf: Shelf;
  readonly library: Library;
  readonly tree: Tree;
  readonly positions: Positions;
  readonly client: ClientFacts;
  readonly options: Options;
  analysis(): Analysis;
  /**
   * An analysis whose work above `offset` is as in the text: the last one made, when nothing but the line at the offset
   * was edited since, else a fresh one. Completion asks it, so that a key press need not wait for a whole check.
   */
  analysisAbove(offset: number): Analysis;
  /** Positions, text and URI of another file of the library. */
  file(
    path: string,
  ): { readonly uri: string; readonly text: string; readonly positions: Positions } | undefined;
  location(path: string, span: Span): Location;
  range(span: Span): Range;
}

export interface Parts {
  readonly uri: string;
  readonly version: number | null;
  readonly path: string;
  readonly text: string;
  readonly shelf: Shelf;
  readonly client: ClientFacts;
  readonly options: Options;
  readonly spoken: (uri: string) => string;
  readonly textAt: (uri: string) => string | undefined;
  readonly analysisAbove: (offset: number) => Analysis | undefined;
}

export function snapshotOf(parts: Parts): Snapshot | undefined {
  const { shelf, path, text, client } = parts;
  const tree = shelf.library.tree(path);
  if (!tree) return undefined;
  const positions = positionsFor(text, client.encoding);
  const file: Snapshot['file'] = (other) => {
    const uri = shelf.uri(other);
    const own = other === path ? text : parts.textAt(uri);
    return own === undefined
      ? undefined
      : { uri: parts.spoken(uri), text: own, positions: positionsFor(own, client.encoding) };
  };
  const analysis = (): Analysis => {
    const made = shelf.library.analyse(path);
    if (!made) throw new Error(`no text for ${path}`);
    return made;
  };
  return {
    uri: parts.uri,
    version: parts.version,
    path,
    text,
    shelf,
    library: shelf.library,
    tree,
    positions,
    client,
    options: parts.options,
    analysis,
    analysisAbove: (offset) => parts.analysisAbove(offset) ?? analysis(),
    file,
    location(other, span) {
      const at = file(other);
      return {
        uri: at?.uri ?? parts.spoken(shelf.uri(other)),
        range: (at?.positions ?? positions).range(span),
      };
    },
    range: positions.range,
  };
}

/** Line tables of the texts asked about last; a handful is enough, since answers come in bursts about few files. */
const recent: { readonly text: string; readonly encoding: Encoding; readonly positions: Positions }[] = [];

export function positionsFor(text: string, encoding: Encoding): Positions {
  const known = recent.find((r) => r.text === text && r.encoding === encoding);
  if (known) return known.positions;
  const positions = positionsOf(text, encoding);
  recent.unshift({ text, encoding, positions });
  recent.length = Math.min(recent.length, 16);
  return positions;
}
