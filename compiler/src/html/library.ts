// The list of a shop's guides as one page, with search that needs no network. Pure, like the guides' pages.
import type { Language } from '@baywright/language';
import { text } from '../document/inline.js';
import { say, type Words } from '../document/words.js';
import { drawHtml, type PageAssets } from './frame.js';
import { el } from './markup.js';
import { proseMarkup } from './prose.js';
import { type TableRow, table } from './table.js';

/** One guide of the list. */
export interface LibraryGuide {
  readonly number: string;
  readonly title: string;
  readonly revision: string;
  readonly date: string;
  /** `Released 2026-10-05`, `Draft: 2 questions open`. */
  readonly statusText: string;
  readonly vehicles: readonly string[];
  readonly parts: readonly string[];
  readonly tools: readonly string[];
  /** Files of the guide beside this page, with the words for each link: `Left side`, `PDF`. */
  readonly files: readonly { readonly href: string; readonly label: string }[];
}

/** What the search knows of a guide. */
export interface LibraryRow extends Omit<LibraryGuide, 'files' | 'revision' | 'date' | 'statusText'> {
  readonly id: string;
}

export interface Library {
  readonly title: string;
  readonly shop: string;
  readonly standing: string;
  readonly language: Language;
  readonly words: Words;
  readonly guides: readonly LibraryGuide[];
}

export function libraryHtml(library: Library, assets: PageAssets): string {
  const { words, guides } = library;
  const rows: LibraryRow[] = guides.map(({ number, title, vehicles, parts, tools }, i) => ({
    id: `g${i}`,
    number,
    title,
    vehicles,
    parts,
    tools,
  }));
  const main = el(
    'main',
    { id: 'main', class: 'library' },
    el(
      'div',
      { class: 'masthead' },
      el('h1', {}, library.title),
      el('p', { class: 'applies' }, library.shop),
    ),
    el(
      'div',
      { class: 'part', 'data-live': true },
      el(
        'label',
        { class: 'field' },
        el('span', {}, words.filter),
        el('input', { type: 'search', id: 'search', autocomplete: 'off' }),
      ),
      el('p', { id: 'none', role: 'status', hidden: true }, words.noMatch),
    ),
    table(
      library.title,
      'guides',
      [words.number, words.what, words.vehicles, words.revisionHead],
      guides.map((guide, i) => guideRow(guide, `g${i}`, words)),
    ),
  );
  return drawHtml({
    language: library.language,
    title: library.title,
    words,
    name: 'library',
    body: [main],
    standing: library.standing,
    styles: '',
    script: assets.libraryScript,
    data: rows,
    assets,
  });
}

function guideRow(guide: LibraryGuide, id: string, words: Words): TableRow {
  const links = guide.files.map(({ href, label }) => el('a', { href: relative(href) }, label));
  return {
    attributes: { id },
    cells: [
      el('b', {}, guide.number),
      [el('b', {}, guide.title), el('span', { class: 'files' }, links)],
      guide.vehicles.join(', '),
      [
        guide.date === ''
          ? guide.revision
          : proseMarkup([text(say(words.revision, { revision: guide.revision, date: guide.date }))]),
        ' ',
        el('small', {}, proseMarkup([text(guide.statusText)])),
      ],
    ],
  };
}

/** A path beside the page as an address: each part encoded, nothing that could name another scheme. */
function relative(path: string): string {
  return `./${path.split(/[\\/]/).map(encodeURIComponent).join('/')}`;
}
