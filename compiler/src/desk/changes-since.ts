// What a guide says otherwise than an edition of it that was issued: texts, figures, and pictures by what is in their files.
import {
  type Change,
  changesBetween,
  everyLine,
  factsOfEdition,
  type IssuedEdition,
  type Job,
  resolvePath,
  type ShopFacts,
  type ShownFiles,
  shopFacts,
} from '@baywright/language';
import { join } from '../cli/paths.js';
import { settledMark } from '../cli/reads.js';
import type { Shell } from '../cli/shell.js';
import type { StoreLibrary } from './issue-store.js';
import { isTranslatedAs, translationChanges } from './issued-translations.js';

/** What is known of the two already, so that it need not be worked out. */
interface Known {
  /** What the edition says. */
  readonly says?: ShopFacts | undefined;
  /** Every file is letter for letter the one that was issued. */
  readonly isSameText?: boolean;
}

/** Empty where nothing changed, and where nothing was issued. */
export function changesSince(
  shell: Shell,
  library: StoreLibrary,
  edition: IssuedEdition | undefined,
  job: Job,
  { says, isSameText = false }: Known = {},
): Change[] {
  if (edition === undefined) return [];
  if (
    isSameText &&
    isShownAs(shell, library.root, edition, job) &&
    isTranslatedAs(shell, library, edition, job)
  )
    return [];
  const old = says ?? factsOfEdition(edition);
  if (old === undefined) return [];
  const now = factsNow(shell, library.root, job);
  return [...changesBetween(old, now), ...translationChanges(shell, library, edition, now, job)];
}

/** What a procedure says now, with the pictures that lie in its library. */
export const factsNow = (shell: Shell, root: string, job: Job): ShopFacts =>
  shopFacts(job, shownIn(shell, root));

/** The pictures and films that a procedure shows now, with their hashes, by library path. */
export function shownNow(shell: Shell, root: string, job: Job): Record<string, string> {
  const shown = new Map<string, string>();
  const hashOf = shownIn(shell, root);
  shopFacts(job, (path) => {
    const hash = hashOf(path);
    if (hash !== undefined) shown.set(path, hash);
    return hash;
  });
  return Object.fromEntries([...shown].sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** Tells the pictures of a library by what is in them. */
export function shownIn(shell: Shell, root: string): ShownFiles {
  return (path) => {
    const at = join(root, path);
    const known = hashes.get(shell) ?? new Map<string, { mark: string; hash: string }>();
    hashes.set(shell, known);
    const mark = settledMark(shell, at);
    const kept = known.get(at);
    if (mark !== undefined && kept?.mark === mark) return kept.hash;
    const bytes = shell.bytes(at);
    if (bytes === undefined) return undefined;
    const hash = shell.hash(bytes);
    if (mark !== undefined) known.set(at, { mark, hash });
    return hash;
  };
}

/** What was worked out for pictures that lie there as they did: an editor asks at every edit. */
const hashes = new WeakMap<Shell, Map<string, { readonly mark: string; readonly hash: string }>>();

/** Whether every picture is the one that was issued, as far as the issue says. */
function isShownAs(shell: Shell, root: string, { shown }: IssuedEdition, { scopes }: Job): boolean {
  if (shown === undefined) return true;
  const hashOf = shownIn(shell, root);
  return scopes.every(({ file }) =>
    everyLine(file.lines).every((line) => {
      if ((line.kind !== 'picture' && line.kind !== 'clip') || !line.path || line.path.hole) return true;
      const path = resolvePath(file.path, line.path.text);
      return path === undefined || shown[path] === hashOf(path);
    }),
  );
}
