// The sample library in memory, with single files replaced.
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { createLibrary } from '../../language/src/analysis.js';
import type { Finding } from '../../language/src/diagnostics/define.js';
import type { Analysis, Library } from '../../language/src/library.js';
import { DEFAULT_SETTINGS } from '../../language/src/settings/index.js';

/** All `.bay` files under a folder by path from it; folders with settings of their own are other libraries. */
export function readLibrary(root: string): Map<string, string> {
  const files = new Map<string, string>();
  const visit = (folder: string): void => {
    for (const name of readdirSync(join(root, folder)).sort()) {
      const path = folder === '' ? name : `${folder}/${name}`;
      if (statSync(join(root, path)).isDirectory()) {
        if (!readdirSync(join(root, path)).includes('baywright.json')) visit(path);
      } else if (name.endsWith('.bay')) files.set(path, readFileSync(join(root, path), 'utf8'));
    }
  };
  visit('');
  return files;
}

/** A library over the files, and a way to analyse one of them with another text. */
export function libraryOver(files: ReadonlyMap<string, string>): {
  library: Library;
  withText(path: string, text: string): Analysis;
} {
  const replaced = new Map<string, string>();
  const host = {
    read: (path: string) => replaced.get(path) ?? files.get(path),
    list: () => [...files.keys()],
  };
  const library = createLibrary(host, DEFAULT_SETTINGS);
  return {
    library,
    withText(path, text) {
      replaced.set(path, text);
      library.changed(path);
      const analysis = library.analyse(path);
      replaced.delete(path);
      library.changed(path);
      if (!analysis) throw new Error(`no such file: ${path}`);
      return analysis;
    },
  };
}

/** Findings that count in the fault report: errors and warnings. */
export function grave(findings: readonly Finding[]): Finding[] {
  return findings.filter((f) => f.severity === 'error' || f.severity === 'warning');
}

/** The text after a fix's edits in one file. */
export function applyEdits(
  text: string,
  path: string,
  edits: readonly { file: string; span: { start: number; end: number }; text: string }[],
): string {
  return edits
    .filter((e) => e.file === path)
    .sort((a, b) => b.span.start - a.span.start)
    .reduce((t, e) => t.slice(0, e.span.start) + e.text + t.slice(e.span.end), text);
}
