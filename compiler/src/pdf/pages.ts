// The blocks of a document dealt out to its pages: what stands before the steps, the steps, what follows them, and the
// record. All is decided here, from heights that are worked out, so that the typesetter only sets.
import type { Block, BlockOf } from '../document/blocks.js';
import type { GuideDocument } from '../document/document.js';
import { isStanding, itemsOf, stepBlock } from './blocks.js';
import type { PrintContext } from './context.js';
import { type Item, itemsHigh } from './front/items.js';
import { type Dealt, deal } from './steps/deal.js';
import { HAIR } from './steps/frame.js';
import { stepPageCode } from './steps/page-code.js';
import { runningHeads } from './steps/running.js';
import { type Argument, call, type Raw, sequence } from './typst-code.js';

export interface Pages {
  /** Calls of the main file, in order. */
  readonly code: readonly Raw[];
  /** How many pages it comes to; none where only the typesetter can tell. */
  readonly count: number | undefined;
}

/** What stands over and under a line of the list of needs and of the record: closer where that saves a page. */
const NEED_INSETS = [1.35, 1, 0.7];
const RECORD_INSETS = [2.2, 1.9, 1.6, 1.2];
/** Between the legend, or what follows it, and what stands before. */
const APART = 5.5;
/** What is worked out from cells of tables may be short by so much. */
const UNSURE = 1;

export function pagesOf(document: GuideDocument, context: PrintContext, twoSided: boolean): Pages {
  const { blocks } = document;
  const records = blocks.filter((block): block is BlockOf<'record'> => block.kind === 'record');
  const others = blocks.filter((block) => block.kind !== 'record');
  const first = others.findIndex((block) => !isStanding(block));
  const main = first < 0 ? sheetPages(others, context) : guidePages(others, first, document, context);
  let { count } = main;
  const code = [...main.code];
  for (const record of records) {
    const page = recordPage(record, count, context, twoSided);
    code.push(page.code);
    count = page.count;
  }
  return { code, count };
}

const codes = (items: readonly Item[]): Raw => sequence(items.map(({ code }) => code));

/** A sheet without steps: it is as long as it is. */
function sheetPages(blocks: readonly Block[], context: PrintContext): Pages {
  if (blocks.length === 0) return { code: [], count: 0 };
  const items = itemsOf(blocks, context, NEED_INSETS[0] ?? 0);
  return { code: [call('plain-page', [undefined, codes(items)])], count: undefined };
}

interface Front {
  readonly items: readonly Item[];
  readonly pages: number;
  /** What is left of the last of them. */
  readonly room: number;
  /** The legend stands on them. */
  readonly legend: boolean;
}

/** The first page is set closer when that saves a page, or makes room for the legend. */
function frontOf(blocks: readonly Block[], legend: number, context: PrintContext): Front {
  const full = context.frame.plainHeight;
  const tries = NEED_INSETS.map((inset) => itemsOf(blocks, context, inset));
  const fits = (extra: number) => tries.find((items) => itemsHigh(items) + extra <= full - HAIR);
  const items = (legend > 0 ? fits(legend) : undefined) ?? fits(0) ?? tries[1] ?? [];
  const high = itemsHigh(items);
  const pages = Math.max(1, Math.ceil(high / full));
  const room = pages * full - high - (pages > 1 ? 14 : HAIR);
  return { items, pages, room, legend: legend > 0 && legend <= room };
}

const isLegend = (block: Block): boolean => block.kind === 'key' || block.kind === 'statement';

function guidePages(
  blocks: readonly Block[],
  firstStep: number,
  document: GuideDocument,
  context: PrintContext,
): Pages {
  const { frame } = context;
  const afterSteps = blocks.findLastIndex((block) => !isStanding(block)) + 1;
  const steps = blocks.slice(firstStep, afterSteps);
  const ending = [...steps.filter(isStanding), ...blocks.slice(afterSteps)].filter(
    (block) => !isLegend(block),
  );
  const endingIn = (column: number): Ending => ({
    legend: itemsOf(blocks.filter(isLegend), { ...context, column }, 0),
    rest: itemsOf(ending, { ...context, column }, 0),
  });
  const wide = endingIn(context.column);
  // Behind the steps it leaves the column for notes free.
  const narrow = frame.walk ? endingIn(frame.body) : wide;
  const front = frontOf(
    blocks.slice(0, firstStep).filter((block) => !isLegend(block)),
    apart(wide.legend),
    context,
  );
  const dealt = deal(
    steps.filter((block) => !isStanding(block)).map((block) => stepBlock(block, context)),
    frame.stepHeight,
  );
  const ends = dealEnding(front, wide, narrow, frame.stepHeight - HAIR, dealt);
  const early = [...front.items, ...ends.early];
  const isOne = front.pages === 1 && itemsHigh(early) <= frame.plainHeight - UNSURE;
  const code: Raw[] = [call('plain-page', [isOne ? 1 : undefined, codes(early)])];
  const heads = runningHeads(document, dealt.pages, frame);
  let page = front.pages;
  for (const [i, fragments] of dealt.pages.entries()) {
    page += 1;
    const { art, body } = stepPageCode(fragments, context);
    const rest: Record<string, Argument> =
      i === dealt.pages.length - 1 && ends.behind.length > 0 ? { rest: codes(ends.behind) } : {};
    const number = ends.overflows && rest.rest !== undefined ? undefined : page;
    code.push(call('step-page', [number, heads[i], art, body], rest));
  }
  if (ends.alone.length > 0) {
    page += 1;
    code.push(call('step-page', [page, heads.at(-1), undefined, codes(ends.alone)]));
  }
  return { code, count: ends.overflows ? undefined : page };
}

/** What explains the guide, and what proves it: sources, revisions, open questions. */
interface Ending {
  readonly legend: readonly Item[];
  readonly rest: readonly Item[];
}

interface Ends {
  /** On the first page. */
  readonly early: readonly Item[];
  /** On the last page of steps. */
  readonly behind: readonly Item[];
  /** Together on a page of their own. */
  readonly alone: readonly Item[];
  /** What is behind the steps is longer than a page. */
  readonly overflows: boolean;
}

/** The legend stands on the first page where it finds room; so does the rest when it would need a page of its own. */
function dealEnding(front: Front, wide: Ending, narrow: Ending, full: number, { reach }: Dealt): Ends {
  const early = front.legend ? wide.legend : [];
  const late = front.legend ? narrow.rest : [...narrow.legend, ...narrow.rest];
  const ends = { early, behind: [], alone: [], overflows: false };
  if (apart(late) <= full - reach) return { ...ends, behind: late };
  const all = [...wide.legend, ...wide.rest];
  if (apart(all) <= front.room) return { ...ends, early: all };
  return itemsHigh(late) <= full ? { ...ends, alone: late } : { ...ends, behind: late, overflows: true };
}

/** Height of items under others. */
const apart = (items: readonly Item[]): number => (items.length === 0 ? 0 : itemsHigh(items) + APART);

/** A sheet to tear off; on double-sided paper it begins on a page with an odd number. */
function recordPage(
  record: BlockOf<'record'>,
  before: number | undefined,
  context: PrintContext,
  twoSided: boolean,
): { readonly code: Raw; readonly count: number | undefined } {
  const full = context.frame.plainHeight - HAIR;
  const title: Item = { above: 2, below: 4, height: 5, code: call('record-title', [record.title]) };
  const items = (inset: number) => [title, ...itemsOf(record.items, context, inset)];
  const inset = RECORD_INSETS.find((one) => itemsHigh(items(one)) <= full) ?? RECORD_INSETS[0] ?? 0;
  const all = items(inset);
  const high = itemsHigh(all);
  const page = before === undefined ? undefined : before + 1 + (twoSided ? before % 2 : 0);
  const isOne = high <= full - UNSURE;
  return {
    code: call('record-page', [isOne ? page : undefined, inset, codes(all)]),
    count: page === undefined ? undefined : page + Math.max(1, Math.ceil(high / full)) - 1,
  };
}
