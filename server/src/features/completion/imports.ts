// Things that files of the library declare and the document does not use yet: accepting one writes the import too.
import type { ThingKind } from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import { CATALOGUE, filesUsed, useLine } from '../import-lines.js';
import { type Offer, thingOffer } from './answer.js';

/** Vehicles of catalogues that are not used yet. */
export function vehiclesElsewhere(snapshot: Snapshot, known: readonly Offer[]): Offer[] {
  return elsewhere(snapshot, ['vehicle'], known, (text) => VEHICLES.test(text));
}

/** Things of house catalogues that are not used yet. That of a vehicle would bring parts of another vehicle along. */
export function inTheHouse(
  snapshot: Snapshot,
  kinds: readonly ThingKind[],
  known: readonly Offer[],
): Offer[] {
  return elsewhere(snapshot, kinds, known, (text) => !VEHICLES.test(text));
}

const VEHICLES = /^vehicles\s*$/m;

function elsewhere(
  snapshot: Snapshot,
  kinds: readonly ThingKind[],
  known: readonly Offer[],
  isMeant: (text: string) => boolean,
): Offer[] {
  const { scope } = snapshot.job();
  const names = new Set(known.map((offer) => offer.label));
  const used = filesUsed(snapshot);
  return snapshot.shelf.paths().flatMap((path): Offer[] => {
    const text = snapshot.file(path)?.text ?? '';
    if (path === snapshot.path || used.has(path) || !CATALOGUE.test(text) || !isMeant(text)) return [];
    const things = snapshot.library.model(path)?.things ?? [];
    return things
      .filter((t) => kinds.includes(t.kind) && !names.has(t.name) && !scope.resolve(t.name))
      .map((t) => thingOffer(t, { detail: `${t.title} · ${path}`, also: [useLine(snapshot, path)] }));
  });
}
