/**
 * Dimensions and kinds. A dimension is the vector of base exponents; a kind says what the number is *for*.
 * Torque and energy share a vector, a temperature and a temperature rise do too: checks compare kinds.
 */

/**
 * Exponents over the bases metre, kilogram, second, ampere, kelvin and degree. Angle is a base of its own,
 * so that a speed of rotation is not a frequency; its unit is the degree, because the radian is no exact
 * fraction of a turn.
 */
export interface Dimension {
  readonly length: number;
  readonly mass: number;
  readonly time: number;
  readonly current: number;
  readonly temperature: number;
  readonly angle: number;
}

/** What a quantity measures, in plain words that may stand in a message. */
export type QuantityKind =
  | 'length'
  | 'area'
  | 'volume'
  | 'mass'
  | 'density'
  | 'time'
  | 'frequency'
  | 'speed'
  | 'flow'
  | 'angle'
  | 'rotation speed'
  | 'temperature'
  | 'temperature difference'
  | 'force'
  | 'torque'
  | 'pressure'
  | 'energy'
  | 'power'
  | 'viscosity'
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'electric charge'
  | 'capacitance'
  | 'insulation'
  | 'conductivity'
  | 'leak rate'
  | 'ratio'
  | 'count';

/** What the tables and messages need to know of a kind. */
export interface KindRow {
  readonly dimension: Dimension;
  /** With its article: `35 psi is a pressure`. */
  readonly phrase: string;
  /** The coherent unit that `toSI` counts in. */
  readonly si: string;
  /** A value as it would be written for this kind, for messages. */
  readonly example: string;
}

const none: Dimension = { length: 0, mass: 0, time: 0, current: 0, temperature: 0, angle: 0 };

function kind(exponents: Partial<Dimension>, phrase: string, si: string, example: string): KindRow {
  return { dimension: { ...none, ...exponents }, phrase, si, example };
}

/** One row per kind. */
export const quantityKinds: Readonly<Record<QuantityKind, KindRow>> = {
  length: kind({ length: 1 }, 'a length', 'm', '22.0 mm'),
  area: kind({ length: 2 }, 'an area', 'm²', '2.5 mm²'),
  volume: kind({ length: 3 }, 'a volume', 'm³', '1.9 L'),
  mass: kind({ mass: 1 }, 'a mass', 'kg', '14 kg'),
  density: kind({ mass: 1, length: -3 }, 'a density', 'kg/m³', '1.26 kg/L'),
  time: kind({ time: 1 }, 'a time', 's', '1 h 40 min'),
  frequency: kind({ time: -1 }, 'a frequency', 'Hz', '50 Hz'),
  speed: kind({ length: 1, time: -1 }, 'a speed', 'm/s', '50 km/h'),
  flow: kind({ length: 3, time: -1 }, 'a flow', 'm³/s', '12 L/min'),
  angle: kind({ angle: 1 }, 'an angle', '°', '90°'),
  'rotation speed': kind({ angle: 1, time: -1 }, 'a speed of rotation', '°/s', '800 rpm'),
  temperature: kind({ temperature: 1 }, 'a temperature', 'K', '80 °C'),
  'temperature difference': kind({ temperature: 1 }, 'a temperature difference', 'K', '10 K'),
  force: kind({ length: 1, mass: 1, time: -2 }, 'a force', 'N', '200 N'),
  torque: kind({ length: 2, mass: 1, time: -2 }, 'a torque', 'N·m', '115 N·m'),
  pressure: kind({ length: -1, mass: 1, time: -2 }, 'a pressure', 'Pa', '210 kPa'),
  energy: kind({ length: 2, mass: 1, time: -2 }, 'an energy', 'J', '12 kWh'),
  power: kind({ length: 2, mass: 1, time: -3 }, 'a power', 'W', '60 kW'),
  viscosity: kind({ length: 2, time: -1 }, 'a viscosity', 'm²/s', '100 cSt'),
  voltage: kind({ length: 2, mass: 1, time: -3, current: -1 }, 'a voltage', 'V', '12.6 V'),
  current: kind({ current: 1 }, 'an electric current', 'A', '10 A'),
  resistance: kind({ length: 2, mass: 1, time: -3, current: -2 }, 'an electrical resistance', 'Ω', '120 Ω'),
  'electric charge': kind({ time: 1, current: 1 }, 'a battery capacity', 'C', '70 A·h'),
  capacitance: kind({ length: -2, mass: -1, time: 4, current: 2 }, 'a capacitance', 'F', '470 µF'),
  insulation: kind({ current: -1 }, 'an insulation by volt', 'Ω/V', '500 Ω/V'),
  conductivity: kind({ length: -3, mass: -1, time: 3, current: 2 }, 'a conductivity', 'S/m', '5 µS/cm'),
  'leak rate': kind({ length: -1, mass: 1, time: -3 }, 'a fall of pressure', 'Pa/s', '2 kPa/min'),
  ratio: kind({}, 'a percentage', '1', '50 %'),
  count: kind({}, 'a number of times', '1', '3 times'),
};

/** The dimension of a kind. */
export function dimensionOf(of: QuantityKind): Dimension {
  return quantityKinds[of].dimension;
}
