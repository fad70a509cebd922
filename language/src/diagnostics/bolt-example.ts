// The small files in which the fastener diagnostics show what is wrong and what is right.

/** A catalogue with one set of bolts, whose clause lines are given. */
export function boltCatalogue(...lines: readonly string[]): string {
  return `catalogue: Bracket

sources
  S-1: Bracket sheet, issue 1

fasteners
  bracket-bolt: Bracket bolts
${lines.map((l) => (l.startsWith('#') ? l : `    ${l}`)).join('\n')}
`;
}

/** A procedure that takes one bracket off and fits it; the clause lines of its bolts and the lines that tighten them are given. */
export function boltJob(clauses: readonly string[], ...tightening: readonly string[]): string {
  const indented = (lines: readonly string[]) =>
    lines.map((l) => (l.startsWith('#') ? l : `    ${l}`)).join('\n');
  return `procedure A-1: Bracket, refit

sources
  S-1: Bracket sheet, issue 1

parts
  bracket: Bracket
    held by bracket-bolt

fasteners
  bracket-bolt: Bracket bolts
${indented(clauses)}

removal
  step: Take the bracket off
    remove bracket-bolt, bracket

installation
  step: Fit the bracket
    install bracket, bracket-bolt
${indented(tightening)}
`;
}
