// Names that the pages print for keys of the tables.
import type { CodeLetter } from '../diagnostics/define.js';
import type { Language } from '../vocabulary/kinds.js';

export const LANGUAGE_NAMES: Readonly<Record<Language, string>> = {
  en: 'English',
  es: 'Spanish',
  fr: 'French',
  de: 'German',
};

/** What the first letter of a code stands for. */
export const LETTER_NAMES: Readonly<Record<CodeLetter, string>> = {
  G: 'Grammar and layout',
  N: 'Names',
  Q: 'Quantities',
  F: 'Fasteners and torque',
  S: 'The state of the vehicle',
  L: 'Fluids and supplies',
  H: 'Hazards',
  W: 'Wording',
  V: 'Variants and sides',
  R: 'Register, release and settings',
};
