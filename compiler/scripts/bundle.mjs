// Bundles the command, the thread that helps it and the server for a browser's worker into one file each: `node bundle.mjs [FOLDER]`. Unbundled, reading a hundred small modules costs more than checking a file.
import { chmodSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const compiler = join(dirname(fileURLToPath(import.meta.url)), '..');
/** The folder to write to may be given. */
const folder = process.argv[2] ?? join(compiler, 'dist');

/** Native code cannot be bundled: it is loaded from node_modules, and only when a PDF is made. */
const external = ['@myriaddreamin/typst-ts-node-compiler'];

/** Packages in the older module form expect these names. */
const BANNER = `#!/usr/bin/env node
import { createRequire as baywrightRequire } from 'node:module';
const require = baywrightRequire(import.meta.url);
const __filename = require('node:url').fileURLToPath(import.meta.url);`;

await build({
  entryPoints: [join(compiler, 'src/cli/baywright.ts'), join(compiler, 'src/cli/thread.ts')],
  outdir: folder,
  bundle: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  conditions: ['source'],
  // The ES modules of packages that have both forms: their other form hides its imports from the bundler.
  mainFields: ['module', 'main'],
  external,
  alias: { 'iconv-lite': join(compiler, 'scripts/system-decoder.mjs') },
  minify: true,
  sourcemap: 'linked',
  sourcesContent: false,
  legalComments: 'linked',
  banner: { js: BANNER },
  logLevel: 'warning',
});
chmodSync(join(folder, 'baywright.js'), 0o755);

// A worker reads no files: those of a page are put into it.
const inside = (folder, suffix, encoding) =>
  readdirSync(join(compiler, folder))
    .filter((name) => name.endsWith(suffix) && name !== 'library.js')
    .map((name) => [name, readFileSync(join(compiler, folder, name)).toString(encoding)]);
const files = Object.fromEntries([
  ...inside('templates/html', '', 'utf8'),
  ...inside('fonts', '.woff2', 'base64'),
]);
await build({
  entryPoints: [join(compiler, 'src/editor/worker.ts')],
  outfile: join(folder, 'worker.js'),
  bundle: true,
  platform: 'browser',
  target: 'es2022',
  format: 'iife',
  conditions: ['source', 'browser'],
  define: { BUNDLED_FILES: JSON.stringify(files) },
  // A package asks for Node's streams where there are some, and does without.
  external: ['stream'],
  minify: true,
  legalComments: 'linked',
  logLevel: 'warning',
});
