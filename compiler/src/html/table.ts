// Tables of the page. On a narrow screen a row becomes a small card: every cell then says which column it is of.
import { type Attributes, type Child, el, type Markup } from './markup.js';

/** A head, or several under one. */
export type TableHead =
  | string
  | { readonly over: string; readonly colon: string; readonly heads: readonly string[] };

export interface TableRow {
  readonly cells: readonly Child[];
  readonly attributes: Attributes;
}

export const tr = (...cells: readonly Child[]): TableRow => ({ cells, attributes: {} });

/** `label` names it for readers, should it have to scroll; `name` is its class. */
export function table(
  label: string,
  name: string,
  heads: readonly TableHead[],
  rows: readonly TableRow[],
): Markup {
  const columns = heads.flatMap((head) =>
    typeof head === 'string' ? [head] : head.heads.map((under) => `${head.over}${head.colon} ${under}`),
  );
  return el(
    'div',
    { class: 'wide', role: 'region', 'aria-label': label, tabindex: 0 },
    el(
      'table',
      { class: name },
      headsMarkup(heads),
      el(
        'tbody',
        {},
        rows.map(({ cells, attributes }) =>
          el(
            'tr',
            attributes,
            cells.map((cell, i) => el('td', { 'data-head': columns[i] }, cell)),
          ),
        ),
      ),
    ),
  );
}

function headsMarkup(heads: readonly TableHead[]): Markup {
  const under = heads.flatMap((head) => (typeof head === 'string' ? [] : head.heads));
  const isTall = under.length > 0;
  return el(
    'thead',
    {},
    el(
      'tr',
      {},
      heads.map((head) =>
        typeof head === 'string'
          ? el('th', { scope: 'col', rowspan: isTall ? 2 : undefined }, head)
          : el('th', { scope: 'colgroup', colspan: head.heads.length }, head.over),
      ),
    ),
    isTall &&
      el(
        'tr',
        {},
        under.map((head) => el('th', { scope: 'col' }, head)),
      ),
  );
}
