// One finding for a written quantity: what is wrong with the figure itself makes what follows from it an echo. A
// pressure in the place of a torque has no strength to judge, nor a wrench that reaches it.
import type { Finding } from '../diagnostics/define.js';
import { numberInText, valueNotKnown } from '../diagnostics/quantities.js';

/** Drops fastener findings on figures that already have a finding of their own. */
export function onePerQuantity(findings: readonly Finding[]): readonly Finding[] {
  const figures = findings.filter(
    ({ code }) => code.startsWith('Q') && code !== numberInText.code && code !== valueNotKnown.code,
  );
  if (figures.length === 0) return findings;
  return findings.filter(
    (f) =>
      !f.code.startsWith('F') ||
      !figures.some((q) => q.file === f.file && q.span.start < f.span.end && f.span.start < q.span.end),
  );
}
