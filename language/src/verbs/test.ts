// test: prove that something works.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, measured, named, RESULT, SPOTS } from '../vocabulary/verb-shorthand.js';

export const test = defineVerb({
  word: 'test',
  on: {
    // A pump is heard and a fan is seen to run with their covers on.
    part: { needs: [], makes: ['outcome'] },
    fastener: RESULT,
    connection: RESULT,
    circuit: RESULT,
    fluid: RESULT,
    condition: RESULT,
    limit: RESULT,
    place: RESULT,
    tool: RESULT,
    machine: { needs: [], makes: ['outcome'] },
  },
  machines: ['vehicle', 'engine', 'suspension'],
  object: 'one or more',
  bare: measured(['pressure', 'voltage', 'current', 'time', 'temperature'], 'The value it is tested with.'),
  clauses: {
    at: {
      names: SPOTS,
      quantity: ['pressure', 'voltage', 'rotation speed', 'temperature'],
      docs: 'Where, or at which value.',
    },
    for: measured(['time'], 'How long.'),
    with: named(AIDS, 'The tester.'),
  },
  minutes: 3,
  judges: 'by trial',
  phrase: {
    en: 'Test {object}[, {amount},][ at {at}][ for {for}][ with {with}]',
    es: 'Probar {object}[, {amount},][ en {at}][ durante {for}][ con {with}]',
    fr: 'Tester {object}[, {amount},][ ({at})][ pendant {for}][ avec {with}]',
    de: '{object}[, {amount},][ {for} lang][ mit {with}] prüfen[ ({at})]',
  },
  done: 'tested',
  docs: 'Proves that something works or holds. Say below it what is expected.',
  example: 'test cooling-circuit, 100 kPa, for 5 min',
});
