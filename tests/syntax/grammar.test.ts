// The grammar and the word tables themselves: chevrotain's own checks pass, and no word has two readings.
import { Lexer } from 'chevrotain';
import { expect, test } from 'vitest';
import { KEYWORDS, phrasesOf } from '../../language/src/syntax/keywords.js';
import { LEXER_SETTINGS } from '../../language/src/syntax/lexer.js';
import { LineParser } from '../../language/src/syntax/line-parser.js';
import { LEXED_TYPES } from '../../language/src/syntax/tokens.js';
import { VERBS } from '../../language/src/verbs/index.js';
import { HEADS, HEADS_IN } from '../../language/src/vocabulary/heads.js';
import { SECTIONS } from '../../language/src/vocabulary/sections.js';

test('the grammar has no ambiguous alternatives', () => {
  expect(() => new LineParser(false)).not.toThrow();
});

test('the lexer has no unreachable or unoptimized patterns', () => {
  expect(new Lexer([...LEXED_TYPES], LEXER_SETTINGS).lexerDefinitionErrors).toEqual([]);
});

test('no clause word of a step is a verb or opens another line of a step', () => {
  const clauses = new Set(phrasesOf(KEYWORDS.step));
  const openers = [...VERBS.map(({ word }) => word), ...(HEADS_IN.get('step')?.keys() ?? [])].filter(
    (word) => word !== 'when',
  );
  expect(openers.filter((word) => clauses.has(word))).toEqual([]);
});

test('no head is a verb or a section word', () => {
  const heads = new Set(HEADS.map(({ word }) => word));
  expect([...VERBS, ...SECTIONS].map(({ word }) => word).filter((word) => heads.has(word))).toEqual([]);
});
