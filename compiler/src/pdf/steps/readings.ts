// The boxes of a reading and of an inspection: blanks, limits, and where to go next.
import type { Beside } from '../../document/beside.js';
import type { Prose } from '../../document/inline.js';
import type { PrintContext } from '../context.js';
import { fill } from '../type/lines.js';
import { proseRuns } from '../type/runs.js';
import { blank } from './blank.js';
import { SIDE } from './frame.js';
import { drawn, high, moved, type Part, prose, stacked, together, words } from './set.js';

const INSIDE = SIDE - 5;

export function reading(box: Extract<Beside, { kind: 'reading' }>, { words: said }: PrintContext): Part {
  const unit = box.units[0]?.label ?? '';
  const [low, isHigh] = [box.low !== undefined, box.high !== undefined];
  const blanks = box.places > 1 ? places(box.places, unit) : onePlace(unit);
  const limits = limit(box, said.limitOpen);
  const other = box.other ? [moved(prose(box.other, { size: 8.5, tabular: true }, INSIDE), 0, 1.2)] : [];
  const rest = stacked(0, [
    ...(low || isHigh ? [moved(scale(low, isHigh), 0, 2.4), moved(limits, 0, 2)] : [moved(limits, 0, 2.4)]),
    ...other,
    ...(box.ways.length > 0
      ? [
          moved(
            stacked(
              1.2,
              box.ways.map((one) => way(one, INSIDE)),
            ),
            0,
            2,
          ),
        ]
      : []),
  ]);
  const inside = stacked(0, [blanks, rest]);
  const height = inside.height + 4.4;
  return together(
    drawn(height, (art, x, y) => art.frame(x, y, SIDE, height, 1.5)),
    moved(inside, 2.5, 2.2),
  );
}

export function inspection(good: Prose, bad: Prose): Part {
  return stacked(1.2, [way(good, SIDE), way(bad, SIDE)]);
}

function onePlace(unit: string): Part {
  const name = words(unit, { size: 14, weight: 700 }, INSIDE - 29);
  const height = Math.max(9.5, name.height);
  return high(
    height,
    together(moved(blank(27, 9.5), 0, (height - 9.5) / 2), moved(name, 29, (height - name.height) / 2)),
  );
}

/** A numbered blank for each place, two beside each other, and the unit. */
function places(count: number, unit: string): Part {
  const wide = (INSIDE - 2) / 2;
  const rows = Math.ceil(count / 2);
  const all = Array.from({ length: count }, (_, i) => {
    const number = words(String(i + 1), { size: 9.5, weight: 700, tabular: true }, 4.5);
    const box = together(moved(number, 0, (8 - number.height) / 2), moved(blank(wide - 4.5, 8), 4.5, 0));
    return moved(box, (i % 2) * (wide + 2), Math.floor(i / 2) * 9.6);
  });
  const blanks = high(rows * 9.6 - 1.6, together(...all));
  const name = words(unit, { size: 12, weight: 700 }, wide);
  // Beside the last of an odd number there is room for the unit.
  return count % 2 === 1 && name.height <= 8
    ? together(blanks, moved(name, wide + 4, blanks.height - 4 - name.height / 2))
    : stacked(1.2, [blanks, name]);
}

/** The limit and, behind it where there is room and below it where there is none, what it is when new. */
function limit(box: Extract<Beside, { kind: 'reading' }>, open: string): Part {
  const style = { size: 9.5, weight: 800, tabular: true };
  const said: Prose = box.limit.length > 0 ? box.limit : [{ kind: 'text', text: open }];
  if (!box.fresh) return prose(said, style, INSIDE);
  const fresh = { size: 9.5, tabular: true };
  const wide = fill(proseRuns(box.fresh, fresh), 1000).width;
  const beside = INSIDE - wide - 2.2;
  const limits = fill(proseRuns(said, style), 1000).width;
  if (limits > beside)
    return stacked(1.74, [prose(said, style, INSIDE), prose(box.fresh, fresh, INSIDE, { align: 'right' })]);
  return together(prose(said, style, beside), moved(prose(box.fresh, fresh, wide + 0.2), beside + 2, 0));
}

/** Where the reading may lie: hatched is out of limits. */
function scale(low: boolean, isHigh: boolean): Part {
  const [deep, share] = [2.8, 0.3 * INSIDE];
  return drawn(deep, (art, x, y) => {
    const out = (left: number, edge: number) => {
      art.frame(left, y, share, deep, 0.5);
      for (let at = left + deep; at < left + share + deep; at += 1.6) {
        const [cut, over] = [Math.max(0, left + deep - at), Math.max(0, at - left - share)];
        art.line(at - deep + cut, y + deep - cut, at - over, y + over, 0.5);
      }
      art.line(edge, y - 0.8, edge, y + 3.6, 2);
    };
    art.frame(x, y, INSIDE, deep, 0.5);
    if (low) out(x, x + share);
    if (isHigh) out(x + INSIDE - share, x + INSIDE - share);
  });
}

function way(body: Prose, width: number): Part {
  const text = prose(body, { size: 9.5 }, width - 5.7);
  const height = Math.max(4.2, text.height);
  return high(
    height,
    together(
      drawn(0, (art, x, y) => art.frame(x, y + (height - 4.2) / 2, 4.2, 4.2, 0.75)),
      moved(text, 5.7, (height - text.height) / 2),
    ),
  );
}
