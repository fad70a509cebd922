// The record, the torque card and the hand-over page, on the page.
import { blanksOf } from '../document/beside.js';
import { type BlockOf, type Field, torqueIds } from '../document/blocks.js';
import { plainFigure } from '../document/inline.js';
import { factsOf } from '../document/revision.js';
import { say } from '../document/words.js';
import { stageMarkup } from './beside.js';
import type { PageContext } from './context.js';
import { drawnOrder, headWithSize } from './drawn.js';
import { type Child, el, join, type Markup } from './markup.js';
import { proseMarkup } from './prose.js';
import { rowAttributes, type StepContext } from './steps.js';
import { type TableRow, table, tr } from './table.js';

export type RecordKind =
  | 'torque-table'
  | 'record'
  | 'fields'
  | 'record-readings'
  | 'record-torques'
  | 'record-holds'
  | 'off-now';

const titled = (title: string, { level }: PageContext, ...children: readonly Markup[]): Markup =>
  el('section', { class: 'part' }, el(`h${level}`, {}, title), children);

const entry = (id: string, label: string): Markup =>
  el('input', { type: 'text', id, 'aria-label': label, autocomplete: 'off', size: 8 });

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
  'record-readings': (block, context) =>
    titled(
      context.words.recordReadings,
      context,
      table(
        context.words.recordReadings,
        'sheet found',
        [context.words.at, context.words.what, context.words.limit, context.words.found],
        block.rows.map((row) =>
          line(row, [row.what, NOT_NEEDED], proseMarkup(row.limit), foundMarkup(row, context)),
        ),
      ),
    ),
  'record-torques': (block, context) => {
    const ids = torqueIds(block.rows);
    return titled(
      context.words.recordTorques,
      context,
      table(
        context.words.recordTorques,
        'sheet',
        [
          context.words.at,
          context.words.joint,
          context.words.count,
          context.words.torque,
          context.words.wrench,
          context.words.initials,
        ],
        block.rows.map((row, at) =>
          line(
            row,
            [row.joint, NOT_NEEDED],
            String(row.count),
            proseMarkup(row.torque),
            entry(`wrench-${ids[at]}`, `${context.words.wrench}, ${row.number}`),
            entry(`torqued-${ids[at]}`, `${context.words.initials}, ${row.number}`),
          ),
        ),
      ),
    );
  },
  'record-holds': (block, context) =>
    titled(
      context.words.recordHolds,
      context,
      table(
        context.words.recordHolds,
        'sheet',
        [context.words.at, context.words.checked, context.words.initials],
        block.rows.map((row) =>
          line(
            row,
            [proseMarkup(row.what), NOT_NEEDED],
            context.document.sheet === 'record'
              ? entry(`field-hold-${row.row}`, `${context.words.initials}, ${row.number}`)
              : el('output', { 'data-hold': row.row }),
          ),
        ),
      ),
    ),
  'off-now': (block, context) => offNow(block, context),
};

/** A row of the record about a line of the guide; says so where that line falls away. */
const line = (
  { row, number }: { readonly row: string; readonly number: string },
  ...cells: readonly Child[]
): TableRow => ({
  cells: [el('a', { href: `#${row}` }, number), ...cells],
  attributes: { 'data-of': row },
});
const NOT_NEEDED = el('span', { class: 'na', hidden: true });

/** What was found: a line for each place that a reading is taken at. A record by itself has no lines to take it from. */
function foundMarkup(
  row: BlockOf<'record-readings'>['rows'][number],
  { document, words }: PageContext,
): Child {
  const found = blanksOf({ id: row.reading ?? row.row, places: row.places }).map((id) =>
    document.sheet === 'record'
      ? [entry(`field-found-${id}`, `${words.found}, ${row.number}, ${id}`), ' ', row.unit ?? '']
      : el('output', { 'data-found': id }, row.unit ?? ''),
  );
  return found.length === 1 ? found : found.map((one, i) => el('div', {}, `${i + 1}: `, one));
}

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
