// The small file in which the wording diagnostics show what is wrong and what is right.

/** A procedure whose only step has the lines given. */
export function textJob(...lines: readonly string[]): string {
  return `procedure A-1: Mirror, look at

places
  mirror-glass: Mirror glass

inspection
  step: Look at the mirror
${lines.map((l) => (l.startsWith('#') ? l : `    ${l}`)).join('\n')}
`;
}
