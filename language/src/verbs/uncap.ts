// uncap: take the cap off a line.
import { defineVerb } from '../vocabulary/verb.js';

export const uncap = defineVerb({
  word: 'uncap',
  on: { connection: { needs: ['capped'], makes: ['uncapped'] } },
  object: 'one or more',
  clauses: {},
  minutes: 0.2,
  phrase: {
    en: 'Uncap {object}',
    es: 'Destapar {object}',
    fr: 'Retirer le bouchon : {object}',
    de: 'Verschluss entfernen: {object}',
  },
  done: 'uncapped',
  docs: 'Takes the cap off a line that stays open for now. `connect` takes it off by itself.',
  example: 'uncap supply-hose',
});
