/** What a row of the unit table holds, and the helper that turns a file of rows into units. */

import type { Language } from '../vocabulary/kinds.js';
import { type Dimension, dimensionOf, type QuantityKind } from './dimension.js';
import { type Rational, rational } from './rational.js';

/** Where a unit is at home. `any`: read the same everywhere (time, angle, electrical). */
export type UnitSystem = 'metric' | 'us' | 'imperial' | 'any';

/** A unit in full words, for reading aloud and for units printed as a word. */
export interface UnitName {
  readonly one: string;
  readonly other: string;
}

/** One unit. Units are compared by identity; there is one object per row. */
export interface Unit {
  /** Stable and ASCII, for settings and data files: `ft-lbf`. */
  readonly id: string;
  /** The one printed form, also the form the formatter writes: `ft·lbf`. */
  readonly symbol: string;
  /** Everything a workshop types for it, the symbol included. */
  readonly spellings: readonly string[];
  readonly kind: QuantityKind;
  readonly dimension: Dimension;
  /** One of this unit in the coherent unit of its kind; exact. */
  readonly factor: Rational;
  /** Temperature points only: SI = (value + offset) × factor. */
  readonly offset?: Rational;
  readonly system: UnitSystem;
  readonly names: Readonly<Record<Language, UnitName>>;
  /** Torque units that are mistaken for each other: the telling part in capitals, for guides. */
  readonly spelledOut?: Readonly<Record<Language, string>>;
  /** Printed as its name (`1 1/2 turns`), not as a symbol. */
  readonly isWord?: boolean;
  /** Symbols that differ by language: `tr/min`, `U/min`. */
  readonly localSymbols?: Readonly<Partial<Record<Language, string>>>;
  /** Id of the unit shown beside it: in the other system, or the SI unit that replaced it. */
  readonly partner?: string;
  /** Id of the partner for values under `below`, counted in this unit. */
  readonly smallPartner?: { readonly below: Rational; readonly unit: string };
}

/** A row as it is written in `units/*.ts`. */
export interface UnitRow {
  readonly symbol: string;
  /** Default: the symbol. Given where the symbol is not ASCII. */
  readonly id?: string;
  readonly spellings?: readonly string[];
  /** Exact: decimal, fraction, or a value computed from other exact ones. */
  readonly factor: string | Rational;
  readonly offset?: string;
  readonly system?: UnitSystem;
  /** `one|other` in each language; one form where both are alike. */
  readonly en: string;
  readonly es: string;
  readonly fr: string;
  readonly de: string;
  readonly spelledOut?: Readonly<Record<Language, string>>;
  readonly isWord?: boolean;
  readonly localSymbols?: Readonly<Partial<Record<Language, string>>>;
  readonly partner?: string;
  readonly smallPartner?: readonly [below: string, unit: string];
}

/** Turns the rows of one kind into units. */
export function defineUnits(kind: QuantityKind, rows: readonly UnitRow[]): readonly Unit[] {
  return rows.map((row) => defineUnit(kind, row));
}

function defineUnit(kind: QuantityKind, row: UnitRow): Unit {
  const { symbol, spelledOut, isWord, localSymbols, partner, smallPartner, offset } = row;
  return Object.freeze({
    id: row.id ?? symbol,
    symbol,
    spellings: [...new Set([symbol, ...(row.spellings ?? [])])],
    kind,
    dimension: dimensionOf(kind),
    factor: typeof row.factor === 'string' ? rational(row.factor) : row.factor,
    system: row.system ?? 'any',
    names: { en: name(row.en), es: name(row.es), fr: name(row.fr), de: name(row.de) },
    ...(offset === undefined ? {} : { offset: rational(offset) }),
    ...(spelledOut === undefined ? {} : { spelledOut }),
    ...(isWord === undefined ? {} : { isWord }),
    ...(localSymbols === undefined ? {} : { localSymbols }),
    ...(partner === undefined ? {} : { partner }),
    ...(smallPartner === undefined
      ? {}
      : { smallPartner: { below: rational(smallPartner[0]), unit: smallPartner[1] } }),
  });
}

function name(text: string): UnitName {
  const [one = text, other = one] = text.split('|');
  return { one, other };
}

/** Every way to join two unit words: `N·m`, `N-m`, `N m`, `N.m`, `Nm`. Folding covers the other dots. */
export function joined(left: readonly string[], right: readonly string[]): string[] {
  return left.flatMap((a) => right.flatMap((b) => ['·', '-', ' ', '.', ''].map((by) => a + by + b)));
}
