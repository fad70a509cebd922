// Links in a document: imports, pictures and films by their files, sheets by the line that declares them.
import { type Line, type Raw, resolvePath, scopeOf, walkLines } from '@baywright/language';
import type { DocumentLink, DocumentLinkParams } from 'vscode-languageserver';
import { declarationOf } from '../locate.js';
import type { Snapshot } from '../snapshot.js';
import { documentFeature } from './feature.js';

export const links = documentFeature<DocumentLinkParams>(
  'textDocument/documentLink',
  { documentLinkProvider: {} },
  (snapshot) => {
    const found: DocumentLink[] = [];
    const sheet = sheets(snapshot);
    const add = (raw: Raw, link: Omit<DocumentLink, 'range'>): void => {
      const edge = raw.quoted ? 1 : 0;
      const start = raw.start + edge;
      found.push({ range: snapshot.range({ start, end: Math.max(start, raw.end - edge) }), ...link });
    };
    walkLines(snapshot.tree, (line) => {
      for (const raw of namedSheets(line)) {
        const link = sheet(raw.text);
        if (link) add(raw, link);
      }
      if (line.kind !== 'use' && line.kind !== 'picture' && line.kind !== 'clip') return;
      const path = line.path && !line.path.hole ? resolvePath(snapshot.path, line.path.text) : undefined;
      if (line.path && path !== undefined)
        add(line.path, { target: snapshot.file(path)?.uri ?? snapshot.shelf.uri(path) });
    });
    return found;
  },
);

function namedSheets(line: Line): Raw[] {
  if (line.kind !== 'clauses' && line.kind !== 'statement') return [];
  return line.clauses.flatMap(({ word, raw }) => (word === 'per' && raw && !raw.hole ? [raw] : []));
}

/** The link to a sheet by its name, made once for each; it says the title. */
function sheets(snapshot: Snapshot): (name: string) => Omit<DocumentLink, 'range'> | undefined {
  const model = snapshot.library.model(snapshot.path);
  const scope = model && scopeOf(model, snapshot.library);
  const known = new Map<string, Omit<DocumentLink, 'range'> | undefined>();
  const linkOf = (name: string): Omit<DocumentLink, 'range'> | undefined => {
    const thing = scope?.resolve(name);
    const declared = thing?.kind === 'source' ? declarationOf(thing) : undefined;
    if (!thing || !declared) return undefined;
    const { uri, range } = snapshot.location(declared.path, declared.name);
    return { target: `${uri}#L${range.start.line + 1}`, tooltip: thing.title };
  };
  return (name) => {
    if (!known.has(name)) known.set(name, linkOf(name));
    return known.get(name);
  };
}
