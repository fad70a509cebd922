/** The known unit nearest to a spelling that is none, for the hint of a message. */
import { distance } from 'fastest-levenshtein';
import type { QuantityKind } from './dimension.js';
import type { Unit } from './unit.js';
import { units } from './unit-table.js';

/**
 * The unit whose spelling is fewest edits away, capitals not counted; undefined when nothing is near: one edit
 * for a short spelling, two from five characters on. Common symbols win over rare ones, and units of the kinds
 * that are wanted over all others.
 */
export function nearestUnit(spelling: string, kinds?: readonly QuantityKind[]): Unit | undefined {
  const fitting =
    kinds &&
    nearestOf(
      spelling,
      units.filter((unit) => kinds.includes(unit.kind)),
    );
  return fitting ?? nearestOf(spelling, units);
}

function nearestOf(spelling: string, known: readonly Unit[]): Unit | undefined {
  const wanted = spelling.toLowerCase();
  if (wanted.length < 2) return undefined;
  let best: Unit | undefined;
  let bestDistance = (wanted.length >= 5 ? 2 : 1) + 1;
  for (const unit of known) {
    for (const written of unit.spellings) {
      if (written.length < 2 || Math.abs(written.length - wanted.length) >= bestDistance) continue;
      const edits = isSwap(wanted, written) ? 1 : distance(wanted, written.toLowerCase());
      if (edits < bestDistance) {
        best = unit;
        bestDistance = edits;
      }
    }
  }
  return best;
}

/** Two neighbours exchanged, the commonest slip of the fingers, counts as one edit: `kap`, `pis`. */
function isSwap(wanted: string, known: string): boolean {
  if (wanted.length !== known.length) return false;
  const other = known.toLowerCase();
  for (let at = 0; at + 1 < wanted.length; at += 1) {
    if (wanted[at] === other[at]) continue;
    return (
      wanted[at] === other[at + 1] &&
      wanted[at + 1] === other[at] &&
      wanted.slice(at + 2) === other.slice(at + 2)
    );
  }
  return false;
}
