// Values of conditions that have a verb of their own, as shops write them: a brake is applied, a hood is opened. Common
// usage, from memory; what has none in a language is set to its value there too.
import type { Words } from './kinds.js';

/** The sentence of one order; German says it at the end. */
const order = (en: string, es: string, fr: string, de: string): Words => ({
  en: `${en} {object}[ with {with}]`,
  es: `${es} {object}[ con {with}]`,
  fr: `${fr} {object}[ avec {with}]`,
  de: `{object}[ mit {with}] ${de}`,
});

const switched = (en: string, de: string): Words => ({
  en: `Switch {object} ${en}[ with {with}]`,
  es: 'Poner {object} en {value}[ con {with}]',
  fr: 'Mettre {object} sur {value}[ avec {with}]',
  de: `{object}[ mit {with}] ${de}`,
});

export const VALUE_PHRASES: Readonly<Record<string, Words>> = {
  applied: order('Apply', 'Accionar', 'Serrer', 'betätigen'),
  released: order('Release', 'Soltar', 'Desserrer', 'lösen'),
  on: switched('on', 'einschalten'),
  off: switched('off', 'ausschalten'),
  open: order('Open', 'Abrir', 'Ouvrir', 'öffnen'),
  closed: order('Close', 'Cerrar', 'Fermer', 'schließen'),
  locked: order('Lock', 'Bloquear', 'Verrouiller', 'verriegeln'),
  unlocked: order('Unlock', 'Desbloquear', 'Déverrouiller', 'entriegeln'),
  raised: order('Raise', 'Levantar', 'Lever', 'anheben'),
  lowered: order('Lower', 'Bajar', 'Abaisser', 'absenken'),
  coupled: order('Couple', 'Acoplar', 'Atteler', 'ankuppeln'),
  uncoupled: order('Uncouple', 'Desacoplar', 'Dételer', 'abkuppeln'),
};
