// The small files in which the fluid diagnostics show what is wrong and what is right.

const indented = (lines: readonly string[]) =>
  lines.map((l) => (l.startsWith('#') ? l : `    ${l}`)).join('\n');

/** A catalogue with one fluid, whose clause lines are given. */
export function oilCatalogue(...lines: readonly string[]): string {
  return `catalogue: Axle

sources
  S-1: Axle sheet, issue 1

fluids
  axle-oil: Axle oil
${indented(lines)}
`;
}

/** A procedure that lets axle oil out and fills it again; the clauses of the oil and the lines of work in between are given. */
export function oilJob(
  clauses: readonly string[],
  draining: readonly string[],
  filling: readonly string[],
  supplies = '',
): string {
  return `procedure A-1: Axle oil, change

sources
  S-1: Axle sheet, issue 1

fluids
  axle-oil: Axle oil
${indented(clauses)}
    drain at drain-plug
    fill at fill-plug

fasteners
  drain-plug: Drain plug
    1 of M18x1.5, hex 24 mm
    torque 40 N·m, per "S-1"
  fill-plug: Fill plug
    1 of M18x1.5, hex 24 mm
    torque 40 N·m, per "S-1"
${supplies}
removal
  step: Let the oil out
    caution: Axle oil can burn. Let it cool.
    remove fill-plug, drain-plug
${indented(draining)}

installation
  step: Fill
    install drain-plug
    torque drain-plug
${indented(filling)}
    install fill-plug
    torque fill-plug
`;
}
