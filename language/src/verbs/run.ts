// run: run the engine.
import { defineVerb } from '../vocabulary/verb.js';
import { measured } from '../vocabulary/verb-shorthand.js';

export const run = defineVerb({
  word: 'run',
  on: { machine: { needs: ['closed to run', 'run clock'], makes: ['fluids moved'] } },
  machines: ['engine'],
  object: 'one or more',
  bare: measured(['time'], 'How long.'),
  clauses: {
    at: measured(['rotation speed'], 'Engine speed.'),
    to: measured(['temperature'], 'Until this warm.'),
  },
  minutes: 2,
  wholeVehicle: true,
  phrase: {
    en: 'Run {object}[ for {amount}][ at {at}][ until it is at {to}]',
    es: 'Hacer funcionar {object}[ {amount}][ a {at}][ hasta {to}]',
    fr: 'Faire tourner {object}[ pendant {amount}][ à {at}][ jusqu’à {to}]',
    de: '{object}[ {amount} lang][ mit {at}][ bis {to}] laufen lassen',
  },
  done: 'run',
  docs: 'Runs the engine. What seals or holds a fluid must be on and torqued, all connected, bled and filled, and sealant cured; a tray or trim may be off. Mark `engine-cover` what must be on in any case. Fluids move, so levels settle anew.',
  example: 'run engine, 5 min',
});
