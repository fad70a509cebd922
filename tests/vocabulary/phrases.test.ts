// The fixed words of guides: every language has every phrase, with the same slots.
import { describe, expect, it } from 'vitest';
import { BUILT_IN_NAMES, LANGUAGES } from '../../language/src/vocabulary/kinds.js';
import {
  dayInWords,
  listPieces,
  PHRASES,
  type PhraseId,
  phrase,
  phraseText,
} from '../../language/src/vocabulary/phrases.js';
import { slotsOf, textOf } from '../../language/src/vocabulary/render-phrase.js';

const ids = Object.keys(PHRASES.en) as PhraseId[];

describe.each(LANGUAGES)('in %s', (language) => {
  it('every phrase has words and the slots of the English one', () => {
    expect(Object.keys(PHRASES[language]).sort()).toEqual([...ids].sort());
    for (const id of ids) {
      expect(phrase(id, language).trim(), id).not.toBe('');
      expect(slotsOf(phrase(id, language)).sort(), id).toEqual(slotsOf(phrase(id, 'en')).sort());
    }
  });

  it('built-in names have their words', () => {
    for (const name of BUILT_IN_NAMES) expect(Object.keys(PHRASES[language])).toContain(`thing-${name}`);
  });
});

it('puts no slot behind a word that French would elide', () => {
  // These slots open with a figure, so with no vowel: `hors de 22,0 mm`.
  for (const id of ids)
    expect(phrase(id, 'fr').replace(/\{(limit|date|time|amount|value|size)\}/g, ''), id).not.toMatch(
      /\b(de|le|la|que) \{/,
    );
});

describe('phraseText', () => {
  it('fills words and numbers', () => {
    expect(phraseText('page-of', 'en', { page: 2, pages: 6 })).toBe('Page 2 of 6');
    expect(phraseText('page-of', 'de', { page: 2, pages: 6 })).toBe('Seite 2 von 6');
    expect(phraseText('until-line', 'en', { line: '7.1' })).toBe('until 7.1');
    expect(phraseText('stage', 'fr', { number: 2 })).toBe('étape 2');
  });
});

describe('dayInWords', () => {
  it.each([
    ['en', '5 October 2026'],
    ['es', '5 de octubre de 2026'],
    ['fr', '5 octobre 2026'],
    ['de', '5. Oktober 2026'],
  ] as const)('in %s', (language, words) => {
    expect(dayInWords('2026-10-05', language)).toBe(words);
  });

  it.each(['2026-13-01', 'soon', ''])('leaves %j as it is', (text) => {
    expect(dayInWords(text, 'en')).toBe(text);
  });
});

describe('listPieces', () => {
  const list = (words: string[], language: 'en' | 'es' | 'de', word?: 'and' | 'or') =>
    textOf(
      listPieces(
        words.map((text) => [{ text }]),
        language,
        word,
      ),
    );

  it('joins as a sentence does', () => {
    expect(list([], 'en')).toBe('');
    expect(list(['a'], 'en')).toBe('a');
    expect(list(['a', 'b'], 'en')).toBe('a and b');
    expect(list(['a', 'b', 'c'], 'de', 'or')).toBe('a, b oder c');
  });

  it('changes the Spanish joiner before its own sound', () => {
    expect(list(['tuercas', 'imanes'], 'es')).toBe('tuercas e imanes');
    expect(list(['tuercas', 'hierros'], 'es')).toBe('tuercas y hierros');
    expect(list(['siete', 'ocho'], 'es', 'or')).toBe('siete u ocho');
  });
});
