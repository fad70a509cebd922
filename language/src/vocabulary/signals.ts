// Signal words of ANSI Z535.6 and ISO 3864-2, from the gravest down.
import type { Words } from './kinds.js';

export const SIGNALS = ['danger', 'warning', 'caution', 'notice'] as const;
export type Signal = (typeof SIGNALS)[number];

export const SIGNAL_WORDS: Readonly<Record<Signal, Words>> = {
  danger: { en: 'DANGER', es: 'PELIGRO', fr: 'DANGER', de: 'GEFAHR' },
  warning: { en: 'WARNING', es: 'ADVERTENCIA', fr: 'AVERTISSEMENT', de: 'WARNUNG' },
  caution: { en: 'CAUTION', es: 'PRECAUCIÓN', fr: 'ATTENTION', de: 'VORSICHT' },
  notice: { en: 'NOTICE', es: 'AVISO', fr: 'AVIS', de: 'ACHTUNG' },
};
