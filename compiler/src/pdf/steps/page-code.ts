// A page of steps as typesetter source: one picture of all that is drawn, and over it the lists of lines and what stands
// between them, each in its place.
import type { Rail } from '../../document/blocks.js';
import type { Art } from '../art.js';
import type { PrintContext } from '../context.js';
import { call, type Raw, sequence } from '../typst-code.js';
import type { Fragment } from './deal.js';
import { type Frame, RAIL } from './frame.js';
import { drawRails, type Stretch } from './rails.js';
import type { Row } from './rows.js';
import { codeOf, draw, type Part, short, signsOf } from './set.js';
import type { Between, Unit } from './units.js';

/** The lists of lines and what stands between them. What is drawn under them goes to `art`, what nobody is read to `signs`. */
export function stepPageCode(
  fragments: readonly Fragment[],
  art: Art,
  signs: Raw[],
  { frame }: PrintContext,
): Raw {
  const pieces: Raw[] = [];
  const rails: Stretch[] = [];
  let y = frame.stepTop;
  let list: Row[] = [];
  const stand = (part: Part, rail: Rail, revised: boolean) => {
    draw(part, art, y);
    signs.push(...signsOf(part, y));
    rails.push({ from: y, to: y + part.height, rail });
    if (revised) art.line(frame.body + 4, y, frame.body + 4, y + part.height, 2);
    y += part.height;
  };
  const endList = () => {
    if (list.length > 0) pieces.push(listCode(list, frame));
    list = [];
  };
  const between = ({ part, rail, revised }: Between) => {
    endList();
    stand(part, rail, revised);
    pieces.push(call('piece', [short(part.height), codeOf(part)]));
  };
  const unit = ({ before, row, after }: Unit) => {
    before.forEach(between);
    if (row) {
      // What a long line goes on with belongs to the item before it; a page that begins with it has a list without a number.
      list.push(row);
      stand(row.part, row.rail, row.revised);
    }
    after.forEach(between);
  };
  for (const { step, units, begins } of fragments) {
    if (begins && step.head.height > 0) {
      stand(step.head, step.before, step.revised);
      pieces.push(call('piece', [short(step.head.height), codeOf(step.head)]));
    }
    units.forEach(unit);
    endList();
  }
  drawRails(rails, art, frame);
  return sequence(pieces);
}

/** Lines with nothing around them become one list, so that readers hear them as one. */
function listCode(rows: readonly Row[], frame: Frame): Raw {
  const left = RAIL + frame.label;
  return call('rows', [
    rows[0]?.place ?? 1,
    rows.map(({ number }) => number),
    rows.map(({ part }) => call('row', [short(part.height), codeOf(part, left)])),
  ]);
}
