// The line that the grammar is reading.

/** The line that is being read. */
export interface LineSource {
  readonly file: string;
  /** The line's code, and its place in the file. */
  readonly code: string;
  readonly base: number;
  /** Words that may open a clause here; the nearest is offered where a word does not fit. */
  readonly clauseWords: readonly string[];
}
