// What is off at a line, for whoever takes the vehicle over, and the clocks and bans that run there.
import { expect, it } from 'vitest';
import { plain } from '../../compiler/src/document/inline.js';
import { HEAD, lower, spaced, WHEEL } from './lower-helper.js';

it('tells what is off at a line, since when and where it comes back', () => {
  const at = WHEEL.indexOf('  step: Put it on');
  const sheet = lower(WHEEL, { sheet: 'off-now', at }).block('off-now');
  expect(sheet.rail).toEqual({ off: 2, loose: 0 });
  const off = sheet.groups.find(({ title }) => title === 'Off the vehicle');
  expect(off?.rows.map(({ what, since, next }) => [plain(what), since, plain(next ?? [])])).toEqual([
    ['Wheel nuts, all 5', '2.1', '3.2'],
    ['Road wheel', '2.2', '3.1'],
  ]);
});

/** A cover closed with sealant, `work` following the sealant on its face. */
const closing = (work: string) => `${HEAD}
parts
  cover: Axle cover
    held by cover-bolt
    sealed with paste on face
    closes axle-oil

fasteners
  cover-bolt: Cover bolts
    4 of M8x1.25, class 8.8, hex 13 mm
    torque 25 N·m

supplies
  paste: Sealing paste
    sealant
    fit within 10 min
    fill after 2 h

places
  face: Cover face

installation
  step: Close
    remove cover-bolt, cover
    clean face
    apply paste to face
${work}`;

it('tells which clocks and bans run on at a line', () => {
  const text = closing(`    install cover, cover-bolt
    torque cover-bolt
    wait 2 h
    fill axle-oil, 1 L
`);
  const at = (line: string) => lower(text, { sheet: 'off-now', at: text.indexOf(line) }).block('off-now');
  const told = (line: string) => ({
    at: at(line).at,
    clocks: at(line).clocks.map(({ name, from, next }) => `${name}: ${from} to ${plain(next)}`),
    bans: at(line).bans.map((said) => spaced(plain(said))),
  });
  // A clock is told once, with its rows: not among the things that are open as well.
  expect(JSON.stringify(at('torque cover-bolt').groups)).not.toContain('2 h');
  expect(told('clean face')).toEqual({ at: 'After 1.2, Close', clocks: [], bans: [] });
  expect(told('install cover')).toEqual({
    at: 'After 1.4, Close',
    clocks: ['Close the joint: 1.4 to 1.5'],
    bans: [],
  });
  expect(told('torque cover-bolt')).toEqual({
    at: 'After 1.6, Close',
    clocks: ['Fill: 1.5 to 1.9'],
    bans: ['No filling until 2 h after 1.5: not before 1.9.'],
  });
});

it('tells which turns of the wrench are left at a line', () => {
  const text = `${HEAD}
fasteners
  bolt: Bolts
    2 of M12x1.75, class 10.9, hex 18 mm
    torque 20 N·m then 54 N·m

installation
  step: On
    install bolt
    torque bolt, stage 1
    torque bolt
    lower vehicle
    torque wheel-nut
`;
  const left = (line: string) =>
    lower(text, { sheet: 'off-now', at: text.lastIndexOf(line) })
      .block('off-now')
      .torques.map(({ number, joint, torque }) => spaced(`${number} ${joint}: ${plain(torque)}`));
  expect(left('torque bolt, stage 1')).toEqual(['1.2 Bolts: first 20 N·m (14.8 FOOT-pounds)']);
  expect(left('torque bolt\n')).toEqual(['1.3 Bolts: then 54 N·m (39.8 FOOT-pounds)']);
  expect(left('lower vehicle')).toEqual([]);
  const heavy = WHEEL.replace('lower vehicle', 'lower vehicle\n    clean sills');
  expect(
    lower(heavy, { sheet: 'off-now', at: heavy.indexOf('clean sills') })
      .block('off-now')
      .torques.map(({ torque }) => spaced(plain(torque))),
  ).toEqual(['axle light 160 N·m (118.0 FOOT-pounds), axle heavy 180 N·m (132.8 FOOT-pounds)']);
});

it('tells of what comes off twice which time it is', () => {
  const twice = WHEEL.replace(
    '    lower vehicle\n',
    '    lower vehicle\n    remove wheel-nut, wheel\n    install wheel, wheel-nut\n',
  );
  const sheet = lower(twice, { sheet: 'off-now', at: twice.indexOf('  step: Put it on') }).block('off-now');
  const off = sheet.groups.find(({ title }) => title === 'Off the vehicle');
  expect(off?.rows.map(({ since, next }) => [since, plain(next ?? [])])).toEqual([
    ['2.1', '3.2'],
    ['2.2', '3.1'],
  ]);
});

const SEALED = closing(`    clean sills
    install cover, cover-bolt
    torque cover-bolt
    wait 2 h
    when axle light
      fill axle-oil, 1 L
    when axle heavy
      fill axle-oil, 2 L
`);

it('runs the clocks of a sealant from the row that starts them to the row that may follow', () => {
  const { document, lines } = lower(SEALED);
  expect(
    document.bans.map(({ text: told, fromRow, untilRow }) => [spaced(plain(told)), fromRow, untilRow]),
  ).toEqual([
    ['Close the joint within 10 min of 1.4: by 1.6.', 'r1-4', 'r1-6'],
    ['No filling until 2 h after 1.6: not before 1.10.', 'r1-6', 'r1-10'],
  ]);
  // The ban ends before the row that it forbade until then, not behind it.
  const end = lines.indexOf('[end] No filling until 2 h after 1.6.');
  expect(lines[end - 1]).toMatch(/^1\.9 /);
  expect(lines.slice(end + 1, end + 3)).toEqual([
    '> Only with axle light:',
    '1.10 Fill with axle oil, 1 L (1.1 US qt). {0 off, 0 to torque}',
  ]);
});

it('charges a battery while the sealant cures: that is no filling', () => {
  const charged = SEALED.replace('parts\n', 'parts\n  battery: Battery\n').replace(
    '    wait 2 h',
    '    charge battery\n    wait 2 h',
  );
  expect(lower(charged).document.bans.map(({ untilRow }) => untilRow)).toEqual(['r1-6', 'r1-11']);
});

it('keeps a rule that begins again as one ban while nothing it forbids is done between', () => {
  const work = (between: string) => `${HEAD}
rules
  still: Nobody turns the wheel while it is loose.
    never turn wheel
    while wheel-nut loose

preparation
  step: Work
    loosen wheel-nut
    inspect wheel
    torque wheel-nut
    ${between}
    loosen wheel-nut
    inspect wheel
    torque wheel-nut
`;
  const spans = (between: string) =>
    lower(work(between)).document.bans.map(({ fromRow, untilRow }) => [fromRow, untilRow]);
  expect(spans('inspect wheel')).toEqual([['r1-1', 'r1-7']]);
  expect(spans('turn wheel')).toEqual([
    ['r1-1', 'r1-3'],
    ['r1-5', 'r1-7'],
  ]);
});
