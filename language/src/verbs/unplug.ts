// unplug: take the plug out of an opening.
import { defineVerb } from '../vocabulary/verb.js';
import { IN_REACH } from '../vocabulary/verb-shorthand.js';

export const unplug = defineVerb({
  word: 'unplug',
  on: { connection: { needs: ['capped'], makes: ['uncapped'] }, place: IN_REACH, part: IN_REACH },
  object: 'one or more',
  clauses: {},
  minutes: 0.2,
  phrase: {
    en: 'Take the plug out of {object}',
    es: 'Retirar el tapón: {object}',
    fr: 'Retirer le bouchon : {object}',
    de: 'Stopfen entfernen: {object}',
  },
  done: 'unplugged',
  docs: 'Takes the plug out of an opening. To take an electrical plug off, write `disconnect`.',
  example: 'unplug return-line',
});
