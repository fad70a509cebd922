// The record, the torque card and the hand-over page, on the page.
import type { BlockOf, Field } from '../document/blocks.js';
import { plainFigure } from '../document/inline.js';
import { factsOf } from '../document/revision.js';
import { say } from '../document/words.js';
import { stageMarkup } from './beside.js';
import { drawnOrder, headWithSize } from './drawn.js';
import { el, join, type Markup } from './markup.js';
import { proseMarkup } from './prose.js';
import { RECORD_SHEETS, type SheetKind, titled } from './record-sheets.js';
import { rowAttributes, type StepContext } from './steps.js';
import { table, tr } from './table.js';

export type RecordKind = 'torque-table' | 'record' | 'fields' | SheetKind | 'off-now';

export const RECORD: { readonly [K in RecordKind]: (block: BlockOf<K>, context: StepContext) => Markup } = {
  'torque-table': (block, { words }) =>
    table(
      words.torque,
      'card',
      [words.at, words.joint, words.socket, words.torque, words.how],
      block.rows.map((row, i) => ({
        attributes: rowAttributes(row),
        cells: [
          el('b', {}, row.number),
          [el('b', {}, row.joint), el('small', {}, proseMarkup(row.detail))],
          [row.head && headWithSize(row.head), el('small', {}, `${row.count} ×`)],
          el('div', { class: 'val' }, stageMarkup(row.stage, `card-${i}`, `${words.torque} ${row.joint}`)),
          [proseMarkup(row.how), row.order && drawnOrder(row.order)],
        ],
      })),
    ),
  record: (block, context) =>
    el(
      'section',
      { class: 'record', id: 'record', 'aria-labelledby': 'h-record' },
      el(`h${context.level - 1}`, { id: 'h-record' }, block.title),
      // Torn off, it still says what it is of.
      el(
        'p',
        { class: 'of' },
        el('b', {}, context.document.identity.number, ' ', context.title),
        factsOf(context.document).map((fact, i) => [i > 0 ? ' · ' : ' ', el('span', { class: 'fig' }, fact)]),
      ),
      block.items.map((item) => context.render(item, context)),
      el(
        'div',
        { class: 'part finish', 'data-live': true },
        el('p', { id: 'why', role: 'status' }),
        el('button', { type: 'button', id: 'sign', 'aria-describedby': 'why' }, context.words.sign),
        el('button', { type: 'button', id: 'save' }, context.words.saveRecord),
        el('button', { type: 'button', id: 'print' }, context.words.printRecord),
        el('button', { type: 'button', id: 'clear' }, context.words.startAgain),
        el('p', { id: 'kept' }),
      ),
    ),
  fields: (block, context) => {
    const list = el('div', { class: `fields c${block.columns}` }, block.fields.map(fieldMarkup));
    return block.title ? titled(block.title, context, list) : list;
  },
  ...RECORD_SHEETS,
  'off-now': (block, context) => offNow(block, context),
};

function fieldMarkup(field: Field): Markup {
  const type = field.input === 'date' ? 'date' : 'text';
  return el(
    'label',
    { class: 'field' },
    el('span', {}, proseMarkup(field.label)),
    el('input', {
      type,
      id: `field-${field.key}`,
      'data-field': field.key,
      autocomplete: 'off',
      ...(field.input === 'number' ? { inputmode: 'numeric' } : {}),
    }),
  );
}

function offNow(block: BlockOf<'off-now'>, context: StepContext): Markup {
  const { words } = context;
  return join(
    el(
      'p',
      { class: 'at' },
      el('b', {}, block.at),
      ' ',
      `${say(words.offCount, { count: block.rail.off })}, ${say(words.torqueCount, { count: block.rail.loose })}`,
    ),
    block.bans.length > 0 &&
      titled(
        words.bansNow,
        context,
        ...block.bans.map((ban) => el('p', { class: 'ban start' }, proseMarkup(ban))),
      ),
    block.groups.map((group) =>
      titled(
        group.title,
        context,
        table(
          group.title,
          'sheet off',
          [words.what, words.offSince, words.backAt],
          group.rows.map((row) =>
            tr(el('b', {}, proseMarkup(row.what)), row.since, proseMarkup(row.next ?? [])),
          ),
        ),
      ),
    ),
    block.torques.length > 0 &&
      titled(
        words.torquesLeft,
        context,
        table(
          words.torquesLeft,
          'sheet',
          [words.at, words.joint, words.torque],
          block.torques.map((row) => tr(row.number, row.joint, proseMarkup(row.torque))),
        ),
      ),
    block.clocks.length > 0 &&
      titled(
        words.clocks,
        context,
        table(
          words.clocks,
          'sheet off',
          [words.what, words.time, words.offSince, words.backAt],
          block.clocks.map((row) => tr(row.name, plainFigure(row.length), row.from, proseMarkup(row.next))),
        ),
      ),
  );
}
