// The small files in which the diagnostics of sealed joints and of wheels show what is wrong and what is right.

const indented = (lines: readonly string[]) =>
  lines.map((l) => (l.startsWith('#') ? l : `    ${l}`)).join('\n');

/** A procedure that takes a sealed cover off; the lines that put it back are given. */
export function sealedCoverJob(...fitting: readonly string[]): string {
  return `procedure A-8: Axle cover, reseal

parts
  cover: Axle cover
    held by cover-bolt
    sealed with axle-sealant on cover-face

fasteners
  cover-bolt: Cover bolts
    8 of M8x1.25, class 8.8, hex 13 mm
    torque 22 N·m, per "S-2"

supplies
  axle-sealant: Axle sealant
    sealant
    number "AS-1"
    amount 30 mL
    fit within 10 min
    run after 24 h
    per "S-2"

places
  cover-face: Sealing face of the cover

sources
  S-2: Axle sheet, issue 2

removal
  step: Take the cover off
    remove cover-bolt, cover

installation
  step: Seal the cover
${indented(fitting)}
`;
}

/** The cover put back as it should be. */
export const SEALED_COVER_RIGHT = sealedCoverJob(
  'clean cover-face',
  'apply axle-sealant to cover-face, bead 4 mm',
  'install cover, cover-bolt',
  'torque cover-bolt',
  'wait 24 h',
  'road-test vehicle, 2 km',
);

/** A procedure that takes a wheel off in the air; the lines that fit it and those from lowering on are given. */
export function wheelJob(fitting: readonly string[], lowering: readonly string[]): string {
  return `procedure A-9: Front wheel, change sides

parts
  wheel: Road wheel
    held by wheel-nut
    marked wheel

fasteners
  wheel-nut: Wheel nuts
    5 of M14x1.5, hex 21 mm
    torque 160 N·m, on ground, per "S-3"

places
  rear-wheels: Rear wheels

sources
  S-3: Wheel sheet, issue 1

preparation
  step: Raise the vehicle
    warning: A vehicle that falls can kill. Nobody goes under it before the stands carry it.
    chock rear-wheels
    loosen wheel-nut, 1/2 turn
    raise vehicle
    support vehicle

removal
  step: Take the wheel off
    remove wheel-nut, wheel

installation
  step: Fit the wheel
${indented(fitting)}

completion
  step: Lower and hand back
${indented(lowering)}
    unchock rear-wheels
    recheck wheel-nut, after 80 km
`;
}

/** The wheel fitted as it should be: snug in the air, torqued on the ground. */
export const WHEEL_RIGHT = wheelJob(
  ['install wheel, wheel-nut', 'snug wheel-nut'],
  ['lower vehicle', 'torque wheel-nut'],
);
