// A sheet for the office wall or the bay: a title, some words, a table. One HTML file that needs no network.
import { type Language, phrase } from '@baywright/language';
import { wordsOf } from '../document/words-of.js';
import { pageAssets } from '../html/assets.js';
import { drawHtml } from '../html/frame.js';
import { type Child, el } from '../html/markup.js';
import { table, tr } from '../html/table.js';

export interface Sheet {
  /** Of the words around it: the caller says title, lead and columns in it. */
  readonly language: Language;
  readonly title: string;
  readonly shop: string;
  readonly lead: readonly string[];
  readonly columns: readonly string[];
  readonly rows: readonly (readonly Child[])[];
}

export function sheetPage({ language, title, shop, lead, columns, rows }: Sheet): string {
  const main = el(
    'main',
    { id: 'main', class: 'library' },
    el('div', { class: 'masthead' }, el('h1', {}, title), el('p', { class: 'applies' }, shop)),
    el(
      'div',
      { class: 'part' },
      lead.map((words) => el('p', {}, words)),
    ),
    table(
      title,
      'sheet',
      columns,
      rows.map((cells) => tr(...cells.map(unbroken))),
    ),
  );
  return drawHtml({
    language,
    title,
    words: wordsOf(language),
    name: 'library',
    body: [main],
    standing: phrase('standing-statement', language),
    styles: '',
    script: '',
    data: undefined,
    assets: pageAssets(),
  });
}

/** A day stays on one line. */
const unbroken = (cell: Child): Child =>
  typeof cell === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(cell) ? el('time', {}, cell) : cell;
