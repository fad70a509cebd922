// A page of steps as typesetter source: one picture of all that is drawn, and over it the lists of lines and what stands
// between them, each in its place.
import type { Rail } from '../../document/blocks.js';
import { openArt } from '../art.js';
import type { PrintContext } from '../context.js';
import { type Argument, call, type Raw, sequence } from '../typst-code.js';
import type { Fragment } from './deal.js';
import { type Frame, RAIL } from './frame.js';
import { drawRails, type Stretch } from './rails.js';
import type { Row } from './rows.js';
import { codeOf, draw, type Part, short } from './set.js';
import type { Between, Unit } from './units.js';

/** What the picture reaches over the text at the left, and at the right. */
const OVER = 2;

export interface PageCode {
  readonly art: Argument;
  readonly body: Raw;
}

export function stepPageCode(fragments: readonly Fragment[], { frame }: PrintContext): PageCode {
  const canvas = openArt();
  const pieces: Raw[] = [];
  const rails: Stretch[] = [];
  let y = 0;
  let list: Row[] = [];
  const stand = (part: Part, rail: Rail, revised: boolean) => {
    draw(part, canvas, y);
    rails.push({ from: y, to: y + part.height, rail });
    if (revised) canvas.line(frame.body + 4, y, frame.body + 4, y + part.height, 2);
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
  drawRails(rails, canvas, frame);
  const [width, height] = [frame.body + OVER + 6, y + 1];
  const art = [canvas.svg(-OVER, width, height), -OVER, short(width), short(height)];
  return { art, body: sequence(pieces) };
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
