// Procedures by their number and title, and whether one is still worked by, as far as their texts tell.
import type { FileModel } from '@baywright/language';
import type { Snapshot } from '../snapshot.js';

/** The opening line of a procedure: told by its text, so that a list does not read a whole library. */
export const PROCEDURE = /^procedure\b[ \t]*([^\s:]*)[ \t]*:?[ \t]*(.*)$/m;

/** Nobody works by it any more: what names it is struck out, and offered last. */
export const isWithdrawn = (model: FileModel): boolean => model.status?.status?.text === 'withdrawn';

export interface Numbered {
  readonly number: string;
  readonly title: string;
  readonly withdrawn: boolean;
}

/** Procedures that have an operation of this name, withdrawn ones last. */
export function proceduresWith(snapshot: Snapshot, operation: string): Numbered[] {
  const found = snapshot.shelf.paths().flatMap((p) => {
    const text = snapshot.file(p)?.text ?? '';
    const has = [...text.matchAll(/^\s*operation[ \t]+([^\s:]+)/gm)].some(([, name]) => name === operation);
    const [, number = '', title = ''] = (has && PROCEDURE.exec(text)) || [];
    const withdrawn = /^status[ \t]+withdrawn\b/m.test(text);
    return number === '' || number === '?' ? [] : [{ number, title: title.trim(), withdrawn }];
  });
  return found.sort((a, b) => Number(a.withdrawn) - Number(b.withdrawn));
}
