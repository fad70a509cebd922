// The files that go into every page, read once.
import { createHash } from 'node:crypto';
import { readPackageBytes, readPackageText } from '../package-files.js';
import { assetsFrom } from './asset-files.js';
import type { PageAssets } from './frame.js';

let assets: PageAssets | undefined;

export function pageAssets(): PageAssets {
  assets ??= assetsFrom(
    (name) => readPackageText('templates', 'html', name),
    (name) => Buffer.from(readPackageBytes('fonts', name)).toString('base64'),
    (text) => createHash('sha256').update(text, 'utf8').digest('base64'),
  );
  return assets;
}
