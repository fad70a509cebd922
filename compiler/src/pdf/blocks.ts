// Every block kind in print. The tables are typed over the kinds: a new kind does not compile until it is here.
import type { Block, BlockOf, BlockRenderers, Rail } from '../document/blocks.js';
import type { Prose } from '../document/inline.js';
import type { PrintContext } from './context.js';
import { cut } from './cut.js';
import { FRONT, type FrontKind } from './front/blocks.js';
import type { Item } from './front/items.js';
import { needSections } from './front/needs.js';
import { RECORD, type RecordKind } from './front/record.js';
import type { RecordPartKind } from './front/record-parts.js';
import { type Section, wholeSection } from './front/sections.js';
import { bannerBar, figureAside, leadIn, remark, signalPanel, tallyLine, wearLine } from './steps/panels.js';
import { actionRows, type Row, stopRows } from './steps/rows.js';
import type { Part } from './steps/set.js';
import { type Step, stepOf } from './steps/step.js';
import type { Between, Piece } from './steps/units.js';

type StandingKind = FrontKind | RecordKind | 'needs';
type StandingBlock = BlockOf<StandingKind>;
type StepKind = Exclude<Block['kind'], StandingKind | RecordPartKind | 'record'>;

/** `inset` is what stands over and under the lines of the list of needs, in millimetres. */
type Standing = {
  readonly [K in StandingKind]: (
    block: BlockOf<K>,
    context: PrintContext,
    inset: number,
  ) => readonly Section[];
};

const whole =
  <B>(render: (block: B, context: PrintContext) => readonly Item[]) =>
  (block: B, context: PrintContext): readonly Section[] => [wholeSection(render(block, context))];

const STANDING: Standing = {
  masthead: whole(FRONT.masthead),
  heading: whole(FRONT.heading),
  dangers: whole(FRONT.dangers),
  needs: (block, _, inset) => needSections(block, inset),
  key: whole(FRONT.key),
  statement: whole(FRONT.statement),
  sources: whole(FRONT.sources),
  revisions: whole(FRONT.revisions),
  questions: whole(FRONT.questions),
  'torque-table': whole(RECORD['torque-table']),
  'off-now': whole(RECORD['off-now']),
};

/** Blocks that stand on a page by themselves, as sections of it. */
export function sectionsOf(
  blocks: readonly Block[],
  context: PrintContext,
  inset: number,
): readonly Section[] {
  return blocks.filter(isStanding).flatMap((block) => {
    const render = STANDING[block.kind] as Standing[StandingKind] as (
      block: StandingBlock,
      context: PrintContext,
      inset: number,
    ) => readonly Section[];
    return render(block, context, inset);
  });
}

export const isStanding = (block: Block): block is StandingBlock => block.kind in STANDING;

/** A block among the steps: a step, or what stands outside of one. */
export function stepBlock(block: Block, context: PrintContext): Step {
  const place: Place = { depth: 0, last: block.kind === 'step' ? block.before.off : undefined };
  if (block.kind !== 'step') return stepOf(undefined, piecesOf([block], place, context), context);
  return stepOf(block, piecesOf(block.items, place, context), context);
}

/** Where in a step it is, and what was off when the number was printed last. */
interface Place {
  readonly depth: number;
  last: number | undefined;
}

const piecesOf = (items: readonly Block[], place: Place, context: PrintContext): readonly Piece[] =>
  items.flatMap((item, at) => {
    const pieces = isPiece(item) ? renderPiece(item, { place, context }) : [];
    return isBehindWarnedBranch(items, at) ? staying(pieces) : pieces;
  });

/** A panel before a branch protects what is done behind it as well: nobody knows whether the branch is done. */
const isBehindWarnedBranch = (items: readonly Block[], at: number): boolean =>
  items[at - 1]?.kind === 'branch' && items[at - 2]?.kind === 'panel';

const staying = ([first, ...others]: readonly Piece[]): readonly Piece[] =>
  first?.piece === 'row'
    ? [{ ...first, row: { ...first.row, stays: 'always' } }, ...others]
    : [...(first ? [first] : []), ...others];

type PieceKind = Exclude<StepKind, 'step'>;
type PieceBlock = BlockOf<PieceKind>;

const isPiece = (block: Block): block is PieceBlock => block.kind in PIECES;

function renderPiece(block: PieceBlock, context: PieceContext): readonly Piece[] {
  return (PIECES[block.kind] as (block: PieceBlock, context: PieceContext) => readonly Piece[])(
    block,
    context,
  );
}

interface PieceContext {
  readonly place: Place;
  readonly context: PrintContext;
}

interface Located {
  readonly rail: Rail;
  readonly revised?: boolean;
}

const between = (
  piece: 'with next' | 'with previous',
  { rail, revised = false }: Located,
  parts: readonly Part[],
  more: Pick<Between, 'ban' | 'stays'> = {},
): readonly Piece[] => parts.map((part) => ({ piece, between: { part, rail, revised, ...more } }));

const rows = (all: readonly Row[]): readonly Piece[] => all.map((row) => ({ piece: 'row', row }));

/** A heading line over rows that depend on it. Of a changed branch the heading gets the bar. */
function nested(
  block: BlockOf<'branch'> | BlockOf<'repeat'>,
  boxes: number,
  { place, context }: PieceContext,
): readonly Piece[] {
  const inner: Place = { depth: place.depth + 1, last: place.last };
  const items = piecesOf(block.items, inner, context);
  place.last = inner.last;
  const stays = 'depends' in block && block.depends ? 'where it can' : 'no';
  return [...between('with next', block, [leadIn(block.heading, boxes, context)], { stays }), ...items];
}

/** The count of what is off, where it differs from the one printed last. */
function count({ rail }: Located, place: Place): number | undefined {
  const changed = rail.off !== place.last;
  place.last = rail.off;
  return changed ? rail.off : undefined;
}

/** More lines of a remark or a panel than this do not fit a page with what they belong to. */
const MOST_LINES = 20;

const remarks = (
  block: Located & { readonly body: Prose },
  label: string | undefined,
  context: PrintContext,
): readonly Piece[] => {
  const width = context.frame.body / 2;
  const parts = cut(block.body, { size: 10 }, width, MOST_LINES).map((body) => remark(label, body, context));
  return between('with previous', block, parts);
};

const PIECES: Pick<BlockRenderers<readonly Piece[], PieceContext>, PieceKind> = {
  row: (block, { place, context }) => rows(actionRows(block, place.depth, context, count(block, place))),
  stop: (block, { place, context }) => rows(stopRows(block, place.depth, context, count(block, place))),
  panel: (block, { context }) => {
    const texts = cut(block.body, { size: 11, weight: 600 }, context.frame.body / 2, MOST_LINES);
    const parts = texts.map((body) => signalPanel(block.signal, block.word, body, context));
    return between('with next', block, parts);
  },
  wear: (block, { context }) => between('with next', block, [wearLine(block, context)]),
  banner: (block, { context }) =>
    between(block.edge === 'start' ? 'with next' : 'with previous', block, [bannerBar(block, context)], {
      ban: { id: block.ban, edge: block.edge },
    }),
  branch: (block, context) => nested(block, 0, context),
  repeat: (block, context) => nested(block, block.times ?? 0, context),
  note: (block, { context }) => remarks(block, undefined, context),
  reason: (block, { context }) => (context.training ? remarks(block, context.words.why, context) : []),
  clip: (block, { context }) => remarks({ ...block, body: block.onPaper ?? block.body }, undefined, context),
  figure: (block, { context }) => between('with next', block, [figureAside(block, context)]),
  tally: (block, { context }) => between('with previous', block, [tallyLine(block.body, context)]),
};
