/** Reads strength classes (`8.8`, `grade 8`, `A2-70`, nut `class 10`) and gives their stresses for a thread. */
import { onceForText } from '../text/once.js';
import { type SourceKey, sourceTitle } from './sources.js';
import {
  ISO_CLASSES,
  NUT_MATES,
  NUT_PROOF,
  SAE_GRADES,
  STAINLESS_CLASSES,
  type StrengthRow,
} from './strength-tables.js';
import type { Thread } from './thread.js';

const MPA_PER_KSI = 6.894757293168361;

/** A strength class that was understood. */
export interface StrengthClass {
  readonly kind: 'bolt' | 'nut' | 'sae' | 'stainless';
  /** The mark on the head: `8.8`, `8`, `A2-70`. */
  readonly code: string;
  /** Printed form, `class 8.8` or `grade 8`. */
  readonly printed: string;
}

/** Text that is no class, with the nearest one when there is one. */
export interface ClassProblem {
  readonly problem: string;
  readonly nearest?: string;
}

/** Minimum stresses of a joint's bolt, MPa, and where they come from. */
export interface Strength {
  readonly proofMPa: number;
  readonly yieldMPa: number;
  readonly tensileMPa: number;
  readonly source: SourceKey;
  /** What the figures are of, when not the class itself: a nut is judged as the bolt it mates with. */
  readonly judgedAs: string;
}

/**
 * Reads a class. `word` is the clause word it followed, which settles `8`: `class 8` is a nut, `grade 8` an SAE
 * bolt. Source: ISO 898-1, ISO 898-2, SAE J429, ISO 3506-1.
 */
export function readClass(text: string, word?: 'class' | 'grade'): StrengthClass | ClassProblem {
  return word === undefined ? classRead(text, word) : READ_BEHIND[word](text);
}

const READ_BEHIND = {
  class: onceForText((text) => classRead(text, 'class')),
  grade: onceForText((text) => classRead(text, 'grade')),
};

function classRead(text: string, word: 'class' | 'grade' | undefined): StrengthClass | ClassProblem {
  const match = /^(?:(?:property )?(class|grade|gr\.?|sae)\s*)?(?:sae )?(.+)$/i.exec(
    text.trim().replace(/,/g, '.'),
  );
  const written = match?.[1]?.toLowerCase();
  const asked = written === undefined ? word : written === 'class' ? 'class' : 'grade';
  const code = (match?.[2] ?? '').toUpperCase().replace(/\s/g, '');
  if (asked !== 'grade' && ISO_CLASSES.some((r) => r.code === code)) return bolt(code);
  if (/^[AFCD]\d/.test(code)) return readStainless(code);
  const nut = NUT_MATES.some((m) => m.nut === code) || ['04', '05'].includes(code);
  const sae = SAE_GRADES.some((r) => r.code === code);
  if (asked === 'grade' && sae) return { kind: 'sae', code, printed: `grade ${code}` };
  if (asked === 'grade') {
    if (ISO_CLASSES.some((r) => r.code === code))
      return { problem: `${code} is a class, not a grade`, nearest: `class ${code}` };
    return { problem: `grade ${text.trim()} is not in SAE J429`, nearest: 'grade 5' };
  }
  if (nut && asked === 'class') return { kind: 'nut', code, printed: `class ${code}` };
  if (nut && sae)
    return { problem: `${code} may be a nut (class ${code}) or an SAE bolt (grade ${code}); write which` };
  if (nut) return { kind: 'nut', code, printed: `class ${code}` };
  if (sae) return { problem: `${code} is an SAE grade`, nearest: `grade ${code}` };
  const nearest = nearestClass(code);
  return {
    problem: `class ${text.trim()} is not in ISO 898-1, ISO 898-2 or ISO 3506`,
    ...(nearest ? { nearest } : {}),
  };
}

/** Tells a class from a problem. */
export function isClass(value: StrengthClass | ClassProblem): value is StrengthClass {
  return 'kind' in value;
}

/**
 * Stresses of the class at this diameter, or undefined where the standard gives none (out of size range, thin
 * nuts, pipe threads). A nut gives the stresses of the bolt it mates with.
 */
export function strength(cls: StrengthClass, thread: Thread): Strength | undefined {
  if (thread.stressAreaMm2 === undefined) return undefined;
  if (cls.kind === 'nut') {
    const mate = NUT_MATES.find((m) => m.nut === cls.code);
    return mate ? strength(bolt(mate.bolt), thread) : undefined;
  }
  const table = cls.kind === 'bolt' ? ISO_CLASSES : cls.kind === 'sae' ? SAE_GRADES : STAINLESS_CLASSES;
  const code = cls.kind === 'stainless' ? cls.code.slice(cls.code.indexOf('-') + 1) : cls.code;
  const row = rowAt(table, code, thread.diameterMm);
  if (!row) return undefined;
  const unit = cls.kind === 'sae' ? MPA_PER_KSI : 1;
  return {
    proofMPa: row.proof * unit,
    yieldMPa: row.yield * unit,
    tensileMPa: row.tensile * unit,
    source: row.source,
    judgedAs: `${cls.printed} (${sourceTitle(row.source)})`,
  };
}

/** Stress under proof load of a nut of this class at this diameter, MPa; undefined where ISO 898-2 gives none. */
export function nutProofMPa(code: string, diameterMm: number): number | undefined {
  const steps = NUT_PROOF.find((n) => n.code === code)?.steps;
  return steps?.find(([toMm]) => diameterMm <= toMm)?.[1];
}

function rowAt(table: readonly StrengthRow[], code: string, diameterMm: number): StrengthRow | undefined {
  return table.find((r) => r.code === code && diameterMm >= r.fromMm - 0.005 && diameterMm <= r.toMm + 0.005);
}

function bolt(code: string): StrengthClass {
  return { kind: 'bolt', code, printed: `class ${code}` };
}

function readStainless(code: string): StrengthClass | ClassProblem {
  const match = /^([AFCD]\d)-?(\d+)?L?$/.exec(code);
  const group = match?.[1] ?? code;
  if (/^A[1-58]$/.test(group) && match?.[2] && STAINLESS_CLASSES.some((r) => r.code === match[2])) {
    return { kind: 'stainless', code: `${group}-${match[2]}`, printed: `class ${group}-${match[2]}` };
  }
  if (match && !match[2])
    return {
      problem: `${group} names the steel only; add the class, as on the head`,
      nearest: `class ${group}-70`,
    };
  return { problem: `class ${code} is not known here (A1 to A5 with 50, 70 or 80)`, nearest: 'class A2-70' };
}

/** Same first number first (10.8 → 10.9), so that a slip of one digit finds its class. */
function nearestClass(code: string): string | undefined {
  const lead = /^(\d+)\./.exec(code)?.[1];
  const row = ISO_CLASSES.find((r) => lead !== undefined && r.code.startsWith(`${lead}.`));
  return row ? `class ${row.code}` : undefined;
}
