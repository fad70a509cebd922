// purge: drive air or vapour out with a gas.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, measured, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const purge = defineVerb({
  word: 'purge',
  on: { circuit: IN_REACH, part: IN_REACH, place: IN_REACH, connection: IN_REACH },
  object: 'one or more',
  bare: measured(['pressure'], 'At which pressure.'),
  clauses: {
    at: named(SPOTS, 'Where it goes in.'),
    with: named(AIDS, 'The gas or pump.'),
    for: measured(['time'], 'How long.'),
  },
  minutes: 5,
  phrase: {
    en: 'Purge {object}[, {amount},][ at {at}][ with {with}][ for {for}]',
    es: 'Barrer con gas {object}[, {amount},][ por {at}][ con {with}][ durante {for}]',
    fr: 'Balayer {object}[, {amount},][ ({at})][ avec {with}][ pendant {for}]',
    de: '{object}[, {amount},][ mit {with}][ {for} lang] durchspülen[ ({at})]',
  },
  done: 'purged',
  docs: 'Drives air, vapour or fuel out of a line or tank with a gas such as dry nitrogen. To take air out of a hydraulic circuit, write `bleed`.',
  example: 'purge ac-circuit with dry-nitrogen',
});
