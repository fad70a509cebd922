// Bundles the scripts and the styles of the pages into templates/html, where the renderers read them. They are kept in
// the tree so that pages can be made straight from the sources; a test says when they are out of date.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const folder = new URL('..', import.meta.url);
const PAGE_FILES = {
  'page.js': 'page/main.ts',
  'library.js': 'page/library.ts',
  'page.css': 'page/styles/page.css',
};

/** What the files are to hold, by their names. */
export async function pageFiles() {
  const made = {};
  for (const [name, entry] of Object.entries(PAGE_FILES)) {
    const result = await build({
      entryPoints: [fileURLToPath(new URL(entry, folder))],
      bundle: true,
      minify: true,
      // Browsers of 2022: neither the scripts nor the styles are rewritten for older ones.
      ...(name.endsWith('.js') ? { format: 'iife', target: 'es2022' } : {}),
      charset: 'ascii',
      legalComments: 'none',
      write: false,
    });
    made[name] = result.outputFiles[0].text;
  }
  return made;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const [name, text] of Object.entries(await pageFiles()))
    writeFileSync(new URL(`templates/html/${name}`, folder), text);
}
