// S405: a house rule that says nothing: a part is missing, or it names what is not there.
import { defineDiagnostic } from './define.js';
import { didYouMean } from './did-you-mean.js';

export interface RuleFault {
  readonly rule: string;
  /** What is wrong with it: "no thing is called `hub-bolts`". */
  readonly what: string;
  /** Near names. */
  readonly near: readonly string[];
}

export const ruleUnreadable = defineDiagnostic<RuleFault>({
  code: 'S405',
  name: 'rule-unreadable',
  severity: 'error',
  message: (d) => `rule \`${d.rule}\` asks nothing: ${d.what}`,
  advice: ({ near }) => didYouMean(near),
  why: `A rule that cannot be read, or that names what the procedure does not have, is never broken, and everybody believes that it is kept.

A rule has one of four forms: \`after … require …\`, \`before … require …\`, \`never … while …\`, \`every … needs …\` or \`every … at most once\`. In a catalogue a rule may name things that only some procedures declare; in a procedure they must be there.`,
  wrong: `procedure A-1: Bracket, clean

parts
  bracket: Bracket

places
  bracket-seat: Seat of the bracket

rules
  bracket-first: The bracket is cleaned before its seat.
    before clean bracket-seats
#                ^^^^^^^^^^^^^ S405
    require clean bracket

removal
  step: Clean the bracket
    clean bracket
    clean bracket-seat
`,
  right: `procedure A-1: Bracket, clean

parts
  bracket: Bracket

places
  bracket-seat: Seat of the bracket

rules
  bracket-first: The bracket is cleaned before its seat.
    before clean bracket-seat
    require clean bracket

removal
  step: Clean the bracket
    clean bracket
    clean bracket-seat
`,
});
