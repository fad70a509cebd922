// References of a thing over its library, and highlights in one document: where it comes off and where it goes on.
import { isApart, type Mention } from '@baywright/language';
import {
  type DocumentHighlight,
  DocumentHighlightKind,
  type Location,
  type ReferenceParams,
  type TextDocumentPositionParams,
} from 'vscode-languageserver';
import { meantAt, mentionsOfThing } from '../locate.js';
import { documentFeature } from './feature.js';

export const references = documentFeature<ReferenceParams>(
  'textDocument/references',
  { referencesProvider: true },
  async (snapshot, { position, context }, view) => {
    const meant = meantAt(snapshot, snapshot.positions.offset(position));
    if (!meant) return null;
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
    const meant = meantAt(snapshot, snapshot.positions.offset(position));
    if (!meant) return null;
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

function kindOf(mention: Mention): DocumentHighlightKind {
  if (mention.way === 'text') return DocumentHighlightKind.Text;
  return mention.way === 'acts on' && isApart(mention.verb)
    ? DocumentHighlightKind.Write
    : DocumentHighlightKind.Read;
}
