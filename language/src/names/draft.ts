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

const SECOND_HALF: ReadonlySet<string> = new Set(['installation', 'completion']);
