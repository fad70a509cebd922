// Reads files for a server that cannot: one in a browser worker, or one asked about folders that are not on disk.

import {
  type ListFilesQuestion,
  METHODS,
  type ReadFileAnswer,
  type ReadFileQuestion,
} from '@baywright/server/protocol';
import { FileType, Uri, workspace } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { toBase64 } from './base64.js';

export function serveFiles(client: BaseLanguageClient): void {
  client.onRequest(METHODS.readFile, readFile);
  client.onRequest(METHODS.listFiles, async ({ endings }: ListFilesQuestion) => {
    const folders = workspace.workspaceFolders ?? [];
    const found = await Promise.all(folders.map((folder) => listFiles(folder.uri, endings)));
    return found.flat();
  });
}

async function readFile({ uri, encoding }: ReadFileQuestion): Promise<ReadFileAnswer> {
  try {
    const bytes = await workspace.fs.readFile(Uri.parse(uri));
    return { content: encoding === 'base64' ? toBase64(bytes) : new TextDecoder().decode(bytes) };
  } catch {
    // A file that cannot be read is, for the server, a file that is not there; it says so at the line that uses it.
    return {};
  }
}

/**
 * Walks the folder itself: the editor's own search finds nothing in folders whose provider cannot search.
 * Links are left alone, so that a circle of them ends.
 */
async function listFiles(folder: Uri, endings: readonly string[]): Promise<string[]> {
  const entries = await workspace.fs.readDirectory(folder);
  const found = await Promise.all(
    entries.map(async ([name, type]) => {
      const entry = Uri.joinPath(folder, name);
      if (type === FileType.Directory)
        return name.startsWith('.') || name === 'node_modules' ? [] : listFiles(entry, endings);
      return endings.some((ending) => name.endsWith(ending)) ? [entry.toString()] : [];
    }),
  );
  return found.flat();
}
