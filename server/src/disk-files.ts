// Files from the disk, for the Node entry.
import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { type Files, isHidden, isOurs } from './files.js';
import { normalUri } from './uris.js';

export const diskFiles: Files = {
  read: (uri) => readOrNothing(uri, 'utf8'),
  readBase64: (uri) => readOrNothing(uri, 'base64'),
  exists(uri) {
    const path = pathOf(uri);
    return path !== undefined && existsSync(path);
  },
  async list(folder, deep) {
    const path = pathOf(folder);
    if (path === undefined) return [];
    const found: string[] = [];
    const waiting = [path];
    for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
      const here = next;
      const entries = await readdir(here, { withFileTypes: true }).catch(() => []);
      for (const entry of entries) {
        if (isHidden(entry.name)) continue;
        const own = `${here}/${entry.name}`;
        if (entry.isDirectory() && deep) waiting.push(own);
        else if (entry.isFile() && isOurs(`/${entry.name}`)) found.push(normalUri(pathToFileURL(own).href));
      }
    }
    return found.sort();
  },
};

async function readOrNothing(uri: string, encoding: BufferEncoding): Promise<string | undefined> {
  const path = pathOf(uri);
  if (path === undefined) return undefined;
  // A file that cannot be read is one that is not there; the line that uses it says so.
  return readFile(path, encoding).catch(() => undefined);
}

function pathOf(uri: string): string | undefined {
  if (!uri.startsWith('file:')) return undefined;
  try {
    return fileURLToPath(uri).replace(/[\\/]$/, '');
  } catch {
    return undefined;
  }
}
