// tie: hold something out of the way.
import { defineVerb, type Effect } from '../vocabulary/verb.js';
import { AIDS, named, SPOTS } from '../vocabulary/verb-shorthand.js';

const IN_REACH: Effect = { needs: ['reachable'], makes: ['tied'] };

export const tie = defineVerb({
  word: 'tie',
  on: { part: IN_REACH, connection: IN_REACH, place: IN_REACH },
  object: 'one or more',
  clauses: {
    to: named(SPOTS, 'What it is tied to.'),
    with: named(AIDS, 'The strap or cable tie.'),
  },
  minutes: 0.5,
  phrase: {
    en: 'Tie {object}[ to {to}][ with {with}]',
    es: 'Atar {object}[ a {to}][ con {with}]',
    fr: 'Attacher {object}[ à {to}][ avec {with}]',
    de: '{object}[ an {to}][ mit {with}] festbinden',
  },
  done: 'tied',
  docs: 'Holds a harness, hose or part out of the way or in its place. A part whose bolts are off is hung with `hang`. What is tied with a tool, such as a strap, must be untied again with `untie`; a cable tie stays.',
  example: 'tie front-harness to radiator-support with cable-tie',
});
