// What a feature may look at: one document with its library, as they are now. Features are pure functions of it.
import type { Analysis, Finding, Job, Language, Library, Span, Tree } from '@baywright/language';
import type { Location, Range } from 'vscode-languageserver';
import type { Options } from './options.js';
import { type Encoding, type Positions, positionsOf } from './positions.js';
import type { Shelf } from './shelf.js';
import { movedFindings, sameWorkAbove } from './standing.js';
import { TEXTS, type Texts } from './texts/index.js';

/** What the client can do, as far as answers differ by it. */
export interface ClientFacts {
  readonly encoding: Encoding;
  readonly snippets: boolean;
  /** A completion in the middle of a word may say both what inserting and what replacing it changes. */
  readonly insertReplace: boolean;
  readonly documentChanges: boolean;
  readonly linkTargets: boolean;
  /** The client asks for the edit of a code action once it is chosen. */
  readonly resolvesEdits: boolean;
  /** The client knows the command that opens the list of completions again. */
  readonly asksAgain: boolean;
  /** The client has the command that shows where something is used. */
  readonly showsUses: boolean;
  /** The client shows the pages of findings itself, asking for their text. */
  readonly showsPages: boolean;
  /** The client has its own completion, hovers and checks of `baywright.json`, by the published schema. */
  readonly readsSettings: boolean;
  /** The language of what the server itself says. */
  readonly language: Language;
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
  /** The server's own words, in the language of the client. */
  readonly say: Texts;
  /** What the names in the text mean, at no more cost than reading it. */
  job(): Job;
  /** All that is known of the text, its work run and checked; made now if need be. */
  analysis(): Analysis;
  /** Whether that is known already, so that asking costs nothing. */
  isChecked(): boolean;
  /**
   * An analysis in which the work above a line is as it is now, with the offset there that stands for the start of the
   * line: the last one made, where edits since then allow it. Undefined where only a fresh one will do.
   */
  standing(lineStart: number): { readonly analysis: Analysis; readonly offset: number } | undefined;
  /** Findings at their places in the text: those of the last analysis, until the next is made. Undefined before the first. */
  lastFindings(): readonly Finding[] | undefined;
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
  /** The last analysis made of the document, of whatever text. */
  readonly last: () => Analysis | undefined;
  readonly made: (analysis: Analysis) => void;
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
      : {
          uri: parts.spoken(uri),
          text: own,
          // Made when asked for: many files are looked through for a word and never pointed into.
          get positions() {
            return positionsFor(own, client.encoding);
          },
        };
  };
  const analysis = (): Analysis => {
    const made = shelf.library.analyse(path);
    if (!made) throw new Error(`no text for ${path}`);
    parts.made(made);
    return made;
  };
  const isChecked = (): boolean => parts.last()?.text === text;
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
    say: TEXTS[client.language],
    analysis,
    isChecked,
    job() {
      const job = shelf.library.job(path);
      if (!job) throw new Error(`no text for ${path}`);
      return job;
    },
    standing(lineStart) {
      const last = parts.last();
      const offset = last && sameWorkAbove(last, tree, lineStart);
      return last && offset !== undefined ? { analysis: last, offset } : undefined;
    },
    lastFindings() {
      const last = parts.last();
      return last && (isChecked() ? last.findings : movedFindings(last.findings, path, last.text, text));
    },
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
