// Files by way of the client, for a server in a worker and for folders that are not on disk.
import type { Connection } from 'vscode-languageserver';
import { type Files, isOurs } from './files.js';
import { type ListFilesQuestion, METHODS, type ReadFileAnswer } from './protocol.js';
import { normalUri } from './uris.js';

const ENDINGS = ['.bay', 'baywright.json'];

export function clientFiles(connection: Connection): Files {
  const read = async (uri: string, encoding: 'utf-8' | 'base64'): Promise<string | undefined> => {
    const answer = await connection
      .sendRequest<ReadFileAnswer | null>(METHODS.readFile, { uri, encoding })
      .catch(() => null);
    return answer?.content;
  };
  return {
    read: (uri) => read(uri, 'utf-8'),
    readBase64: (uri) => read(uri, 'base64'),
    async list(folder, deep) {
      const all = await connection
        .sendRequest<string[] | null>(METHODS.listFiles, { endings: ENDINGS } satisfies ListFilesQuestion)
        .catch(() => null);
      return (all ?? [])
        .map(normalUri)
        .filter(
          (uri) => uri.startsWith(folder) && isOurs(uri) && (deep || !uri.slice(folder.length).includes('/')),
        );
    },
  };
}
