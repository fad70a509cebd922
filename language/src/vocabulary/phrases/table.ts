// The shape of a language's table of fixed words: English has the ids, the others must have each of them.
import type { EN } from './en.js';

/** The name of a fixed phrase. */
export type PhraseId = keyof typeof EN;

export type PhraseTable = Readonly<Record<PhraseId, string>>;
