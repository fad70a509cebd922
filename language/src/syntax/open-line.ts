// A line whose text or block may still grow while the lines below it are read.
import type { Span } from '../text/span.js';
import type { Place } from './classify.js';
import type { Line, LineBase, LineKind, Prose } from './tree.js';

/** A node while it is made: its end, text and children come after it. */
export interface GrowingLine extends Omit<LineBase, 'end' | 'prose' | 'broken' | 'children'> {
  readonly kind: LineKind;
  readonly children: Line[];
  end: number;
  prose: Prose | undefined;
  broken: boolean;
}

export interface OpenLine {
  /** Undefined for the file itself. */
  readonly node: GrowingLine | undefined;
  /** The column it is read at; -1 for the file. */
  readonly indent: number;
  /** The column of the lines below it, once there is one. */
  childIndent: number | undefined;
  /** Where the lines below it stand. */
  place: Place;
  /** True when all that is deeper is its text. */
  readonly takesText: boolean;
  /** Offset behind the colon when text stands on the line and cannot go on below. */
  readonly remarkAt: number | undefined;
  /** The lines of its text, and the deepest indent of one below it. */
  readonly text: Span[];
  textIndent: number;
  /** Offset of the colon that ends the line, whose text must follow below. */
  readonly openColon: number | undefined;
  /** Whether its text stands below the line. */
  below: boolean;
}
