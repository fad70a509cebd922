// Reads files for a server that cannot: one in a browser worker, or one asked about folders that are not on disk.
import { Uri, workspace } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { type ListFilesQuestion, METHODS, type ReadFileAnswer, type ReadFileQuestion } from '../protocol.js';
import { toBase64 } from './base64.js';

export function serveFiles(client: BaseLanguageClient): void {
  client.onRequest(METHODS.readFile, readFile);
  client.onRequest(METHODS.listFiles, async ({ pattern }: ListFilesQuestion) => {
    const files = await workspace.findFiles(pattern, '**/{node_modules,.git}/**');
    return files.map((file) => file.toString());
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
