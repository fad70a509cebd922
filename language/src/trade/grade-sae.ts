/** SAE viscosity grades: gear oils (J306) and engine oils (J300), one grade or two. */

import type { GradeReading } from './grade-reading.js';
import { ENGINE_OILS, GEAR_OILS } from './grade-tables.js';
import { sourceTitle } from './sources.js';

interface Series {
  readonly name: 'J306' | 'J300';
  readonly family: 'gear oil' | 'engine oil';
  readonly winter: readonly string[];
  readonly warm: readonly string[];
}

const SERIES: readonly Series[] = [
  series('J300', 'engine oil', ENGINE_OILS),
  series('J306', 'gear oil', GEAR_OILS),
];

/**
 * Reads an SAE grade. A multigrade is a W grade and a warm grade of one standard (`75W-90`, `5W-30`). A missing W
 * (`80-90`) and a turned pair (`90-80W`) are corrected; a grade of neither standard is a problem.
 */
export function readSae(text: string): GradeReading {
  const match = /^(\d+)\s*(W)?(?:\s*[-/ ]?\s*(\d+)\s*(W)?)?$/i.exec(text);
  if (!match?.[1])
    return bad(text, `“${text}” is not a viscosity grade; write it as SAE 75W-90 or SAE 5W-30`);
  const first = match[1] + (match[2] ? 'W' : '');
  if (match[3] === undefined) return single(first);
  const second = match[3] + (match[4] ? 'W' : '');
  const found = SERIES.find((s) => s.winter.includes(first) && s.warm.includes(second));
  if (found) return good(found, `${first}-${second}`);
  return bad(`${first}-${second}`, ...whyNot(first, second));
}

function single(grade: string): GradeReading {
  const found = SERIES.find((s) => s.winter.includes(grade) || s.warm.includes(grade));
  if (found) return good(found, grade);
  const winter = SERIES.find((s) => s.winter.includes(`${grade}W`));
  return winter
    ? bad(grade, `SAE ${winter.name} has ${grade}W, no plain ${grade}`, `SAE ${grade}W`)
    : bad(grade, `neither SAE J300 nor SAE J306 has a grade ${grade}`);
}

/** The problem of a pair and its one sure correction, where there is one. */
function whyNot(first: string, second: string): [problem: string, fix?: string] {
  const pair = `${first}-${second}`;
  const withW = SERIES.find((s) => s.winter.includes(`${first}W`) && s.warm.includes(second));
  if (withW)
    return [
      `${pair} lacks its W: the first grade of a multigrade is a winter grade (SAE ${withW.name})`,
      `SAE ${first}W-${second}`,
    ];
  if (first.endsWith('W') && second.endsWith('W')) return [`${pair} has two winter grades`];
  const [cold, hot] = [`${second.replace('W', '')}W`, first.replace('W', '')];
  const turned = SERIES.find((s) => s.winter.includes(cold) && s.warm.includes(hot));
  if (turned) return [`${pair} has its grades the wrong way round`, `SAE ${cold}-${hot}`];
  const owner = SERIES.find((s) => s.winter.includes(first));
  if (owner) {
    const near = owner.warm.reduce(
      (a, b) => (Math.abs(Number(b) - Number(second)) < Math.abs(Number(a) - Number(second)) ? b : a),
      owner.warm[0] ?? '',
    );
    return [`SAE ${owner.name} has no grade ${second}; the nearest is ${near}`];
  }
  return [`${pair} is a grade of neither SAE J300 nor SAE J306`];
}

function good(found: Series, printed: string): GradeReading {
  return {
    ok: true,
    standard: 'SAE',
    printed: `SAE ${printed}`,
    family: found.family,
    source: sourceTitle(found.name),
  };
}

function bad(printed: string, problem: string, fix?: string): GradeReading {
  return {
    ok: false,
    standard: 'SAE',
    printed: `SAE ${printed}`,
    problem,
    ...(fix ? { fix } : {}),
    source: `${sourceTitle('J300')}; ${sourceTitle('J306')}`,
  };
}

function series(name: Series['name'], family: Series['family'], rows: readonly { grade: string }[]): Series {
  const grades = rows.map((r) => r.grade);
  return {
    name,
    family,
    winter: grades.filter((g) => g.endsWith('W')),
    warm: grades.filter((g) => !g.endsWith('W')),
  };
}
