// A file that is renamed or moved takes the imports along: those of others that lead to it, and its own.
import { resolvePath } from '@baywright/language';
import type { RenameFilesParams, TextEdit } from 'vscode-languageserver';
import type { Snapshot } from '../snapshot.js';
import { normalUri, pathIn } from '../uris.js';
import { workspaceEdit } from '../workspace-edit.js';
import { relative } from './completion/heads.js';
import { libraryFeature } from './feature.js';

const FILTERS = [
  { scheme: 'file', pattern: { glob: '**/*.bay' } },
  { scheme: 'file', pattern: { glob: '**/', matches: 'folder' as const } },
];

export const renameFiles = libraryFeature<RenameFilesParams>(
  'workspace/willRenameFiles',
  { workspace: { fileOperations: { willRename: { filters: FILTERS } } } },
  (view, { files }) => {
    for (const shelf of view.shelves()) {
      const moved = new Map<string, string>();
      for (const { oldUri, newUri } of files) {
        const from = pathIn(shelf.root, normalUri(oldUri));
        const to = pathIn(shelf.root, normalUri(newUri));
        if (from === undefined || to === undefined) continue;
        if (shelf.paths().includes(from)) moved.set(from, to);
        else
          for (const path of shelf.paths())
            if (path.startsWith(`${from}/`)) moved.set(path, to + path.slice(from.length));
      }
      if (moved.size === 0) continue;
      const edits = new Map<string, TextEdit[]>();
      let any: Snapshot | undefined;
      for (const path of shelf.paths()) {
        const snapshot = view.file(shelf, path);
        if (!snapshot) continue;
        any ??= snapshot;
        const own: TextEdit[] = [];
        for (const line of snapshot.tree.lines) {
          if (line.kind !== 'use' || !line.path || line.path.hole) continue;
          const target = resolvePath(path, line.path.text);
          if (target === undefined || (!moved.has(target) && !moved.has(path))) continue;
          const written = relative(moved.get(path) ?? path, moved.get(target) ?? target);
          if (written !== line.path.text)
            own.push({ range: snapshot.range(line.path), newText: `"${written}"` });
        }
        if (own.length > 0) edits.set(path, own);
      }
      if (any && edits.size > 0) return workspaceEdit(any, edits);
    }
    return null;
  },
);
