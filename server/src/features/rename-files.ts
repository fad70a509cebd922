// A file or folder that is renamed or moved takes along what names it: imports, pictures and films of others that lead to
// it, and its own.
import { resolvePath, walkLines } from '@baywright/language';
import type { RenameFilesParams, TextEdit } from 'vscode-languageserver';
import type { Snapshot } from '../snapshot.js';
import { normalUri, pathIn } from '../uris.js';
import { workspaceEdit } from '../workspace-edit.js';
import { libraryFeature } from './feature.js';
import { relative } from './import-lines.js';

const FILTERS = [
  { pattern: { glob: '**/*.{bay,png,jpg,jpeg,svg,webp,gif,mp4,webm}' } },
  { pattern: { glob: '**/', matches: 'folder' as const } },
];

export const renameFiles = libraryFeature<RenameFilesParams>(
  'workspace/willRenameFiles',
  { workspace: { fileOperations: { willRename: { filters: FILTERS } } } },
  async (view, { files }) => {
    for (const shelf of view.shelves()) {
      const moves = files.flatMap(({ oldUri, newUri }) => {
        const from = pathIn(shelf.root, normalUri(oldUri));
        const to = pathIn(shelf.root, normalUri(newUri));
        return from === undefined || to === undefined
          ? []
          : [{ from, to, name: from.split('/').at(-1) ?? from }];
      });
      if (moves.length === 0) continue;
      const [first] = shelf.paths();
      const any = first === undefined ? undefined : view.file(shelf, first);
      const edits = new Map<string, TextEdit[]>();
      for (const [i, path] of shelf.paths().entries()) {
        if (i % 50 === 49) await view.pause();
        const isMoved = placeAfter(moves, path) !== path;
        // A file that names nothing of this kind need not even be read.
        const names = (text: string): boolean => moves.some(({ name }) => text.includes(name));
        if (!isMoved && !names(any?.file(path)?.text ?? '')) continue;
        const snapshot = view.file(shelf, path);
        const own = snapshot ? editsOf(snapshot, moves) : [];
        if (own.length > 0) edits.set(path, own);
      }
      if (any && edits.size > 0) return workspaceEdit(any, edits);
    }
    return null;
  },
);

interface Move {
  readonly from: string;
  readonly to: string;
}

/** Where a file lies after the moves; folders take along what is in them. */
function placeAfter(moves: readonly Move[], path: string): string {
  for (const { from, to } of moves) {
    if (path === from) return to;
    if (path.startsWith(`${from}/`)) return to + path.slice(from.length);
  }
  return path;
}

function editsOf(snapshot: Snapshot, moves: readonly Move[]): TextEdit[] {
  const { path } = snapshot;
  const own: TextEdit[] = [];
  walkLines(snapshot.tree, (line) => {
    if (line.kind !== 'use' && line.kind !== 'picture' && line.kind !== 'clip') return;
    const target = line.path && !line.path.hole ? resolvePath(path, line.path.text) : undefined;
    if (!line.path || target === undefined) return;
    const after = { own: placeAfter(moves, path), target: placeAfter(moves, target) };
    if (after.own === path && after.target === target) return;
    const written = relative(after.own, after.target);
    if (written !== line.path.text) own.push({ range: snapshot.range(line.path), newText: `"${written}"` });
  });
  return own;
}
