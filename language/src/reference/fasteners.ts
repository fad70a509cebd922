// The page of fasteners: threads, classes and grades, heads, friction, as the tables of the standards give them.
import { FRICTION } from '../trade/friction.js';
import { INCH_HEADS, KEYS, METRIC_HEADS } from '../trade/head-tables.js';
import { inchFraction } from '../trade/heads.js';
import { HEXALOBULAR } from '../trade/hexalobular-tables.js';
import { sourceTitle } from '../trade/sources.js';
import { ISO_CLASSES, SAE_GRADES, STAINLESS_CLASSES, type StrengthRow } from '../trade/strength-tables.js';
import {
  METRIC_FINE_ONLY,
  METRIC_THREADS,
  NPT_THREADS,
  UNIFIED_THREADS,
  WHITWORTH_PIPE_THREADS,
} from '../trade/thread-tables.js';
import { FORMLESS } from '../vocabulary/formless.js';
import { code, codes, type Page, page, table } from './markdown.js';

export function fastenerPages(): Page[] {
  return [
    page(
      'fasteners.md',
      'Fasteners',
      'A set is declared with its count and thread, then class or grade, then head: `4 of M12x1.5, class 10.9, hex 18 mm`. Thread and class may be left out; what is not known is not judged.',
      `Retainers without a thread: ${codes([...FORMLESS])}, as in \`3 of clip\`, or one of them with a word before it: \`7 of push-clip\`.`,
      '## Metric threads',
      'Written `M12x1.5`; without a pitch the coarse one is meant.',
      table(
        ['Thread', 'Coarse pitch, mm', 'Fine pitches, mm', 'Source'],
        [
          ...METRIC_THREADS.map((row) => [
            `M${row.diameterMm}`,
            String(row.coarseMm),
            row.fineMm.join(', '),
            sourceTitle(row.source),
          ]),
          ...METRIC_FINE_ONLY.map((row) => [
            `M${row.diameterMm}`,
            '',
            row.fineMm.join(', '),
            sourceTitle(row.source),
          ]),
        ],
      ),
      '## Unified inch threads',
      'Written `1/2-13 UNC`, `#10-32 UNF`.',
      table(
        ['Size', 'UNC, threads per inch', 'UNF, threads per inch', 'Source'],
        UNIFIED_THREADS.map((row) => [row.size, String(row.unc), String(row.unf), sourceTitle(row.source)]),
      ),
      '## Pipe threads',
      'Written `1/4-18 NPT`, `G1/4`, `R1/2`.',
      table(
        ['Thread', 'Diameter, mm', 'Threads per inch', 'Source'],
        [
          ...NPT_THREADS.map((row) => [
            `${row.size}-${row.perInch} NPT`,
            row.diameterMm.toFixed(2),
            String(row.perInch),
            sourceTitle(row.source),
          ]),
          ...WHITWORTH_PIPE_THREADS.map((row) => [
            `G${row.size}`,
            row.diameterMm.toFixed(2),
            String(row.perInch),
            sourceTitle(row.source),
          ]),
        ],
      ),
      '## Classes and grades',
      'A joint is judged by T = K·d·F against the yield load; a torque that would pass it is an error.',
      strengthTable(ISO_CLASSES, 'class ', 'MPa'),
      strengthTable(SAE_GRADES, 'grade ', 'ksi'),
      strengthTable(STAINLESS_CLASSES, 'class A2-', 'MPa'),
      '## Nut factors',
      'The nominal value judges; the range is shown and never judged.',
      table(
        ['Thread', 'K', 'Seen between', 'Source'],
        FRICTION.map((row) => [
          row.condition,
          String(row.nominal),
          `${row.low} and ${row.high}`,
          sourceTitle(row.source),
        ]),
      ),
      '## Heads',
      'A pair of thread and head that no table has is asked about. A hexagon that is smaller than its thread lies inside the head: guides ask for a key there, not for a socket.',
      table(
        ['Head', 'Source', 'Across flats by thread'],
        [
          ...[...METRIC_HEADS, ...KEYS].map((family) => [
            family.name,
            sourceTitle(family.source),
            sizes(
              family.sizes,
              (d) => `M${d}`,
              (s) => `${s} mm`,
            ),
          ]),
          ...HEXALOBULAR.map((family) => [
            `six-lobe ${family.name}`,
            sourceTitle(family.source),
            sizes(
              family.sizes,
              (d) => `M${d}`,
              (s) => s,
            ),
          ]),
          ...INCH_HEADS.map((family) => [
            `${family.name}, inch`,
            sourceTitle(family.source),
            sizes(
              family.sizes,
              (d) => d,
              (s) => `${inchFraction(s)} in`,
            ),
          ]),
        ],
      ),
    ),
  ];
}

function strengthTable(rows: readonly StrengthRow[], prefix: string, unit: string): string {
  return table(
    ['Strength', 'Diameters, mm', `Proof, ${unit}`, `Yield, ${unit}`, `Tensile, ${unit}`, 'Source'],
    rows.map((row) => [
      code(`${prefix}${row.code}`),
      `${row.fromMm} to ${row.toMm}`,
      String(row.proof),
      String(row.yield),
      String(row.tensile),
      sourceTitle(row.source),
    ]),
  );
}

function sizes<Size>(
  bySize: Readonly<Record<string, readonly Size[]>>,
  thread: (size: string) => string,
  head: (size: Size) => string,
): string {
  return Object.entries(bySize)
    .map(([size, flats]) => `${thread(size)} ${flats.map(head).join(' or ')}`)
    .join(', ');
}
