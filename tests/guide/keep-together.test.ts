// What no line parts: numbers with their units, part numbers, dates.
import { expect, test } from 'vitest';
import { runsOf } from '../../compiler/src/keep-together.js';

/** Whole runs in brackets. */
const shown = (text: string) => runsOf(text).map((run) => (run.whole ? `[${run.text}]` : run.text));

test.for<[string, string]>([
  [', 60 to 300 N·m', ', [60 to 300 N·m]'],
  ['16 ±1 N·m, 10,5 bis 12 mm', '[16 ±1 N·m], [10,5 bis 12 mm]'],
  ['450 to 500 FOOT-pounds', '450 to [500 FOOT-pounds]'],
  [', 1500 kg; ', ', [1500 kg]; '],
  ['Torque wrench, 4.6 to 22.5 N·m', 'Torque wrench, [4.6 to 22.5 N·m]'],
  ['250 FOOT-pounds', '[250 FOOT-pounds]'],
  ['15\u00A0±2\u00A0FOOT-pounds', '[15\u00A0±2\u00A0FOOT-pounds]'],
  ['90,0 FUSS-Pfund, 12 libras-PIE', '[90,0 FUSS-Pfund], [12 libras-PIE]'],
  ['Road test, 8 km (5.0 mi)', 'Road test, [8 km] ([5.0 mi])'],
  ['41.4 to 50.6 cSt, 118 L/min, 12 US qt', '[41.4 to 50.6 cSt], [118 L/min], [12 US qt]'],
  ['12,5 tr/min, 3 U/min', '[12,5 tr/min], [3 U/min]'],
  ['6 weeks, 3 clicks', '6 weeks, 3 clicks'],
  ['2 six-lobe bits', '2 six-lobe bits'],
  [', HB-2041, 1', ', [HB-2041], 1'],
  ['4 in the row', '[4 in] the row'],
  ['5 inches, 3 men, 2 mills', '5 inches, 3 men, 2 mills'],
  ['sheet HL-90 and UTF-8-like', 'sheet [HL-90] and UTF-8-like'],
  ['Revision 2 of 2026-06-09, 2026-10', 'Revision 2 of [2026-06-09], 2026-10'],
  ['', ''],
])('%s', ([text, expected]) => {
  expect(shown(text).join('')).toBe(expected);
  expect(
    runsOf(text)
      .map((run) => run.text)
      .join(''),
  ).toBe(text);
});
