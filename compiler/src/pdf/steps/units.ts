// The pieces of a step, and which of them never part: a panel with the line it protects, a ban with its line, a tally
// with the line it closes, a STOP or a HOLD with the line it judges.
import type { Rail } from '../../document/blocks.js';
import type { Row, Stays } from './rows.js';
import type { Part } from './set.js';

/** Something beside the rail that is no line of the list. */
export interface Between {
  readonly part: Part;
  readonly rail: Rail;
  readonly revised: boolean;
  /** How it stays with the line before it. */
  readonly stays?: Stays;
  /** A ban that begins or ends here. */
  readonly ban?: { readonly id: string; readonly edge: 'start' | 'end' };
}

export type Piece =
  | { readonly piece: 'row'; readonly row: Row }
  | { readonly piece: 'with next' | 'with previous'; readonly between: Between };

/** At most one line, with what stands before it and what closes it. */
export interface Unit {
  readonly before: readonly Between[];
  readonly row: Row | undefined;
  readonly after: readonly Between[];
}

/** A STOP or a HOLD never parts from the line it judges, unless that has a tall box. Millimetres. */
const MOST_JUDGED = 50;

/** Groups of units that never part, none of them higher than `most`. */
export function groupsOf(pieces: readonly Piece[], most: number): readonly (readonly Unit[])[] {
  const groups: Unit[][] = [];
  for (const unit of unitsOf(pieces).flatMap((one) => parted(one, most))) {
    const last = groups.at(-1);
    const judged = last && unit.row?.stays === 'always' && groupHigh(last) + unitHigh(unit) <= MOST_JUDGED;
    if (judged) last.push(unit);
    else groups.push([unit]);
  }
  return groups;
}

export const groupHigh = (group: readonly Unit[]): number =>
  group.reduce((sum, unit) => sum + unitHigh(unit), 0);

/** How a group stays with the one before it. */
export function groupStays([first]: readonly Unit[]): Stays {
  return (first?.before[0] ? first.before[0].stays : first?.row?.stays) ?? 'no';
}

function unitHigh({ before, row, after }: Unit): number {
  const sum = (all: readonly Between[]) => all.reduce((total, { part }) => total + part.height, 0);
  return sum(before) + (row?.part.height ?? 0) + sum(after);
}

function unitsOf(pieces: readonly Piece[]): readonly Unit[] {
  const units: { before: Between[]; row: Row | undefined; after: Between[] }[] = [];
  let open = false;
  for (const piece of pieces) {
    const last = units.at(-1);
    if (piece.piece === 'with previous' && last && !open) {
      last.after.push(piece.between);
      continue;
    }
    const unit = open && last ? last : { before: [], row: undefined, after: [] };
    if (unit !== last) units.push(unit);
    if (piece.piece === 'row') unit.row = piece.row;
    else unit.before.push(piece.between);
    open = piece.piece === 'with next';
  }
  return units;
}

/** What no page can hold together is parted after all. */
function parted(unit: Unit, most: number): readonly Unit[] {
  if (unitHigh(unit) <= most) return [unit];
  const alone = (between: Between): Unit => ({ before: [between], row: undefined, after: [] });
  const row: readonly Unit[] = unit.row ? [{ before: [], row: unit.row, after: [] }] : [];
  return [...unit.before.map(alone), ...row, ...unit.after.map(alone)];
}
