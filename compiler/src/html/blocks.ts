// Every block kind on the page. The table is typed over the kinds: a new kind does not compile until it is here.
import {
  type Block,
  type BlockOf,
  type BlockRenderers,
  renderBlock,
  walkBlocks,
} from '../document/blocks.js';
import { protectionDrawing } from '../document/drawing/symbols.js';
import { type Prose, plain } from '../document/inline.js';
import { MANDATORY_INKS } from '../safety-colours.js';
import { clipMarkup, pictureMarkup } from './beside.js';
import { FRONT } from './blocks-front.js';
import { RECORD } from './blocks-record.js';
import type { PageContext } from './context.js';
import { drawn, PAGE_INKS } from './drawn.js';
import { el, join, type Markup } from './markup.js';
import { proseMarkup } from './prose.js';
import { panelMarkup } from './signal.js';
import { itemsMarkup, railed, rowMarkup, type StepContext, stepMarkup, stopMarkup } from './steps.js';

/** Renders one block that stands on the page by itself. */
export function blockMarkup(block: Block, context: PageContext): Markup {
  return render(block, { ...context, render, last: { off: 0 }, depth: 0 });
}

const render = (block: Block, context: StepContext): Markup => renderBlock(BLOCKS, block, context);

function nested(block: BlockOf<'branch'> | BlockOf<'repeat'>, boxes: number, context: StepContext): Markup {
  const ticks = Array.from({ length: boxes }, (_, i) =>
    el(
      'label',
      { class: 'again' },
      el('input', {
        type: 'checkbox',
        id: `again-${firstRow(block.items)}-${i}`,
        'aria-label': `${context.words.timesDone} ${i + 1}`,
      }),
    ),
  );
  return join(
    railed(block.rail, context, 'lead-in', block, el('p', {}, proseMarkup(block.heading)), join(ticks)),
    itemsMarkup(block.items, { ...context, depth: context.depth + 1 }),
  );
}

/** Names the boxes of a repeat after the first line inside it. */
function firstRow(items: readonly Block[]): string {
  for (const item of walkBlocks(items)) if (item.kind === 'row') return item.id;
  return '';
}

/** What is off now. A long list folds up to its counts: on a telephone it would fill the screen. */
function tallied(body: Prose): Markup {
  const list = el('p', {}, proseMarkup(body));
  if (plain(body).length <= MOST_TALLIED) return list;
  const heads = body
    .filter(({ kind }) => kind === 'strong')
    .map((head) => plain([head]).replace(/\s*:$/, ''));
  return el('details', { class: 'fold' }, el('summary', {}, heads.join(' · ')), list);
}

/** Characters: about ten lines of a telephone. */
const MOST_TALLIED = 400;

const BLOCKS: BlockRenderers<Markup, StepContext> = {
  ...FRONT,
  ...RECORD,
  step: stepMarkup,
  row: rowMarkup,
  stop: stopMarkup,
  panel: (block, context) =>
    railed(
      block.rail,
      context,
      'aside',
      block,
      panelMarkup(block.signal, block.word, context, proseMarkup(block.body)),
    ),
  wear: (block, context) =>
    railed(
      block.rail,
      context,
      'wear',
      block,
      el('p', {}, context.words.wear),
      el(
        'ul',
        { role: 'list' },
        block.signs.map(({ sign, label }) =>
          el(
            'li',
            {},
            drawn(protectionDrawing(sign, context.safetyColours ? MANDATORY_INKS : PAGE_INKS), 'sign'),
            label,
          ),
        ),
      ),
    ),
  banner: (block, context) =>
    railed(
      block.rail,
      context,
      'aside',
      block,
      el(
        'p',
        { class: `ban ${block.edge}` },
        block.edge === 'start' ? context.words.fromHere : context.words.endsHere,
        ' ',
        proseMarkup(block.body),
      ),
    ),
  branch: (block, context) => nested(block, 0, context),
  repeat: (block, context) => nested(block, block.times ?? 0, context),
  note: (block, context) =>
    railed(block.rail, context, 'remark', block, el('p', {}, proseMarkup(block.body))),
  reason: (block, context) =>
    context.training
      ? railed(
          block.rail,
          context,
          'remark',
          block,
          el('p', {}, el('b', {}, context.words.why), ' ', proseMarkup(block.body)),
        )
      : join(),
  clip: (block, context) => railed(block.rail, context, 'remark', block, clipMarkup(block)),
  figure: (block, context) => railed(block.rail, context, 'remark', block, pictureMarkup(block.picture)),
  tally: (block, context) => railed(block.rail, context, 'tally', block, tallied(block.body)),
};
