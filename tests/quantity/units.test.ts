// Every unit's factor against an independent library: @lhncbc/ucum-lhc 7.1.10 (UCUM, National Library of
// Medicine). A unit without a row here fails, so no factor goes unchecked.
import ucum from '@lhncbc/ucum-lhc';
import { describe, expect, it } from 'vitest';
import {
  numberOf,
  type QuantityKind,
  quantityKinds,
  rational,
  unitById,
  units,
  valueToSI,
} from '../../language/src/quantity/index.js';

/** The coherent unit of each kind as UCUM writes it. */
const coherent: Record<QuantityKind, string> = {
  length: 'm',
  area: 'm2',
  volume: 'm3',
  mass: 'kg',
  density: 'kg/m3',
  time: 's',
  frequency: 'Hz',
  speed: 'm/s',
  flow: 'm3/s',
  angle: 'deg',
  'rotation speed': 'deg/s',
  temperature: 'K',
  'temperature difference': 'K',
  force: 'N',
  torque: 'N.m',
  pressure: 'Pa',
  energy: 'J',
  power: 'W',
  viscosity: 'm2/s',
  voltage: 'V',
  current: 'A',
  resistance: 'Ohm',
  'electric charge': 'C',
  capacitance: 'F',
  insulation: 'Ohm/V',
  conductivity: 'S/m',
  'leak rate': 'Pa/s',
  ratio: '1',
  count: '1',
};

/** Our unit ids as UCUM codes. Ounce-force, kip and metric horsepower are built from UCUM's own parts. */
const codes: Record<string, string> = {
  'Ohm-per-V': 'Ohm/V',
  'kOhm-per-V': 'kOhm/V',
  'uS-per-cm': 'uS/cm',
  'mS-per-cm': 'mS/cm',
  'kPa-per-min': 'kPa/min',
  'mbar-per-min': 'mbar/min',
  'psi-per-min': '[psi]/min',
  'N-m': 'N.m',
  'cN-m': 'cN.m',
  'dN-m': 'dN.m',
  'daN-m': 'daN.m',
  'kN-m': 'kN.m',
  'kgf-m': 'kgf.m',
  'kgf-cm': 'kgf.cm',
  'ft-lbf': '[ft_i].[lbf_av]',
  'in-lbf': '[in_i].[lbf_av]',
  'in-ozf': '[in_i].[oz_av].[g]',
  Pa: 'Pa',
  hPa: 'hPa',
  kPa: 'kPa',
  MPa: 'MPa',
  mbar: 'mbar',
  bar: 'bar',
  atm: 'atm',
  'kgf-per-cm2': 'kgf/cm2',
  psi: '[psi]',
  ksi: '10*3.[psi]',
  inHg: "[in_i'Hg]",
  mmHg: 'mm[Hg]',
  mm3: 'mm3',
  mL: 'mL',
  cL: 'cL',
  cm3: 'cm3',
  L: 'L',
  m3: 'm3',
  in3: '[cin_i]',
  'tsp-us': '[tsp_us]',
  'tbsp-us': '[tbs_us]',
  'fl-oz-us': '[foz_us]',
  'cup-us': '[cup_us]',
  'pt-us': '[pt_us]',
  'qt-us': '[qt_us]',
  'gal-us': '[gal_us]',
  'fl-oz-imp': '[foz_br]',
  'pt-imp': '[pt_br]',
  'qt-imp': '[qt_br]',
  'gal-imp': '[gal_br]',
  'mL-per-min': 'mL/min',
  'L-per-min': 'L/min',
  'L-per-h': 'L/h',
  'm3-per-h': 'm3/h',
  'gal-us-per-min': '[gal_us]/min',
  'gal-imp-per-min': '[gal_br]/min',
  'ft3-per-min': '[cft_i]/min',
  nanometre: 'nm',
  um: 'um',
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  km: 'km',
  thou: '[mil_i]',
  in: '[in_i]',
  ft: '[ft_i]',
  yd: '[yd_i]',
  mi: '[mi_i]',
  nmi: '[nmi_i]',
  mm2: 'mm2',
  cm2: 'cm2',
  m2: 'm2',
  in2: '[sin_i]',
  mg: 'mg',
  g: 'g',
  kg: 'kg',
  t: 't',
  oz: '[oz_av]',
  lb: '[lb_av]',
  'ton-us': '[ston_av]',
  'ton-imp': '[lton_av]',
  'kg-per-L': 'kg/L',
  N: 'N',
  daN: 'daN',
  kN: 'kN',
  kgf: 'kgf',
  ozf: '[oz_av].[g]',
  lbf: '[lbf_av]',
  kip: '10*3.[lbf_av]',
  cSt: 'cSt',
  ms: 'ms',
  s: 's',
  min: 'min',
  h: 'h',
  d: 'd',
  week: 'wk',
  Hz: 'Hz',
  kHz: 'kHz',
  degree: 'deg',
  arcminute: "'",
  flat: '60.deg',
  turn: 'circ',
  rpm: 'circ/min',
  degC: 'Cel',
  degF: '[degF]',
  K: 'K',
  'delta-degF': '[degR]',
  'm-per-s': 'm/s',
  'km-per-h': 'km/h',
  mph: '[mi_i]/h',
  kn: '[kn_i]',
  W: 'W',
  kW: 'kW',
  hp: '[HP]',
  'hp-metric': '75.kgf.m/s',
  J: 'J',
  kJ: 'kJ',
  'W-h': 'W.h',
  'kW-h': 'kW.h',
  mV: 'mV',
  V: 'V',
  kV: 'kV',
  uA: 'uA',
  mA: 'mA',
  A: 'A',
  mOhm: 'mOhm',
  Ohm: 'Ohm',
  kOhm: 'kOhm',
  MOhm: 'MOhm',
  'mA-h': 'mA.h',
  'A-h': 'A.h',
  nF: 'nF',
  uF: 'uF',
  percent: '%',
  times: '1',
  strokes: '1',
  clicks: '1',
};

/** UCUM fixes mercury at 133.322 Pa/mm, 3 parts per million under the conventional column of SP 811. */
const mercury = new Set(['inHg', 'mmHg']);

const gravitational = new Set(['kgf-m', 'kgf-cm', 'kgf', 'kgf-per-cm2', 'hp-metric']);

const oracle = ucum.UcumLhcUtils.getInstance();

describe('unit factors against UCUM', () => {
  it.each(units.map((unit) => [unit.id, unit] as const))('%s', (id, unit) => {
    const code = codes[id];
    expect(code, `no UCUM code listed for ${id}`).toBeDefined();
    if (code === undefined) return;
    for (const value of [1, 68]) {
      const { status, toVal } = oracle.convertUnitTo(code, value, coherent[unit.kind]);
      expect(status).toBe('succeeded');
      const expected = toVal ?? Number.NaN;
      const ours = numberOf(valueToSI(rational(BigInt(value)), unit));
      expect(Math.abs(ours / expected - 1)).toBeLessThan(mercury.has(id) ? 1e-5 : 1e-13);
    }
  });
});

describe('seven-digit factors printed in NIST SP 811 (2008), Appendix B', () => {
  it.each([
    ['ft-lbf', 1.355818],
    ['in-lbf', 1.129848e-1],
    ['in-ozf', 7.061552e-3],
    ['kgf-m', 9.80665],
    ['psi', 6.894757e3],
    ['kgf-per-cm2', 9.80665e4],
    ['inHg', 3.386389e3],
    ['mmHg', 1.333224e2],
    ['mph', 4.4704e-1],
  ])('%s is %d', (id, printed) => {
    expect(Number(numberOf(unitById(id).factor).toPrecision(7))).toBe(printed);
  });
});

describe('the table itself', () => {
  it('has unique ids and symbols', () => {
    expect(new Set(units.map((unit) => unit.id)).size).toBe(units.length);
    expect(new Set(units.map((unit) => unit.symbol)).size).toBe(units.length);
  });

  it('has ASCII ids', () => {
    expect(units.map((unit) => unit.id).filter((id) => !/^[A-Za-z0-9-]+$/.test(id))).toEqual([]);
  });

  it('pairs units of one kind in another system', () => {
    for (const unit of units) {
      for (const id of [unit.partner, unit.smallPartner?.unit]) {
        if (id === undefined) continue;
        const partner = unitById(id);
        expect(partner.kind, unit.id).toBe(unit.kind);
        // A gravitational metric unit shows the SI one that replaced it.
        if (gravitational.has(unit.id)) expect(partner.symbol).toMatch(/^(N·m|N|kPa|kW)$/);
        else expect(partner.system, `${unit.id} beside ${id}`).not.toBe(unit.system);
      }
    }
  });

  it('names every unit in four languages', () => {
    const missing = units.filter((unit) =>
      Object.values(unit.names).some(({ one, other }) => one === '' || other === ''),
    );
    expect(missing).toEqual([]);
  });

  it('never calls a torque an energy', () => {
    expect(unitById('N-m').dimension).toEqual(unitById('J').dimension);
    expect(unitById('N-m').kind).not.toBe(unitById('J').kind);
    expect(quantityKinds.torque.si).toBe('N·m');
  });
});
