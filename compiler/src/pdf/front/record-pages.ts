// The record dealt to pages: on one page wherever that leaves room for the hand, else broken between its sections or with
// the head of a table repeated.
import type { BlockOf } from '../../document/blocks.js';
import { say } from '../../document/words.js';
import type { PrintContext } from '../context.js';
import { proseCode } from '../prose.js';
import { HAND, WIDTH } from '../steps/frame.js';
import { widthOf } from '../type/faces.js';
import { call } from '../typst-code.js';
import { goOnItem, type Item, titleItem } from './items.js';
import { recordParts } from './record-parts.js';
import type { RecordLook } from './record-table.js';
import { dealSections, type Section } from './sections.js';

type Shape = Pick<RecordLook, 'size' | 'paired' | 'row' | 'joined' | 'sided'>;
type Room = Omit<RecordLook, keyof Shape>;

const PLAIN: Shape = { size: 10.5, paired: false, row: 4, joined: false, sided: false };
const PAIRED: Shape = { ...PLAIN, paired: true, row: 5 };
const JOINED: Shape = { ...PAIRED, joined: true };
const SIDED: Shape = { ...JOINED, sided: true };
const SMALL: Shape = { ...JOINED, size: 9.5 };
const SMALL_SIDED: Shape = { ...SIDED, size: 9.5 };

const WIDE: Room = { inset: 2.2, gap: 5.5, under: 2, field: 17, hand: HAND };
const LESS: Room = { ...WIDE, inset: 1.6 };
const FAIR: Room = { inset: 1.6, gap: 4.6, under: 1.7, field: 14.5, hand: HAND };
const NEAR: Room = { inset: 1.2, gap: 4.2, under: 1.6, field: 14.5, hand: HAND };
const CLOSE: Room = { inset: 1.05, gap: 2.8, under: 1.1, field: 12.5, hand: HAND };
const CLOSER: Room = { ...CLOSE, inset: 0.85, under: 0.9 };
/** A bare hand writes on lines as far apart as in an exercise book. Common practice. */
const CLOSEST: Room = { ...CLOSER, hand: 7.2 };

const looks = (shape: Shape, ...rooms: readonly Room[]): readonly RecordLook[] =>
  rooms.map((room) => ({ ...shape, ...room }));

/** From roomy to close: the first that needs the fewest pages. */
export const RECORD_LOOKS: readonly RecordLook[] = [
  ...looks(PLAIN, WIDE, LESS, NEAR),
  ...looks(PAIRED, FAIR, NEAR, CLOSE),
  ...looks(JOINED, NEAR, CLOSE),
  ...looks(SIDED, FAIR, NEAR, CLOSE),
  ...looks(SMALL_SIDED, NEAR, CLOSE, CLOSER),
  ...looks(SMALL, CLOSE, CLOSER),
  ...looks(SMALL_SIDED, CLOSEST),
  ...looks(SMALL, CLOSEST),
];

export interface RecordPages {
  readonly look: RecordLook;
  /** No section is parted. */
  readonly whole: boolean;
  readonly pages: readonly (readonly Item[])[];
}

/** `full` is the height of a page. */
export function recordPages(record: BlockOf<'record'>, context: PrintContext, full: number): RecordPages {
  let best: RecordPages | undefined;
  for (const look of RECORD_LOOKS) {
    const next = dealt(record, look, context, full);
    if (!best || isBetter(next, best)) best = next;
    if (best.pages.length === 1) break;
  }
  if (!best) return { look: { ...PLAIN, ...WIDE }, whole: true, pages: [] };
  // Lines and frames take what room is left.
  for (const share of [1, 0.75, 0.5, 0.25]) {
    const next = dealt(record, { ...best.look, ...between(best.look, FAIR, share) }, context, full);
    if (next.pages.length === best.pages.length && next.whole === best.whole) return next;
  }
  return best;
}

/** Fewer pages, or as many that part no section, in type as large. */
const isBetter = (next: RecordPages, best: RecordPages): boolean =>
  next.pages.length < best.pages.length ||
  (next.pages.length === best.pages.length && next.whole && !best.whole && next.look.size === best.look.size);

/** Such a share of the way from one to the other, where the other is roomier. */
function between(from: Room, to: Room, share: number): Room {
  const at = (key: keyof Room): number => from[key] + share * Math.max(0, to[key] - from[key]);
  return { inset: at('inset'), gap: at('gap'), under: at('under'), field: at('field'), hand: at('hand') };
}

function dealt(
  record: BlockOf<'record'>,
  look: RecordLook,
  context: PrintContext,
  full: number,
): RecordPages {
  const sections = recordParts(record, context, look);
  const to = (height: number, whole: boolean) => dealtTo(record, sections, look, context, height, whole);
  const parted = to(full, false);
  if (parted.length === 1) return { look, whole: true, pages: parted };
  const unparted = to(full, true);
  const isWhole = unparted.length === parted.length;
  let best = isWhole ? unparted : parted;
  // As much on each page: the lowest pages that still are no more of them.
  const highest = Math.max(...sections.map(({ rows, high }) => high(0, rows)));
  let [short, enough] = [isWhole ? Math.max(full / 2, highest + HEADS) : full / 2, full];
  while (enough - short > STEP) {
    const middle = (short + enough) / 2;
    const next = to(middle, isWhole);
    if (next.length === best.length) [enough, best] = [middle, next];
    else short = middle;
  }
  return { look, whole: isWhole, pages: best };
}

/** The title of a page, and that of what it begins with. */
const HEADS = 24;
/** Nearer than this pages need not be balanced. Millimetres. */
const STEP = 4;

function dealtTo(
  record: BlockOf<'record'>,
  sections: readonly Section[],
  look: RecordLook,
  context: PrintContext,
  full: number,
  whole: boolean,
): readonly (readonly Item[])[] {
  const under = Math.min(4, look.gap);
  const begin: Item = {
    above: 2,
    below: under,
    height: 4.8,
    code: call('record-title', [record.title, under]),
  };
  const goOn = (said: string, size: number, below: number) =>
    goOnItem(say(context.words.continued, { step: said }), size, look.gap, below);
  return dealSections(
    [begin],
    sections,
    {
      title: (title) => ({
        ...titleItem(title, WIDTH, context.isPart ? 3 : 2),
        above: look.gap,
        below: look.under,
      }),
      goOn: (title) => goOn(title, 12.5, look.under),
      next: [goOnRecord(record, context, look.gap)],
      whole,
    },
    full,
  );
}

/** Points and millimetres. */
const [TITLE, SMALL_TITLE, MOST_BOX, LEAST_BOX] = [15, 12.5, 70, 45];

/** The title of a page that may be parted from the first one: it asks once more of which vehicle it is. */
function goOnRecord(record: BlockOf<'record'>, { words }: PrintContext, above: number): Item {
  const said = say(words.continued, { step: record.title });
  const fields = record.items.find((item) => item.kind === 'fields');
  const label = fields?.kind === 'fields' ? fields.fields[0]?.label : undefined;
  if (!label) return goOnItem(said, TITLE, above, 4);
  const beside = (size: number) => WIDTH - widthOf(said, '700Bold', size) - 4;
  const size = beside(TITLE) < LEAST_BOX ? SMALL_TITLE : TITLE;
  const box = Math.min(MOST_BOX, Math.max(LEAST_BOX, beside(size)));
  return {
    above,
    below: 3,
    height: 10,
    code: call('record-goes-on', [said, size, proseCode(label), box, above, 3]),
  };
}
