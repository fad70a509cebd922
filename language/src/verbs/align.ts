// align: bring marks, holes or faces in line.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const align = defineVerb({
  word: 'align',
  on: { part: IN_REACH, fastener: IN_REACH, connection: IN_REACH, adjustment: IN_REACH, place: IN_REACH },
  object: 'one or more',
  clauses: {
    to: named(SPOTS, 'What it lines up with.'),
    on: named(SPOTS, 'What it lines up on.'),
    at: named(SPOTS, 'Where.'),
    with: named(AIDS, 'The pin, bar or gauge.'),
  },
  minutes: 1,
  readies: true,
  phrase: {
    en: 'Align {object}[ to {to}][ on {on}][ at {at}][ with {with}]',
    es: 'Alinear {object}[ con {to}][ sobre {on}][ en {at}][ usando {with}]',
    fr: 'Aligner {object}[ sur {to}][ sur {on}][ ({at})][ avec {with}]',
    de: '{object}[ zu {to}][ auf {on}][ mit {with}] ausrichten[ ({at})]',
  },
  done: 'aligned',
  docs: 'Brings marks, holes or faces in line.',
  example: 'align camshaft-mark to cover-mark',
});
