/** Electrical units. Milliohm and megohm differ only by a capital: typed in the wrong case they are asked about. */
import { defineUnits } from '../unit.js';

export const voltageUnits = defineUnits('voltage', [
  {
    symbol: 'mV',
    spellings: ['millivolt', 'millivolts'],
    factor: '0.001',
    en: 'millivolt|millivolts',
    es: 'milivoltio|milivoltios',
    fr: 'millivolt|millivolts',
    de: 'Millivolt',
  },
  {
    symbol: 'V',
    spellings: ['v', 'volt', 'volts', 'VDC', 'V DC', 'VAC', 'V AC'],
    factor: '1',
    en: 'volt|volts',
    es: 'voltio|voltios',
    fr: 'volt|volts',
    de: 'Volt',
  },
  {
    symbol: 'kV',
    spellings: ['kilovolt', 'kilovolts'],
    factor: '1000',
    en: 'kilovolt|kilovolts',
    es: 'kilovoltio|kilovoltios',
    fr: 'kilovolt|kilovolts',
    de: 'Kilovolt',
  },
]);

export const currentUnits = defineUnits('current', [
  {
    symbol: 'µA',
    id: 'uA',
    spellings: ['uA', 'microamp', 'microamps'],
    factor: '0.000001',
    en: 'microampere|microamperes',
    es: 'microamperio|microamperios',
    fr: 'microampère|microampères',
    de: 'Mikroampere',
  },
  {
    symbol: 'mA',
    spellings: ['milliamp', 'milliamps'],
    factor: '0.001',
    en: 'milliampere|milliamperes',
    es: 'miliamperio|miliamperios',
    fr: 'milliampère|milliampères',
    de: 'Milliampere',
  },
  {
    symbol: 'A',
    spellings: ['amp', 'amps', 'ampere', 'amperes'],
    factor: '1',
    en: 'ampere|amperes',
    es: 'amperio|amperios',
    fr: 'ampère|ampères',
    de: 'Ampere',
  },
]);

export const resistanceUnits = defineUnits('resistance', [
  {
    symbol: 'mΩ',
    id: 'mOhm',
    spellings: ['mohm', 'milliohm', 'milliohms'],
    factor: '0.001',
    en: 'milliohm|milliohms',
    es: 'miliohmio|miliohmios',
    fr: 'milliohm|milliohms',
    de: 'Milliohm',
  },
  {
    symbol: 'Ω',
    id: 'Ohm',
    spellings: ['ohm', 'ohms'],
    factor: '1',
    en: 'ohm|ohms',
    es: 'ohmio|ohmios',
    fr: 'ohm|ohms',
    de: 'Ohm',
  },
  {
    symbol: 'kΩ',
    id: 'kOhm',
    spellings: ['kohm', 'kohms', 'kilohm', 'kilohms', 'k ohm', 'k ohms'],
    factor: '1000',
    en: 'kilohm|kilohms',
    es: 'kiloohmio|kiloohmios',
    fr: 'kilohm|kilohms',
    de: 'Kiloohm',
  },
  {
    symbol: 'MΩ',
    id: 'MOhm',
    spellings: ['Mohm', 'megohm', 'megohms'],
    factor: '1000000',
    en: 'megohm|megohms',
    es: 'megaohmio|megaohmios',
    fr: 'mégohm|mégohms',
    de: 'Megaohm',
  },
]);

export const chargeUnits = defineUnits('electric charge', [
  {
    symbol: 'mA·h',
    id: 'mA-h',
    spellings: ['mAh', 'mA h', 'mA-h'],
    factor: '3.6',
    en: 'milliampere hour|milliampere hours',
    es: 'miliamperio hora|miliamperios hora',
    fr: 'milliampère-heure|milliampères-heures',
    de: 'Milliamperestunde|Milliamperestunden',
  },
  {
    symbol: 'A·h',
    id: 'A-h',
    spellings: ['Ah', 'A h', 'A-h', 'A.h', 'amp hour', 'amp hours', 'amp-hour', 'amp-hours'],
    factor: '3600',
    en: 'ampere hour|ampere hours',
    es: 'amperio hora|amperios hora',
    fr: 'ampère-heure|ampères-heures',
    de: 'Amperestunde|Amperestunden',
  },
]);

export const capacitanceUnits = defineUnits('capacitance', [
  {
    symbol: 'nF',
    spellings: ['nanofarad', 'nanofarads'],
    factor: '0.000000001',
    en: 'nanofarad|nanofarads',
    es: 'nanofaradio|nanofaradios',
    fr: 'nanofarad|nanofarads',
    de: 'Nanofarad',
  },
  {
    symbol: 'µF',
    id: 'uF',
    spellings: ['uF', 'mfd', 'microfarad', 'microfarads'],
    factor: '0.000001',
    en: 'microfarad|microfarads',
    es: 'microfaradio|microfaradios',
    fr: 'microfarad|microfarads',
    de: 'Mikrofarad',
  },
]);
