// apply: put sealant, grease or another supply on.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, measured, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const apply = defineVerb({
  word: 'apply',
  on: { supply: { needs: ['faces clean'], makes: ['coated'] } },
  object: 'one or more',
  bare: measured(['volume', 'mass', 'length', 'count'], 'How much.'),
  clauses: {
    to: named(SPOTS, 'What it goes on.'),
    bead: measured(['length'], 'Width of the bead.'),
    film: measured(['length'], 'Thickness of the film.'),
    with: named(AIDS, 'The gun or brush.'),
  },
  minutes: 2,
  goesOnto: true,
  readies: true,
  suits: ['sealant', 'grease'],
  phrase: {
    en: 'Apply {object}[, {amount},][ to {to}][ in a {bead} bead][ in a {film} film][ with {with}]',
    es: 'Aplicar {object}[, {amount},][ en {to}][ en cordón de {bead}][ en capa de {film}][ con {with}]',
    fr: 'Appliquer {object}[, {amount},][ sur {to}][, cordon {bead},][, film {film},][ avec {with}]',
    de: '{object}[, {amount},][ auf {to}][ als Raupe von {bead}][ als Film von {film}][ mit {with}] auftragen',
  },
  done: 'applied',
  docs: 'Puts a supply on. Sealant goes on faces that were cleaned since the part came off, and starts the clocks of the joint.',
  example: 'apply axle-sealant to cover-face, bead 5 mm',
});
