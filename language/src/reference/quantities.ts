// The page of quantities: how a number is written, the kinds, every unit with what a workshop types for it, the traps.
import { ambiguousSpellings } from '../quantity/ambiguous.js';
import { quantityKinds } from '../quantity/dimension.js';
import { formatMeasure } from '../quantity/format-measure.js';
import { parseQuantity } from '../quantity/parse-quantity.js';
import type { Unit } from '../quantity/unit.js';
import { findUnit, units } from '../quantity/unit-table.js';
import { code, codes, type Page, page, table } from './markdown.js';

/** What may be typed; the second column of the table is what the formatter makes of it. */
export const QUANTITY_EXAMPLES: readonly (readonly [written: string, docs: string])[] = [
  ['115 Nm', 'a value'],
  ['1 1/2 turn', 'a mixed fraction'],
  ['14 300 km', 'thousands parted by a space'],
  ['1 h 40 min', 'several units of time, falling'],
  ["-1° 30' ±45'", 'degrees and minutes of arc; the sign is that of the whole'],
  ['115 +/-10 Nm', 'a tolerance'],
  ['115 +10/-5 Nm', 'two tolerances'],
  ['115 Nm ±5 %', 'a tolerance in per cent'],
  ['105 to 115 Nm', 'a range'],
  ['at least 22.0 mm', 'a lower bound'],
  ['at most 0.004 in', 'an upper bound'],
];

export function quantityPages(): Page[] {
  const kinds = Object.entries(quantityKinds);
  return [
    page(
      'quantities.md',
      'Quantities',
      'A number has a unit, always. Conversions are exact; the result is rounded once, to as many digits as the value was written with (NIST SP 811, B.7), limits to the safe side. A torque may have stages: `60 N·m then 90°`, `20 N·m then back 180°`.',
      '## How they are written',
      table(
        ['Typed', 'Written by the formatter', 'Is'],
        QUANTITY_EXAMPLES.map(([written, docs]) => [code(written), code(formatted(written)), docs]),
      ),
      '## Kinds and units',
      'What a workshop types is understood and formatted to the symbol in the first column. The unit in the last column stands beside it in print.',
      ...kinds.flatMap(([kind, row]) => [
        `### ${kind}`,
        `For example ${code(row.example)}.`,
        unitTable(units.filter((unit) => unit.kind === kind)),
      ]),
      '## Spellings that are asked about',
      'These have two meanings in use. Where the place leaves only one it is taken; else the checker asks, with one fix for each.',
      table(
        ['Written', 'May mean'],
        ambiguousSpellings.map(({ spellings, readings }) => [
          codes(spellings),
          readings
            .map(
              ({ meaning, isUsual }) => `${meaning}${isUsual ? ' (taken where nothing else is said)' : ''}`,
            )
            .join('; '),
        ]),
      ),
    ),
  ];
}

function unitTable(rows: readonly Unit[]): string {
  return table(
    ['Unit', 'Name', 'Also read as', 'System', 'Beside it'],
    rows.map((unit) => [
      code(unit.symbol),
      unit.names.en.other,
      spellings(unit),
      unit.system === 'any' ? '' : unit.system,
      partner(unit),
    ]),
  );
}

const MOST_SPELLINGS = 8;

function spellings(unit: Unit): string {
  const others = unit.spellings.filter((spelling) => spelling !== unit.symbol && !spelling.includes('`'));
  const shown = codes(others.slice(0, MOST_SPELLINGS));
  return others.length > MOST_SPELLINGS ? `${shown} and ${others.length - MOST_SPELLINGS} more` : shown;
}

const partner = (unit: Unit): string =>
  unit.partner === undefined ? '' : code(findUnit(unit.partner)?.symbol ?? '');

function formatted(written: string): string {
  const quantity = parseQuantity(written);
  return 'problem' in quantity ? '' : formatMeasure(quantity.measure);
}
