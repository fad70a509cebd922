// A word that opens a line and is not known there.
import { defineDiagnostic } from './define.js';
import { didYouMean } from './did-you-mean.js';

export const unknownWord = defineDiagnostic<{
  readonly word: string;
  readonly where: string;
  readonly readAs: string | undefined;
  readonly near: readonly string[];
  /** The whole line as plain words. */
  readonly plain?: string | undefined;
  /** The thread of a set without its number. */
  readonly set?: string;
  /** It begins a sentence that forbids. */
  readonly isBan?: boolean;
  /** The sign or number of a list. */
  readonly isBullet?: boolean;
}>({
  code: 'G201',
  name: 'unknown-word',
  severity: 'error',
  message: ({ word, where, readAs }) =>
    readAs === undefined
      ? `\`${word}\` is not a word that opens a line ${where}`
      : `\`${word}\` is read as \`${readAs}\``,
  advice: ({ readAs, near, plain, isBullet, isBan, set }) =>
    set !== undefined
      ? `a set says how many \`of\` what: \`4 of ${set}\``
      : isBullet
        ? 'lines need no sign or number; the guide numbers them'
        : readAs !== undefined
          ? undefined
          : (didYouMean(near) ??
            (plain === undefined
              ? 'text for the technician goes after a colon'
              : isBan
                ? `what must not be done is told before it: \`${plain}\`, or \`caution\` where it can hurt someone`
                : `what the checker need not follow goes in plain words: \`${plain}\``)),
  why: `The first word of a line says what the line is. A line that the checker cannot read is left out with everything below it, and so is what it would have checked.`,
  wrong: `procedure A-1: Mirror, clean

places
  mirror: Door mirror

inspection
  step: Clean the mirror
    claen mirror
#   ^^^^^ G201`,
  right: `procedure A-1: Mirror, clean

places
  mirror: Door mirror

inspection
  step: Clean the mirror
    clean mirror`,
});
