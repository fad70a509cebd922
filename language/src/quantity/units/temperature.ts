/**
 * Temperature points and temperature differences, kept apart: 10 °C is 50 °F, a rise of 10 K is a rise of
 * 18 Δ°F. Offsets are exact: 0 °C = 273.15 K, 0 °F = 459.67 °R.
 */
import { defineUnits } from '../unit.js';

function degrees(letter: string, word: string): string[] {
  return [
    `deg ${letter}`,
    `deg. ${letter}`,
    `deg${letter}`,
    `° ${letter}`,
    `degrees ${letter}`,
    `degrees ${word}`,
    `degree ${letter}`,
    word,
    letter,
  ];
}

function rise(letter: string): string[] {
  return [`Δ${letter}`, `Δ °${letter}`, `delta °${letter}`, `delta ${letter}`, `d°${letter}`];
}

export const temperatureUnits = defineUnits('temperature', [
  {
    symbol: '°C',
    id: 'degC',
    spellings: ['℃', ...degrees('C', 'Celsius'), 'centigrade', 'celsius'],
    factor: '1',
    offset: '273.15',
    system: 'metric',
    en: 'degree Celsius|degrees Celsius',
    es: 'grado Celsius|grados Celsius',
    fr: 'degré Celsius|degrés Celsius',
    de: 'Grad Celsius',
    partner: 'degF',
  },
  {
    symbol: '°F',
    id: 'degF',
    spellings: ['℉', ...degrees('F', 'Fahrenheit'), 'fahrenheit'],
    factor: '5/9',
    offset: '459.67',
    system: 'us',
    en: 'degree Fahrenheit|degrees Fahrenheit',
    es: 'grado Fahrenheit|grados Fahrenheit',
    fr: 'degré Fahrenheit|degrés Fahrenheit',
    de: 'Grad Fahrenheit',
    partner: 'degC',
  },
]);

export const temperatureDifferenceUnits = defineUnits('temperature difference', [
  {
    symbol: 'K',
    spellings: ['kelvin', 'kelvins', 'Δ°C', ...rise('C')],
    factor: '1',
    system: 'metric',
    en: 'kelvin|kelvins',
    es: 'kelvin|kelvins',
    fr: 'kelvin|kelvins',
    de: 'Kelvin',
    partner: 'delta-degF',
  },
  {
    symbol: 'Δ°F',
    id: 'delta-degF',
    spellings: ['Δ°F', ...rise('F')],
    factor: '5/9',
    system: 'us',
    en: 'Fahrenheit degree of difference|Fahrenheit degrees of difference',
    es: 'grado Fahrenheit de diferencia|grados Fahrenheit de diferencia',
    fr: "degré Fahrenheit d'écart|degrés Fahrenheit d'écart",
    de: 'Grad Fahrenheit Unterschied',
    partner: 'K',
  },
]);
