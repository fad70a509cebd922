// Rows of the record that say the same of the left and the right side, brought together: print and page show them as one
// row with blanks for each side.
import type { OnSide } from './blocks.js';

/** A row alone, or one of the first side with its counterpart. */
type Both<R> = readonly [row: R, other?: R];

export interface Sided<R> {
  /** The two sides in words, as the columns stand. */
  readonly sides: readonly [string, string];
  readonly rows: readonly Both<R>[];
}

interface Row {
  readonly of?: OnSide;
}

/** Each row with its counterpart on the other side, where `same` says that they ask the same; none where none has one. */
export function bySides<R extends Row>(
  rows: readonly R[],
  same: (row: R, other: R) => boolean,
): Sided<R> | undefined {
  const [first, second] = [...new Set(rows.flatMap(({ of }) => (of ? [of.side] : [])))];
  if (first === undefined || second === undefined) return undefined;
  const taken = new Set<R>();
  const all = rows.flatMap((row): readonly Both<R>[] => {
    if (taken.has(row)) return [];
    taken.add(row);
    const { of } = row;
    const other =
      of &&
      rows.find(
        (one) => !taken.has(one) && one.of?.what === of.what && one.of.side !== of.side && same(row, one),
      );
    if (!other) return [[row]];
    taken.add(other);
    return [of.side === first ? [row, other] : [other, row]];
  });
  return all.length === rows.length ? undefined : { sides: [first, second], rows: all };
}
