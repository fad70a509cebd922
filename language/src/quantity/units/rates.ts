/** What is measured by something else: insulation by volt, leaks by time, coolant by length. */
import { inch, poundForce } from '../constants.js';
import { defineUnits } from '../unit.js';

/** Insulation of a power side, by the volt that it works at: 100 Ω/V and 500 Ω/V in UN regulation 100. */
export const insulationUnits = defineUnits('insulation', [
  {
    symbol: 'Ω/V',
    id: 'Ohm-per-V',
    spellings: ['ohm/V', 'ohms/V', 'ohm/v', 'ohms/volt', 'ohm/volt', 'ohms per volt'],
    factor: '1',
    en: 'ohm per volt|ohms per volt',
    es: 'ohmio por voltio|ohmios por voltio',
    fr: 'ohm par volt|ohms par volt',
    de: 'Ohm je Volt',
  },
  {
    symbol: 'kΩ/V',
    id: 'kOhm-per-V',
    spellings: ['kohm/V', 'kohms/V', 'kilohms per volt'],
    factor: '1000',
    en: 'kilohm per volt|kilohms per volt',
    es: 'kiloohmio por voltio|kiloohmios por voltio',
    fr: 'kilohm par volt|kilohms par volt',
    de: 'Kiloohm je Volt',
  },
]);

/** How well a coolant conducts: what runs through the power electronics must hardly do so. */
export const conductivityUnits = defineUnits('conductivity', [
  {
    symbol: 'µS/cm',
    id: 'uS-per-cm',
    spellings: ['uS/cm', 'us/cm', 'microsiemens per centimetre', 'microsiemens/cm'],
    factor: '0.0001',
    en: 'microsiemens per centimetre',
    es: 'microsiemens por centímetro',
    fr: 'microsiemens par centimètre',
    de: 'Mikrosiemens je Zentimeter',
  },
  {
    symbol: 'mS/cm',
    id: 'mS-per-cm',
    spellings: ['ms/cm', 'millisiemens per centimetre', 'millisiemens/cm'],
    factor: '0.1',
    en: 'millisiemens per centimetre',
    es: 'milisiemens por centímetro',
    fr: 'millisiemens par centimètre',
    de: 'Millisiemens je Zentimeter',
  },
]);

/** How fast a pressure falls in a leak test. */
export const leakRateUnits = defineUnits('leak rate', [
  {
    symbol: 'kPa/min',
    id: 'kPa-per-min',
    spellings: ['kpa/min', 'kilopascals per minute'],
    factor: '1000/60',
    system: 'metric',
    en: 'kilopascal per minute|kilopascals per minute',
    es: 'kilopascal por minuto|kilopascales por minuto',
    fr: 'kilopascal par minute|kilopascals par minute',
    de: 'Kilopascal je Minute',
    partner: 'psi-per-min',
  },
  {
    symbol: 'mbar/min',
    id: 'mbar-per-min',
    spellings: ['millibars per minute', 'millibar/min'],
    factor: '100/60',
    system: 'metric',
    en: 'millibar per minute|millibars per minute',
    es: 'milibar por minuto|milibares por minuto',
    fr: 'millibar par minute|millibars par minute',
    de: 'Millibar je Minute',
    partner: 'psi-per-min',
  },
  {
    symbol: 'psi/min',
    id: 'psi-per-min',
    spellings: ['psi per minute', 'lb/in²/min'],
    factor: poundForce.div(inch.pow(2)).div(60),
    system: 'us',
    en: 'pound per square inch per minute|pounds per square inch per minute',
    es: 'libra por pulgada cuadrada por minuto|libras por pulgada cuadrada por minuto',
    fr: 'livre par pouce carré par minute|livres par pouce carré par minute',
    de: 'Pfund je Quadratzoll je Minute',
    partner: 'kPa-per-min',
  },
]);
