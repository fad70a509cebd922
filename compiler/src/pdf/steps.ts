// A step in print: its items flattened to units that never part: a panel with the row it protects, a banner with
// its line, a tally with the line it closes, the head with the first row.
import type { Block, BlockOf, Rail } from '../document/blocks.js';
import { asSvg, PRINT_INKS } from '../document/drawing/drawing.js';
import { markDrawing } from '../document/drawing/heads.js';
import { type Prose, plain } from '../document/inline.js';
import { besideCode, orderArgument } from './beside.js';
import type { PrintContext } from './context.js';
import { proseCode } from './prose.js';
import { type Argument, call, type Raw, sequence } from './typst-code.js';

interface RowPiece {
  readonly piece: 'row';
  readonly row: Argument;
  /** Too long to be kept on one page for certain. */
  readonly long: boolean;
}

/** A piece of a step: a row of the list, or something that stays with the row after or before it. */
export type Piece =
  | RowPiece
  | { readonly piece: 'with next' | 'with previous' | 'alone'; readonly code: Raw };

export interface PieceContext extends PrintContext {
  readonly depth: number;
  /** Renders the items inside a branch or a repeat. */
  readonly pieces: (items: readonly Block[], context: PieceContext) => readonly Piece[];
  /** Tells whether a rail differs from the one printed last, and remembers it. */
  readonly fresh: (rail: Rail) => boolean;
}

export function stepCode(step: BlockOf<'step'>, context: PieceContext): Raw {
  let last = step.before.off;
  const fresh = (rail: Rail) => {
    const changed = rail.off !== last;
    last = rail.off;
    return changed;
  };
  const units = unitsOf(context.pieces(step.items, { ...context, fresh }));
  return call('step', [
    step.number,
    step.title,
    step.phase,
    railArgument(step.before),
    units.map(({ before, row, after }) =>
      call('unit', [together(before), row?.row, together(after), row?.long ?? false]),
    ),
    step.revised ?? false,
  ]);
}

export function rowPiece(row: BlockOf<'row'>, context: PieceContext): Piece {
  const hold = row.beside.some((beside) => beside.kind === 'hold');
  const long = isLong([row.condition ?? [], row.body, ...row.notes, ...row.reasons]) || row.beside.length > 3;
  return {
    piece: 'row',
    long,
    row: rowArgument(row.number, row.rail, context, {
      long,
      weight: hold ? 'hold' : undefined,
      condition: row.condition ? proseCode(row.condition) : undefined,
      body: proseCode(row.body),
      notes: row.notes.map(proseCode),
      reasons: row.reasons.map(proseCode),
      marks: row.marks.map((marks) => ({
        label: proseCode([marks.label]),
        count: marks.count,
        source: asSvg(markDrawing(marks.shape, PRINT_INKS)),
      })),
      order: orderArgument(row.order, 36),
      beside: row.beside.map((beside) => besideCode(beside, context)),
      leader: row.beside.some((beside) => beside.kind !== 'socket'),
      revised: row.revised ?? false,
    }),
  };
}

export function stopPiece(stop: BlockOf<'stop'>, context: PieceContext): Piece {
  const long = isLong([stop.condition ?? [], stop.body]);
  return {
    piece: 'row',
    long,
    row: rowArgument(stop.number, stop.rail, context, {
      long,
      weight: 'stop',
      condition: stop.condition ? proseCode(stop.condition) : undefined,
      body: proseCode(stop.body),
      revised: stop.revised ?? false,
    }),
  };
}

export function railArgument(rail: Rail): Argument {
  return [rail.off, rail.loose];
}

function rowArgument(
  number: string,
  rail: Rail,
  context: PieceContext,
  more: Record<string, Argument>,
): Argument {
  return {
    number,
    first: lastNumber(number),
    rail: railArgument(rail),
    count: context.fresh(rail) ? rail.off : undefined,
    depth: context.depth,
    condition: undefined,
    notes: [],
    reasons: [],
    marks: [],
    order: undefined,
    beside: [],
    leader: false,
    revised: false,
    ...more,
  };
}

/** What never parts: at most one row, with what stands before it and what closes it. */
interface Unit {
  readonly before: Raw[];
  row?: RowPiece;
  readonly after: Raw[];
}

function unitsOf(pieces: readonly Piece[]): readonly Unit[] {
  const units: Unit[] = [];
  let open: Unit | undefined;
  for (const piece of pieces) {
    if (piece.piece === 'with previous' && units.length > 0 && !open) {
      units.at(-1)?.after.push(piece.code);
      continue;
    }
    open ??= { before: [], after: [] };
    if (piece.piece === 'row') open.row = piece;
    else open.before.push(piece.code);
    if (piece.piece !== 'with next') {
      units.push(open);
      open = undefined;
    }
  }
  return open ? [...units, open] : units;
}

const together = (codes: readonly Raw[]): Argument => (codes.length === 0 ? undefined : sequence(codes));

/** More characters than fit the text column of one page with room to spare. */
const LONG_TEXT = 1200;

export function isLong(proses: readonly Prose[]): boolean {
  return proses.reduce((length, prose) => length + plain(prose).length, 0) > LONG_TEXT;
}

/** The row's place in its list: `6` of `2.6`, `2` of `3.4.2`. */
function lastNumber(number: string): number {
  return Number(/(\d+)\D*$/.exec(number)?.[1] ?? 1);
}
