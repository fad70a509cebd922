// install: put parts and fasteners back.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const install = defineVerb({
  word: 'install',
  on: {
    fastener: { needs: ['some out', 'held thing in'], makes: ['started'] },
    part: {
      needs: ['off', 'cover order', 'held thing in', 'nothing left behind it', 'members in', 'joint wet'],
      makes: ['fitted'],
    },
  },
  object: 'one or more',
  takesCount: true,
  clauses: {
    to: named(SPOTS, 'What it goes on.'),
    on: named(SPOTS, 'What it sits on.'),
    in: named(SPOTS, 'What it goes in.'),
    into: named(SPOTS, 'What it goes into.'),
    at: named(SPOTS, 'Where on the vehicle.'),
    with: named(AIDS, 'The tool or supply.'),
  },
  minutes: 1,
  phrase: {
    en: 'Install {object}[ to {to}][ on {on}][ in {in}][ into {into}][ at {at}][ with {with}]',
    es: 'Montar {object}[ en {to}][ sobre {on}][ en {in}][ dentro de {into}][ en {at}][ con {with}]',
    fr: 'Reposer {object}[ sur {to}][ sur {on}][ dans {in}][ dans {into}][ ({at})][ avec {with}]',
    de: '{object}[ an {to}][ auf {on}][ in {in}][ in {into}][ mit {with}] einbauen[ ({at})]',
  },
  done: 'put back on',
  docs: 'Puts a part on, or starts fasteners by hand; torque is a line of its own. What sits behind a part must be on first, and nothing placed for the job may be shut in.',
  example: 'install hub, hub-bolt',
});
