// The door of the syntax: a text in, its tree and findings out. Layout works on whole lines and cannot fail; it
// alone decides which line belongs to which. Each line's code is then read alone, so an error stays on its line.
// Nothing here recurses over the depth of the tree or the length of a line.
import type { Finding } from '../diagnostics/define.js';
import type { EarlierLines } from './earlier-lines.js';
import { readFile } from './layout.js';
import type { Tree } from './tree.js';

export interface Parsed {
  readonly tree: Tree;
  readonly findings: readonly Finding[];
}

/**
 * Reads a file's text. Never throws; what cannot be read is kept in the tree and reported. Linear time. `earlier` holds
 * the lines of the same file before an edit, and is told those of now; the tree is the same without it.
 */
export function parse(
  text: string,
  file: string,
  earlier?: EarlierLines,
): { tree: Tree; findings: Finding[] } {
  const { lines, comments, findings } = readFile(text, file, earlier);
  return { tree: { text, lines, comments }, findings };
}

export { dump } from './dump.js';
export { EarlierLines } from './earlier-lines.js';
export * from './tree.js';
export { lineAt, pathAt, walkLines } from './walk.js';
