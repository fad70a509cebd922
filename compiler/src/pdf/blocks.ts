// Every block kind in print. The table is typed over the kinds: a new kind does not compile until it is here.
import { type Block, type BlockOf, type BlockRenderers, type Rail, renderBlock } from '../document/blocks.js';
import { asSvg, PRINT_INKS } from '../document/drawing/drawing.js';
import { protectionDrawing } from '../document/drawing/symbols.js';
import type { Prose } from '../document/inline.js';
import { MANDATORY_INKS } from '../safety-colours.js';
import { pictureCode } from './beside.js';
import { FRONT, type FrontKind } from './blocks-front.js';
import { RECORD, type RecordKind } from './blocks-record.js';
import type { PrintContext } from './context.js';
import { proseCode } from './prose.js';
import { triangle } from './signal.js';
import {
  isLong,
  type Piece,
  type PieceContext,
  railArgument,
  rowPiece,
  stepCode,
  stopPiece,
} from './steps.js';
import { call, type Raw } from './typst-code.js';

/** Renders one block that stands on the page by itself. */
export function blockCode(block: Block, context: PrintContext): readonly Raw[] {
  return piecesOf([block], { ...context, depth: 0, pieces: piecesOf, fresh: () => false }).map((piece) =>
    piece.piece === 'row' ? call('rows', [[piece.row]]) : piece.code,
  );
}

const piecesOf = (items: readonly Block[], context: PieceContext): readonly Piece[] =>
  items.flatMap((item) => {
    const rendered = renderBlock(BLOCKS, item, context);
    const pieces: readonly Piece[] = 'raw' in rendered ? [{ piece: 'alone', code: rendered }] : rendered;
    return item.revised ? withBar(pieces) : pieces;
  });

/** Rows and steps draw their own bar; of everything else, and of a branch its heading, the first piece gets it. */
function withBar([first, ...rest]: readonly Piece[]): readonly Piece[] {
  if (!first) return [];
  const isOwn = first.piece === 'row' || first.piece === 'alone';
  return isOwn ? [first, ...rest] : [{ ...first, code: call('barred', [first.code]) }, ...rest];
}

const one = (piece: Exclude<Piece['piece'], 'row'>, code: Raw): readonly Piece[] => [{ piece, code }];

const remark = (rail: Rail, label: string | undefined, body: Prose) =>
  call('remark', [railArgument(rail), label, proseCode(body)]);

/** A heading line over rows that depend on it. */
function nested(
  block: BlockOf<'branch'> | BlockOf<'repeat'>,
  boxes: number,
  context: PieceContext,
): readonly Piece[] {
  const head = call('lead-in', [railArgument(block.rail), proseCode(block.heading), boxes]);
  return [
    { piece: 'with next', code: head },
    ...context.pieces(block.items, { ...context, depth: context.depth + 1 }),
  ];
}

type StepKind = Exclude<Block['kind'], FrontKind | RecordKind | 'record'>;
const STEPS: Pick<BlockRenderers<readonly Piece[], PieceContext>, StepKind> = {
  step: (block, context) => one('alone', stepCode(block, context)),
  row: (block, context) => [rowPiece(block, context)],
  stop: (block, context) => [stopPiece(block, context)],
  panel: ({ rail, signal, word, body }, context) =>
    one(
      'with next',
      call('railed', [
        railArgument(rail),
        call('signal', [signal, word, triangle(signal, context), proseCode(body)], { long: isLong([body]) }),
      ]),
    ),
  wear: (block, { safetyColours }) =>
    one(
      'with next',
      call('railed', [
        railArgument(block.rail),
        call(
          'wear',
          block.signs.map(({ sign, label }) => ({
            source: asSvg(protectionDrawing(sign, safetyColours ? MANDATORY_INKS : PRINT_INKS)),
            label,
          })),
        ),
      ]),
    ),
  banner: (block) =>
    one(
      block.edge === 'start' ? 'with next' : 'with previous',
      call('railed', [
        railArgument(block.rail),
        call('banner', [block.edge, block.ban, proseCode(block.body)]),
      ]),
    ),
  branch: (block, context) => nested(block, 0, context),
  repeat: (block, context) => nested(block, block.times ?? 0, context),
  note: (block) => one('with previous', remark(block.rail, undefined, block.body)),
  reason: (block, { words, training }) =>
    training ? one('with previous', remark(block.rail, words.why, block.body)) : [],
  clip: (block) => one('with previous', remark(block.rail, undefined, block.body)),
  figure: ({ picture, rail }, context) =>
    one('with next', call('aside', [railArgument(rail), pictureCode(picture, 90, 68, context)])),
  question: (block, { words }) =>
    one(
      'with previous',
      call('aside', [
        railArgument(block.rail),
        call('open-question', [words.openQuestion, proseCode(block.ask)]),
      ]),
    ),
  tally: (block) => one('with previous', call('tally', [railArgument(block.rail), proseCode(block.body)])),
};

const BLOCKS: BlockRenderers<Raw | readonly Piece[], PieceContext> = {
  ...FRONT,
  ...RECORD,
  ...STEPS,
  // The record holds blocks of its own.
  record: (block, context) => [
    { piece: 'alone', code: call('record-title', [block.title]) },
    ...context.pieces(block.items, context),
  ],
};
