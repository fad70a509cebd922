// One cause, one finding. What is wrong with a written figure makes what follows from it an echo: a pressure in the
// place of a torque has no strength to judge. So does a statement that names what its verb cannot take, and a figure
// where none goes is not judged at all.
import type { Finding } from '../diagnostics/define.js';
import { countAboveSet } from '../diagnostics/f212-count-above-set.js';
import { clauseNotForKind, clauseNotForVerb } from '../diagnostics/names.js';
import { unknownUnit } from '../diagnostics/q101-unknown-unit.js';
import { missingUnit, numberInText, valueNotKnown } from '../diagnostics/quantities.js';

/** Drops fastener findings on figures, and state findings on statements, that already have one of their own. */
export function withoutEchoes(findings: readonly Finding[]): readonly Finding[] {
  const figures = findings.filter(
    ({ code }) => code.startsWith('Q') && code !== numberInText.code && code !== valueNotKnown.code,
  );
  const statements = findings.filter(({ code }) => code.startsWith('N2') || code === countAboveSet.code);
  if (figures.length + statements.length === 0) return findings;
  const misplaced = statements.filter(({ code }) => code === clauseNotForVerb.code);
  const elsewhere = statements.filter(({ code }) => code === clauseNotForKind.code);
  return findings.filter((f) => {
    if (f.code === missingUnit.code && elsewhere.some((n) => touch(n, f))) return false;
    if (figures.includes(f)) return !misplaced.some((n) => touch(n, f));
    if (f.code === clauseNotForKind.code)
      return !figures.some((q) => q.code === unknownUnit.code && touch(q, f));
    if (f.code.startsWith('F')) return !figures.some((q) => touch(q, f));
    return !f.code.startsWith('S') || !statements.some((n) => touch(n, f));
  });
}

function touch(a: Finding, b: Finding): boolean {
  return a.file === b.file && a.span.start < b.span.end && b.span.start < a.span.end;
}
