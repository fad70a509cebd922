// Long work in slices, with whoever waits served in between: a slice ends before a key press would be felt.

/** Milliseconds that one slice may take. */
export const SLICE = 8;

/** Puts work behind messages that have come in; gives a way to take it back. */
export type Later = (milliseconds: number, work: () => void) => () => void;

/**
 * Runs work once the messages that have come in by now are answered. A message is read in one turn of the loop and
 * handled in the next, so work waits two turns.
 */
export function politely(later: Later, work: () => void): () => void {
  let takeBack = later(0, () => {
    takeBack = later(0, work);
  });
  return () => takeBack();
}
