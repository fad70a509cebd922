// Names that files of the library declare and the document does not use yet: accepting one writes the import too.
import type { Snapshot } from '../../snapshot.js';
import { filesUsed, useLine } from '../import-lines.js';
import { type Offer, thingOffer } from './answer.js';
import { kindOffers } from './things.js';

/** Vehicles that are declared, here or in a catalogue that is then imported. */
export function vehicleOffers(snapshot: Snapshot): Offer[] {
  const known = kindOffers(snapshot.job(), ['vehicle']);
  const names = new Set(known.map((offer) => offer.label));
  const used = filesUsed(snapshot);
  const others = snapshot.shelf.paths().flatMap((path): Offer[] => {
    if (path === snapshot.path || used.has(path)) return [];
    if (!VEHICLES.test(snapshot.file(path)?.text ?? '')) return [];
    const things = snapshot.library.model(path)?.things ?? [];
    return things
      .filter((thing) => thing.kind === 'vehicle' && !names.has(thing.name))
      .map((thing) =>
        thingOffer(thing, { detail: `${thing.title} · ${path}`, also: [useLine(snapshot, path)] }),
      );
  });
  return [...known, ...others];
}

const VEHICLES = /^vehicles\s*$/m;
