// Bundles the client: one file for the desktop, one for the browser, one for the preview page. They are made as small as
// can be, since a browser fetches them.
//   node extension/scripts/bundle.mjs
import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { minify } from 'terser';

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
  await Promise.all([at('dist/desktop.cjs'), at('dist/web.js')].map(smaller));
}

/** What the bundler leaves of classes and of tests for the other platform, a tenth of it. */
async function smaller(file) {
  const { code } = await minify(await readFile(file, 'utf8'), { compress: true, mangle: true });
  if (code === undefined) throw new Error(`nothing is left of ${file}`);
  await writeFile(file, code);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await bundle();
