// How long what wears lasts.
import { numberOf, type Thing, wearOf } from '@baywright/language';

/** The least reading that lasts to the next service, and how many services a new part lasts; empty without wear. */
export function wearLine(thing: Thing): string {
  const wear = thing.kind === 'limit' ? wearOf(thing) : undefined;
  if (!wear) return '';
  const { unit } = wear.limit;
  const least = Number((wear.lasts / numberOf(unit.factor)).toPrecision(6));
  const fresh = wear.servicesFromNew;
  const lasts = fresh === undefined ? '' : `; a new one lasts ${fresh} service${fresh === 1 ? '' : 's'}`;
  return `Lasts to the next service from ${least} ${unit.symbol}${lasts}`;
}
