// What stands at the right of an action: the box the hand needs at that line. One kind, one renderer in each
// output.
import type { Figure, Inline, Prose, Quantity } from './inline.js';
import type { Picture } from './picture.js';

/** Outline of a fastener's head, as it is declared. `round` stands for heads without a drive, such as clips. */
export type HeadShape =
  | 'hex'
  | 'square'
  | 'hexalobular'
  | 'twelve-point'
  | 'hex-socket'
  | 'slot'
  | 'cross'
  | 'round';

/** A head with its size, as drawn: shape, the size inside, and what is said of it (`hex 18 mm`). */
export interface Head {
  readonly shape: HeadShape;
  /** Printed inside the outline; empty when the size is open. */
  readonly size: string;
  /** Read aloud, and printed beside a small head: `hex 18 mm`. */
  readonly label: string;
}

/** One turn of the wrench. `figure` missing: the value is an open question and prints as a blank. */
export interface TorqueStage {
  /** `first`, `then`, or nothing for a single stage. */
  readonly label?: string;
  readonly figure?: Quantity;
  /** Unit of the blank when the figure is missing. */
  readonly unit?: string;
  /**
   * What is set on the wrench, where that is not the torque itself: drag of the fastener, a crowfoot. `joint` names the
   * torque beside it.
   */
  readonly set?: { readonly label: string; readonly joint: string; readonly figure: Quantity };
}

/** Where fasteners sit and the order they are taken in, worked out from the declared pattern. */
export interface OrderDiagram {
  /** `circle` draws the flange the heads sit on, `plate` a rectangle. */
  readonly outline: 'circle' | 'plate';
  /** Width over height of the pattern's frame. */
  readonly aspect: number;
  readonly shape: HeadShape;
  /** `x` and `y` from 0 to 1, y downwards; `turn` counts from 1. */
  readonly heads: readonly { readonly x: number; readonly y: number; readonly turn: number }[];
  /** The order in words. */
  readonly alt: string;
}

export interface ReadingUnit {
  readonly label: string;
  /** What one of this unit is in the unit of the limit, as an exact fraction of two whole numbers: 127/5. */
  readonly times: readonly [numerator: string, denominator: string];
  /** Added after `times`, in the unit of the limit, for temperature points. */
  readonly plus?: readonly [numerator: string, denominator: string];
}

export interface BesideKinds {
  /** The tool for a line without torque: head outline and size. */
  socket: { readonly kind: 'socket'; readonly head: Head };
  torque: {
    readonly kind: 'torque';
    readonly head?: Head;
    readonly count: number;
    readonly stages: readonly TorqueStage[];
    /** Threadlocker, lubrication, posture, order: each a short line under the figures. */
    readonly conditions: readonly Prose[];
  };
  reading: {
    readonly kind: 'reading';
    readonly id: string;
    readonly name: string;
    /** How many readings are taken: a blank for each. */
    readonly places: number;
    /** Boxes of one group are for different vehicles: one of them is filled in. */
    readonly group?: string;
    /** Units it may be read in; the first is the one printed. */
    readonly units: readonly ReadingUnit[];
    /** Limits in the first unit, exact decimal text. Both missing: the limit is an open question. */
    readonly low?: string;
    readonly high?: string;
    /** `at least 22.0`, in words and figures, and what it is when new. */
    readonly limit: Prose;
    readonly fresh?: Prose;
    /** Limit and new value in the other system. */
    readonly other?: Prose;
    /** Where to go next, a line for each way that the reading may come out. */
    readonly ways: readonly Prose[];
  };
  inspection: {
    readonly kind: 'inspection';
    readonly id: string;
    /** Where to go next, when it is good and when it is rejected. */
    readonly good: Prose;
    readonly bad: Prose;
  };
  hold: { readonly kind: 'hold'; readonly id: string };
  /** A time that must pass (`at least`) or must not be overrun (`at most`). */
  clock: {
    readonly kind: 'clock';
    readonly id: string;
    readonly sense: 'at least' | 'at most';
    readonly seconds: number;
    /** `4 h`. */
    readonly length: Figure;
    /** What the time is for: `cure`, `set before filling`. */
    readonly name: string;
    /** The line whose tick starts it. Missing: started by hand. */
    readonly from?: { readonly row: string; readonly number: string };
    /** The line whose tick ends it, where it must not be overrun. */
    readonly until?: { readonly row: string; readonly number: string };
  };
  picture: { readonly kind: 'picture'; readonly picture: Picture };
}

type BesideKind = keyof BesideKinds;
export type Beside = BesideKinds[BesideKind];

/** A table of renderers over the kinds of side box. */
export type BesideRenderers<R, C> = {
  readonly [K in BesideKind]: (beside: BesideKinds[K], context: C) => R;
};

export function renderBeside<R, C>(table: BesideRenderers<R, C>, beside: Beside, context: C): R {
  return (table[beside.kind] as (box: Beside, context: C) => R)(beside, context);
}

/** Small heads to mark, one for each fastener that gets its torque at a line. */
export interface Marks {
  readonly label: Inline;
  readonly count: number;
  readonly shape: HeadShape;
}

/** Rows alike, where at most so many fit one: a head alone in its row is overlooked. */
export const marksInRow = (count: number, most: number): number =>
  Math.ceil(count / Math.ceil(count / Math.max(1, Math.floor(most))));

/** The names of the blanks of a reading: one, or one for each place it is taken at. */
export const blanksOf = ({ id, places }: { readonly id: string; readonly places: number }): string[] =>
  places > 1 ? Array.from({ length: places }, (_, i) => `${id}-${i + 1}`) : [id];
