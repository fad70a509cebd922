// uncover: take a cover sheet away.
import { defineVerb } from '../vocabulary/verb.js';
import { IN_REACH } from '../vocabulary/verb-shorthand.js';

export const uncover = defineVerb({
  word: 'uncover',
  on: { part: IN_REACH, place: IN_REACH, connection: IN_REACH },
  object: 'one or more',
  clauses: {},
  minutes: 0.3,
  phrase: {
    en: 'Uncover {object}',
    es: 'Descubrir {object}',
    fr: 'Découvrir {object}',
    de: 'Abdeckung entfernen: {object}',
  },
  done: 'uncovered',
  docs: 'Takes away what `cover` put on.',
  example: 'uncover alternator',
});
