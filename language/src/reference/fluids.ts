// The page of fluids and supplies: grades by standard, boiling points, usual cure times.
import { CURES } from '../trade/cure.js';
import {
  ACEA_CATEGORIES,
  API_CATEGORIES,
  ASTM_SPECS,
  BRAKE_FLUIDS,
  type CategoryRow,
  ENGINE_OILS,
  GEAR_OILS,
  ISO_VG,
  NLGI_LETTERS,
  NLGI_NUMBERS,
  REFRIGERANTS,
} from '../trade/grade-tables.js';
import { sourceTitle } from '../trade/sources.js';
import { code, codes, type Page, page, table } from './markdown.js';

export function fluidPages(): Page[] {
  return [
    page(
      'fluids.md',
      'Fluids and supplies',
      'A grade stands behind the name of its standard: `SAE 75W-90, API GL-5`. Each is read by that standard; what it does not list is reported.',
      '## SAE gear oils',
      'A W grade and one without make a multigrade: `SAE 75W-90`.',
      table(
        ['Grade', 'mm²/s at 100 °C', 'Cold limit, °C', 'Source'],
        GEAR_OILS.map((row) => [
          code(`SAE ${row.grade}`),
          range(row),
          text(row.coldLimitC),
          sourceTitle(row.source),
        ]),
      ),
      '## SAE engine oils',
      table(
        ['Grade', 'mm²/s at 100 °C', 'Cranking at, °C', 'Source'],
        ENGINE_OILS.map((row) => [
          code(`SAE ${row.grade}`),
          range(row),
          text(row.crankingC),
          sourceTitle(row.source),
        ]),
      ),
      '## API and ACEA categories',
      categoryTable('API', API_CATEGORIES),
      categoryTable('ACEA', ACEA_CATEGORIES),
      '## Brake fluids',
      'Silicone and glycol fluids must not meet.',
      table(
        ['Grade', 'Boils dry, °C', 'Boils wet, °C', 'Base', 'Source'],
        BRAKE_FLUIDS.map((row) => [
          code(row.code),
          text(row.dryC),
          text(row.wetC),
          row.base,
          sourceTitle(row.source),
        ]),
      ),
      '## Other standards',
      table(
        ['Clause', 'Values'],
        [
          [code('ISO'), codes(ISO_VG.map((grade) => `VG ${grade}`))],
          [code('NLGI'), codes([...NLGI_NUMBERS, ...NLGI_LETTERS])],
          [code('ASTM'), ASTM_SPECS.map((row) => `${code(row.code)} (${row.use})`).join(', ')],
          [code('refrigerant'), REFRIGERANTS.map((row) => `${code(row.code)} (${row.safety})`).join(', ')],
        ],
      ),
      '## Usual times of sealants',
      "For your judgement alone: nothing is checked against these. Write the times of the product's own sheet at the supply, and those are.",
      table(
        ['Kind', 'Fit within', 'Torque after', 'Fill after', 'Run after', 'Full cure', 'Source'],
        CURES.map((row) => [
          row.kind,
          time(row.fitWithinMin),
          time(row.afterMin.torque),
          time(row.afterMin.fill),
          time(row.afterMin.run),
          time(row.fullMin),
          sourceTitle(row.source),
        ]),
      ),
    ),
  ];
}

function categoryTable(standard: string, rows: readonly CategoryRow[]): string {
  return table(
    ['Category', 'For', 'Licensed now', 'Source'],
    rows.map((row) => [
      code(`${standard} ${row.code}`),
      row.use,
      row.current ? 'yes' : 'no',
      sourceTitle(row.source),
    ]),
  );
}

const text = (value: number | undefined): string => (value === undefined ? '' : String(value));
const range = ({ minKv100, maxKv100 }: { readonly minKv100: number; readonly maxKv100?: number }): string =>
  maxKv100 === undefined ? `at least ${minKv100}` : `${minKv100} to ${maxKv100}`;

function time(minutes: number | undefined): string {
  if (minutes === undefined) return '';
  return minutes % 60 === 0 ? `${minutes / 60} h` : `${minutes} min`;
}
