// Definition and declaration of the thing at a place; the file of an import; the procedure of a number.
import { pathAt, resolvePath, touches } from '@baywright/language';
import type { LocationLink, TextDocumentPositionParams } from 'vscode-languageserver';
import { declaredWordAt, placesOf } from '../declared-words.js';
import { declarationOf, meantAt } from '../locate.js';
import type { Snapshot } from '../snapshot.js';
import { documentFeature } from './feature.js';

export const definition = documentFeature<TextDocumentPositionParams>(
  'textDocument/definition',
  { definitionProvider: true },
  goTo,
);
export const declaration = documentFeature<TextDocumentPositionParams>(
  'textDocument/declaration',
  { declarationProvider: true },
  goTo,
);

/** An operation is implemented by its steps; other things by the line that declares them. */
export const implementation = documentFeature<TextDocumentPositionParams>(
  'textDocument/implementation',
  { implementationProvider: true },
  (snapshot, params) => {
    const meant = meantAt(snapshot, snapshot.positions.offset(params.position));
    if (meant?.thing.kind !== 'operation') return null;
    return goTo(snapshot, params);
  },
);

function goTo(snapshot: Snapshot, { position }: TextDocumentPositionParams): unknown {
  const offset = snapshot.positions.offset(position);
  const meant = meantAt(snapshot, offset);
  if (meant) {
    const at = declarationOf(meant.thing);
    return at ? answer(snapshot, meant.span, at.path, at.line, at.name) : null;
  }
  const line = pathAt(snapshot.tree, offset).pop();
  if (line?.kind === 'use' && line.path && touches(line.path, offset)) {
    const path = resolvePath(snapshot.path, line.path.text);
    return path !== undefined && snapshot.file(path)
      ? answer(snapshot, line.path, path, { start: 0, end: 0 }, { start: 0, end: 0 })
      : null;
  }
  if (line?.kind === 'perform' && line.from && touches(line.from, offset)) {
    const head = snapshot.library.numbered(line.from.text)?.head;
    const home = snapshot.library.numbered(line.from.text);
    return head && home ? answer(snapshot, line.from, home.path, head, head.code) : null;
  }
  return declaredWord(snapshot, offset);
}

/** An option of a `when`, its value or that of a condition leads to the line that declares it. */
function declaredWord(snapshot: Snapshot, offset: number): unknown {
  const at = declaredWordAt(snapshot, offset);
  if (!at) return null;
  for (const [path, places] of placesOf(snapshot, at)) {
    const declared = places.find(({ declares }) => declares);
    if (declared) return answer(snapshot, at.name, path, declared.name, declared.name);
  }
  return null;
}

function answer(
  snapshot: Snapshot,
  from: { start: number; end: number },
  path: string,
  whole: { start: number; end: number },
  name: { start: number; end: number },
): unknown {
  const target = snapshot.location(path, name);
  if (!snapshot.client.linkTargets) return target;
  const link: LocationLink = {
    originSelectionRange: snapshot.range(from),
    targetUri: target.uri,
    targetRange: snapshot.location(path, whole).range,
    targetSelectionRange: target.range,
  };
  return [link];
}
