// wear: put protective equipment on.
import { defineVerb } from '../vocabulary/verb.js';
import { EVENT, measured } from '../vocabulary/verb-shorthand.js';

export const wear = defineVerb({
  word: 'wear',
  on: { tool: EVENT, supply: EVENT },
  object: 'one or more',
  clauses: {
    for: measured(['time'], 'How long.'),
  },
  minutes: 0.2,
  phrase: {
    en: 'Wear {object}[ for {for}]',
    es: 'Usar {object}[ durante {for}]',
    fr: 'Porter {object}[ pendant {for}]',
    de: '{object}[ {for} lang] tragen',
  },
  done: 'worn',
  docs: 'Names the protective equipment for what follows.',
  example: 'wear gloves, eye-protection',
});
