// S402: never reached.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const neverReached = defineDiagnostic<StateWords>({
  code: 'S402',
  name: 'never-reached',
  severity: 'error',
  message: () => `no vehicle and no test result leads here`,
  why: 'A step that nothing leads to is printed for nobody. Most often every path before it ends in `stop`, or its `when` rules out what an outer `when` asks for.',
  wrong: `procedure A-13: Bracket, look over

parts
  bracket: Bracket
    held by bracket-bolt

fasteners
  bracket-bolt: Bracket bolts
    2 of M8x1.25, class 8.8, hex 13 mm
    torque 25 N·m, per "S-1"

sources
  S-1: Bracket sheet, issue 1

inspection
  step: Look at the bracket
    inspect bracket
      reject: cracks
      if rejected
        stop: The bracket is welded first.
      otherwise
        stop: All is well.

completion
  step: Clean the bracket
# ^^^^ S402
    clean bracket
`,
  right: `procedure A-13: Bracket, look over

parts
  bracket: Bracket
    held by bracket-bolt

fasteners
  bracket-bolt: Bracket bolts
    2 of M8x1.25, class 8.8, hex 13 mm
    torque 25 N·m, per "S-1"

sources
  S-1: Bracket sheet, issue 1

inspection
  step: Look at the bracket
    inspect bracket
      reject: cracks
      if rejected
        stop: The bracket is welded first.

completion
  step: Clean the bracket
    clean bracket
`,
});
