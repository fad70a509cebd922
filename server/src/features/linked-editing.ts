// Linked editing: the name of an entry changes with all its uses while it is typed, when none lies in another file.
import type { LinkedEditingRangeParams } from 'vscode-languageserver';
import { documentFeature } from './feature.js';
import { ownMentions } from './rename.js';

export const linkedEditing = documentFeature<LinkedEditingRangeParams>(
  'textDocument/linkedEditingRange',
  { linkedEditingRangeProvider: true },
  (snapshot, { position }) => {
    const own = ownMentions(snapshot, snapshot.positions.offset(position));
    return own ? { ranges: own.spans.map(snapshot.range), wordPattern: '[\\p{L}\\p{N}./×’·-]+' } : null;
  },
);
