// Writes the generated files of the extension: grammar, settings of the manifest, JSON Schema of baywright.json.
//   node extension/scripts/generate.mjs [--check]
import { mkdirSync } from 'node:fs';
import { build } from 'esbuild';

const root = new URL('../', import.meta.url);
const bundle = new URL('dist/generate.mjs', root);
for (const folder of ['dist', 'schemas', 'syntaxes']) mkdirSync(new URL(folder, root), { recursive: true });
await build({
  entryPoints: [new URL('generate/main.ts', root).pathname],
  outfile: bundle.pathname,
  bundle: true,
  platform: 'node',
  format: 'esm',
  conditions: ['source'],
  logLevel: 'warning',
});
const { main } = await import(bundle.href);
process.exitCode = main(root.href, process.argv.includes('--check'));
