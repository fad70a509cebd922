// Files by way of the client, for a server in a worker and for folders that are not on disk.
import type { Connection } from 'vscode-languageserver';
import { type Files, isOurs, isPicture, PICTURES } from './files.js';
import { type ListFilesQuestion, METHODS, type ReadFileAnswer } from './protocol.js';
import { normalUri } from './uris.js';

const ENDINGS = ['.bay', 'baywright.json', ...PICTURES];

export function clientFiles(connection: Connection): Files {
  /** Pictures that there are; unknown until the client has listed its files. */
  let pictures: Set<string> | undefined;
  const read = async (uri: string, encoding: 'utf-8' | 'base64'): Promise<string | undefined> => {
    const answer = await connection
      .sendRequest<ReadFileAnswer | null>(METHODS.readFile, { uri, encoding })
      .catch(() => null);
    return answer?.content;
  };
  return {
    read: (uri) => read(uri, 'utf-8'),
    readBase64: (uri) => read(uri, 'base64'),
    exists: (uri) => pictures?.has(normalUri(uri)) ?? true,
    async noticed(uri) {
      if ((await read(uri, 'base64')) === undefined) pictures?.delete(uri);
      else pictures?.add(uri);
    },
    async list(folder, deep) {
      const all = await connection
        .sendRequest<string[] | null>(METHODS.listFiles, { endings: ENDINGS } satisfies ListFilesQuestion)
        .catch(() => null);
      const listed = all?.map(normalUri) ?? [];
      if (all) pictures = new Set([...(pictures ?? []), ...listed.filter(isPicture)]);
      return listed.filter(
        (uri) => uri.startsWith(folder) && isOurs(uri) && (deep || !uri.slice(folder.length).includes('/')),
      );
    },
  };
}
