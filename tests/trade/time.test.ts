// Time: the clockwork against a hand-worked job and against an independent longest path.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labourCheck, type TimedStep, timeline, timeText } from '../../language/src/trade/index.js';

/** A cover is sealed; its clock runs while the brakes are refitted, then holds the fill. */
const cover: TimedStep[] = [
  { id: 'clean', handsOnMin: 15 },
  { id: 'seal', handsOnMin: 10 },
  { id: 'brakes', handsOnMin: 40 },
  { id: 'fill', handsOnMin: 5, after: [{ since: 'seal', minutes: 60, name: 'sealant cures' }] },
  { id: 'settle', handsOnMin: 0, waitMin: 10 },
  { id: 'check level', handsOnMin: 2 },
];

describe('a sealed cover', () => {
  const time = timeline(cover);
  it('works while the sealant cures: 72 hands-on, 30 waiting, 102 elapsed', () => {
    expect(time).toMatchObject({ handsOnMin: 72, waitingMin: 30, elapsedMin: 102, overlappedMin: 40 });
    expect(time.steps[3]).toMatchObject({ startMin: 85, idleMin: 20 });
  });
  it('the path that decides goes over the clock, not over the brakes', () => {
    expect(time.criticalPath).toEqual(['clean', 'seal', 'sealant cures', 'fill', 'settle', 'check level']);
  });
  it('a clock shorter than the work costs nothing', () => {
    const quick = cover.map((s) =>
      s.after ? { ...s, after: s.after.map((c) => ({ ...c, minutes: 30 })) } : s,
    );
    expect(timeline(quick)).toMatchObject({ waitingMin: 10, elapsedMin: 82 });
    expect(timeline(quick).criticalPath).toContain('brakes');
  });
});

const jobs = fc
  .array(
    fc.record({
      handsOnMin: fc.integer({ min: 0, max: 60 }),
      waitMin: fc.integer({ min: 0, max: 20 }),
      clocks: fc.array(fc.tuple(fc.nat(9), fc.integer({ min: 1, max: 240 })), { maxLength: 3 }),
    }),
    { minLength: 1, maxLength: 10 },
  )
  .map((rows) =>
    rows.map(
      (r, i): TimedStep => ({
        id: `s${i}`,
        handsOnMin: r.handsOnMin,
        waitMin: r.waitMin,
        after: r.clocks
          .filter(([since]) => since < i)
          .map(([since, minutes], k) => ({ since: `s${since}`, minutes, name: `c${i}.${k}` })),
      }),
    ),
  );

it('elapsed is the longest path through order and clocks, and hands-on plus waiting', () => {
  const longest = (steps: readonly TimedStep[], i: number): number => {
    const step = steps[i];
    if (!step) return 0;
    const before = i === 0 ? 0 : longest(steps, i - 1);
    const clocks = (step.after ?? []).map((c) => longest(steps, Number(c.since.slice(1))) + c.minutes);
    return Math.max(before, ...clocks) + step.handsOnMin + (step.waitMin ?? 0);
  };
  fc.assert(
    fc.property(jobs, (steps) => {
      const time = timeline(steps);
      expect(time.elapsedMin).toBe(longest(steps, steps.length - 1));
      expect(time.elapsedMin).toBe(time.handsOnMin + time.waitingMin);
    }),
  );
});

it('an empty job takes no time, and a clock of a step that comes later is ignored', () => {
  expect(timeline([])).toMatchObject({ elapsedMin: 0, criticalPath: [] });
  expect(
    timeline([{ id: 'a', handsOnMin: 5, after: [{ since: 'z', minutes: 99, name: 'none' }] }]).elapsedMin,
  ).toBe(5);
});

it.each([
  [100, 'agrees'],
  [72, 'agrees'],
  [36, 'agrees'],
  [35, 'too short'],
  [432, 'agrees'],
  [433, 'too long'],
])('labour of %d minutes against the cover %s', (declared, verdict) => {
  expect(labourCheck(declared, timeline(cover)).verdict).toBe(verdict);
});

it('labour as long as a job that waits a day is not too long', () => {
  expect(labourCheck(1440, timeline([{ id: 'fill', handsOnMin: 5, waitMin: 1440 }])).verdict).toBe('agrees');
});

it.each([
  [25, '25 min'],
  [99.6, '1 h 40 min'],
  [120, '2 h'],
  [0, '0 min'],
])('%d minutes are said as %s', (minutes, said) => expect(timeText(minutes)).toBe(said));
