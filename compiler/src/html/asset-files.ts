// The fixed parts of every page out of their files, wherever those are kept: beside the code, or in a bundle.
import type { PageAssets } from './frame.js';

/** Names of the files in `templates/html` and `fonts`. */
const PAGE_FILES = {
  styles: 'page.css',
  script: 'page.js',
  libraryScript: 'library.js',
  latin: 'AtkinsonHyperlegibleNext-latin.woff2',
  latinExtended: 'AtkinsonHyperlegibleNext-latin-ext.woff2',
} as const;

/** `text` reads a file of the templates, `font` one of the type as base64. */
export function assetsFrom(
  text: (name: string) => string,
  font: (name: string) => string,
  hash: PageAssets['hash'],
): PageAssets {
  return {
    styles: text(PAGE_FILES.styles)
      .replace(/\/\*[\s\S]*?\*\//g, '')
      .replace(/\n+/g, '\n'),
    script: text(PAGE_FILES.script),
    libraryScript: text(PAGE_FILES.libraryScript),
    latin: font(PAGE_FILES.latin),
    latinExtended: font(PAGE_FILES.latinExtended),
    hash,
  };
}
