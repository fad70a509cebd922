// What stands at a place of a document, and where else a thing is mentioned in the library.
import {
  type Line,
  lineAt,
  type Mention,
  mentionsIn,
  mentionsOf,
  pathAt,
  type Span,
  scopeOf,
  type Thing,
  touches,
} from '@baywright/language';
import type { Shelf } from './shelf.js';
import type { Snapshot } from './snapshot.js';

/** A mention with the thing it means. */
export interface Meant {
  readonly thing: Thing;
  readonly mention: Mention;
  readonly span: Span;
}

/** The innermost line around an offset, its own blank below included. */
export function lineAround(snapshot: Snapshot, offset: number): Line | undefined {
  return lineAt(snapshot.tree, offset) ?? pathAt(snapshot.tree, offset).pop();
}

/** The thing named at an offset; undefined when there is none or it is not declared. */
export function meantAt(snapshot: Snapshot, offset: number): Meant | undefined {
  const mention = mentionAt(snapshot, offset);
  const thing = mention && thingOf(snapshot.shelf, snapshot.path, mention);
  return mention && thing ? { thing, mention, span: mention.name } : undefined;
}

function mentionAt(snapshot: Snapshot, offset: number): Mention | undefined {
  const line = pathAt(snapshot.tree, offset).pop();
  const all = line ? mentionsOf(line).filter((m) => touches(m.name, offset)) : [];
  return all.find((m) => m.name.end > offset) ?? all[0];
}

/** What a mention in a file means. */
export function thingOf(shelf: Shelf, path: string, mention: Mention): Thing | undefined {
  const { library } = shelf;
  const model = library.model(path);
  if (!model) return undefined;
  if (mention.operation) {
    const home = mention.operation.from === undefined ? model : library.numbered(mention.operation.from);
    return home?.operations.find((o) => o.name === mention.name.text);
  }
  return scopeOf(model, library).resolve(mention.name.text);
}

/** Every mention of a thing in its library, file by file; files that do not hold its name are not even parsed. */
export function* mentionsOfThing(
  shelf: Shelf,
  thing: Thing,
  textOf: (path: string) => string | undefined,
): Generator<{ path: string; mentions: Mention[] }> {
  const { library } = shelf;
  for (const path of shelf.paths()) {
    if (!textOf(path)?.includes(thing.name)) continue;
    const model = library.model(path);
    if (!model) continue;
    const scope = thing.kind === 'operation' ? undefined : scopeOf(model, library);
    if (scope && scope.resolve(thing.name)?.id !== thing.id) continue;
    const mentions = mentionsIn(model.tree).filter(
      (m) => m.name.text === thing.name && means(shelf, path, m, thing),
    );
    if (mentions.length > 0) yield { path, mentions };
  }
}

function means(shelf: Shelf, path: string, mention: Mention, thing: Thing): boolean {
  if (thing.kind !== 'operation') return mention.operation === undefined;
  return mention.operation !== undefined && thingOf(shelf, path, mention)?.id === thing.id;
}

/** Where a thing is declared. */
export function declarationOf(thing: Thing): { path: string; name: Span; line: Line } | undefined {
  const name = thing.line?.name;
  return name && thing.line ? { path: thing.file, name, line: thing.line } : undefined;
}
