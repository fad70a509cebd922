// Sentences of verbs as a guide prints them, in the four languages.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { VERB_BY_WORD, VERBS } from '../../language/src/verbs/index.js';
import { LANGUAGES, type Language } from '../../language/src/vocabulary/kinds.js';
import { renderPhrase, slotsOf, textOf } from '../../language/src/vocabulary/render-phrase.js';

function say(word: string, language: Language, values: Readonly<Record<string, string>>): string {
  const slots = Object.fromEntries(Object.entries(values).map(([name, text]) => [name, [{ text }]]));
  return textOf(renderPhrase(VERB_BY_WORD.get(word)?.phrase[language] ?? '', slots));
}

const rows: [string, Record<string, string>, Record<Language, string>][] = [
  [
    'remove',
    { object: 'X', from: 'Y' },
    { en: 'Remove X from Y', es: 'Desmontar X de Y', fr: 'Déposer X (sur Y)', de: 'X von Y ausbauen' },
  ],
  [
    'loosen',
    { object: 'X', amount: '1/2' },
    { en: 'Loosen X by 1/2', es: 'Aflojar X 1/2', fr: 'Desserrer X\u00a0: 1/2', de: 'X um 1/2 lösen' },
  ],
  [
    'torque',
    { object: 'X' },
    {
      en: 'Torque X',
      es: 'Apretar X al par',
      fr: 'Serrer X au couple',
      de: 'X mit Drehmoment festziehen',
    },
  ],
  [
    'apply',
    { object: 'X', amount: '3 mL' },
    { en: 'Apply X, 3 mL', es: 'Aplicar X, 3 mL', fr: 'Appliquer X, 3 mL', de: 'X, 3 mL, auftragen' },
  ],
  ['wait', { amount: '2 h' }, { en: 'Wait 2 h', es: 'Esperar 2 h', fr: 'Attendre 2 h', de: '2 h warten' }],
  ['ventilate', {}, { en: 'Ventilate', es: 'Ventilar', fr: 'Ventiler', de: 'Lüften' }],
  [
    'set',
    { object: 'X', value: 'park' },
    { en: 'Set X to park', es: 'Poner X en park', fr: 'Mettre X sur park', de: 'X auf park stellen' },
  ],
];

describe.each(rows)('%s', (word, values, sentences) => {
  it.each(LANGUAGES)('in %s', (language) => {
    expect(say(word, language, values)).toBe(sentences[language]);
  });
});

it('leaves no bracket, doubled space or stray comma, whatever a line holds', () => {
  const line = fc.constantFrom(...VERBS).chain((verb) => {
    const optional = slotsOf(verb.phrase.en).filter((slot) => slot !== 'object' && slot !== 'value');
    return fc.record({
      verb: fc.constant(verb),
      language: fc.constantFrom(...LANGUAGES),
      used: fc.subarray(optional),
    });
  });
  fc.assert(
    fc.property(line, ({ verb, language, used }) => {
      const filled = ['object', 'value', ...(verb.word === 'wait' ? ['amount'] : []), ...used];
      const sentence = say(verb.word, language, Object.fromEntries(filled.map((slot) => [slot, 'x'])));
      expect(sentence).not.toMatch(/[[\]{}]| {2}| [,)]|,[,:;)]|^[ ,]|[ ,:]$|\( ?\)/);
      expect(sentence).toMatch(/^\p{Lu}/u);
    }),
    { numRuns: 2000 },
  );
});
