// Bundles the client: one file for the desktop, one for the browser, one for the preview page.
//   node extension/scripts/bundle.mjs
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

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
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await bundle();
