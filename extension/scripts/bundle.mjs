// Bundles the client: one file for the desktop and the browser, one for the preview page. They are made as small as can
// be, since a browser fetches them.
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
export async function bundle() {
  await Promise.all([
    // The editor loads it as CommonJS and hands it `vscode` itself. What is Node's is asked for on the desktop alone.
    build({
      ...common,
      external: ['vscode'],
      format: 'cjs',
      entryPoints: [at('src/client.ts')],
      outfile: at('dist/client.cjs'),
      platform: 'node',
      // Both ways to a server are in it, and each is exported for its platform alone.
      conditions: ['source', 'module', 'browser'],
    }),
    build({
      ...common,
      entryPoints: [at('src/preview/webview/main.ts')],
      outfile: at('dist/preview.js'),
      platform: 'browser',
      format: 'iife',
    }),
  ]);
  await writeFile(at('dist/client.cjs'), await smaller(at('dist/client.cjs')));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await bundle();
