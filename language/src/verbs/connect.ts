// connect: join plugs, hoses, pipes and leads again.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const connect = defineVerb({
  word: 'connect',
  on: {
    connection: {
      needs: ['not connected', 'parts joined in', 'cover order', 'nothing left behind it'],
      makes: ['connected'],
    },
  },
  object: 'one or more',
  clauses: {
    to: named([...SPOTS, 'temporary', 'tool'], 'What it joins; a gauge or a measuring glass for the job.'),
    at: named(SPOTS, 'Where on the vehicle.'),
    with: named(AIDS, 'The tool or supply.'),
  },
  minutes: 0.5,
  phrase: {
    en: 'Connect {object}[ to {to}][ at {at}][ with {with}]',
    es: 'Conectar {object}[ a {to}][ en {at}][ con {with}]',
    fr: 'Brancher {object}[ sur {to}][ ({at})][ avec {with}]',
    de: '{object}[ an {to}][ mit {with}] anschließen[ ({at})]',
  },
  done: 'connected',
  docs: 'Joins a plug, hose, pipe or lead again; a cap comes off by itself. The parts it joins must be in place.',
  example: 'connect pipe-at-slave, pipe-at-master',
});
