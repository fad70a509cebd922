/**
 * Reads the grade of a fluid by its standard (`SAE 75W-90`, `API GL-5`, `DOT 4`, `refrigerant R-1234yf`), prints it
 * in one form, and says what is wrong with one that the standard does not have.
 */

import type { FluidFamily, GradeReading, GradeStandard } from './grade-reading.js';
import { readSae } from './grade-sae.js';
import {
  ACEA_CATEGORIES,
  API_CATEGORIES,
  ASTM_SPECS,
  BRAKE_FLUIDS,
  type CategoryRow,
  ISO_VG,
  NLGI_LETTERS,
  NLGI_NUMBERS,
  REFRIGERANTS,
} from './grade-tables.js';
import { type SourceKey, sourceTitle } from './sources.js';

/** Reads the text after a standard's clause word. Case, spaces and hyphens are forgiven and printed in one form. */
export function readGrade(standard: GradeStandard, text: string): GradeReading {
  const written = text.trim().replace(/\s+/g, ' ');
  const bare = written.replace(new RegExp(`^${standard}\\s+`, 'i'), '');
  return READERS[standard](bare);
}

const READERS: Readonly<Record<GradeStandard, (text: string) => GradeReading>> = {
  SAE: readSae,
  API: (text) => readCategories('API', text, API_CATEGORIES, 'API1509'),
  ACEA: (text) => readCategories('ACEA', text, ACEA_CATEGORIES, 'ACEA'),
  DOT: readDot,
  ISO: readIso,
  NLGI: readNlgi,
  ASTM: readAstm,
  refrigerant: readRefrigerant,
};

function readCategories(
  standard: 'API' | 'ACEA',
  text: string,
  table: readonly CategoryRow[],
  source: SourceKey,
): GradeReading {
  const find = (part: string) => table.find((r) => squeeze(r.code) === squeeze(part));
  // `A3/B4` is one ACEA sequence; `SP/CK-4` is two API categories.
  const whole = find(text);
  const rows = whole ? [whole] : text.split(/\s*\/\s*/).map(find);
  const missing = text.split(/\s*\/\s*/)[rows.indexOf(undefined)];
  if (missing !== undefined) {
    const near = nearestCode(missing, table);
    return {
      ok: false,
      standard,
      printed: `${standard} ${text}`,
      problem: `${standard} has no category ${missing}`,
      ...(near ? { fix: `${standard} ${near}` } : {}),
      source: sourceTitle(source),
    };
  }
  const known = rows.filter((r) => r !== undefined);
  const withdrawn = known
    .filter((r) => !r.current)
    .map((r) => r.code)
    .join(', ');
  const family: FluidFamily = known[0]?.use === 'gear' ? 'gear oil' : 'engine oil';
  return {
    ok: true,
    standard,
    printed: `${standard} ${known.map((r) => r.code).join('/')}`,
    family,
    ...(withdrawn === ''
      ? {}
      : { withdrawn, note: `${withdrawn} is no longer licensed; check what replaces it` }),
    source: sourceTitle(known[0]?.source ?? source),
  };
}

function readDot(text: string): GradeReading {
  const match = /^(\d(?:\.\d)?)\s*(LV|\+|plus|super)?$/i.exec(text.replace(',', '.'));
  const number = match?.[1]?.replace(/\.0$/, '');
  const row = BRAKE_FLUIDS.find((r) => r.code === `DOT ${number}`);
  const base = { standard: 'DOT', source: sourceTitle('FMVSS116') } as const;
  if (!row) {
    return {
      ...base,
      ok: false,
      printed: `DOT ${text}`,
      problem: `FMVSS 116 has DOT 3, 4, 5 and 5.1, no DOT ${text}`,
    };
  }
  const extra = match?.[2] ? (/lv/i.test(match[2]) ? ' LV' : ' plus') : '';
  return {
    ...base,
    ok: true,
    printed: row.code + extra,
    family: row.base === 'silicone' ? 'silicone brake fluid' : 'glycol brake fluid',
    note: `boils at ${row.dryC} °C dry, ${row.wetC} °C wet, at least`,
  };
}

function readIso(text: string): GradeReading {
  if (/^22241(-1)?( \(AUS ?32\))?$|^AUS ?32$/i.test(text)) {
    return {
      ok: true,
      standard: 'ISO',
      printed: 'ISO 22241 (AUS 32)',
      family: 'urea solution',
      note: '31.8 to 33.2 % urea by mass, refractive index 1.3814 to 1.3843 at 20 °C',
      source: sourceTitle('ISO22241'),
    };
  }
  const number = Number(/^(?:VG ?)?(\d+)$/i.exec(text)?.[1] ?? Number.NaN);
  const base = { standard: 'ISO', source: sourceTitle('ISO3448') } as const;
  if (ISO_VG.includes(number))
    return { ...base, ok: true, printed: `ISO VG ${number}`, family: 'mineral hydraulic oil' };
  if (Number.isNaN(number))
    return { ...base, ok: false, printed: `ISO ${text}`, problem: 'a viscosity class is written ISO VG 46' };
  const near = ISO_VG.reduce(
    (a, b) => (Math.abs(Math.log(b / number)) < Math.abs(Math.log(a / number)) ? b : a),
    2,
  );
  return {
    ...base,
    ok: false,
    printed: `ISO VG ${number}`,
    problem: `ISO 3448 has no VG ${number}`,
    fix: `ISO VG ${near}`,
  };
}

function readNlgi(text: string): GradeReading {
  const base = { standard: 'NLGI', family: 'grease', source: sourceTitle('NLGI') } as const;
  const parts = text.toUpperCase().split(/[\s,]+/);
  const bad = parts.find((p) => !NLGI_NUMBERS.includes(p) && !NLGI_LETTERS.includes(p));
  if (bad !== undefined)
    return {
      ...base,
      ok: false,
      printed: `NLGI ${text}`,
      problem: `NLGI numbers run from 000 to 6; ${bad} is none`,
    };
  return { ...base, ok: true, printed: `NLGI ${parts.join(' ')}` };
}

function readAstm(text: string): GradeReading {
  const code = /^D[- ]?(\d{2,5})/i.exec(text)?.[1];
  const row = ASTM_SPECS.find((r) => r.code === `D${code}`);
  const base = { standard: 'ASTM', source: row ? sourceTitle(row.source) : 'ASTM' } as const;
  if (code === undefined)
    return {
      ...base,
      ok: false,
      printed: `ASTM ${text}`,
      problem: 'an ASTM specification is written ASTM D3306',
    };
  return {
    ...base,
    ok: true,
    printed: `ASTM D${code}${text.slice(text.indexOf(code) + code.length)}`,
    ...(row ? { family: row.use } : {}),
  };
}

function readRefrigerant(text: string): GradeReading {
  const base = { standard: 'refrigerant', family: 'refrigerant' } as const;
  const row = REFRIGERANTS.find(
    (r) => squeeze(r.code).slice(1) === squeeze(text).replace(/^(R|HFC|HFO|CFC)/, ''),
  );
  if (row)
    return {
      ...base,
      ok: true,
      printed: row.code,
      note: `safety class ${row.safety}`,
      source: sourceTitle(row.source),
    };
  const near = REFRIGERANTS.find((r) => r.code.includes(text.replace(/^R-?/i, '').slice(0, 3)));
  return {
    ...base,
    ok: false,
    printed: text,
    problem: `“${text}” is not a vehicle refrigerant known here`,
    ...(near ? { fix: near.code } : {}),
    source: sourceTitle('ISO817'),
  };
}

/** Letters and digits only, upper case: `gl5`, `GL-5` and `GL 5` are one. */
function squeeze(text: string): string {
  return text.toUpperCase().replace(/[^A-Z0-9/]/g, '');
}

function nearestCode(text: string, table: readonly CategoryRow[]): string | undefined {
  const wanted = squeeze(text);
  return table.find((r) => r.current && squeeze(r.code).startsWith(wanted.slice(0, 2)))?.code;
}
