// Bundles the server: dist/node.js for Node, dist/worker.js for a web worker. Unbundled, reading a hundred small
// modules takes longer than checking a library.   node server/scripts/bundle.mjs
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const server = join(dirname(fileURLToPath(import.meta.url)), '..');
const common = { bundle: true, minify: true, logLevel: 'warning', legalComments: 'none', sourcemap: false };

await Promise.all([
  build({
    ...common,
    entryPoints: [join(server, 'src/main.ts')],
    outfile: join(server, 'dist/node.js'),
    platform: 'node',
    target: 'node20',
    format: 'esm',
    conditions: ['source'],
    mainFields: ['module', 'main'],
    banner: {
      // Packages in the older module form ask for Node's own modules through `require`.
      js: "import { createRequire as baywrightRequire } from 'node:module';\nconst require = baywrightRequire(import.meta.url);",
    },
  }),
  build({
    ...common,
    entryPoints: [join(server, 'src/worker-main.ts')],
    outfile: join(server, 'dist/worker.js'),
    platform: 'browser',
    target: 'es2022',
    format: 'iife',
    conditions: ['source', 'browser'],
  }),
]);
