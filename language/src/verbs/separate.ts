// separate: part a joint that is pressed, tapered or stuck.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const separate = defineVerb({
  word: 'separate',
  on: { connection: { needs: ['connected', 'free', 'reachable'], makes: ['disconnected'] } },
  object: 'one or more',
  clauses: {
    from: named(SPOTS, 'What it comes out of.'),
    with: named(AIDS, 'The puller or wedge.'),
  },
  minutes: 3,
  phrase: {
    en: 'Separate {object}[ from {from}][ with {with}]',
    es: 'Separar {object}[ de {from}][ con {with}]',
    fr: 'Désaccoupler {object}[ (sur {from})][ avec {with}]',
    de: '{object}[ von {from}][ mit {with}] trennen',
  },
  done: 'separated',
  docs: 'Parts a joint that is pressed, tapered or stuck, such as a ball joint. Everything that holds it must be off first.',
  example: 'separate ball-joint with joint-wedge',
});
