// Writes the generated files of the extension, or with `--check` says which of them are not as generated.
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { settingsJsonSchema } from '../../language/src/settings/schema.js';
import { buildGrammar } from './grammar.js';
import { manifestParts } from './manifest.js';

/** Each generated file below `extension/`, with its text. `read` gives the present text of files that are generated in part. */
export function generatedFiles(read: (name: string) => string): ReadonlyMap<string, string> {
  const parts = manifestParts();
  const manifest = JSON.parse(read('package.json')) as { contributes: Record<string, unknown> };
  Object.assign(manifest.contributes, {
    configuration: parts.configuration,
    semanticTokenTypes: parts.semanticTokenTypes,
    semanticTokenModifiers: parts.semanticTokenModifiers,
    semanticTokenScopes: parts.semanticTokenScopes,
  });
  const written = JSON.parse(read('package.nls.json')) as Record<string, string>;
  const byHand = Object.entries(written).filter(([key]) => !key.startsWith('setting.'));
  return new Map([
    ['package.json', json(manifest)],
    ['package.nls.json', json({ ...Object.fromEntries(byHand), ...parts.texts })],
    ['syntaxes/baywright.tmLanguage.json', json(buildGrammar())],
    ['schemas/baywright.schema.json', json(settingsJsonSchema())],
  ]);
}

function json(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}

/** Runs the command; `root` is the extension folder as a URL ending in a slash. */
export function main(root: string, check: boolean): number {
  const path = (name: string): string => fileURLToPath(new URL(name, root));
  let stale = 0;
  for (const [name, text] of generatedFiles((file) => readFileSync(path(file), 'utf8'))) {
    if (present(path(name)) === text) continue;
    stale += 1;
    if (check) process.stderr.write(`extension/${name} is not as generated. Run: npm run generate\n`);
    else writeFileSync(pathToFileURL(path(name)), text);
  }
  return check && stale > 0 ? 1 : 0;
}

function present(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
}
