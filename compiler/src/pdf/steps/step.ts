// A step in print: its head, and its pieces in groups that never part.
import type { BlockOf } from '../../document/blocks.js';
import type { PrintContext } from '../context.js';
import { markedTitle, titleCode } from '../prose.js';
import { linesHigh, widthOf } from '../type/faces.js';
import { fill } from '../type/lines.js';
import { textRuns } from '../type/runs.js';
import { call } from '../typst-code.js';
import type { Step } from './deal.js';
import { HAIR, RAIL } from './frame.js';
import { drawn, high, moved, NOTHING, type Part, placed, together, words } from './set.js';
import { groupsOf, type Piece } from './units.js';

export type { Step } from './deal.js';

/** `block` is missing for what stands between steps. */
export function stepOf(
  block: BlockOf<'step'> | undefined,
  pieces: readonly Piece[],
  context: PrintContext,
): Step {
  const head = block ? headPart(block, context) : NOTHING;
  return {
    number: block?.number ?? '',
    title: block?.title ?? '',
    before: block?.before ?? { off: 0, loose: 0 },
    revised: block?.revised ?? false,
    head,
    groups: groupsOf(pieces, context.frame.leastHeight - HAIR - head.height),
  };
}

/** The rule over the head, and what stands around the title. */
const TOP = 4;
const UNDER_RULE = 1.6;
const BELOW = 2.2;
const NUMBER = 22;
const TITLE = 15;

function headPart({ number, title, titleLanguage, phase }: BlockOf<'step'>, { frame }: PrintContext): Part {
  const left = RAIL + 2.5;
  const right = { size: 8.5 };
  const phaseWide = widthOf(phase, '400Regular', right.size) + 0.5;
  const width = frame.body - left - phaseWide - 4;
  const said = markedTitle(title, titleLanguage);
  // Its lines begin under each other, behind the number.
  const lines = fill(textRuns(said, { size: TITLE, weight: 700 }), width - frame.label + 2.5).count;
  const height = linesHigh(1, NUMBER) + linesHigh(lines, TITLE) - linesHigh(1, TITLE);
  const top = TOP + UNDER_RULE;
  const side = words(phase, right, phaseWide, { align: 'right' });
  return high(
    top + height + BELOW,
    together(
      drawn(0, (art, x, y) => art.line(x + RAIL, y + TOP, x + frame.body, y + TOP, 1.5)),
      moved(
        placed(height, (x, y) => call('step-title', [x, y, width, number, titleCode(said, titleLanguage)])),
        left,
        top,
      ),
      moved(side, frame.body - phaseWide, top + height - side.height),
    ),
  );
}
