// The sample library is clean: no finding, no question, in the main library and the one in US units.
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { createLibrary } from '../../language/src/analysis.js';
import type { Library } from '../../language/src/library.js';
import { settingsSchema } from '../../language/src/settings/index.js';
import { indexLines, positionAt } from '../../language/src/text/line-index.js';

const SAMPLES = fileURLToPath(new URL('../../samples', import.meta.url));

/** A library read from a folder; folders with settings of their own are other libraries. */
function libraryAt(root: string): { library: Library; files: readonly string[] } {
  const files = bayFiles(root, root);
  const settings = settingsSchema.parse(JSON.parse(readFileSync(join(root, 'baywright.json'), 'utf8')));
  const texts = new Map(files.map((path) => [path, readFileSync(join(root, path), 'utf8')]));
  return { library: createLibrary({ read: (path) => texts.get(path), list: () => files }, settings), files };
}

function bayFiles(folder: string, root: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return readdirSync(path).includes('baywright.json') ? [] : bayFiles(path, root);
    return entry.name.endsWith('.bay') ? [relative(root, path).replaceAll('\\', '/')] : [];
  }).sort();
}

/** Findings as `path:line:column CODE message`, so that a failure reads as the command's report does. */
function findingsOf(library: Library, path: string): string[] {
  const analysis = library.analyse(path);
  return (analysis?.findings ?? []).map((finding) => {
    const text = library.host.read(finding.file) ?? '';
    const at = positionAt(indexLines(text), finding.span.start);
    return `${finding.file}:${at.line + 1}:${at.column + 1} ${finding.code} ${finding.message}`;
  });
}

for (const [name, root] of [['main', SAMPLES], ['US', join(SAMPLES, 'us')]] as const) {
  describe(`the ${name} sample library`, () => {
    const { library, files } = libraryAt(root);
    it.each(files)('%s is clean', (path) => {
      expect(findingsOf(library, path)).toEqual([]);
    });
  });
}
