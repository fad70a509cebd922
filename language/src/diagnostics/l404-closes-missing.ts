// A sealed part that does not say which fluid it holds in.
import { defineDiagnostic } from './define.js';

const job = (cover: string): string => `procedure A-1: Cover, reseal

sources
  S-1: Axle sheet, issue 1

parts
  cover: Cover
${cover}
fasteners
  cover-bolt: Cover bolts
    8 of M8x1.25, class 8.8, hex 13 mm
    torque 22 N·m, per "S-1"
  drain-plug: Drain plug
    1 of M18x1.5, hex 21 mm
    torque 35 N·m, per "S-1"
  fill-plug: Fill plug
    1 of M18x1.5, hex 21 mm
    torque 35 N·m, per "S-1"

fluids
  axle-oil: Axle oil
    in axle-housing, SAE 75W-90
    fill 1.9 L, until level at fill-plug, per "S-1"
    drain at drain-plug
    fill at fill-plug

supplies
  axle-sealant: Axle sealant
    sealant
    fit within 10 min, fill after 2 h, run after 24 h, per "S-1"

places
  axle-housing: Axle housing
  cover-face: Faces of cover and housing

removal
  step: Take the cover off
    caution: Hot oil burns. Let it cool.
    remove fill-plug, drain-plug
    drain axle-oil
    remove cover-bolt, cover

installation
  step: Seal and fill
    clean cover-face
    apply axle-sealant to cover-face
    install cover, cover-bolt
    torque cover-bolt
    install drain-plug
    torque drain-plug
    wait 2 h
    fill axle-oil
    install fill-plug
    torque fill-plug
`;
const COVER = `    held by cover-bolt
    sealed with axle-sealant on cover-face
`;

export const closesMissing = defineDiagnostic<{
  readonly name: string;
  readonly supply: string;
  readonly fluids: readonly string[];
}>({
  code: 'L404',
  name: 'closes-missing',
  severity: 'question',
  message: ({ name }) => `which fluid does \`${name}\` hold in?`,
  advice: ({ supply, fluids }) =>
    `\`${supply}\` says how long filling must wait; write \`closes ${fluids[0] ?? '?'}\` in the entry, so that the wait is watched`,
  why: `Sealant that is filled on before it has set is washed out of the joint. The checker holds a fluid back only where it knows which part stands in its way: \`closes\`, or \`drain at\` in the entry of the fluid. It then also sees a cover that is still off or loose when the oil goes in.`,
  wrong: job(`# ^^^^^ L404
${COVER}`),
  right: job(`${COVER}    closes axle-oil
`),
});
