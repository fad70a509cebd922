// The small file in which the diagnostics of branches show what is wrong and what is right.

/** A procedure whose one step has the lines given. */
export function readingJob(...lines: readonly string[]): string {
  const work = lines.map((line) => (line.startsWith('#') ? line : `    ${line}`)).join('\n');
  return `procedure A-1: Mirror, look at

limits
  gap: Gap
    at most 1 mm, per "S-1"

sources
  S-1: Mirror sheet

inspection
  step: Measure the gap
${work}
`;
}
