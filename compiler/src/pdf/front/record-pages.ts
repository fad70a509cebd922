// The record dealt to pages: on one page wherever that leaves room for the hand, else broken between its sections or with
// the head of a table repeated.
import type { BlockOf } from '../../document/blocks.js';
import { say } from '../../document/words.js';
import type { PrintContext } from '../context.js';
import { WIDTH } from '../steps/frame.js';
import { call } from '../typst-code.js';
import { goOnItem, type Item, titleItem } from './items.js';
import { type RecordLook, recordParts } from './record-parts.js';
import { dealSections } from './sections.js';

/** From roomy to close: the first that needs the fewest pages. */
export const RECORD_LOOKS: readonly [RecordLook, ...RecordLook[]] = [
  { inset: 2.2, gap: 5.5, under: 2, field: 17, paired: false, row: 4 },
  { inset: 1.6, gap: 5.5, under: 2, field: 17, paired: false, row: 4 },
  { inset: 1.2, gap: 4.2, under: 1.6, field: 14.5, paired: false, row: 4 },
  { inset: 1.6, gap: 4.6, under: 1.7, field: 14.5, paired: true, row: 5 },
  { inset: 1.2, gap: 4.2, under: 1.6, field: 14.5, paired: true, row: 5 },
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
  // Frames to write in take what room is left.
  for (const field of [roomy.field, 14.5]) {
    if (field <= best.look.field) break;
    const next = dealt(record, { ...best.look, field }, context, full);
    if (next.pages.length === best.pages.length) return next;
  }
  return best;
}

function dealt(
  record: BlockOf<'record'>,
  look: RecordLook,
  context: PrintContext,
  full: number,
): RecordPages {
  const under = Math.min(4, look.gap);
  const begin: Item = {
    above: 2,
    below: under,
    height: 4.8,
    code: call('record-title', [record.title, under]),
  };
  const goOn = (said: string, size: number, below: number) =>
    goOnItem(say(context.words.continued, { step: said }), size, look.gap, below);
  const pages = dealSections(
    [begin],
    recordParts(record, context, look),
    {
      title: (title) => ({
        ...titleItem(title, WIDTH, context.isPart ? 3 : 2),
        above: look.gap,
        below: look.under,
      }),
      goOn: (title) => goOn(title, 12.5, look.under),
      next: [goOn(record.title, 15, 4)],
      whole: true,
    },
    full,
  );
  return { look, pages };
}
