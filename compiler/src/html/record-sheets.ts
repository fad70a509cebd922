// What the record asks for, as tables on the page: readings, torques, holds. What both sides of a job ask alike is one row
// with blanks for each; what is left is a table of its own below.
import { blanksOf } from '../document/beside.js';
import { type BlockOf, type OnSide, torqueIds } from '../document/blocks.js';
import { bySides } from '../document/by-sides.js';
import { type Prose, plain } from '../document/inline.js';
import type { PageContext } from './context.js';
import { type Child, el, type Markup } from './markup.js';
import { nameMarkup, proseMarkup } from './prose.js';
import { type TableHead, type TableRow, table } from './table.js';

export type SheetKind = 'record-readings' | 'record-torques' | 'record-holds';

type Reading = BlockOf<'record-readings'>['rows'][number];
type Torque = BlockOf<'record-torques'>['rows'][number] & { readonly id: string };
type Hold = BlockOf<'record-holds'>['rows'][number];

export const RECORD_SHEETS: {
  readonly [K in SheetKind]: (block: BlockOf<K>, context: PageContext) => Markup;
} = {
  'record-readings': ({ rows }, context) => sheet(readings(context), rows, context),
  'record-torques': ({ rows }, context) => {
    const ids = torqueIds(rows);
    const named = rows.map((row, at) => ({ ...row, id: ids[at] ?? row.row }));
    return sheet(torques(context), named, context);
  },
  'record-holds': ({ rows }, context) => sheet(holds(context), rows, context),
};

export const titled = (title: string, { level }: PageContext, ...children: readonly Markup[]): Markup =>
  el('section', { class: 'part' }, el(`h${level}`, {}, title), children);

interface Row {
  readonly row: string;
  readonly number: string;
  readonly of?: OnSide;
}

/** A table of the record: what a row says, alike for both sides, and what is written down for each. */
interface Sheet<R extends Row> {
  readonly title: string;
  readonly name: string;
  /** Heads of what is said, for a pair too, and of what is written down. */
  readonly says: (isPair: boolean) => readonly string[];
  readonly asks: readonly string[];
  readonly isSame: (row: R, other: R) => boolean;
  /** What it says; `isPair` without its side. */
  readonly said: (row: R, isPair: boolean) => readonly Child[];
  readonly asked: (row: R) => readonly Child[];
}

function sheet<R extends Row>(form: Sheet<R>, rows: readonly R[], context: PageContext): Markup {
  const { words } = context;
  const sided = bySides(rows, form.isSame);
  const single = sided ? sided.rows.flatMap(([row, other]) => (other ? [] : [row])) : rows;
  const one = (isPair: boolean, heads: readonly TableHead[], all: readonly TableRow[]) =>
    table(
      // Two tables of one part are told apart by name.
      isPair ? [form.title, ...(sided?.sides ?? [])].join(', ') : form.title,
      `sheet ${form.name}${isPair ? ' pairs' : ''}`,
      [words.at, ...form.says(isPair), ...heads],
      all,
    );
  return titled(
    form.title,
    context,
    ...(sided
      ? [
          one(
            true,
            sided.sides.map((over) => ({ over, colon: words.colon, heads: form.asks })),
            sided.rows.flatMap(([row, other]) => (other ? [line(form, [row, other])] : [])),
          ),
        ]
      : []),
    ...(single.length > 0
      ? [
          one(
            false,
            form.asks,
            single.map((row) => line(form, [row])),
          ),
        ]
      : []),
  );
}

/** A row about one line of the guide or about two; says so where a line falls away. */
function line<R extends Row>(form: Sheet<R>, rows: readonly [R, R?]): TableRow {
  const all = rows.filter((row) => row !== undefined);
  const [what, ...more] = form.said(rows[0], all.length > 1);
  return {
    cells: [
      all.map(({ row, number }, i) => [i > 0 && ' ', el('a', { href: `#${row}` }, number)]),
      [what, all.map(({ row }) => el('span', { class: 'na', 'data-of': row, hidden: true }))],
      ...more,
      ...all.flatMap((row) => form.asked(row)),
    ],
    attributes: {},
  };
}

const entry = (id: string, label: string): Markup =>
  el('input', { type: 'text', id, 'aria-label': label, autocomplete: 'off', size: 8 });

const isAlike = (one: Prose, other: Prose): boolean => plain(one) === plain(other);

const readings = (context: PageContext): Sheet<Reading> => ({
  title: context.words.recordReadings,
  name: 'found',
  says: () => [context.words.what, context.words.limit],
  asks: [context.words.found],
  isSame: (row, other) =>
    row.places === other.places && row.unit === other.unit && isAlike(row.limit, other.limit),
  said: (row, isPair) => [nameMarkup((isPair && row.of?.what) || row.what), proseMarkup(row.limit)],
  asked: (row) => [foundMarkup(row, context)],
});

/** What was found: a line for each place that a reading is taken at. A record by itself has no lines to take it from. */
function foundMarkup(row: Reading, { document, words }: PageContext): Child {
  const found = blanksOf({ id: row.reading ?? row.row, places: row.places }).map((id) =>
    document.sheet === 'record'
      ? [
          entry(`field-found-${id}`, `${words.found}, ${row.number}, ${id}`),
          row.unit && el('span', {}, row.unit),
        ]
      : el('output', { 'data-found': id }, row.unit ?? ''),
  );
  return found.map((one, i) => el('div', {}, found.length > 1 && `${i + 1}: `, one));
}

const torques = ({ words }: PageContext): Sheet<Torque> => ({
  title: words.recordTorques,
  name: 'torques',
  // Four blanks leave room for one column.
  says: (isPair) => (isPair ? [`${words.joint}, ${words.torque}`] : [words.joint, words.torque]),
  asks: [words.wrench, words.initials],
  isSame: (row, other) => row.count === other.count && isAlike(row.torque, other.torque),
  said: (row, isPair) =>
    isPair
      ? [[`${row.count} × ${row.of?.what ?? row.joint}`, el('div', {}, proseMarkup(row.torque))]]
      : [`${row.count} × ${row.joint}`, proseMarkup(row.torque)],
  asked: ({ id, number }) => [
    entry(`wrench-${id}`, `${words.wrench}, ${number}`),
    entry(`torqued-${id}`, `${words.initials}, ${number}`),
  ],
});

const holds = ({ document, words }: PageContext): Sheet<Hold> => ({
  title: words.recordHolds,
  name: 'holds',
  says: () => [words.checked],
  asks: [words.initials],
  isSame: (row, other) => isAlike(row.what, other.what),
  said: (row) => [proseMarkup(row.what)],
  asked: (row) => [
    document.sheet === 'record'
      ? entry(`field-hold-${row.row}`, `${words.initials}, ${row.number}`)
      : el('output', { 'data-hold': row.row }),
  ],
});
