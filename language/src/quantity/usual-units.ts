// The units a shop is likeliest to mean where one is missing or of the wrong kind, commonest first. Common practice.
import type { QuantityKind } from './dimension.js';
import type { Unit } from './unit.js';
import { unitById } from './unit-table.js';

const USUAL: Readonly<Partial<Record<QuantityKind, readonly string[]>>> = {
  length: ['mm', 'in'],
  area: ['mm2', 'in2'],
  volume: ['L', 'mL', 'qt-us'],
  mass: ['kg', 'g', 'lb'],
  time: ['min', 'h', 's'],
  speed: ['km/h'],
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

/** Likely units for the kinds wanted at a place; at most four. */
export function usualUnits(kinds: readonly QuantityKind[]): readonly Unit[] {
  return kinds
    .flatMap((kind) => USUAL[kind] ?? [])
    .slice(0, 4)
    .map(unitById);
}
