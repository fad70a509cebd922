// Edits of several files in the form the client takes: with document versions where it can, else by URI.
import type { TextEdit as LanguageEdit } from '@baywright/language';
import type { TextEdit, WorkspaceEdit } from 'vscode-languageserver';
import type { Snapshot } from './snapshot.js';

/** Edits by library path. */
export function workspaceEdit(
  snapshot: Snapshot,
  edits: ReadonlyMap<string, readonly TextEdit[]>,
): WorkspaceEdit {
  const files = [...edits]
    .filter(([, list]) => list.length > 0)
    .map(([path, list]) => ({
      path,
      uri: snapshot.file(path)?.uri ?? snapshot.shelf.uri(path),
      list: list.map((e) => ({ ...e, newText: withBreaks(e.newText, snapshot.file(path)?.text ?? '') })),
    }));
  if (!snapshot.client.documentChanges)
    return { changes: Object.fromEntries(files.map(({ uri, list }) => [uri, list])) };
  return {
    documentChanges: files.map(({ path, uri, list }) => ({
      textDocument: { uri, version: path === snapshot.path ? snapshot.version : null },
      edits: list,
    })),
  };
}

/** A text with the line breaks of the file that it goes into. */
function withBreaks(text: string, file: string): string {
  return text.replace(/\r?\n/g, file.includes('\r\n') ? '\r\n' : '\n');
}

/** Edits of the language, which name files by library path and places by offset. */
export function fromLanguage(snapshot: Snapshot, edits: readonly LanguageEdit[]): WorkspaceEdit {
  const byFile = new Map<string, TextEdit[]>();
  for (const edit of edits) {
    const list = byFile.get(edit.file) ?? [];
    list.push({ range: snapshot.location(edit.file, edit.span).range, newText: edit.text });
    byFile.set(edit.file, list);
  }
  return workspaceEdit(snapshot, byFile);
}
