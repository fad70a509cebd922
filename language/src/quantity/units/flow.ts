/** Flow of a fluid. A bare `gpm` is ambiguous, see there. */
import { foot, gallonImperial, gallonUS, litre } from '../constants.js';
import type { Rational } from '../rational.js';
import { defineUnits, type UnitRow } from '../unit.js';

export const flowUnits = defineUnits('flow', [
  perTime(
    {
      symbol: 'mL/min',
      id: 'mL-per-min',
      spellings: ['ml/min', 'cc/min', 'cm³/min', 'cm3/min'],
      system: 'metric',
      en: 'millilitre per minute|millilitres per minute',
      es: 'mililitro por minuto|mililitros por minuto',
      fr: 'millilitre par minute|millilitres par minute',
      de: 'Milliliter je Minute',
    },
    litre.div(1000),
    60,
  ),
  perTime(
    {
      symbol: 'L/min',
      id: 'L-per-min',
      spellings: ['l/min', 'lpm', 'LPM', 'litres per minute', 'liters per minute'],
      system: 'metric',
      en: 'litre per minute|litres per minute',
      es: 'litro por minuto|litros por minuto',
      fr: 'litre par minute|litres par minute',
      de: 'Liter je Minute',
      partner: 'gal-us-per-min',
    },
    litre,
    60,
  ),
  perTime(
    {
      symbol: 'L/h',
      id: 'L-per-h',
      spellings: ['l/h', 'lph', 'LPH', 'L/hr', 'l/hr', 'litres per hour', 'liters per hour'],
      system: 'metric',
      en: 'litre per hour|litres per hour',
      es: 'litro por hora|litros por hora',
      fr: 'litre par heure|litres par heure',
      de: 'Liter je Stunde',
      partner: 'gal-us-per-min',
    },
    litre,
    3600,
  ),
  perTime(
    {
      symbol: 'm³/h',
      id: 'm3-per-h',
      spellings: ['m3/h', 'm3/hr', 'm³/hr', 'm^3/h'],
      system: 'metric',
      en: 'cubic metre per hour|cubic metres per hour',
      es: 'metro cúbico por hora|metros cúbicos por hora',
      fr: 'mètre cube par heure|mètres cubes par heure',
      de: 'Kubikmeter je Stunde',
      partner: 'ft3-per-min',
    },
    litre.mul(1000),
    3600,
  ),
  perTime(
    {
      symbol: 'US gal/min',
      id: 'gal-us-per-min',
      spellings: ['US gpm', 'US GPM', 'USgpm', 'US gal per minute', 'gal/min US', 'gal (US)/min'],
      system: 'us',
      en: 'US gallon per minute|US gallons per minute',
      es: 'galón de EE. UU. por minuto|galones de EE. UU. por minuto',
      fr: 'gallon US par minute|gallons US par minute',
      de: 'US-Gallone je Minute|US-Gallonen je Minute',
      partner: 'L-per-min',
    },
    gallonUS,
    60,
  ),
  perTime(
    {
      symbol: 'imp gal/min',
      id: 'gal-imp-per-min',
      spellings: ['imp gpm', 'imp GPM', 'UK gpm', 'UK gal/min', 'Imp gal/min'],
      system: 'imperial',
      en: 'imperial gallon per minute|imperial gallons per minute',
      es: 'galón imperial por minuto|galones imperiales por minuto',
      fr: 'gallon impérial par minute|gallons impériaux par minute',
      de: 'imperiale Gallone je Minute|imperiale Gallonen je Minute',
      partner: 'L-per-min',
    },
    gallonImperial,
    60,
  ),
  perTime(
    {
      symbol: 'ft³/min',
      id: 'ft3-per-min',
      spellings: ['ft3/min', 'cfm', 'CFM', 'cu ft/min', 'cubic feet per minute'],
      system: 'us',
      en: 'cubic foot per minute|cubic feet per minute',
      es: 'pie cúbico por minuto|pies cúbicos por minuto',
      fr: 'pied cube par minute|pieds cubes par minute',
      de: 'Kubikfuß je Minute',
      partner: 'L-per-min',
    },
    foot.pow(3),
    60,
  ),
]);

function perTime(row: Omit<UnitRow, 'factor'>, volume: Rational, seconds: number): UnitRow {
  return { ...row, factor: volume.div(seconds) };
}
