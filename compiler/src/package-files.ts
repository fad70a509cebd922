// Finds the files that ship beside the code: type, templates, page scripts. The code may run from its sources, from
// the compiled files or from one bundle, so the package is found by its own manifest.
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

let root: string | undefined;

/** Absolute path of a file or folder of this package. */
export function packagePath(...parts: readonly string[]): string {
  root ??= findRoot(dirname(fileURLToPath(import.meta.url)));
  return join(root, ...parts);
}

export function readPackageText(...parts: readonly string[]): string {
  return readFileSync(packagePath(...parts), 'utf8');
}

export function readPackageBytes(...parts: readonly string[]): Uint8Array {
  return readFileSync(packagePath(...parts));
}

function findRoot(from: string): string {
  for (let folder = from; ; folder = dirname(folder)) {
    if (existsSync(join(folder, 'templates', 'pdf', 'base.typ'))) return folder;
    if (dirname(folder) === folder)
      throw new Error(`The files of Baywright are incomplete: no templates above ${from}. Install it again.`);
  }
}
