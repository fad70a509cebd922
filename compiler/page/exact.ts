// Readings compared exactly: decimals and unit factors as fractions of whole numbers, so that nothing is rounded onto
// a limit. 0.866 in is 21.9964 mm and fails a limit of 22.0 mm.
import type { PageReading } from '../src/html/page-types.js';

/** A fraction with a positive denominator. */
interface Exact {
  readonly over: bigint;
  readonly under: bigint;
}

export type Verdict =
  | { readonly verdict: 'none' }
  | { readonly verdict: 'not a number' }
  | { readonly verdict: 'pass' | 'low' | 'high'; readonly shown: string; readonly limit: string };

/** Compares what was typed, in the unit chosen, with the limits of the reading. */
export function judge(reading: PageReading, typed: string, unitLabel: string): Verdict {
  if (typed.trim() === '') return { verdict: 'none' };
  const value = parse(typed);
  const unit = reading.units.find(({ label }) => label === unitLabel) ?? reading.units[0];
  const base = reading.units[0];
  if (!value || !unit || !base) return { verdict: 'not a number' };
  const inBase = add(times(value, fraction(unit.times)), unit.plus ? fraction(unit.plus) : ZERO);
  const low = reading.low === undefined ? undefined : parse(reading.low);
  const high = reading.high === undefined ? undefined : parse(reading.high);
  // Degrees of an angle stand at the figure, as they are printed.
  const unitAfter = base.label === '°' ? '°' : ` ${base.label}`;
  const report = (verdict: 'pass' | 'low' | 'high', limit: string) => ({
    verdict,
    shown: `${show(inBase, limit)}${unitAfter}`,
    limit: limit === '' ? '' : `${limit.replace('-', '\u2212')}${unitAfter}`,
  });
  if (low && compare(inBase, low) < 0) return report('low', reading.low ?? '');
  if (high && compare(inBase, high) > 0) return report('high', reading.high ?? '');
  return report(
    'pass',
    nearer(inBase, low, high) === 'low' ? (reading.low ?? '') : (reading.high ?? reading.low ?? ''),
  );
}

const ZERO: Exact = { over: 0n, under: 1n };

/** A decimal with point or comma; undefined for anything else. */
function parse(typed: string): Exact | undefined {
  const found = /^([+\-\u2212]?)(\d*)(?:[.,](\d*))?$/.exec(typed.trim().replace(/[\s\u00A0]/g, ''));
  if (!found) return undefined;
  const [, sign = '', whole = '', part = ''] = found;
  if (whole + part === '') return undefined;
  const over = BigInt(whole + part);
  return { over: sign === '-' || sign === '\u2212' ? -over : over, under: 10n ** BigInt(part.length) };
}

const fraction = ([over, under]: readonly [string, string]): Exact => ({
  over: BigInt(over),
  under: BigInt(under),
});
const times = (a: Exact, b: Exact): Exact => ({ over: a.over * b.over, under: a.under * b.under });
const add = (a: Exact, b: Exact): Exact => ({
  over: a.over * b.under + b.over * a.under,
  under: a.under * b.under,
});
const compare = (a: Exact, b: Exact): number => {
  const difference = a.over * b.under - b.over * a.under;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
};

function nearer(value: Exact, low: Exact | undefined, high: Exact | undefined): 'low' | 'high' {
  if (!low) return 'high';
  if (!high) return 'low';
  const middle = times(add(low, high), { over: 1n, under: 2n });
  return compare(value, middle) <= 0 ? 'low' : 'high';
}

/** As many places as the limit has, and more while the value would look like the limit without being it. */
function show(value: Exact, limit: string): string {
  const edge = parse(limit);
  let places = /[.,](\d+)$/.exec(limit)?.[1]?.length ?? (limit === '' ? 2 : 0);
  while (edge && places < 9 && compare(value, edge) !== 0 && round(value, places) === round(edge, places))
    places++;
  return round(value, places);
}

function round(value: Exact, places: number): string {
  const scale = 10n ** BigInt(places);
  const negative = value.over < 0n;
  const scaled = (negative ? -value.over : value.over) * scale * 2n + value.under;
  const digits = (scaled / (value.under * 2n)).toString().padStart(places + 1, '0');
  const text = places === 0 ? digits : `${digits.slice(0, -places)}.${digits.slice(-places)}`;
  return negative && /[1-9]/.test(text) ? `\u2212${text}` : text;
}
