// clean: take dirt, oil and old sealant off.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named } from '../vocabulary/verb-shorthand.js';

export const clean = defineVerb({
  word: 'clean',
  on: {
    place: { needs: ['reachable'], makes: ['cleaned'] },
    part: { needs: ['reachable'], makes: ['cleaned'] },
    fastener: { needs: ['reachable'], makes: ['cleaned'] },
    connection: { needs: ['reachable'], makes: ['cleaned'] },
    circuit: { needs: ['reachable'], makes: ['cleaned'] },
    tool: { needs: ['reachable'], makes: ['cleaned'] },
    adjustment: { needs: ['reachable'], makes: ['cleaned'] },
  },
  object: 'one or more',
  clauses: {
    with: named(AIDS, 'The cleaner, brush or cloth.'),
  },
  minutes: 3,
  suits: ['cleaner'],
  phrase: {
    en: 'Clean {object}[ with {with}]',
    es: 'Limpiar {object}[ con {with}]',
    fr: 'Nettoyer {object}[ avec {with}]',
    de: '{object}[ mit {with}] reinigen',
  },
  done: 'cleaned',
  docs: 'Takes dirt, oil and old sealant off. A face that gets sealant must be cleaned after its part came off.',
  example: 'clean cover-face, housing-face with degreaser',
});
