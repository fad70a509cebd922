/** Time, frequency, angle, rotation, and a plain number of times. */
import { rational } from '../rational.js';
import { defineUnits } from '../unit.js';

export const timeUnits = defineUnits('time', [
  {
    symbol: 'ms',
    spellings: ['msec', 'millisecond', 'milliseconds'],
    factor: '0.001',
    en: 'millisecond|milliseconds',
    es: 'milisegundo|milisegundos',
    fr: 'milliseconde|millisecondes',
    de: 'Millisekunde|Millisekunden',
  },
  {
    symbol: 's',
    spellings: ['sec', 'sec.', 'secs', 'second', 'seconds'],
    factor: '1',
    en: 'second|seconds',
    es: 'segundo|segundos',
    fr: 'seconde|secondes',
    de: 'Sekunde|Sekunden',
  },
  {
    symbol: 'min',
    spellings: ['min.', 'mins', 'minute', 'minutes'],
    factor: '60',
    en: 'minute|minutes',
    es: 'minuto|minutos',
    fr: 'minute|minutes',
    de: 'Minute|Minuten',
  },
  {
    symbol: 'h',
    spellings: ['H', 'hr', 'hr.', 'hrs', 'hour', 'hours'],
    factor: '3600',
    en: 'hour|hours',
    es: 'hora|horas',
    fr: 'heure|heures',
    de: 'Stunde|Stunden',
  },
  {
    symbol: 'd',
    spellings: ['day', 'days'],
    factor: '86400',
    en: 'day|days',
    es: 'día|días',
    fr: 'jour|jours',
    de: 'Tag|Tage',
  },
  {
    symbol: 'week',
    spellings: ['weeks', 'wk', 'wks'],
    factor: '604800',
    isWord: true,
    en: 'week|weeks',
    es: 'semana|semanas',
    fr: 'semaine|semaines',
    de: 'Woche|Wochen',
  },
]);

export const frequencyUnits = defineUnits('frequency', [
  {
    symbol: 'Hz',
    spellings: ['hertz', 'c/s'],
    factor: '1',
    en: 'hertz',
    es: 'hercio|hercios',
    fr: 'hertz',
    de: 'Hertz',
  },
  {
    symbol: 'kHz',
    spellings: ['kilohertz'],
    factor: '1000',
    en: 'kilohertz',
    es: 'kilohercio|kilohercios',
    fr: 'kilohertz',
    de: 'Kilohertz',
  },
]);

/** A turn is 360°; a flat is one side of a hexagon, 60°. */
export const angleUnits = defineUnits('angle', [
  {
    symbol: '°',
    id: 'degree',
    spellings: ['deg', 'deg.', 'degs', 'degree', 'degrees'],
    factor: '1',
    en: 'degree|degrees',
    es: 'grado|grados',
    fr: 'degré|degrés',
    de: 'Grad',
  },
  {
    symbol: '′',
    id: 'arcminute',
    spellings: ['arcmin', 'arc min', 'arcminute', 'arcminutes', 'minutes of arc'],
    factor: '1/60',
    en: 'minute of arc|minutes of arc',
    es: 'minuto de arco|minutos de arco',
    fr: "minute d'arc|minutes d'arc",
    de: 'Bogenminute|Bogenminuten',
  },
  {
    symbol: 'flat',
    spellings: ['flats'],
    factor: '60',
    isWord: true,
    en: 'flat|flats',
    es: 'cara de hexágono|caras de hexágono',
    fr: 'pan|pans',
    de: 'Sechskantfläche|Sechskantflächen',
  },
  {
    symbol: 'turn',
    spellings: ['turns', 'rev', 'revs', 'revolution', 'revolutions', 'rotation', 'rotations'],
    factor: '360',
    isWord: true,
    en: 'turn|turns',
    es: 'vuelta|vueltas',
    fr: 'tour|tours',
    de: 'Umdrehung|Umdrehungen',
  },
]);

export const rotationUnits = defineUnits('rotation speed', [
  {
    symbol: 'rpm',
    spellings: ['r.p.m.', 'r/min', 'rev/min', 'revs/min', 'U/min', 'tr/min', '1/min', 'min-1', 'min⁻¹'],
    factor: rational('6'),
    en: 'revolution per minute|revolutions per minute',
    es: 'revolución por minuto|revoluciones por minuto',
    fr: 'tour par minute|tours par minute',
    de: 'Umdrehung je Minute|Umdrehungen je Minute',
    localSymbols: { fr: 'tr/min', de: 'U/min' },
  },
]);

export const countUnits = defineUnits('count', [
  {
    symbol: 'times',
    spellings: ['time'],
    factor: '1',
    isWord: true,
    en: 'time|times',
    es: 'vez|veces',
    fr: 'fois',
    de: 'Mal',
  },
  {
    symbol: 'strokes',
    spellings: ['stroke'],
    factor: '1',
    isWord: true,
    en: 'stroke|strokes',
    es: 'embolada|emboladas',
    fr: 'coup|coups',
    de: 'Hub|Hübe',
  },
  {
    symbol: 'clicks',
    spellings: ['click', 'notch', 'notches'],
    factor: '1',
    isWord: true,
    en: 'click|clicks',
    es: 'muesca|muescas',
    fr: 'cran|crans',
    de: 'Raste|Rasten',
  },
]);
