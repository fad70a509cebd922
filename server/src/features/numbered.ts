// Procedures by their number and title, as far as their texts tell.
import type { Snapshot } from '../snapshot.js';

/** The opening line of a procedure: told by its text, so that a list does not read a whole library. */
export const PROCEDURE = /^procedure\b[ \t]*([^\s:]*)[ \t]*:?[ \t]*(.*)$/m;

/** Procedures that have an operation of this name. */
export function proceduresWith(snapshot: Snapshot, operation: string): { number: string; title: string }[] {
  return snapshot.shelf.paths().flatMap((p) => {
    const text = snapshot.file(p)?.text ?? '';
    const has = [...text.matchAll(/^\s*operation[ \t]+([^\s:]+)/gm)].some(([, name]) => name === operation);
    const [, number = '', title = ''] = (has && PROCEDURE.exec(text)) || [];
    return number === '' || number === '?' ? [] : [{ number, title: title.trim() }];
  });
}
