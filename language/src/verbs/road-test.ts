// road-test: drive the vehicle to prove the work.
import { defineVerb } from '../vocabulary/verb.js';
import { measured } from '../vocabulary/verb-shorthand.js';

export const roadTest = defineVerb({
  word: 'road-test',
  on: {
    machine: {
      needs: ['whole', 'run clock', 'on ground', 'unchocked', 'nothing placed'],
      makes: ['fluids moved', 'outcome'],
    },
  },
  machines: ['vehicle'],
  object: 'one or more',
  bare: measured(['length', 'time'], 'How far or how long.'),
  clauses: {
    at: measured(['speed'], 'Road speed.'),
  },
  minutes: 5,
  records: 'drive',
  wholeVehicle: true,
  phrase: {
    en: 'Road-test {object}[, {amount},][ at {at}]',
    es: 'Prueba en carretera: {object}[, {amount},][ a {at}]',
    fr: 'Essai sur route : {object}[, {amount},][ à {at}]',
    de: 'Probefahrt: {object}[, {amount},][ mit {at}]',
  },
  done: 'road-tested',
  docs: 'Drives the vehicle to prove the work. It must be whole, on the ground, unchocked and clear of everything placed for the job.',
  example: 'road-test vehicle, 5 km',
});
