// Makes the preferred fixes of findings, again and again until none are left to make.
import type { Finding, TextEdit } from '@baywright/language';
import { checkShelf } from './check.js';
import type { Shelf } from './libraries.js';
import { join } from './paths.js';
import type { Shell } from './shell.js';

export interface Fixed {
  /** How many findings were mended. */
  readonly fixes: number;
  /** Library paths of the files written. */
  readonly files: readonly string[];
}

/** A fix may uncover another; a chain of fixes longer than this is taken for a circle. */
const MOST_ROUNDS = 10;

/**
 * Applies preferred fixes to the files of a library and writes each changed file once a round. Only files that were
 * asked for are changed: a fix that reaches into another one is left to its author.
 */
export function fixShelf(shell: Shell, shelf: Shelf): Fixed {
  const own = new Set(shelf.files);
  const written = new Set<string>();
  let fixes = 0;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const findings = checkShelf(shelf).map(({ finding }) => finding);
    const { taken, edits } = compatibleFixes(findings, own);
    if (taken === 0) break;
    fixes += taken;
    for (const [file, list] of edits) {
      shell.write(join(shelf.root, file), applyEdits(shelf.text(file) ?? '', list));
      shelf.forget(file);
      written.add(file);
    }
  }
  return { fixes, files: [...written].sort() };
}

/** The preferred fixes that do not touch each other, in the order of the findings. */
function compatibleFixes(findings: readonly Finding[], own: ReadonlySet<string>) {
  const edits = new Map<string, TextEdit[]>();
  let taken = 0;
  for (const finding of findings) {
    const fix = finding.fixes.find((one) => one.preferred === true);
    if (fix === undefined || !fix.edits.every((edit) => own.has(edit.file))) continue;
    if (fix.edits.some((edit) => (edits.get(edit.file) ?? []).some((other) => collide(edit, other))))
      continue;
    for (const edit of fix.edits) edits.set(edit.file, [...(edits.get(edit.file) ?? []), edit]);
    taken++;
  }
  return { taken, edits };
}

/** Two edits collide when they share a character, or when both insert at one place. */
function collide(a: TextEdit, b: TextEdit): boolean {
  const isSamePlace = a.span.start === b.span.start && a.span.end === b.span.end;
  return isSamePlace || (a.span.start < b.span.end && b.span.start < a.span.end);
}

/** A text with edits made to it; spans count in the text as it was. */
export function applyEdits(text: string, edits: readonly TextEdit[]): string {
  return [...edits]
    .sort((a, b) => b.span.start - a.span.start || b.span.end - a.span.end)
    .reduce(
      (whole, { span, text: replacement }) =>
        whole.slice(0, span.start) + replacement + whole.slice(span.end),
      text,
    );
}
