/** Diagnostic trouble codes: form, system and who defines them (SAE J2012). */
import { sourceTitle } from './sources.js';

const SYSTEMS: Readonly<Record<string, string>> = { P: 'powertrain', C: 'chassis', B: 'body', U: 'network' };

/** A trouble code as read. */
export interface TroubleCode {
  readonly ok: boolean;
  /** One form: `P0301`, `U0100-87`. */
  readonly printed: string;
  readonly system?: string;
  readonly definedBy?: 'ISO/SAE' | 'vehicle maker' | 'reserved';
  readonly problem?: string;
  readonly source: string;
}

/**
 * Reads a trouble code: a letter P, C, B or U, a digit 0–3, three hexadecimal digits, and where the fault type is given two
 * more after a hyphen. Source: SAE J2012 / ISO 15031-6; the split inside P3 (from P3400 ISO/SAE) is recalled.
 */
export function dtcCheck(text: string): TroubleCode {
  const printed = text.trim().toUpperCase().replace(/\s|:/g, '');
  const source = sourceTitle('J2012');
  const match = /^([PCBU])([0-3])([0-9A-F]{3})(?:-?([0-9A-F]{2}))?$/.exec(printed);
  if (!match?.[1] || !match[2] || !match[3]) return { ok: false, printed, problem: whyNot(printed), source };
  const [, letter, group, rest, fault] = match;
  return {
    ok: true,
    printed: `${letter}${group}${rest}${fault ? `-${fault}` : ''}`,
    system: SYSTEMS[letter] ?? '',
    definedBy: definer(letter, group, rest),
    source,
  };
}

function definer(letter: string, group: string, rest: string): 'ISO/SAE' | 'vehicle maker' | 'reserved' {
  if (group === '0') return 'ISO/SAE';
  if (letter === 'P') return group === '1' || (group === '3' && rest < '400') ? 'vehicle maker' : 'ISO/SAE';
  if (group === '3') return letter === 'U' ? 'ISO/SAE' : 'reserved';
  return 'vehicle maker';
}

function whyNot(code: string): string {
  if (!/^[PCBU]/.test(code)) return 'a trouble code begins with P, C, B or U';
  if (/^[PCBU]O/.test(code))
    return `the second character is a zero, not the letter O: ${code.replace(/^(.)O/, '$10')}`;
  if (!/^.[0-3]/.test(code)) return 'the second character of a trouble code is 0 to 3';
  return 'a trouble code has a letter and four characters, as in P0301, and may add a fault type, as in U0100-87';
}

/** The code that was probably meant where letters were read for figures: `PO3O1` is `P0301`. Undefined where none is near. */
export function dtcMeant(text: string): string | undefined {
  const printed = text.trim().toUpperCase();
  const meant = dtcCheck(printed.charAt(0) + printed.slice(1).replace(/[OQ]/g, '0').replace(/[IL]/g, '1'));
  return meant.ok && meant.printed !== printed ? meant.printed : undefined;
}
