// What a guide says otherwise than an edition of it that was issued: texts, figures, and pictures by what is in their files.
import {
  type Analysis,
  type Change,
  changesBetween,
  factsOfEdition,
  type IssuedEdition,
  type ShopFacts,
  type ShownFiles,
  shopFacts,
} from '@baywright/language';
import { join } from '../cli/paths.js';
import type { Shell } from '../cli/shell.js';

/** Empty where nothing changed, and where nothing was issued. */
export function changesSince(
  shell: Shell,
  root: string,
  edition: IssuedEdition | undefined,
  analysis: Analysis,
): Change[] {
  const old = edition && factsOfEdition(edition);
  return old === undefined ? [] : changesBetween(old, factsNow(shell, root, analysis.job));
}

/** What a procedure says now, with the pictures that lie in its library. */
export const factsNow = (shell: Shell, root: string, job: Analysis['job']): ShopFacts =>
  shopFacts(job, shownIn(shell, root));

/** The pictures and films that a procedure shows now, with their hashes, by library path. */
export function shownNow(shell: Shell, root: string, { job }: Analysis): Record<string, string> {
  const shown = new Map<string, string>();
  shopFacts(job, (path) => {
    const hash = shownIn(shell, root)(path);
    if (hash !== undefined) shown.set(path, hash);
    return hash;
  });
  return Object.fromEntries([...shown].sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** Tells the pictures of a library by what is in them. */
export function shownIn(shell: Shell, root: string): ShownFiles {
  return (path) => {
    const bytes = shell.bytes(join(root, path));
    return bytes === undefined ? undefined : shell.hash(bytes);
  };
}
