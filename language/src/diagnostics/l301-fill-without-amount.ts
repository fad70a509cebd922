// L301: a fill with neither an amount nor a mark that says full.
import { defineDiagnostic } from './define.js';
import { oilJob } from './oil-example.js';

export const fillWithoutAmount = defineDiagnostic<{ readonly name: string }>({
  code: 'L301',
  name: 'fill-without-amount',
  severity: 'question',
  message: (d) => `how much \`${d.name}\` goes in, and where is it full?`,
  advice: () =>
    'write the amount (`fill 1.9 L`) or the mark (`until level at fill-plug`) in its entry or on this line',
  why: `Without an amount nobody knows how much to pull from the store; without a mark nobody knows when to stop. One of the two is needed, both are better.`,
  wrong: oilJob(
    ['SAE 75W-90'],
    ['drain axle-oil'],
    ['fill axle-oil', '#        ^^^^^^^^ L301', 'check-level axle-oil'],
  ),
  right: oilJob(
    ['SAE 75W-90', 'fill 1.9 L, per "S-1"'],
    ['drain axle-oil'],
    ['fill axle-oil', 'check-level axle-oil'],
  ),
});
