// The units a shop is likeliest to mean where one is missing or of the wrong kind, commonest first. Common practice.
import type { QuantityKind } from './dimension.js';
import type { Unit } from './unit.js';
import { unitById } from './unit-table.js';

const USUAL: Readonly<Partial<Record<QuantityKind, readonly string[]>>> = {
  length: ['mm', 'in'],
  area: ['mm2', 'in2'],
  volume: ['L', 'mL', 'gal-us', 'qt-us'],
  mass: ['kg', 'g', 'lb'],
  time: ['min', 'h', 's'],
  speed: ['km/h', 'mph'],
  angle: ['degree', 'turn'],
  'rotation speed': ['rpm'],
  temperature: ['degC', 'degF'],
  'temperature difference': ['K', 'delta-degF'],
  force: ['N', 'lbf'],
  torque: ['N-m', 'ft-lbf', 'in-lbf'],
  pressure: ['kPa', 'bar', 'psi'],
  voltage: ['V'],
  current: ['A'],
  'electric charge': ['A-h'],
  ratio: ['percent'],
  count: ['times'],
};

/** Likely units for the kinds wanted at a place: the four commonest, and one of every kind. */
export function usualUnits(kinds: readonly QuantityKind[]): readonly Unit[] {
  const usual = kinds.map((kind) => USUAL[kind] ?? []);
  const common = usual.flat().slice(0, 4);
  const others = usual.flatMap(([first]) => (first === undefined || common.includes(first) ? [] : [first]));
  return [...common, ...others].map(unitById);
}
