// move: bring a part to another position, or out of the way.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, measured, named } from '../vocabulary/verb-shorthand.js';

export const move = defineVerb({
  word: 'move',
  on: {
    part: { needs: ['mounted', 'reachable'], makes: ['moved'] },
    connection: IN_REACH,
    fastener: IN_REACH,
    adjustment: IN_REACH,
  },
  object: 'one or more',
  bare: measured(['count'], 'How often, there and back.'),
  clauses: {
    to: named(['place', 'part'], 'The position, one of those the part declares, or a place.'),
    by: measured(['length', 'angle'], 'How far.'),
    with: named(AIDS, 'The tool.'),
  },
  minutes: 0.5,
  phrase: {
    en: 'Move {object}[ {amount}][ by {by}][ to {to}][ with {with}]',
    es: 'Mover {object}[ {amount}][ {by}][ a {to}][ con {with}]',
    fr: 'Déplacer {object}[ : {amount}][ : {by}][ vers {to}][ avec {with}]',
    de: '{object}[ {amount}][ um {by}][ nach {to}][ mit {with}] verschieben',
  },
  done: 'moved',
  docs: 'Brings a part to one of its declared positions, or out of the way. At the end it must be back at its first position.',
  example: 'move axle to pushed-in',
});
