// Bundles the scripts of the pages into templates/html, where the renderers read them. They are kept in the tree so
// that pages can be made straight from the sources; a test says when they are out of date.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const folder = new URL('..', import.meta.url);
export const PAGE_SCRIPTS = { 'page.js': 'page/main.ts', 'library.js': 'page/library.ts' };

/** The scripts by file name. */
export async function pageScripts() {
  const made = {};
  for (const [name, entry] of Object.entries(PAGE_SCRIPTS)) {
    const result = await build({
      entryPoints: [fileURLToPath(new URL(entry, folder))],
      bundle: true,
      minify: true,
      format: 'iife',
      target: 'es2022',
      charset: 'ascii',
      legalComments: 'none',
      write: false,
    });
    made[name] = result.outputFiles[0].text;
  }
  return made;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const [name, text] of Object.entries(await pageScripts()))
    writeFileSync(new URL(`templates/html/${name}`, folder), text);
}
