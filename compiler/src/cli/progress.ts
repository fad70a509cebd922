// A counter on standard error while long work runs: only on a terminal, only when there is much to do.
import type { Context } from './command.js';

export interface ProgressLine {
  step(done: number, all: number): void;
  /** Lets lines be written above it. */
  above(write: () => void): void;
  /** Takes the line away. */
  end(): void;
}

const WORTH_SHOWING = 50;
const EVERY = 25;

/** `word` says what is counted: `120 of 1000 checked`. */
export function progressLine({ shell }: Context, word: string): ProgressLine {
  if (!shell.err.isTerminal || shell.env.TERM === 'dumb')
    return { step() {}, above: (write) => write(), end() {} };
  let shown = '';
  const clear = (): void => {
    if (shown !== '') shell.err.write('\r\u001b[K');
  };
  return {
    step(done, all) {
      if (all < WORTH_SHOWING || done % EVERY !== 0) return;
      shown = `${done} of ${all} ${word}`;
      shell.err.write(`\r${shown}`);
    },
    above(write) {
      clear();
      write();
      shell.err.write(shown);
    },
    end() {
      clear();
      shown = '';
    },
  };
}
