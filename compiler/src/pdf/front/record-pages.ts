// The record dealt to pages: on one page wherever that leaves room for the hand, else broken between its sections or with
// the head of a table repeated.
import type { BlockOf } from '../../document/blocks.js';
import { say } from '../../document/words.js';
import type { PrintContext } from '../context.js';
import { WIDTH } from '../steps/frame.js';
import { call } from '../typst-code.js';
import { type Item, itemsHigh, titleItem, USUAL_GAP } from './items.js';
import { type RecordLook, type RecordPart, recordParts } from './record-parts.js';

/** From roomy to close: the first that needs the fewest pages. */
export const RECORD_LOOKS: readonly [RecordLook, ...RecordLook[]] = [
  { inset: 2.2, gap: 5.5, under: 2, field: 17, paired: false, row: 4 },
  { inset: 1.6, gap: 5.5, under: 2, field: 17, paired: false, row: 4 },
  { inset: 1.2, gap: 4.2, under: 1.6, field: 14.5, paired: false, row: 4 },
  { inset: 1.2, gap: 4.2, under: 1.6, field: 14.5, paired: true, row: 4 },
  { inset: 1.05, gap: 2.8, under: 1.1, field: 12.5, paired: true, row: 5 },
  { inset: 0.85, gap: 2.8, under: 0.9, field: 12.5, paired: true, row: 5 },
];

export interface RecordPages {
  readonly look: RecordLook;
  readonly pages: readonly (readonly Item[])[];
}

/** `full` is the height of a page. */
export function recordPages(record: BlockOf<'record'>, context: PrintContext, full: number): RecordPages {
  const [roomy, ...closer] = RECORD_LOOKS;
  let best = dealt(record, roomy, context, full);
  for (const look of closer) {
    if (best.pages.length === 1) break;
    const next = dealt(record, look, context, full);
    if (next.pages.length < best.pages.length) best = next;
  }
  return best;
}

function dealt(
  record: BlockOf<'record'>,
  look: RecordLook,
  context: PrintContext,
  full: number,
): RecordPages {
  const parts = recordParts(record, context, look);
  const deal = (whole: boolean) => dealParts(record.title, parts, look, context, full, whole);
  const pages = deal(false);
  if (pages.length === 1) return { look, pages };
  const whole = deal(true);
  return { look, pages: whole.length === pages.length ? whole : pages };
}

/** Rows of a table that stand on a page at least, where it is parted. */
const LEAST_ROWS = 2;

/** `whole` keeps a section that fits a page from being parted. */
function dealParts(
  title: string,
  parts: readonly RecordPart[],
  look: RecordLook,
  context: PrintContext,
  full: number,
  whole: boolean,
): readonly (readonly Item[])[] {
  const under = Math.min(4, look.gap);
  const begin: Item = { above: 2, below: under, height: 4.8, code: call('record-title', [title, under]) };
  const goOn = (said: string, size: number): Item => ({
    above: look.gap,
    below: look.under,
    height: (size / 12.5) * 2.95,
    code: call('goes-on', [say(context.words.continued, { step: said }), size, look.under]),
  });
  const pages: Item[][] = [[begin]];
  const page = (): Item[] => pages.at(-1) ?? [];
  const isFresh = (): boolean => page().length === 1;
  const next = () => {
    pages.push([{ ...goOn(title, 15), below: 4 }]);
  };
  for (const part of parts) {
    const count = part.rows.length;
    const chunk = (from: number, to: number): readonly Item[] => [
      ...(part.title === undefined
        ? []
        : [from === 0 ? sectionItem(part.title, look, context) : goOn(part.title, 12.5)]),
      {
        above: 2,
        below: USUAL_GAP,
        height: part.rows.slice(from, to).reduce((sum, one) => sum + one, part.head),
        code: part.code(from, to),
      },
    ];
    const fits = (from: number, to: number): boolean => itemsHigh([...page(), ...chunk(from, to)]) <= full;
    for (let from = 0; from < count; ) {
      let to = count;
      while (to > from && !fits(from, to)) to -= 1;
      if (to < count) {
        if (count - to < LEAST_ROWS && to - from > LEAST_ROWS) to = count - LEAST_ROWS;
        if (!isFresh() && (whole || to - from < Math.min(LEAST_ROWS, count - from))) {
          next();
          continue;
        }
        to = Math.max(to, from + 1);
      }
      page().push(...chunk(from, to));
      from = to;
      if (from < count) next();
    }
  }
  return pages;
}

const sectionItem = (title: string, { gap, under }: RecordLook, { isPart }: PrintContext): Item => ({
  ...titleItem(title, WIDTH, isPart ? 3 : 2),
  above: gap,
  below: under,
});
