// Where pages break among the lines of a job, told by heights alone.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { deal, type Step } from '../../compiler/src/pdf/steps/deal.js';
import type { Stays } from '../../compiler/src/pdf/steps/rows.js';
import { high, NOTHING } from '../../compiler/src/pdf/steps/set.js';
import type { Unit } from '../../compiler/src/pdf/steps/units.js';

/** Free height of every page, with a hair to spare. */
const FULL = 240;
const room = (): number => FULL + 0.3;
const HEAD = 15;

/** A line so high; a STOP or a HOLD always stays with the line before it. */
interface Line {
  readonly high: number;
  readonly stays?: Stays;
}

const unit = ({ high: height, stays = 'no' }: Line): Unit => ({
  before: [],
  row: {
    number: '1.1',
    place: 1,
    stays,
    ruled: false,
    rail: { off: 0, loose: 0 },
    revised: false,
    part: high(height, NOTHING),
  },
  after: [],
});

const step = (lines: readonly (number | Line)[]): Step => ({
  number: '1',
  title: '',
  before: { off: 0, loose: 0 },
  revised: false,
  head: high(HEAD, NOTHING),
  groups: lines.map((line) => [unit(typeof line === 'number' ? { high: line } : line)]),
});

/** How many lines of each step stand on each page. */
const dealt = (steps: readonly (readonly (number | Line)[])[], ending = 0) => {
  const { pages, endsAlone } = deal(steps.map(step), room, ending);
  const counts = pages.map((page) => page.map(({ groups }) => groups.length));
  return endsAlone ? [...counts, []] : counts;
};

const times = (count: number, height: number): number[] => Array.from({ length: count }, () => height);

test('a step that nearly fits goes to the next page whole', () => {
  expect(dealt([times(18, 10), times(8, 10)])).toEqual([[18], [8]]);
});

test('a long step is parted where a page would stay half empty', () => {
  expect(dealt([times(9, 10), times(20, 10)])).toEqual([[9, 12], [8]]);
});

test('a HOLD goes to the next page with the tall box that it judges', () => {
  const judged = [...times(15, 10), 55, { high: 25, stays: 'always' as const }, ...times(4, 10)];
  expect(dealt([judged])).toEqual([[15], [6]]);
  // Where it is no HOLD, the page is filled.
  expect(dealt([[...times(15, 10), 55, 25, ...times(4, 10)]])).toEqual([[16], [5]]);
});

test('a HOLD does so for a page more; what only depends on a line does not', () => {
  const lines = (stays: Stays) => [...times(20, 10), { high: 30, stays }, ...times(19, 10), 15];
  expect(dealt([lines('always')])).toHaveLength(3);
  expect(dealt([lines('where it can')])).toHaveLength(2);
});

test('what a tall line leaves empty is not all on one page', () => {
  const lines = [times(6, 10), times(6, 10), times(14, 10), times(3, 10), [100, ...times(12, 10)]];
  const pages = deal(lines.map(step), room).pages.map((page) =>
    page.reduce(
      (sum, { groups, begins }) =>
        sum + (begins ? HEAD : 0) + groups.flat().reduce((a, b) => a + (b.row?.part.height ?? 0), 0),
      0,
    ),
  );
  expect(pages).toHaveLength(3);
  for (const used of pages.slice(0, -1)) expect(used).toBeGreaterThan(0.6 * FULL);
});

test('neither the head of a step with one line is left behind, nor one last line carried over', () => {
  expect(dealt([times(20, 10), times(14, 10)])).toEqual([[20], [14]]);
  for (let count = 20; count < 30; count++)
    for (const page of dealt([times(count, 10)])) expect(page).not.toEqual([1]);
});

test('what proves the guide takes the last step with it to a page of its own', () => {
  expect(dealt([times(14, 10), times(5, 10)], 40)).toEqual([[14], [5]]);
  // One step alone is parted.
  expect(dealt([times(22, 10)], 40).at(-1)?.[0]).toBeGreaterThan(2);
});

test('nothing is lost, nothing changes places, and no page holds more than fits', () => {
  const line = fc.record({
    high: fc.integer({ min: 7, max: 130 }),
    stays: fc.constantFrom<Stays>('always', 'where it can', 'no'),
  });
  const jobs = fc.array(fc.array(line, { minLength: 1, maxLength: 25 }), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(jobs, fc.integer({ min: 0, max: 120 }), (lines, ending) => {
      const steps = lines.map(step);
      const { pages, endsAlone } = deal(steps, room, ending);
      expect(pages.flat().flatMap(({ groups }) => groups)).toEqual(steps.flatMap(({ groups }) => groups));
      for (const [i, page] of pages.entries()) {
        const isLast = i === pages.length - 1 && !endsAlone;
        const used = page.reduce(
          (sum, { groups, begins }) =>
            sum + (begins ? HEAD : 0) + groups.flat().reduce((a, b) => a + (b.row?.part.height ?? 0), 0),
          isLast ? ending : 0,
        );
        expect(used).toBeLessThanOrEqual(FULL);
      }
      const begun = pages.flat().filter(({ begins }) => begins);
      expect(begun.map(({ step: own }) => own)).toEqual(steps);
      expect(pages.flat().filter(({ ends }) => ends)).toHaveLength(steps.length);
    }),
  );
});
