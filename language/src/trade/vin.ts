/** Vehicle identification numbers: check digit, and whether two are the ends of one range. */
import { sourceTitle } from './sources.js';

/** Value of each letter in the check sum (49 CFR 565, table III); digits stand for themselves. */
const LETTERS: Readonly<Record<string, number>> = {
  A: 1,
  B: 2,
  C: 3,
  D: 4,
  E: 5,
  F: 6,
  G: 7,
  H: 8,
  J: 1,
  K: 2,
  L: 3,
  M: 4,
  N: 5,
  P: 7,
  R: 9,
  S: 2,
  T: 3,
  U: 4,
  V: 5,
  W: 6,
  X: 7,
  Y: 8,
  Z: 9,
};

/** Weight of each position, 1 to 17; the check digit itself weighs nothing. */
const WEIGHTS = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2] as const;

/** A VIN judged. `check` says how the ninth character fares; European numbers need not carry a check digit. */
export interface VinCheck {
  readonly vin: string;
  readonly ok: boolean;
  readonly check: 'right' | 'wrong' | 'none';
  readonly expectedDigit?: string;
  readonly problem?: string;
  readonly source: string;
}

/**
 * Checks a VIN: 17 characters, no I, O or Q, and the check digit (ISO 3779 form, 49 CFR 565 digit). The digit binds
 * where the first character is 1 to 5 (North America) or L (China); elsewhere a wrong one is reported in `check` and is no
 * problem. A right digit is no proof: one slip in eleven passes.
 */
export function vinCheck(text: string): VinCheck {
  const vin = text.replace(/[\s-]/g, '').toUpperCase();
  const base = { vin, source: sourceTitle('ISO3779') };
  if (vin.length !== 17)
    return { ...base, ok: false, check: 'none', problem: `a VIN has 17 characters, this has ${vin.length}` };
  const stray = [...vin].find((c) => !/[0-9A-HJ-NPR-Z]/.test(c));
  if (stray) {
    const hint = stray === 'I' ? ' (read it as 1)' : stray === 'O' || stray === 'Q' ? ' (read it as 0)' : '';
    return { ...base, ok: false, check: 'none', problem: `a VIN has no ${stray}${hint}` };
  }
  const expectedDigit = checkDigit(vin);
  const right = vin[8] === expectedDigit;
  const binding = /^[1-5L]/.test(vin);
  return {
    ...base,
    ok: right || !binding,
    check: right ? 'right' : 'wrong',
    expectedDigit,
    ...(right || !binding
      ? {}
      : {
          problem: `the ninth character should be ${expectedDigit}, not ${vin[8]}: a character was misread`,
        }),
  };
}

function checkDigit(vin: string): string {
  const sum = [...vin].reduce((total, c, i) => total + (LETTERS[c] ?? Number(c)) * (WEIGHTS[i] ?? 0), 0);
  return sum % 11 === 10 ? 'X' : String(sum % 11);
}

/** Model year codes in sequence from 2001; the sequence repeats every 30 years. */
const YEARS = '123456789ABCDEFGHJKLMNPRSTVWXY';

/**
 * Why two VINs are not the ends of one range: of two vehicle lines (first eight characters), or the later first.
 * Undefined where they are, and where either is not 17 characters. A year code stands for a year every 30 years, so
 * two codes more than 15 apart are taken to lie around the turn of that round.
 */
export function vinRangeFault(from: string, to: string): 'two lines' | 'reversed' | undefined {
  const [a, b] = [from, to].map((t) => t.replace(/[\s-]/g, '').toUpperCase());
  if (a?.length !== 17 || b?.length !== 17) return undefined;
  if (a.slice(0, 8) !== b.slice(0, 8)) return 'two lines';
  const years = YEARS.indexOf(a.charAt(9)) - YEARS.indexOf(b.charAt(9));
  if (Math.abs(years) > 15) return undefined;
  return years > 0 || (years === 0 && a[10] === b[10] && a.slice(11) > b.slice(11)) ? 'reversed' : undefined;
}

/** The VIN with the letters that no VIN has read as the figures they are taken for: I as 1, O and Q as 0. */
export function vinMeant(text: string): string {
  return text.toUpperCase().replace(/I/g, '1').replace(/[OQ]/g, '0');
}
