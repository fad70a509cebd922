// Reads a sample library from its folder as the command does: folders with settings of their own are other libraries.
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createLibrary } from '../../language/src/analysis.js';
import type { Library } from '../../language/src/library.js';
import { settingsSchema } from '../../language/src/settings/index.js';

export const SAMPLES = fileURLToPath(new URL('../../samples', import.meta.url));
export const LIBRARIES = [
  ['main', SAMPLES],
  ['US', join(SAMPLES, 'us')],
] as const;

export interface SampleLibrary {
  readonly library: Library;
  /** Paths of its `.bay` files from its root. */
  readonly files: readonly string[];
}

export function sampleLibrary(root: string): SampleLibrary {
  const files = bayFiles(root, root);
  const settings = settingsSchema.parse(JSON.parse(readFileSync(join(root, 'baywright.json'), 'utf8')));
  const texts = new Map(files.map((path) => [path, readFileSync(join(root, path), 'utf8')]));
  return { library: createLibrary({ read: (path) => texts.get(path), list: () => files }, settings), files };
}

function bayFiles(folder: string, root: string): string[] {
  return readdirSync(folder, { withFileTypes: true })
    .flatMap((entry) => {
      const path = join(folder, entry.name);
      if (entry.isDirectory())
        return readdirSync(path).includes('baywright.json') ? [] : bayFiles(path, root);
      return entry.name.endsWith('.bay') ? [relative(root, path).replaceAll('\\', '/')] : [];
    })
    .sort();
}
