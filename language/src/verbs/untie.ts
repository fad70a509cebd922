// untie: undo what was tied out of the way.
import { defineVerb, type Effect } from '../vocabulary/verb.js';
import { named, SPOTS } from '../vocabulary/verb-shorthand.js';

const IN_REACH: Effect = { needs: ['reachable', 'tied'], makes: ['untied'] };

export const untie = defineVerb({
  word: 'untie',
  on: { part: IN_REACH, connection: IN_REACH, place: IN_REACH },
  object: 'one or more',
  clauses: {
    from: named(SPOTS, 'What it is tied to.'),
  },
  minutes: 0.3,
  phrase: {
    en: 'Untie {object}[ from {from}]',
    es: 'Desatar {object}[ de {from}]',
    fr: 'Détacher {object}[ (sur {from})]',
    de: '{object}[ von {from}] losbinden',
  },
  done: 'untied',
  docs: 'Undoes what `tie` held out of the way.',
  example: 'untie front-harness',
});
