// Bundles the command, what starts it and the server for a browser's worker into one file each: `node bundle.mjs [FOLDER]`. Unbundled, reading a hundred small modules costs more than checking a file.
import { chmodSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const compiler = join(dirname(fileURLToPath(import.meta.url)), '..');
/** The folder to write to may be given. */
const folder = process.argv[2] ?? join(compiler, 'dist');

/** Native code cannot be bundled: it is loaded from node_modules, and only when a PDF is made. */
const external = ['@myriaddreamin/typst-ts-node-compiler'];

/** Escapes all letters that are not ASCII in what is read: the bundler does so in strings, but not in patterns. */
const ascii = {
  name: 'ascii',
  setup: ({ onLoad }) =>
    onLoad({ filter: /\.[cm]?[jt]s$/ }, ({ path }) => {
      const escaped = (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`;
      const contents = readFileSync(path, 'utf8').replace(/\\([\s\S])|[^\0-\x7f]/g, (found, after) =>
        after === undefined ? escaped(found) : after > '\x7f' ? escaped(after) : found,
      );
      return { contents, loader: /ts$/.test(path) ? 'ts' : 'js' };
    }),
};

const common = {
  bundle: true,
  platform: 'node',
  target: 'node20',
  conditions: ['source'],
  // The ES modules of packages that have both forms: their other form hides its imports from the bundler.
  mainFields: ['module', 'main'],
  external,
  minify: true,
  sourcemap: 'linked',
  sourcesContent: false,
  legalComments: 'linked',
  charset: 'ascii',
  logLevel: 'warning',
};
// A script, not a module: only of scripts does Node 20 keep the compiled code. It is one expression, a function.
await build({
  ...common,
  entryPoints: [join(compiler, 'src/cli/program.ts')],
  outfile: join(folder, 'program.cjs'),
  format: 'cjs',
  // It is read as such, see baywright.ts.
  plugins: [ascii],
  supported: { 'dynamic-import': false },
  define: { 'import.meta.url': 'baywrightUrl' },
  // What Node has itself is not brought along: the decoder of other letters, and streams.
  alias: { 'iconv-lite': join(compiler, 'scripts/system-decoder.mjs'), 'readable-stream': 'node:stream' },
  banner: {
    js: "(function (module, require, __filename) { const baywrightUrl = require('node:url').pathToFileURL(__filename).href;",
  },
  footer: { js: '})' },
});
await build({
  ...common,
  entryPoints: [join(compiler, 'src/cli/baywright.ts')],
  outdir: folder,
  format: 'esm',
  banner: { js: '#!/usr/bin/env node' },
});
chmodSync(join(folder, 'baywright.js'), 0o755);

// A worker reads no files: those of a page are put into it, but for the type of letters that no output language has.
const inside = (folder, suffix, encoding) =>
  readdirSync(join(compiler, folder))
    .filter((name) => name.endsWith(suffix) && name !== 'library.js' && !name.includes('latin-ext'))
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
