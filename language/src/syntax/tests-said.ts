// What shops say behind `if` for the outcomes that the language knows: `if over limit`, `if out of spec`, `if worn`.
import { type Finding, finding } from '../diagnostics/define.js';
import { operandMissing } from '../diagnostics/g204-operand-missing.js';
import { type Span, span } from '../text/span.js';
import type { Name } from './tree.js';

/** Common practice, no source. Longer sayings stand before those they begin with. */
const SAID: readonly (readonly [test: string, said: readonly string[]])[] = [
  ['outside limit', ['out of', 'not within', 'not in', 'not ok', 'beyond', 'outside']],
  ['above limit', ['over', 'more than', 'greater than', 'exceeds', 'too high', 'too big', 'high', 'above']],
  ['below limit', ['under', 'less than', 'too low', 'too small', 'too short', 'low', 'below']],
  ['within limit', ['in spec', 'inside', 'in']],
  [
    'rejected',
    ['bad', 'worn', 'damaged', 'cracked', 'leaking', 'leaks', 'fails', 'failed', 'faulty', 'no good'],
  ],
  ['needed', ['necessary', 'required']],
];
/** What the outcome is of, said in other words. */
const OF_WHAT = /^(?: (?:the )?(?:limits?|specs?|specifications?|tolerance|range|max|maximum|min|minimum))?$/;

/** The finding for an `if` without a test that the language knows; undefined where nothing of the list is said. */
export function testSaid(file: string, head: Name, joined: string, code: Span): Finding | undefined {
  const behind = joined.slice(head.end - code.start);
  const said = behind.trim().replace(/ +/g, ' ').toLowerCase();
  for (const [test, sayings] of SAID) {
    const saying = sayings.find((words) => said === words || said.startsWith(`${words} `));
    if (saying === undefined) continue;
    // More than the outcome is left to the writer: it belongs elsewhere, and nothing written may be lost.
    const isWhole = OF_WHAT.test(said.slice(saying.length));
    const at = span(head.end, head.end + behind.trimEnd().length);
    const fixes = isWhole
      ? [{ title: `Write \`if ${test}\``, edits: [{ file, span: at, text: ` ${test}` }] }]
      : [];
    return finding(
      operandMissing,
      { file, span: head, fixes },
      { word: head.text, expected: TESTS, meant: test, more: isWhole ? undefined : REST },
    );
  }
  return undefined;
}

const REST = 'Figures stand in the entry, and what is done on lines of their own below';

/** All that may follow `if`. */
export const TESTS = '`below limit`, `above limit`, `outside limit`, `within limit`, `rejected` or `needed`';
