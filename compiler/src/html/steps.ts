// Steps and their rows on the page.
import { marksInRow } from '../document/beside.js';
import type { Block, BlockOf, Rail } from '../document/blocks.js';
import { plain, type SourceRef } from '../document/inline.js';
import { besideMarkup } from './beside.js';
import { type PageContext, railClass } from './context.js';
import { drawnMark, drawnOrder } from './drawn.js';
import { type Attributes, el, join, type Markup } from './markup.js';
import { languageOf, nameMarkup, proseMarkup } from './prose.js';

export interface StepContext extends PageContext {
  /** Number of things off after the row printed last, so that a figure shows only where it changes. */
  readonly last: { off: number };
  readonly render: (block: Block, context: StepContext) => Markup;
  readonly depth: number;
}

export function stepMarkup(step: BlockOf<'step'>, context: StepContext): Markup {
  const inside = { ...context, last: { off: step.before.off } };
  return el(
    'section',
    { class: 'step', id: step.id, 'aria-labelledby': `h-${step.id}`, ...sourceLine(step) },
    el(
      'div',
      { class: `row step-head ${barred(step)} ${railClass(step.before, context)}`.replace('  ', ' ') },
      el(
        'h2',
        { id: `h-${step.id}`, ...languageOf({ language: step.titleLanguage }) },
        el('span', {}, step.number),
        ' ',
        nameMarkup(step.title.trim() || step.number),
      ),
      el('small', {}, step.phase),
      saidRevised(step, context),
    ),
    itemsMarkup(step.items, inside),
  );
}

/** Rows become lists; what stands between them splits the list. */
export function itemsMarkup(items: readonly Block[], context: StepContext): Markup {
  const parts: Markup[] = [];
  let run: Markup[] = [];
  const flush = () => {
    if (run.length > 0) parts.push(el('ol', { role: 'list' }, run));
    run = [];
  };
  for (const item of items) {
    const markup = context.render(item, context);
    if (item.kind === 'row' || item.kind === 'stop') run.push(markup);
    else {
      flush();
      parts.push(markup);
    }
  }
  flush();
  return join(parts);
}

export function rowMarkup(row: BlockOf<'row'>, context: StepContext): Markup {
  const about = `${row.number} ${plain(row.body)}`;
  const hold = row.beside.some(({ kind }) => kind === 'hold');
  return frame(row, context, {
    name: hold ? 'hold' : '',
    loud: hold ? context.words.hold : undefined,
    under: join(
      row.marks.map((marks, i) => marksMarkup(row.id, i, marks, about)),
      row.notes.map((note) => el('p', { class: 'note' }, proseMarkup(note))),
      context.training &&
        row.reasons.map((reason) =>
          el('p', { class: 'note' }, el('b', {}, context.words.why), ' ', proseMarkup(reason)),
        ),
    ),
    side: join(
      row.beside.map((beside, i) =>
        besideMarkup(beside, { ...context, about, row: i === 0 ? row.id : `${row.id}-${i + 1}` }),
      ),
      row.order && drawnOrder(row.order),
    ),
  });
}

export function stopMarkup(stop: BlockOf<'stop'>, context: StepContext): Markup {
  return frame(stop, context, { name: 'hold stop', loud: context.words.stop, under: join(), side: join() });
}

/** Something that stands beside the rail without a tick: panels, banners, remarks. */
export function railed(
  rail: Rail,
  context: StepContext,
  name: string,
  source: Block,
  ...children: readonly Markup[]
): Markup {
  const names = ['row', name, barred(source), railClass(rail, context)].filter(Boolean).join(' ');
  return el('div', { class: names, ...sourceLine(source) }, children, saidRevised(source, context));
}

/** The class that draws a change bar. */
const barred = ({ revised }: { readonly revised?: boolean }): string => (revised ? 'revised' : '');

/** The bar in words, for readers that do not see it. */
const saidRevised = ({ revised }: Block | BlockOf<'row'>, { words }: PageContext): Markup | false =>
  revised === true && el('span', { class: 'unseen' }, ' ', words.keyBar);

export function sourceLine({ source }: { readonly source?: SourceRef }): Record<string, number | string> {
  return source ? { 'data-line': source.line, 'data-file': source.file } : {};
}

/** Attributes of a row of a table: its line of the source, and its change bar. */
export function rowAttributes(row: { readonly source?: SourceRef; readonly revised?: boolean }): Attributes {
  return { ...sourceLine(row), ...(row.revised ? { class: 'revised' } : {}) };
}

interface FrameParts {
  readonly name: string;
  readonly loud: string | undefined;
  readonly under: Markup;
  readonly side: Markup;
}

function frame(row: BlockOf<'row'> | BlockOf<'stop'>, context: StepContext, parts: FrameParts): Markup {
  const fresh = row.rail.off !== context.last.off;
  context.last.off = row.rail.off;
  const name = [
    'row act',
    parts.name,
    barred(row),
    context.depth > 0 && 'nested',
    parts.side.markup === '' && 'alone',
    railClass(row.rail, context),
  ]
    .filter(Boolean)
    .join(' ');
  const tick = `t-${row.id}`;
  return el(
    'li',
    { class: name, id: row.id, ...sourceLine(row) },
    fresh && el('span', { class: 'count', 'aria-hidden': 'true' }, String(row.rail.off)),
    el(
      'label',
      { class: 'tick' },
      el('input', { type: 'checkbox', id: tick, 'data-row': row.id }),
      el('span', {}, row.number),
    ),
    el(
      'div',
      { class: 'txt' },
      el(
        'label',
        { for: tick },
        parts.loud && el('strong', { class: 'loud' }, parts.loud, ' '),
        row.condition && [proseMarkup(row.condition), ' '],
        proseMarkup(row.body),
      ),
      parts.under,
      saidRevised(row, context),
      el('p', { class: 'na', hidden: true }),
    ),
    parts.side.markup !== '' && el('div', { class: 'side' }, parts.side),
  );
}

/** So many heads fit a row on a telephone; the rows are alike at every width. */
const MOST_IN_ROW = 5;

/** One head for each fastener, to tick as each gets its torque. */
function marksMarkup(
  row: string,
  index: number,
  marks: BlockOf<'row'>['marks'][number],
  about: string,
): Markup {
  return el(
    'fieldset',
    { class: 'marks' },
    el('legend', {}, el('span', { class: 'unseen' }, `${about} `), proseMarkup([marks.label])),
    el(
      'div',
      { class: `heads by-${marksInRow(marks.count, MOST_IN_ROW)}` },
      Array.from({ length: marks.count }, (_, i) =>
        el(
          'label',
          { class: 'mark' },
          el('input', {
            type: 'checkbox',
            id: `m-${row}-${index}-${i}`,
            'aria-label': `${plain([marks.label])} ${i + 1}`,
          }),
          drawnMark(marks.shape),
        ),
      ),
    ),
  );
}
