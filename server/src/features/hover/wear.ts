// How long what wears lasts.
import { numberOf, type Thing, wearOf } from '@baywright/language';
import type { Texts } from '../../texts/index.js';

/** The least reading that lasts to the next service, and how many services a new part lasts; empty without wear. */
export function wearLine(thing: Thing, say: Texts): string {
  const wear = thing.kind === 'limit' ? wearOf(thing) : undefined;
  if (!wear) return '';
  const { unit } = wear.limit;
  const least = Number((wear.lasts / numberOf(unit.factor)).toPrecision(6));
  const fresh = wear.servicesFromNew;
  const lasts = fresh === undefined ? '' : `; ${say.newLasts(fresh)}`;
  return `${say.lastsFrom(`${least} ${unit.symbol}`)}${lasts}`;
}
