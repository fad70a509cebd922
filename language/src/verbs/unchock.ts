// unchock: take the chocks away.
import { defineVerb } from '../vocabulary/verb.js';

export const unchock = defineVerb({
  word: 'unchock',
  on: { place: { needs: ['chocked'], makes: ['unchocked'] } },
  object: 'one or more',
  clauses: {},
  minutes: 0.3,
  phrase: {
    en: 'Take the chocks away from {object}',
    es: 'Quitar los calzos: {object}',
    fr: 'Retirer les cales : {object}',
    de: 'Unterlegkeile entfernen: {object}',
  },
  done: 'unchocked',
  docs: 'Takes the chocks away.',
  example: 'unchock rear-wheels',
});
