/** All units, in one list and by id. A new unit is one row in `units/`. */

import type { Unit } from './unit.js';
import {
  capacitanceUnits,
  chargeUnits,
  currentUnits,
  resistanceUnits,
  voltageUnits,
} from './units/electrical.js';
import { flowUnits } from './units/flow.js';
import { areaUnits, lengthUnits } from './units/length.js';
import { densityUnits, forceUnits, massUnits, viscosityUnits } from './units/mass-force.js';
import { energyUnits, powerUnits, ratioUnits, speedUnits } from './units/motion-power.js';
import { pressureUnits } from './units/pressure.js';
import { conductivityUnits, insulationUnits, leakRateUnits } from './units/rates.js';
import { temperatureDifferenceUnits, temperatureUnits } from './units/temperature.js';
import { angleUnits, countUnits, frequencyUnits, rotationUnits, timeUnits } from './units/time-angle.js';
import { torqueUnits } from './units/torque.js';
import { volumeUnits } from './units/volume.js';

/** Every unit, grouped by kind, in the order the reference lists them. */
export const units: readonly Unit[] = [
  ...torqueUnits,
  ...pressureUnits,
  ...volumeUnits,
  ...flowUnits,
  ...lengthUnits,
  ...areaUnits,
  ...massUnits,
  ...densityUnits,
  ...forceUnits,
  ...timeUnits,
  ...frequencyUnits,
  ...angleUnits,
  ...rotationUnits,
  ...temperatureUnits,
  ...temperatureDifferenceUnits,
  ...speedUnits,
  ...powerUnits,
  ...energyUnits,
  ...viscosityUnits,
  ...voltageUnits,
  ...currentUnits,
  ...resistanceUnits,
  ...chargeUnits,
  ...capacitanceUnits,
  ...insulationUnits,
  ...conductivityUnits,
  ...leakRateUnits,
  ...ratioUnits,
  ...countUnits,
];

const byId = new Map(units.map((unit) => [unit.id, unit]));

/** The unit with this id, or undefined. */
export function findUnit(id: string): Unit | undefined {
  return byId.get(id);
}

/** The unit with this id; for ids written in the code. Throws on a misspelt one. */
export function unitById(id: string): Unit {
  const unit = byId.get(id);
  if (unit === undefined) throw new Error(`no unit with the id "${id}"`);
  return unit;
}
