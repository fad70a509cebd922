// untag: take the label off.
import { defineVerb, type Effect } from '../vocabulary/verb.js';
import { named, SPOTS } from '../vocabulary/verb-shorthand.js';

const IN_REACH: Effect = { needs: ['reachable', 'tagged'], makes: ['untagged'] };
const ANYWHERE: Effect = { needs: ['tagged'], makes: ['untagged'] };

export const untag = defineVerb({
  word: 'untag',
  on: {
    part: IN_REACH,
    connection: IN_REACH,
    fastener: IN_REACH,
    place: IN_REACH,
    temporary: ANYWHERE,
    tool: ANYWHERE,
    supply: ANYWHERE,
    machine: ANYWHERE,
  },
  machines: ['vehicle'],
  object: 'one or more',
  clauses: {
    at: named(SPOTS, 'Where it hangs.'),
  },
  minutes: 0.2,
  phrase: {
    en: 'Take the tag off {object}[ at {at}]',
    es: 'Retirar la etiqueta: {object}[ en {at}]',
    fr: 'Retirer l’étiquette : {object}[ ({at})]',
    de: 'Schild entfernen: {object}[ ({at})]',
  },
  done: 'untagged',
  docs: 'Takes off what `tag` put on. A tag on the vehicle is left on at the end of a job only by mistake.',
  example: 'untag vehicle',
});
