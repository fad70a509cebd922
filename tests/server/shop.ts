// A small invented library for the session tests: one catalogue, one procedure that uses it.
export const CATALOGUE = `catalogue: Maristow 300 delivery van

sources
  HL-90: Wheels and tyres sheet, issue 6

vehicles
  maristow-300: Maristow 300 delivery van
    years 2018 to 2025
    option axle light, heavy

parts
  wheel: Road wheel
    held by wheel-nut
    marked wheel

fasteners
  wheel-nut: Wheel nuts
    5 of M14x1.5, class 10.9, hex 21 mm
    torque 160 N·m, order star, on ground, per "HL-90"

places
  rear-wheels: Rear wheels
  sill-points: Sill lifting points

tools
  axle-stands: Axle stands, a pair
    rated 3000 kg
  trolley-jack: Trolley jack
    rated 2000 kg
`;

export const HEAD = `procedure FB-03: Front brake disc, replace

use "../catalogue/van.bay"

applies to maristow-300

parts
  disc: Brake disc
    behind caliper
  caliper: Brake caliper
    held by caliper-bolt
    behind wheel

fasteners
  caliper-bolt: Caliper bolts
    2 of M12x1.5, class 10.9, hex 18 mm
    torque 110 N·m, per "HL-90"
    behind wheel

removal
  step: Raise the van
    warning: Support the van on rated stands before anyone reaches under it.
    chock rear-wheels
    loosen wheel-nut, 1/2 turn
    raise vehicle with trolley-jack at sill-points
    support vehicle with axle-stands at sill-points
`;

export const PATH = 'procedures/FB-03.bay';

export function shop(procedure: string): Record<string, string> {
  return { 'baywright.json': '{}\n', 'catalogue/van.bay': CATALOGUE, [PATH]: procedure };
}
