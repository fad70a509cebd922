/** Speed, power, energy and the per cent. */
import { foot, mile, poundForce } from '../constants.js';
import { rational } from '../rational.js';
import { defineUnits } from '../unit.js';

export const speedUnits = defineUnits('speed', [
  {
    symbol: 'm/s',
    id: 'm-per-s',
    factor: '1',
    system: 'metric',
    en: 'metre per second|metres per second',
    es: 'metro por segundo|metros por segundo',
    fr: 'mètre par seconde|mètres par seconde',
    de: 'Meter je Sekunde',
    partner: 'mph',
  },
  {
    symbol: 'km/h',
    id: 'km-per-h',
    spellings: ['kph', 'kmh', 'km/hr', 'kmph'],
    factor: '5/18',
    system: 'metric',
    en: 'kilometre per hour|kilometres per hour',
    es: 'kilómetro por hora|kilómetros por hora',
    fr: 'kilomètre par heure|kilomètres par heure',
    de: 'Kilometer je Stunde',
    partner: 'mph',
  },
  {
    symbol: 'mph',
    spellings: ['m.p.h.', 'mi/h', 'mi/hr', 'miles per hour'],
    factor: mile.div(3600),
    system: 'us',
    en: 'mile per hour|miles per hour',
    es: 'milla por hora|millas por hora',
    fr: 'mille par heure|milles par heure',
    de: 'Meile je Stunde|Meilen je Stunde',
    partner: 'km-per-h',
  },
  {
    symbol: 'kn',
    spellings: ['kt', 'kts', 'knot', 'knots'],
    factor: rational('1852').div(3600),
    system: 'any',
    en: 'knot|knots',
    es: 'nudo|nudos',
    fr: 'nœud|nœuds',
    de: 'Knoten',
    partner: 'km-per-h',
  },
]);

/** The mechanical horsepower is 550 ft·lbf/s; the metric one is 75 kgf·m/s. */
export const powerUnits = defineUnits('power', [
  {
    symbol: 'W',
    spellings: ['w', 'watt', 'watts'],
    factor: '1',
    en: 'watt|watts',
    es: 'vatio|vatios',
    fr: 'watt|watts',
    de: 'Watt',
  },
  {
    symbol: 'kW',
    spellings: ['kilowatt', 'kilowatts'],
    factor: '1000',
    system: 'metric',
    en: 'kilowatt|kilowatts',
    es: 'kilovatio|kilovatios',
    fr: 'kilowatt|kilowatts',
    de: 'Kilowatt',
    partner: 'hp',
  },
  {
    symbol: 'hp',
    spellings: ['bhp', 'horsepower'],
    factor: poundForce.mul(foot).mul(550),
    system: 'us',
    en: 'horsepower',
    es: 'caballo de fuerza|caballos de fuerza',
    fr: 'cheval-vapeur britannique|chevaux-vapeur britanniques',
    de: 'britische Pferdestärke|britische Pferdestärken',
    partner: 'kW',
  },
  {
    symbol: 'metric hp',
    id: 'hp-metric',
    spellings: ['hp metric', 'metric horsepower', 'PS', 'ps', 'CV', 'cv', 'ch'],
    factor: '735.49875',
    system: 'metric',
    en: 'metric horsepower',
    es: 'caballo de vapor|caballos de vapor',
    fr: 'cheval-vapeur|chevaux-vapeur',
    de: 'Pferdestärke|Pferdestärken',
    localSymbols: { es: 'CV', fr: 'ch', de: 'PS' },
    partner: 'kW',
  },
]);

export const energyUnits = defineUnits('energy', [
  {
    symbol: 'J',
    spellings: ['joule', 'joules'],
    factor: '1',
    en: 'joule|joules',
    es: 'julio|julios',
    fr: 'joule|joules',
    de: 'Joule',
  },
  {
    symbol: 'kJ',
    spellings: ['kilojoule', 'kilojoules'],
    factor: '1000',
    en: 'kilojoule|kilojoules',
    es: 'kilojulio|kilojulios',
    fr: 'kilojoule|kilojoules',
    de: 'Kilojoule',
  },
  {
    symbol: 'W·h',
    id: 'W-h',
    spellings: ['Wh', 'W h', 'W-h'],
    factor: '3600',
    en: 'watt hour|watt hours',
    es: 'vatio hora|vatios hora',
    fr: 'wattheure|wattheures',
    de: 'Wattstunde|Wattstunden',
  },
  {
    symbol: 'kW·h',
    id: 'kW-h',
    spellings: ['kWh', 'kW h', 'kW-h'],
    factor: '3600000',
    en: 'kilowatt hour|kilowatt hours',
    es: 'kilovatio hora|kilovatios hora',
    fr: 'kilowattheure|kilowattheures',
    de: 'Kilowattstunde|Kilowattstunden',
  },
]);

export const ratioUnits = defineUnits('ratio', [
  {
    symbol: '%',
    id: 'percent',
    spellings: ['percent', 'per cent', 'pct'],
    factor: '1/100',
    en: 'per cent',
    es: 'por ciento',
    fr: 'pour cent',
    de: 'Prozent',
  },
]);
