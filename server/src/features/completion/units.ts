// Units of the right dimension, those of a workshop first: a list that begins with nanometres helps nobody.
import { type QuantityKind, rational, units, unitText } from '@baywright/language';
import { CompletionItemKind } from 'vscode-languageserver';
import type { Offer } from './answer.js';

/** A number that stands before the cursor asks for its unit. */
export function endsInNumber(before: string): boolean {
  return /(?:^|[\s,±/+-])[0-9½¼¾][0-9 .,/½¼¾]*\s?$/.test(before);
}

/** Units of these kinds, of the first before the others; those that the text around uses already before all. */
export function unitOffers(kinds: readonly QuantityKind[], around = ''): Offer[] {
  const isTrip = kinds.length === 2 && kinds.includes('length') && kinds.includes('time');
  const usual = isTrip ? TRIP : USUAL;
  // A quarter or a half is one of a turn, said in the singular.
  const isPart = /\d\/\d+\s?$/.test(around);
  const rank = ({ label, detail }: UnitOffer): number => {
    if (isPart && label === TURN) return -2;
    if (new RegExp(`\\d\\s?${escaped(label)}(?![\\p{L}·/²³])`, 'u').test(around)) return -1;
    const i = usual.indexOf(label);
    if (i < 0) return 2 * usual.length;
    return isTrip || detail === kinds[0] ? i : usual.length + i;
  };
  return units
    .filter((u) => kinds.includes(u.kind))
    .map(
      (u): UnitOffer => ({
        label: unitText(u, isPart ? rational(1n, 2n) : rational(2)).trim(),
        kind: CompletionItemKind.Unit,
        detail: u.kind,
      }),
    )
    .filter((o, i, all) => all.findIndex((x) => x.label === o.label) === i)
    .sort((a, b) => rank(a) - rank(b) || kinds.indexOf(a.detail) - kinds.indexOf(b.detail));
}

const TURN = 'turn';

interface UnitOffer extends Offer {
  readonly detail: QuantityKind;
}

/** What a shop writes most, metric and US by turns; common practice. */
const USUAL: readonly string[] = [
  ...['N·m', 'ft·lbf', 'in·lbf', '°', 'turns'],
  ...['mm', 'in', 'thou', 'µm', 'm', 'cm', 'ft', 'km', 'mi'],
  ...['min', 'h', 's', 'd', 'weeks'],
  ...['L', 'mL', 'US qt', 'US fl oz', 'US gal', 'imp pt'],
  ...['kg', 'g', 'lb', 'oz', 't'],
  ...[
    'kPa',
    'bar',
    'psi',
    'MPa',
    'V',
    'A',
    'mA',
    'Ω',
    'kΩ',
    '°C',
    '°F',
    'rpm',
    'N',
    'kN',
    'lbf',
    'L/min',
    '%',
  ],
];

/** How far or how long a vehicle is run. */
const TRIP: readonly string[] = ['km', 'mi', 'h', 'min', 'd', 'weeks', 'm', 'ft'];

const escaped = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');
