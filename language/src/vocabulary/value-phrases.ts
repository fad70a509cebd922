// Values of conditions that have a verb of their own, as shops write them: a brake is applied, a hood is opened. Common
// usage, from memory; what has none in a language is set to its value there too.
import type { Words } from './kinds.js';

const SET = {
  es: 'Poner {object} en {value}[ con {with}]',
  fr: 'Mettre {object} sur {value}[ avec {with}]',
};

export const VALUE_PHRASES: Readonly<Record<string, Words>> = {
  applied: {
    en: 'Apply {object}[ with {with}]',
    es: 'Accionar {object}[ con {with}]',
    fr: 'Actionner {object}[ avec {with}]',
    de: '{object}[ mit {with}] betätigen',
  },
  released: {
    en: 'Release {object}[ with {with}]',
    es: 'Soltar {object}[ con {with}]',
    fr: 'Desserrer {object}[ avec {with}]',
    de: '{object}[ mit {with}] lösen',
  },
  on: { ...SET, en: 'Switch {object} on[ with {with}]', de: '{object}[ mit {with}] einschalten' },
  off: { ...SET, en: 'Switch {object} off[ with {with}]', de: '{object}[ mit {with}] ausschalten' },
  open: {
    en: 'Open {object}[ with {with}]',
    es: 'Abrir {object}[ con {with}]',
    fr: 'Ouvrir {object}[ avec {with}]',
    de: '{object}[ mit {with}] öffnen',
  },
  closed: {
    en: 'Close {object}[ with {with}]',
    es: 'Cerrar {object}[ con {with}]',
    fr: 'Fermer {object}[ avec {with}]',
    de: '{object}[ mit {with}] schließen',
  },
  locked: {
    en: 'Lock {object}[ with {with}]',
    es: 'Bloquear {object}[ con {with}]',
    fr: 'Verrouiller {object}[ avec {with}]',
    de: '{object}[ mit {with}] verriegeln',
  },
  unlocked: {
    en: 'Unlock {object}[ with {with}]',
    es: 'Desbloquear {object}[ con {with}]',
    fr: 'Déverrouiller {object}[ avec {with}]',
    de: '{object}[ mit {with}] entriegeln',
  },
  raised: {
    en: 'Raise {object}[ with {with}]',
    es: 'Levantar {object}[ con {with}]',
    fr: 'Lever {object}[ avec {with}]',
    de: '{object}[ mit {with}] anheben',
  },
  lowered: {
    en: 'Lower {object}[ with {with}]',
    es: 'Bajar {object}[ con {with}]',
    fr: 'Abaisser {object}[ avec {with}]',
    de: '{object}[ mit {with}] absenken',
  },
  coupled: {
    en: 'Couple {object}[ with {with}]',
    es: 'Acoplar {object}[ con {with}]',
    fr: 'Atteler {object}[ avec {with}]',
    de: '{object}[ mit {with}] kuppeln',
  },
  uncoupled: {
    en: 'Uncouple {object}[ with {with}]',
    es: 'Desacoplar {object}[ con {with}]',
    fr: 'Dételer {object}[ avec {with}]',
    de: '{object}[ mit {with}] abkuppeln',
  },
};
