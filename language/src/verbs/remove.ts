// remove: take parts and fasteners off, and temporary things away.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const remove = defineVerb({
  word: 'remove',
  on: {
    fastener: { needs: ['reachable', 'some on'], makes: ['out'] },
    part: {
      needs: ['mounted', 'free', 'reachable', 'nothing connected', 'nothing spills'],
      makes: ['taken off'],
    },
    temporary: { needs: ['placed', 'reachable'], makes: ['removed'] },
  },
  object: 'one or more',
  takesCount: true,
  clauses: {
    from: named(SPOTS, 'What it comes off.'),
    at: named(SPOTS, 'Where on the vehicle.'),
    with: named(AIDS, 'The tool, when it is worth naming.'),
  },
  minutes: 1,
  turns: true,
  phrase: {
    en: 'Remove {object}[ from {from}][ at {at}][ with {with}]',
    es: 'Desmontar {object}[ de {from}][ en {at}][ con {with}]',
    fr: 'Déposer {object}[ (sur {from})][ ({at})][ avec {with}]',
    de: '{object}[ von {from}][ mit {with}] ausbauen[ ({at})]',
  },
  phraseFor: {
    temporary: {
      en: 'Remove {object}[ from {from}][ at {at}][ with {with}]',
      es: 'Retirar {object}[ de {from}][ en {at}][ con {with}]',
      fr: 'Retirer {object}[ (sur {from})][ ({at})][ avec {with}]',
      de: '{object}[ von {from}][ mit {with}] entfernen[ ({at})]',
    },
  },
  done: 'taken off',
  docs: 'Takes a part or fasteners off, or a temporary thing away. A part must be free, in reach and no longer connected; what rides in it comes along. Without a count, all fasteners that remain.',
  example: 'remove hub-bolt, hub',
});
