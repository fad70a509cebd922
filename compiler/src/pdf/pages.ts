// The blocks of a document dealt out to its pages: what stands before the steps, the steps, what follows them, and the
// record. All is decided here, from heights that are worked out, so that the typesetter only sets.
import type { Block, BlockOf } from '../document/blocks.js';
import type { GuideDocument } from '../document/document.js';
import { say } from '../document/words.js';
import { openArt } from './art.js';
import { isStanding, sectionsOf, stepBlock } from './blocks.js';
import type { PrintContext } from './context.js';
import { goOnItem, type Item, itemsHigh, titleItem } from './front/items.js';
import { recordPages } from './front/record-pages.js';
import { dealSections, flowingItems, type Section, type SectionLook } from './front/sections.js';
import { artArgument, pageNumber, stepHead } from './running.js';
import { closer, type Dealt, deal, type Fragment } from './steps/deal.js';
import { type Frame, HAIR, WIDTH } from './steps/frame.js';
import { runningHeads } from './steps/heads.js';
import { stepPageCode } from './steps/page-code.js';
import { call, type Raw, sequence } from './typst-code.js';

export interface Pages {
  /** Calls of the main file, in order. */
  readonly code: readonly Raw[];
  /** How many pages it comes to; none where only the typesetter can tell. */
  readonly count: number | undefined;
}

/** Pages that follow each other. */
interface Run {
  /** How many; none where only the typesetter can tell. */
  readonly pages: number | undefined;
  /** It is surely one page, so that its number can be given. */
  readonly isOne: boolean;
  /** It begins on a page with an odd number. */
  readonly odd?: boolean;
  /** `page` is the number of its one page; none where only the typesetter knows it. */
  readonly code: (page: number | undefined) => Raw;
}

/** What stands over and under a line of the list of needs: closer where that saves a page. */
const NEED_INSETS = [1.35, 1, 0.7, 0.6, 0.5];
/** The closest for the legend's sake: it may as well stand at the end. */
const LEAST_FOR_LEGEND = 0.7;
/** Between the legend, or what follows it, and what stands before. */
const APART = 5.5;
/** What is worked out from cells of tables may be short by so much. */
const UNSURE = 1;

/** `counted` leaves the numbers of the pages to the typesetter. */
export function pagesOf(
  document: GuideDocument,
  context: PrintContext,
  { twoSided, counted }: { twoSided: boolean; counted: boolean },
): Pages {
  const { blocks } = document;
  const records = blocks.filter((block): block is BlockOf<'record'> => block.kind === 'record');
  const others = blocks.filter((block) => block.kind !== 'record');
  const first = others.findIndex((block) => !isStanding(block));
  const sheet = others.length > 0 ? [flowing(itemsOf(others, context))] : [];
  const main = first < 0 ? sheet : guideRuns(others, first, document, context);
  const runs: Run[] = [];
  const begins: (number | undefined)[] = [];
  let before: number | undefined = 0;
  for (const run of [...main, ...records.flatMap((record) => recordRuns(record, context, twoSided))]) {
    // Where only the typesetter counts, it leaves a page empty by itself.
    const isOff: boolean = before !== undefined && before % 2 === 1;
    for (const one of run.odd && isOff && !counted ? [BLANK, run] : [run]) {
      const at: number | undefined = before === undefined ? undefined : before + 1;
      runs.push(one);
      begins.push(at);
      before = at === undefined || one.pages === undefined ? undefined : at + one.pages - 1;
    }
  }
  const count = counted ? undefined : before;
  const code = runs.map((run, i) => run.code(run.isOne && count !== undefined ? begins[i] : undefined));
  return { code, count };
}

/** The back of the last page, before a record that is a sheet of its own: nobody need wonder what is missing there. */
const BLANK: Run = {
  pages: 1,
  isOne: true,
  code: (page) => call('blank-page', [page, pageNumber(page)]),
};

/** Sections below each other, as many pages as they take. */
const itemsOf = (blocks: readonly Block[], context: PrintContext): readonly Item[] =>
  flowingItems(sectionsOf(blocks, context, NEED_INSETS[0] ?? 0), frontLook(context));

const codes = (items: readonly Item[]): Raw => sequence(items.map(({ code }) => code));

const plainPage = (items: readonly Item[], page: number | undefined): Raw =>
  call('plain-page', [page, pageNumber(page), codes(items)]);

/** As many pages as it takes. */
const flowing = (items: readonly Item[]): Run => ({
  pages: undefined,
  isOne: false,
  code: (page) => plainPage(items, page),
});

interface Front {
  readonly pages: readonly (readonly Item[])[];
  /** What is left of the last of them. */
  readonly room: number;
  /** The legend stands on them. */
  readonly legend: boolean;
}

/** The first page is set closer when that saves a page, or makes room for the legend. */
function frontOf(blocks: readonly Block[], legend: number, context: PrintContext): Front {
  const full = context.frame.plainHeight - HAIR;
  // Only the list of needs can be set closer: the rest is made once.
  const made = new Map<Block, readonly Section[]>();
  const usual = NEED_INSETS[0] ?? 0;
  const pagesAt = (inset: number) => {
    const sections = blocks.flatMap((block) => {
      const known = made.get(block);
      const own = known ?? sectionsOf([block], context, inset);
      if (block.kind !== 'needs') made.set(block, own);
      return own;
    });
    return dealSections([], sections, frontLook(context), full);
  };
  const roomy = pagesAt(usual);
  const tries = (extra: number) => {
    for (const inset of NEED_INSETS) {
      if (extra > 0 && inset < LEAST_FOR_LEGEND) break;
      const pages = inset === usual ? roomy : pagesAt(inset);
      if (pages.length === 1 && itemsHigh(pages[0] ?? []) + extra <= full) return pages;
    }
    return undefined;
  };
  const pages = (legend > 0 ? tries(legend) : undefined) ?? tries(0) ?? roomy;
  const room = full - itemsHigh(pages.at(-1) ?? []);
  return { pages, room, legend: legend > 0 && legend <= room };
}

const frontLook = ({ words }: PrintContext): SectionLook => ({
  title: (title) => titleItem(title, WIDTH),
  goOn: (title) => goOnItem(say(words.continued, { step: title }), 12.5, 5.5, 2),
  next: [],
  whole: false,
});

const isLegend = (block: Block): boolean => block.kind === 'key' || block.kind === 'statement';

function guideRuns(
  blocks: readonly Block[],
  firstStep: number,
  document: GuideDocument,
  context: PrintContext,
): readonly Run[] {
  const { frame } = context;
  const afterSteps = blocks.findLastIndex((block) => !isStanding(block)) + 1;
  const steps = blocks.slice(firstStep, afterSteps);
  const ending = [...steps.filter(isStanding), ...blocks.slice(afterSteps)].filter(
    (block) => !isLegend(block),
  );
  const endingIn = (column: number): Ending => ({
    legend: itemsOf(blocks.filter(isLegend), { ...context, column }),
    rest: itemsOf(ending, { ...context, column }),
  });
  const wide = endingIn(context.column);
  // Behind the steps it leaves the column for notes free.
  const narrow = frame.walk ? endingIn(frame.body) : wide;
  const front = frontOf(
    blocks.slice(0, firstStep).filter((block) => !isLegend(block)),
    apart(wide.legend),
    context,
  );
  const full = frame.leastHeight - HAIR;
  const made = steps.filter((block) => !isStanding(block)).map((block) => stepBlock(block, context));
  const { dealt, ends } = closest((by) => {
    const steps = by === 0 ? made : made.map((step) => closer(step, by));
    return dealEnding(front, wide, narrow, full, (ending) => deal(steps, frame.stepHeight, ending));
  });
  const heads = runningHeads(document, dealt.pages, frame);
  const stepRun = (fragments: readonly Fragment[], i: number, rest: readonly Item[]): Run => ({
    pages: 1,
    isOne: true,
    code: (page) => {
      const art = openArt();
      const head = heads[i];
      const signs = [pageNumber(page), ...(head ? stepHead(art, head, document, frame) : [])];
      const top = head?.under ?? 0;
      const body = stepPageCode(fragments, art, signs, top, context);
      return call('step-page', [
        top,
        artArgument(art, frame),
        signs,
        body,
        rest.length > 0 ? codes(rest) : undefined,
      ]);
    },
  });
  const last = dealt.pages.length - 1;
  return [
    ...front.pages.map((items, i) =>
      frontRun(i === front.pages.length - 1 ? [...items, ...ends.early] : items, frame),
    ),
    ...dealt.pages.map((fragments, i) => stepRun(fragments, i, i === last ? ends.behind : [])),
    ...(ends.alone.length > 0 ? [stepRun([], dealt.pages.length, ends.alone)] : []),
    ...(ends.long.length > 0 ? [flowing(ends.long)] : []),
  ];
}

interface DealtSteps {
  readonly dealt: Dealt;
  readonly ends: Ends;
}

/** Lines stand closer, by so much over and under each, where that saves a page: boxes to tick stay a millimetre apart. */
const CLOSER = [0.2, 0.3, 0.4];
const CLOSEST = 0.5;

function closest(dealtAt: (by: number) => DealtSteps): DealtSteps {
  const pagesIn = ({ dealt }: DealtSteps) => dealt.pages.length + (dealt.endsAlone ? 1 : 0);
  const usual = dealtAt(0);
  // Mostly even the closest saves nothing: then the others need not be tried.
  const last = dealtAt(CLOSEST);
  if (pagesIn(last) === pagesIn(usual)) return usual;
  for (const by of CLOSER) {
    const next = dealtAt(by);
    if (pagesIn(next) === pagesIn(last)) return next;
  }
  return last;
}

/** Where what was worked out may be short, only the typesetter knows that it is one page. */
const frontRun = (items: readonly Item[], { plainHeight }: Frame): Run => ({
  pages: 1,
  isOne: itemsHigh(items) <= plainHeight - UNSURE,
  code: (page) => plainPage(items, page),
});

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
  /** On pages of their own, because they are longer than one. */
  readonly long: readonly Item[];
}

/** The legend stands on the first page where it finds room; so does the rest when it would need a page of its own. */
function dealEnding(
  front: Front,
  wide: Ending,
  narrow: Ending,
  least: number,
  dealtWith: (ending: number) => Dealt,
): DealtSteps {
  const all = [...wide.legend, ...wide.rest];
  const early = front.legend ? wide.legend : [];
  const late = front.legend ? narrow.rest : [...narrow.legend, ...narrow.rest];
  const none = { early, behind: [], alone: [], long: [] };
  if (apart(late) > least) {
    const dealt = dealtWith(0);
    if (apart(all) <= front.room) return { dealt, ends: { ...none, early: all } };
    return { dealt, ends: { ...none, long: front.legend ? wide.rest : all } };
  }
  const dealt = dealtWith(apart(late));
  if (apart(all) <= front.room) {
    const shorter = dealtWith(0);
    if (shorter.pages.length < dealt.pages.length || dealt.endsAlone)
      return { dealt: shorter, ends: { ...none, early: all } };
  }
  return { dealt, ends: dealt.endsAlone ? { ...none, alone: late } : { ...none, behind: late } };
}

/** Height of items under others. */
const apart = (items: readonly Item[]): number => (items.length === 0 ? 0 : itemsHigh(items) + APART);

/** A sheet to tear off; on double-sided paper it begins on a page with an odd number. */
function recordRuns(record: BlockOf<'record'>, context: PrintContext, twoSided: boolean): readonly Run[] {
  const { look, pages } = recordPages(record, context, context.frame.plainHeight - HAIR - UNSURE);
  return pages.map((items, i) => ({
    pages: 1,
    isOne: true,
    odd: twoSided && i === 0,
    code: (page) =>
      call('record-page', [
        page,
        pageNumber(page),
        i === 0,
        { inset: look.inset, gap: look.gap, under: look.under },
        codes(items),
      ]),
  }));
}
