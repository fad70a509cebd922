// Completion inside braces in text: names, then the figures they have.
import type { Snapshot } from '../../snapshot.js';
import { type Offer, thingOffer, value } from './answer.js';

/** Figures that a reference may ask for, by clause word. */
const ATTRIBUTES = [
  'torque',
  'fill',
  'mass',
  'hex',
  'number',
  'at least',
  'at most',
  'new',
  'settle',
  'amount',
  'length',
];

export function proseOffers(snapshot: Snapshot, written: string): Offer[] {
  const { scope } = snapshot.job();
  const [name = ''] = written.split(/\s/);
  if (!/\s/.test(written)) return [...scope.names.values()].filter((t) => t.line).map((t) => thingOffer(t));
  const thing = scope.resolve(name);
  return ATTRIBUTES.filter((a) => thing?.clauses.has(a)).map((a) => value(a, thing?.title));
}
