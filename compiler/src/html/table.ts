// Tables of the page. On a narrow screen a row becomes a small card: every cell then says which column it is of.
import { type Attributes, type Child, el, type Markup } from './markup.js';

export interface TableRow {
  readonly cells: readonly Child[];
  readonly attributes: Attributes;
}

export const tr = (...cells: readonly Child[]): TableRow => ({ cells, attributes: {} });

/** `label` names it for readers, should it have to scroll; `name` is its class. */
export function table(
  label: string,
  name: string,
  heads: readonly string[],
  rows: readonly TableRow[],
): Markup {
  return el(
    'div',
    { class: 'wide', role: 'region', 'aria-label': label, tabindex: 0 },
    el(
      'table',
      { class: name },
      el(
        'thead',
        {},
        el(
          'tr',
          {},
          heads.map((head) => el('th', { scope: 'col' }, head)),
        ),
      ),
      el(
        'tbody',
        {},
        rows.map(({ cells, attributes }) =>
          el(
            'tr',
            attributes,
            cells.map((cell, i) => el('td', { 'data-head': heads[i] }, cell)),
          ),
        ),
      ),
    ),
  );
}
