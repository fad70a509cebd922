// loosen: slacken fasteners; they stay in.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, measured, named, worded } from '../vocabulary/verb-shorthand.js';

export const loosen = defineVerb({
  word: 'loosen',
  on: { fastener: { needs: ['reachable', 'tight enough'], makes: ['loose'] } },
  object: 'one or more',
  takesCount: true,
  bare: measured(['angle', 'count'], 'How far, such as `1/2 turn`.'),
  clauses: {
    order: worded('Order of slackening for this line, such as `outside-in`.'),
    with: named(AIDS, 'The tool, when it is worth naming.'),
  },
  minutes: 0.2,
  turns: true,
  phrase: {
    en: 'Loosen {object}[ by {amount}][ in the order {order}][ with {with}]',
    es: 'Aflojar {object}[ {amount}][ en el orden {order}][ con {with}]',
    fr: 'Desserrer {object}[ : {amount}][ dans l’ordre {order}][ avec {with}]',
    de: '{object}[ um {amount}][ in der Reihenfolge {order}][ mit {with}] lösen',
  },
  done: 'loosened',
  docs: 'Slackens fasteners and leaves them in. Without a count, all that are tight; with one, the tightest first.',
  example: 'loosen wheel-nut, 1/2 turn',
});
