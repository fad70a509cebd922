// Bundles the client: one file for the desktop, one for the browser, one for the preview page. They are made as small as
// can be, since a browser fetches them.
//   node extension/scripts/bundle.mjs
import { writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { smaller } from './smaller.mjs';

const at = (path) => fileURLToPath(new URL(`../${path}`, import.meta.url));
const common = {
  bundle: true,
  minify: true,
  logLevel: 'warning',
  target: 'es2022',
  legalComments: 'none',
};
// The editor loads both entries as CommonJS and hands them `vscode` itself.
const client = { ...common, external: ['vscode'], format: 'cjs' };

export async function bundle() {
  await Promise.all([
    build({
      ...client,
      entryPoints: [at('src/desktop.ts')],
      outfile: at('dist/desktop.cjs'),
      platform: 'node',
      conditions: ['source', 'module'],
      target: 'node20',
    }),
    build({
      ...client,
      entryPoints: [at('src/web.ts')],
      outfile: at('dist/web.js'),
      platform: 'browser',
      conditions: ['source', 'browser'],
    }),
    build({
      ...common,
      entryPoints: [at('src/preview/webview/main.ts')],
      outfile: at('dist/preview.js'),
      platform: 'browser',
      format: 'iife',
    }),
  ]);
  for (const file of [at('dist/desktop.cjs'), at('dist/web.js')]) await writeFile(file, await smaller(file));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await bundle();
