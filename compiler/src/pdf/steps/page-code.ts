// A page of steps as typesetter source: one picture of all that is drawn, and over it the lists of lines and what stands
// between them, each in its place.
import type { Rail } from '../../document/blocks.js';
import type { Art } from '../art.js';
import type { PrintContext } from '../context.js';
import { call, type Raw, sequence } from '../typst-code.js';
import type { Fragment } from './deal.js';
import { RAIL } from './frame.js';
import { drawRails, type Stretch } from './rails.js';
import type { Row } from './rows.js';
import { type Part, setPart, short } from './set.js';
import type { Between, Unit } from './units.js';

/**
 * The lists of lines and what stands between them. They begin at `top`; what is drawn under them
 * goes to `art`, what nobody is read to `signs`.
 */
export function stepPageCode(
  fragments: readonly Fragment[],
  art: Art,
  signs: Raw[],
  top: number,
  { frame }: PrintContext,
): Raw {
  const pieces: Raw[] = [];
  const rails: Stretch[] = [];
  let y = top;
  let list: { readonly row: Row; readonly code: Raw }[] = [];
  /** Gives the code of a part that stands here, `left` from the edge of the text. */
  const stand = (part: Part, rail: Rail, revised: boolean, left = 0): Raw => {
    const code = setPart(part, { art, signs, top: y, left });
    rails.push({ from: y, to: y + part.height, rail });
    if (revised) art.line(frame.body + 4, y, frame.body + 4, y + part.height, 2);
    y += part.height;
    return code;
  };
  const endList = () => {
    const [first] = list;
    // A list begins with its first number, so that readers hear the printed one.
    if (first) {
      const rows = list.map(({ row, code }) => call('row', [short(row.part.height), code]));
      pieces.push(call('rows', [first.row.place, list.map(({ row }) => row.number), rows]));
    }
    list = [];
  };
  const between = ({ part, rail, revised }: Between) => {
    endList();
    pieces.push(call('piece', [short(part.height), stand(part, rail, revised)]));
  };
  const unit = ({ before, row, after }: Unit) => {
    before.forEach(between);
    // Lines with nothing around them are one list. What a long line goes on with has no number in it.
    if (row) list.push({ row, code: stand(row.part, row.rail, row.revised, RAIL + frame.label) });
    after.forEach(between);
  };
  for (const { step, groups, begins } of fragments) {
    if (begins && step.head.height > 0) {
      const head = stand(step.head, step.before, step.revised);
      pieces.push(call('piece', [short(step.head.height), head]));
    }
    groups.flat().forEach(unit);
    endList();
  }
  drawRails(rails, art, frame);
  return sequence(pieces);
}
