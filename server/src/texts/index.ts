// The server's own words in the language of the client: one table for each language of the guides.
import type { Language } from '@baywright/language';
import { DE } from './de.js';
import { EN, type Texts } from './en.js';
import { ES } from './es.js';
import { FR } from './fr.js';

export type { Texts } from './en.js';

export const TEXTS: Readonly<Record<Language, Texts>> = { en: EN, es: ES, fr: FR, de: DE };

/** The language for a locale such as `de-AT`; English where there is no table. */
export function languageFor(locale: string | undefined): Language {
  const tag = locale?.toLowerCase().split(/[-_]/)[0] ?? '';
  return Object.hasOwn(TEXTS, tag) ? (tag as Language) : 'en';
}
