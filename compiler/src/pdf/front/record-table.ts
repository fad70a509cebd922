// A table of the record whose rows may be dealt to several pages, its heights worked out.
import type { Prose } from '../../document/inline.js';
import { widthOf } from '../type/faces.js';
import { type Argument, call, type Raw, raw } from '../typst-code.js';
import { proseHigh, rowHigh, textHigh, USUAL_GAP } from './items.js';
import type { Section } from './sections.js';

/** How close the record is set. Millimetres. */
export interface RecordLook {
  /** Size of the type of its tables, in points. */
  readonly size: number;
  /** Over and under the lines of tables. */
  readonly inset: number;
  /** Over and under the heading of a section. */
  readonly gap: number;
  readonly under: number;
  /** Height of a frame to write in, and of a line to write on. */
  readonly field: number;
  readonly hand: number;
  /** Torques stand in two tables beside each other. */
  readonly paired: boolean;
  /** So many frames may stand in one row, where that takes them all. */
  readonly row: number;
  /** What is fitted and who signs stand under one heading. */
  readonly joined: boolean;
  /** What is asked of each side stands in one row. */
  readonly sided: boolean;
}

/** What stands beside the text of a cell: less beside small type. */
export const besideText = (size: number): number => (size < 10 ? 2.6 : 3.6);
/** Width of the column of line numbers. */
export const AT = 14;

export interface Table {
  readonly name: string;
  readonly widths: readonly number[];
  readonly heads: readonly string[];
  readonly rows: readonly {
    /** Made only for the look that is chosen. */
    readonly code: () => Argument;
    /** Texts that may take several lines, with the widths of their columns. */
    readonly texts: readonly (readonly [said: Prose, width: number])[];
    /** Height of what else stands in it. */
    readonly least: number;
    /** Nobody writes in it: it may be lower than a hand needs. */
    readonly ticked?: boolean;
  }[];
}

export function tablePart(
  title: string,
  { inset, size, hand }: RecordLook,
  { name, widths, heads, rows }: Table,
): Section {
  const inside = (width: number) => Math.max(4, width - besideText(size));
  const type = { size, tabular: true };
  const head = rowHigh(
    heads.map((word, i) => textHigh(word, { ...type, weight: 700 }, inside(widths[i] ?? 0))),
    inset,
  );
  const heights = rows.map(({ texts, least, ticked = false }) =>
    Math.max(
      ticked ? 0 : hand,
      rowHigh([least, ...texts.map(([said, width]) => proseHigh(said, type, inside(width)))], inset),
    ),
  );
  return {
    title,
    above: 2,
    below: USUAL_GAP,
    rows: rows.length,
    high: (from, to) => heights.slice(from, to).reduce((sum, one) => sum + one, head),
    code: (from, to) =>
      call(name, [
        size,
        millimetres(widths),
        heads,
        millimetres([head, ...heights.slice(from, to)]),
        rows.slice(from, to).map(({ code }) => code()),
      ]),
  };
}

/** So wide, or as wide as its head needs. */
export const headed = (word: string, least: number, size: number): number =>
  Math.max(least, widthOf(word, '700Bold', size, true) + besideText(size) + 0.2);

export const millimetres = (lengths: readonly number[]): readonly Raw[] =>
  lengths.map((one) => raw(`${one}mm`));
