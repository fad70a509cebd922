// After a change in a catalogue: which guides must be issued again, the revision line of each, and the slip
// that says which printed copies to pull.
import type { FileModel, Language } from '@baywright/language';
import type { FoundProcedure } from './find.js';
import { type MasterRow, sinceIssue } from './master-list.js';

export interface Reissue {
  readonly row: MasterRow;
  readonly procedure: FoundProcedure;
  /** The revision that the next issue will have. */
  readonly next: number;
  /** Whether its revision line is written already. */
  readonly isRaised: boolean;
}

/** The guides in the workshop that the library has moved away from. */
export function guidesToReissue(
  rows: readonly MasterRow[],
  procedures: readonly FoundProcedure[],
): Reissue[] {
  return rows.flatMap((row) => {
    const procedure = procedures.find(({ number }) => number === row.number);
    if (row.state !== 'changed' || row.issue === undefined || procedure === undefined) return [];
    const held = row.issue.record.revision;
    const isRaised = (row.revision ?? 0) > held;
    return [{ row, procedure, next: isRaised ? (row.revision ?? held + 1) : held + 1, isRaised }];
  });
}

/**
 * The revision lines of the guides, each with those it is for: what changed in a guide and nothing that changed in others
 * alone, in the language the shop writes in. Guides that say the same share a line.
 */
export function revisionWords(
  guides: readonly Reissue[],
  language: Language = 'en',
): ReadonlyMap<string, readonly Reissue[]> {
  const lines = new Map<string, Reissue[]>();
  for (const guide of guides) {
    const line = sinceIssue(guide.row, language);
    lines.set(line, [...(lines.get(line) ?? []), guide]);
  }
  return lines;
}

/**
 * The text of a procedure with a revision line above those it has, and set back to a draft until it is proved again. What
 * was withdrawn stays so: nobody proves it.
 */
export function withRevision(
  { tree, revisions, status, head }: FileModel,
  revision: number,
  day: string,
  words: string,
): string {
  const { text } = tree;
  const newline = /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
  const line = `revision ${revision} on ${day}: ${words}${newline}`;
  const at = revisions[0]?.start ?? lineAfter(text, head?.end ?? 0);
  const edits = [{ start: at, end: at, text: line }];
  if (status !== undefined && status.status?.text !== 'withdrawn')
    edits.push({ start: status.start, end: status.end, text: 'status draft' });
  return edits
    .sort((a, b) => b.start - a.start)
    .reduce((whole, edit) => whole.slice(0, edit.start) + edit.text + whole.slice(edit.end), text);
}

function lineAfter(text: string, offset: number): number {
  const end = /\r\n|\n|\r/.exec(text.slice(offset));
  return end === null ? text.length : offset + end.index + end[0].length;
}
