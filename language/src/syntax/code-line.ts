// A line of code as layout hands it over, and what it sees of the line it stands under.
import type { Span } from '../text/span.js';
import type { Place } from './classify.js';

/** A line of code as layout found it. */
export interface CodeLine {
  readonly file: string;
  readonly text: string;
  readonly code: Span;
  /** The code with comments inside it blanked out, when it goes over several lines. */
  readonly joined: string;
  /** Offset of the colon, and the span of the text behind it. */
  readonly colon: number | undefined;
  readonly remark: Span | undefined;
}

/** What stands above a line. */
export interface Above {
  readonly place: Place;
  /** The head of the line above, for messages. */
  readonly head: string;
  /** Offset behind the colon of a line above whose text stands on the line. */
  readonly remark: number | undefined;
}
