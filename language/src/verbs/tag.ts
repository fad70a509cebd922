// tag: put a label on.
import { defineVerb, type Effect } from '../vocabulary/verb.js';
import { AIDS, named, SPOTS } from '../vocabulary/verb-shorthand.js';

const IN_REACH: Effect = { needs: ['reachable'], makes: ['tagged'] };
const ANYWHERE: Effect = { needs: [], makes: ['tagged'] };

export const tag = defineVerb({
  word: 'tag',
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
    with: named(AIDS, 'The tag.'),
    at: named(SPOTS, 'Where.'),
  },
  minutes: 0.3,
  phrase: {
    en: 'Tag {object}[ at {at}][ with {with}]',
    es: 'Etiquetar {object}[ en {at}][ con {with}]',
    fr: 'Étiqueter {object}[ ({at})][ avec {with}]',
    de: 'Schild anbringen: {object}[ ({at})][ mit {with}]',
  },
  done: 'tagged',
  docs: 'Puts a label on: which hose goes where, or that a machine must not be started. A tag on the vehicle must come off again with `untag`; one on a part or hose may stay.',
  example: 'tag supply-hose, return-line',
});
