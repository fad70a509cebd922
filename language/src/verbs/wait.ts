// wait: let time pass.
import { defineVerb } from '../vocabulary/verb.js';
import { measured, required, worded } from '../vocabulary/verb-shorthand.js';

export const wait = defineVerb({
  word: 'wait',
  on: {},
  alone: { needs: [], makes: ['waited'] },
  object: 'none',
  bare: required(measured(['time'], 'How long.')),
  clauses: {
    since: worded('The action the time counts from; without it, this line.'),
  },
  minutes: 0,
  bothSides: 'one line behind',
  phrase: {
    en: 'Wait {amount}[, counted from {since}]',
    es: 'Esperar {amount}[, contados desde {since}]',
    fr: 'Attendre {amount}[, à compter de : {since}]',
    de: '{amount} warten[, gerechnet ab {since}]',
  },
  done: 'waited',
  docs: 'Lets time pass: sealant cures, oil settles, charge drains away. Only this counts as cure time, not the work in between.',
  example: 'wait 10 min since disconnect battery-negative',
});
