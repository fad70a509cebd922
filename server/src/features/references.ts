// References of a thing over its library, and highlights in one document: where it comes off and where it goes on.
import { isApart, type Mention } from '@baywright/language';
import {
  type DocumentHighlight,
  DocumentHighlightKind,
  type Location,
  type ReferenceParams,
  type TextDocumentPositionParams,
} from 'vscode-languageserver';
import { declaredWordAt, placesOf } from '../declared-words.js';
import { meantAt, mentionsOfThing } from '../locate.js';
import type { Snapshot } from '../snapshot.js';
import { documentFeature } from './feature.js';

export const references = documentFeature<ReferenceParams>(
  'textDocument/references',
  { referencesProvider: true },
  async (snapshot, { position, context }, view) => {
    const offset = snapshot.positions.offset(position);
    const meant = meantAt(snapshot, offset);
    if (!meant) return placesOfWord(snapshot, offset, context.includeDeclaration);
    const found: Location[] = [];
    for (const { path, mentions } of mentionsOfThing(
      snapshot.shelf,
      meant.thing,
      (p) => snapshot.file(p)?.text,
    )) {
      const here = mentions
        .filter((m) => context.includeDeclaration || m.way !== 'declares')
        .map((m) => snapshot.location(path, m.name));
      if (!view.partial(here)) found.push(...here);
      await view.pause();
      if (view.isCancelled()) return null;
    }
    return found;
  },
);

/** Taking off and declaring is writing, all else reading: editors colour the two apart. */
export const highlight = documentFeature<TextDocumentPositionParams>(
  'textDocument/documentHighlight',
  { documentHighlightProvider: true },
  (snapshot, { position }) => {
    const offset = snapshot.positions.offset(position);
    const meant = meantAt(snapshot, offset);
    if (!meant)
      return (
        placesOfWord(snapshot, offset, true)
          ?.filter(({ uri }) => uri === snapshot.uri)
          .map(({ range }) => ({ range, kind: DocumentHighlightKind.Text })) ?? null
      );
    const found: DocumentHighlight[] = [];
    for (const { path, mentions } of mentionsOfThing(
      { ...snapshot.shelf, paths: () => [snapshot.path] },
      meant.thing,
      () => snapshot.text,
    )) {
      if (path === snapshot.path)
        for (const m of mentions) found.push({ range: snapshot.range(m.name), kind: kindOf(m) });
    }
    return found;
  },
);

/** An option of vehicles, its values, values of a condition. */
function placesOfWord(snapshot: Snapshot, offset: number, withDeclaration: boolean): Location[] | null {
  const place = declaredWordAt(snapshot, offset);
  if (!place) return null;
  return [...placesOf(snapshot, place)].flatMap(([path, places]) =>
    places
      .filter(({ declares }) => withDeclaration || !declares)
      .map(({ name }) => snapshot.location(path, name)),
  );
}

function kindOf(mention: Mention): DocumentHighlightKind {
  if (mention.way === 'text') return DocumentHighlightKind.Text;
  return mention.way === 'acts on' && isApart(mention.verb)
    ? DocumentHighlightKind.Write
    : DocumentHighlightKind.Read;
}
