// tag: put a label on.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, labelled, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const tag = defineVerb({
  word: 'tag',
  on: labelled({ needs: ['reachable'], makes: ['tagged'] }, { needs: [], makes: ['tagged'] }),
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
