// pump: work a pedal, lever or pump.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, measured, named } from '../vocabulary/verb-shorthand.js';

export const pump = defineVerb({
  word: 'pump',
  on: { place: IN_REACH, part: IN_REACH, circuit: IN_REACH, tool: IN_REACH },
  object: 'one or more',
  bare: measured(['count', 'pressure'], 'How many times, or up to which pressure.'),
  clauses: {
    for: measured(['time'], 'How long.'),
    with: named(AIDS, 'The tool.'),
  },
  minutes: 1,
  bothSides: 'one line behind',
  phrase: {
    en: 'Pump {object}[, {amount},][ for {for}][ with {with}]',
    es: 'Bombear {object}[, {amount},][ durante {for}][ con {with}]',
    fr: 'Pomper {object}[, {amount},][ pendant {for}][ avec {with}]',
    de: '{object}[, {amount},][ {for} lang][ mit {with}] pumpen',
  },
  done: 'pumped',
  docs: 'Works a pedal, lever or pump several times.',
  example: 'pump brake-pedal, 10 times',
});
