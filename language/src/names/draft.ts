// How far a procedure has come: what is still to be written is open there, and not wrong.
import type { FileModel } from './model.js';

export function isDraft({ status }: FileModel): boolean {
  return status?.status === undefined || status.status.text === 'draft';
}

/** A draft whose second half has not been begun: nothing is put back yet, nor handed back. */
export function isHalfWritten(file: FileModel): boolean {
  return (
    isDraft(file) && !file.work.some(({ word, children }) => SECOND_HALF.has(word) && children.length > 0)
  );
}

/** A draft of no more than its taking apart so far: most of what it declares is still to be used. */
export function isJustBegun(file: FileModel): boolean {
  return (
    isDraft(file) && file.work.every(({ word, children }) => FIRST_HALF.has(word) || children.length === 0)
  );
}

/** A draft whose completion has no line of work yet: how the vehicle is handed back is still to be written. */
export function isWithoutEnd(file: FileModel): boolean {
  return (
    isDraft(file) &&
    !file.work.some(
      ({ word, children }) => word === 'completion' && children.some((step) => step.children.length > 0),
    )
  );
}

/** Where the work of a draft ends so far, whatever goes on from there is still to be written. */
export function isEndOfDraft(file: FileModel, { end }: { readonly end: number }): boolean {
  return isDraft(file) && end === file.work.at(-1)?.end;
}

const FIRST_HALF: ReadonlySet<string> = new Set(['preparation', 'removal']);
const SECOND_HALF: ReadonlySet<string> = new Set(['installation', 'completion']);
