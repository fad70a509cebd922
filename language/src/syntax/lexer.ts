// Turns a line's code into tokens. One lexer serves all contexts; the keyword pass tells the words apart after it.
import { type IToken, Lexer } from 'chevrotain';
import { LEXED_TYPES } from './tokens.js';

/** The settings; the grammar test builds the lexer again with chevrotain's own checks on. */
export const LEXER_SETTINGS = { positionTracking: 'onlyOffset', ensureOptimizations: true } as const;

const lexer = new Lexer([...LEXED_TYPES], { ...LEXER_SETTINGS, skipValidations: true });

/** The tokens of a line's code, offsets from its start. Every character but blanks is in one of them. */
export function lex(code: string): IToken[] {
  return lexer.tokenize(code).tokens;
}
