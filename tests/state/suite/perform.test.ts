// Operations: the callee's lines run in the caller's own state, and its findings stand at the `perform` line.
import { describe, test } from 'vitest';
import { checkMarked } from '../../suite-helper.js';
import { ofState } from './job.js';

const CATALOGUE = `--- file: catalogue/van.bay
catalogue: Van

parts
  wheel: Wheel
    held by nut
    marked wheel

fasteners
  nut: Nuts
    5 of M14x1.5
    torque 160 N·m, per ?
--- file: procedures/wheel.bay
procedure WH-1: Wheel

use "../catalogue/van.bay"

removal
  operation wheel-off: Wheel off
    step: Off
      remove nut, wheel

installation
  operation wheel-on: Wheel on
    step: On
      install wheel, nut
      torque nut
`;
const caller = (work: string): string => `${CATALOGUE}--- file: procedures/disc.bay
procedure DI-1: Disc

use "../catalogue/van.bay"

parts
  disc: Disc
    behind wheel

removal
${work}`;

describe('perform', () => {
  test('takes off for the caller, and puts back', () => {
    checkMarked(
      caller(`  perform wheel-off from WH-1
  step: Disc
    remove disc
    install disc
  perform wheel-on from WH-1
`),
      ofState,
    );
  });

  test('what the callee leaves off is blamed on its line', () => {
    checkMarked(
      caller(`  perform wheel-off from WH-1
# ^^^^^^^^^^^^^^^^^^^^^^^^^^^ S301 \`nut\` and \`wheel\`
  step: Disc
    remove disc
    install disc
`),
      ofState,
    );
  });

  test('what the callee needs is asked of the caller', () => {
    checkMarked(
      caller(`  perform wheel-on from WH-1
# ^^^^^^^^^^^^^^^^^^^^^^^^^^ S102 \`wheel\` is still on
`),
      ofState,
    );
  });

  test('what the callee covers again is in the way of the caller', () => {
    checkMarked(
      caller(`  perform wheel-off from WH-1
  perform wheel-on from WH-1
  step: Disc
    remove disc
#   ^^^^^^^^^^^ S104 \`wheel\` is still on
    install disc
`),
      ofState,
    );
  });
});
