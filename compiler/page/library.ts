// Search in the list of guides, offline: every word typed must be found, by its beginning or with a slip of the
// finger. Without this script the list is whole and the browser's own search works on it.
import MiniSearch from 'minisearch';
import type { LibraryRow } from '../src/html/library.js';

const rows = JSON.parse(document.getElementById('data')?.textContent ?? '[]') as readonly LibraryRow[];
const search = new MiniSearch<LibraryRow>({
  idField: 'id',
  fields: ['number', 'title', 'vehicles', 'parts', 'tools'],
  // Lists are searched as one text; accents do not count.
  extractField: (row, field) => {
    const value = row[field as keyof LibraryRow];
    return Array.isArray(value) ? value.join(' ') : String(value);
  },
  processTerm: (term) =>
    term.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replaceAll('\u00DF', 'ss'),
  searchOptions: {
    combineWith: 'AND',
    prefix: true,
    fuzzy: (term) => (term.length > 4 ? 0.2 : false),
    boost: { number: 4, title: 3 },
  },
});
search.addAll(rows);

document.documentElement.classList.add('js');
const field = document.getElementById('search');
const none = document.getElementById('none');
const lines = new Map(rows.map(({ id }) => [id, document.getElementById(id)]));
const body = lines.get(rows[0]?.id ?? '')?.parentElement;

field?.addEventListener('input', show);

function show(): void {
  const typed = field instanceof HTMLInputElement ? field.value.trim() : '';
  const found = typed === '' ? rows.map(({ id }) => id) : search.search(typed).map(({ id }) => String(id));
  for (const line of lines.values()) if (line) line.hidden = true;
  for (const id of found) {
    const line = lines.get(id);
    if (!line) continue;
    line.hidden = false;
    // Best first.
    body?.append(line);
  }
  if (none) none.hidden = found.length > 0;
}
