// Paths as the command line shows them: forward slashes, relative to the current folder.
import { posix } from 'node:path';

/** A path below `root`, counted from it; undefined when it lies outside. */
export function below(root: string, path: string): string | undefined {
  if (path === root) return '';
  const folder = root.endsWith('/') ? root : `${root}/`;
  return path.startsWith(folder) ? path.slice(folder.length) : undefined;
}

/** The path from one absolute folder to another place, with `..` where needed. */
export function relativeTo(folder: string, path: string): string {
  return below(folder, path) ?? posix.relative(folder, path);
}

export const join = (folder: string, path: string): string => posix.join(folder, path);
export const parent = (path: string): string => posix.dirname(path);
export const fileName = (path: string): string => posix.basename(path);

/** A folder and all above it, innermost first. */
export function upward(folder: string): string[] {
  const above = parent(folder);
  return above === folder ? [folder] : [folder, ...upward(above)];
}
