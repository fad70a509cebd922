// What the library has moved away from since a guide was issued, in one line for the editor's list of procedures.
import {
  type Analysis,
  changeSummary,
  factsOfEdition,
  type IssuedEdition,
  type ShopFacts,
} from '@baywright/language';
import type { Shell } from '../cli/shell.js';
import { changesSince } from './changes-since.js';
import { edition, issuedRevisions, type StoreLibrary } from './issue-store.js';

/** Answers for one run of the server. An issue never changes, so what it says is read once. */
export function movedOnSince(
  shell: Shell,
): (library: StoreLibrary, number: string, analysis: () => Analysis) => string | undefined {
  const known = new Map<string, { issued: IssuedEdition; says: ShopFacts | undefined } | undefined>();
  return (library, number, analysis) => {
    const revision = issuedRevisions(shell, library, number).at(-1);
    if (revision === undefined) return undefined;
    const key = `${library.root}#${number}#${revision}`;
    if (!known.has(key)) {
      const issued = edition(shell, library, number, revision);
      known.set(key, issued && { issued, says: factsOfEdition(issued) });
    }
    const old = known.get(key);
    const changes = old ? changesSince(shell, library, old.issued, analysis().job, { says: old.says }) : [];
    return changes.length === 0 ? undefined : changeSummary(changes);
  };
}
