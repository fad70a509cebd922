// Lasting bans: where they begin and end, for the banner on every page on which they hold.
import { describe, expect, test } from 'vitest';
import { createLibrary } from '../../language/src/analysis.js';
import { bansInForce } from '../../language/src/rules/bans-in-force.js';
import { DEFAULT_SETTINGS } from '../../language/src/settings/index.js';

function bansOf(text: string): string[] {
  const run = createLibrary({ read: () => text, list: () => ['a.bay'] }, DEFAULT_SETTINGS).analyse(
    'a.bay',
  )?.run;
  if (!run) throw new Error('the text has no work');
  const code = (span: { start: number; end: number } | undefined): string =>
    span ? text.slice(span.start, span.end) : 'the end';
  return bansInForce(run).map(
    (b) =>
      `no ${b.banned} while ${b.while}: ${code(b.from.line.code)} → ${code(b.to?.line.code)}${b.variants ? ` on ${b.variants}` : ''}`,
  );
}

const DIFF = `parts
  driveshaft: Driveshaft
  diff-pin: Differential pin
    held by pin-bolt

fasteners
  pin-bolt: Pin bolt
    1 of M8x1.25
    torque 20 N·m, per ?

rules
  shaft-still: The side gears fall out.
    never turn driveshaft
    while diff-pin out
`;

describe('a ban', () => {
  test('holds from the line that brings its state about to the line that ends it', () => {
    expect(
      bansOf(`procedure A-1: Pin

${DIFF}
removal
  step: Work
    remove pin-bolt, diff-pin
    clean driveshaft
    install diff-pin, pin-bolt
    torque pin-bolt
`),
    ).toEqual([
      'no turn driveshaft while diff-pin out: remove pin-bolt, diff-pin → install diff-pin, pin-bolt',
    ]);
  });

  test('holds to the end when nothing ends it', () => {
    expect(
      bansOf(`procedure A-1: Pin

${DIFF}
removal
  step: Work
    remove pin-bolt, diff-pin
`),
    ).toEqual(['no turn driveshaft while diff-pin out: remove pin-bolt, diff-pin → the end']);
  });

  test('names the combinations it holds on', () => {
    expect(
      bansOf(`procedure A-1: Pin

applies to van

vehicles
  van: Van
    option axle light, heavy

${DIFF}
removal
  step: Work
    when axle heavy
      remove pin-bolt, diff-pin
      install diff-pin, pin-bolt
      torque pin-bolt
`),
    ).toEqual([
      'no turn driveshaft while diff-pin out: remove pin-bolt, diff-pin → install diff-pin, pin-bolt on axle heavy',
    ]);
  });

  test('that holds as the vehicle comes in is no news', () => {
    expect(
      bansOf(`procedure A-1: Lead

connections
  battery-negative: Negative lead
  starter-lead: Starter lead

rules
  battery-first: Battery off first.
    never disconnect starter-lead
    while battery-negative connected

removal
  step: Work
    disconnect battery-negative
    disconnect starter-lead
    connect starter-lead
    connect battery-negative
`),
    ).toEqual([]);
  });
});

test('bans at an act are those begun before it and not ended before it', () => {
  const text = `procedure A-1: Pin

${DIFF}
removal
  step: Work
    remove pin-bolt, diff-pin
    clean driveshaft
    install diff-pin, pin-bolt
    torque pin-bolt
`;
  const run = createLibrary({ read: () => text, list: () => ['a.bay'] }, DEFAULT_SETTINGS).analyse(
    'a.bay',
  )?.run;
  const bans = run ? bansInForce(run) : [];
  expect(
    run?.machine.acts.map(
      (a) => bans.filter((b) => b.from.index < a.index && a.index <= (b.to?.index ?? a.index)).length,
    ),
  ).toEqual([0, 1, 1, 0]);
});
