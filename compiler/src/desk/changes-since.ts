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
import type { StoreLibrary } from './issue-store.js';
import { translationChanges } from './issued-translations.js';

/** Empty where nothing changed, and where nothing was issued. `old` is what the edition says, where that is known already. */
export function changesSince(
  shell: Shell,
  library: StoreLibrary,
  edition: IssuedEdition | undefined,
  analysis: Analysis,
  old: ShopFacts | undefined = edition && factsOfEdition(edition),
): Change[] {
  if (edition === undefined || old === undefined) return [];
  const now = factsNow(shell, library.root, analysis.job);
  return [...changesBetween(old, now), ...translationChanges(shell, library, edition, now, analysis)];
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
