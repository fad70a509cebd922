// What is not as it came in just before a line: what views, hovers and the sheet of a hand-over tell.
import { expect, test } from 'vitest';
import { createLibrary } from '../../language/src/analysis.js';
import { DEFAULT_SETTINGS } from '../../language/src/settings/index.js';
import { stateAt } from '../../language/src/state/state-at.js';

const COVER = `procedure A-1: Cover

parts
  cover: Cover
    held by bolt
    sealed with paste on face

fasteners
  bolt: Bolts
    8 of M8x1.25
    torque 22 N·m, per ?

fluids
  oil: Oil
    drain at cover

supplies
  paste: Sealant
    sealant
    fit within 10 min
    torque after 30 min
    fill after 2 h

places
  face: Face

installation
  step: Close
    loosen bolt
    drain oil
    remove bolt, cover
    clean face
    apply paste to face
    install cover, bolt
    wait 30 min
    torque bolt
    wait 90 min
    fill oil, 1 L
`;

/** `group thing, detail` before the line that starts with these words. */
function before(text: string, line: string): string[] {
  const library = createLibrary(
    { read: () => text, list: () => ['a.bay'], exists: () => true },
    DEFAULT_SETTINGS,
  );
  const run = library.analyse('a.bay')?.run;
  if (!run) throw new Error('no run');
  return stateAt(run, text.indexOf(`    ${line}`) + 4).map(({ group, thing, detail }) =>
    [group, thing.name, detail].filter((word) => word !== '').join(' '),
  );
}

const clocks = (line: string, text = COVER): string[] =>
  before(text, line).filter((fact) => fact.startsWith('clock'));

test('a joint that is wet waits for its part, one that is made for its cure', () => {
  expect(clocks('apply paste')).toEqual([]);
  expect(clocks('install cover')).toEqual(['clock cover fit within 10 min']);
  expect(clocks('wait 30 min')).toEqual(['clock cover torque after 30 min, fill after 2 h']);
});

test('what has been waited for is over', () => {
  expect(clocks('torque bolt')).toEqual(['clock cover fill after 2 h']);
  expect(clocks('fill oil')).toEqual([]);
});

test('a joint that was never opened has no clock', () => {
  expect(clocks('loosen bolt')).toEqual([]);
});
