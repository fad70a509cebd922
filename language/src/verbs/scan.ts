// scan: ask the control units for trouble codes.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const scan = defineVerb({
  word: 'scan',
  on: {
    machine: { needs: [], makes: ['outcome'] },
    part: { needs: [], makes: ['outcome'] },
    circuit: { needs: [], makes: ['outcome'] },
  },
  machines: ['vehicle', 'engine', 'codes'],
  object: 'one or more',
  clauses: {
    at: named(SPOTS, 'The diagnostic socket.'),
    with: named(AIDS, 'The scan tool.'),
  },
  minutes: 3,
  isAboutCodes: true,
  phrase: {
    en: 'Scan {object}[ at {at}][ with {with}]',
    es: 'Escanear {object}[ en {at}][ con {with}]',
    fr: 'Interroger {object}[ ({at})][ avec {with}]',
    de: '{object}[ mit {with}] auslesen[ ({at})]',
  },
  done: 'scanned',
  docs: 'Asks the control units for trouble codes. Record what is found before anything is cleared.',
  example: 'scan vehicle with scan-tool',
});
