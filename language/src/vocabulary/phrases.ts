// The fixed words of guides, cards and sheets in every output language, in one place for all that prints.
import type { Language } from './kinds.js';
import { DE } from './phrases/de.js';
import { EN } from './phrases/en.js';
import { ES } from './phrases/es.js';
import { FR } from './phrases/fr.js';
import type { PhraseId, PhraseTable } from './phrases/table.js';
import { type Piece, renderPhrase, type Slots, textOf } from './render-phrase.js';

export type { PhraseId, PhraseTable } from './phrases/table.js';

/** One table per language; every table has every phrase. */
export const PHRASES: Readonly<Record<Language, PhraseTable>> = { en: EN, es: ES, fr: FR, de: DE };

/** A phrase as it stands in the table: plain words, or a template for `renderPhrase`. */
export function phrase(id: PhraseId, language: Language): string {
  return PHRASES[language][id];
}

/** A phrase with its slots filled by pieces. */
export function phrasePieces(id: PhraseId, language: Language, slots: Slots): Piece[] {
  return renderPhrase(phrase(id, language), slots);
}

/** A phrase with its slots filled by plain text or numbers: `phraseText('page-of', 'en', { page: 2, pages: 6 })`. */
export function phraseText(
  id: PhraseId,
  language: Language,
  values: Readonly<Record<string, string | number | undefined>> = {},
): string {
  const slots: Record<string, Piece[]> = {};
  for (const [name, value] of Object.entries(values)) {
    if (value !== undefined) slots[name] = [{ text: String(value) }];
  }
  return textOf(renderPhrase(phrase(id, language), slots));
}

const MONTHS: readonly PhraseId[] = [
  'month-1',
  'month-2',
  'month-3',
  'month-4',
  'month-5',
  'month-6',
  'month-7',
  'month-8',
  'month-9',
  'month-10',
  'month-11',
  'month-12',
];

/**
 * A day such as `2026-10-05` in words: "5 October 2026", "5 de octubre de 2026". Text that is no such day comes
 * back unchanged.
 */
export function dayInWords(day: string, language: Language): string {
  const [, year, month, date] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day) ?? [];
  const id = MONTHS[Number(month) - 1];
  if (!year || !date || !id) return day;
  return phraseText('day', language, { day: Number(date), month: phrase(id, language), year });
}

/** Joins runs as a sentence lists them: `a`, `a and b`, `a, b and c`. */
export function listPieces(
  runs: readonly (readonly Piece[])[],
  language: Language,
  word: 'and' | 'or' = 'and',
): Piece[] {
  return runs.flatMap((run, at) => {
    if (at === 0) return [...run];
    const last = at === runs.length - 1;
    return [{ text: last ? joiner(word, language, textOf(run)) : phrase('comma', language) }, ...run];
  });
}

/** Spanish says `e` for `y` before the sound of i, and `u` for `o` before that of o. */
function joiner(word: 'and' | 'or', language: Language, next: string): string {
  if (language === 'es' && word === 'and' && /^h?[ií](?![aeou])/i.test(next)) return ' e ';
  if (language === 'es' && word === 'or' && /^h?[oó]/i.test(next)) return ' u ';
  return phrase(word, language);
}
