// unload: let the suspension hang.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const unload = defineVerb({
  word: 'unload',
  on: { machine: { needs: ['suspension loaded'], makes: ['unloaded'] } },
  machines: ['suspension'],
  object: 'one or more',
  clauses: {
    at: named(SPOTS, 'Where the load was.'),
    with: named(AIDS, 'The jack.'),
  },
  minutes: 1,
  isUnderOneArm: true,
  phrase: {
    en: 'Unload {object}[ at {at}][ with {with}]',
    es: 'Descargar {object}[ en {at}][ con {with}]',
    fr: 'Relâcher la charge : {object}[ ({at})][ avec {with}]',
    de: '{object}[ mit {with}] entlasten[ ({at})]',
  },
  done: 'unloaded',
  docs: 'Takes the jack away from the suspension, which hangs free again.',
  example: 'unload suspension',
});
