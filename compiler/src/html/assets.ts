// The files that go into every page, read once.
import { createHash } from 'node:crypto';
import { readPackageBytes, readPackageText } from '../package-files.js';
import type { PageAssets } from './frame.js';

let assets: PageAssets | undefined;

export function pageAssets(): PageAssets {
  const font = (name: string) => Buffer.from(readPackageBytes('fonts', name)).toString('base64');
  assets ??= {
    styles: readPackageText('templates', 'html', 'page.css')
      .replace(/\/\*[\s\S]*?\*\//g, '')
      .replace(/\n+/g, '\n'),
    script: readPackageText('templates', 'html', 'page.js'),
    libraryScript: readPackageText('templates', 'html', 'library.js'),
    latin: font('AtkinsonHyperlegibleNext-latin.woff2'),
    latinExtended: font('AtkinsonHyperlegibleNext-latin-ext.woff2'),
    hash: (text) => createHash('sha256').update(text, 'utf8').digest('base64'),
  };
  return assets;
}
