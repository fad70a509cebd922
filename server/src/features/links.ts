// Links in a document: imports, pictures and films by their files.
import { resolvePath, walkLines } from '@baywright/language';
import type { DocumentLink, DocumentLinkParams } from 'vscode-languageserver';
import { documentFeature } from './feature.js';

export const links = documentFeature<DocumentLinkParams>(
  'textDocument/documentLink',
  { documentLinkProvider: {} },
  (snapshot) => {
    const found: DocumentLink[] = [];
    walkLines(snapshot.tree, (line) => {
      if (line.kind !== 'use' && line.kind !== 'picture' && line.kind !== 'clip') return;
      const path = line.path && !line.path.hole ? resolvePath(snapshot.path, line.path.text) : undefined;
      if (!line.path || path === undefined) return;
      const edge = line.path.quoted ? 1 : 0;
      const span = {
        start: line.path.start + edge,
        end: Math.max(line.path.start + edge, line.path.end - edge),
      };
      found.push({
        range: snapshot.range(span),
        target: snapshot.file(path)?.uri ?? snapshot.shelf.uri(path),
      });
    });
    return found;
  },
);
