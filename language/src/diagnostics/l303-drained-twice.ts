// L303: a fluid is drained again with no fill in between.
import { defineDiagnostic } from './define.js';
import { oilJob } from './oil-example.js';

export const drainedTwice = defineDiagnostic<{ readonly name: string }>({
  code: 'L303',
  name: 'drained-twice',
  severity: 'warning',
  message: (d) => `\`${d.name}\` is drained a second time with nothing filled in between`,
  why: `The second line has nothing to let out. Most often a step was copied and the first \`drain\` forgotten, and the technician stands with an empty pan under a plug.`,
  wrong: oilJob(
    ['SAE 75W-90', 'fill 1.9 L, until level at fill-plug, per "S-1"'],
    ['drain axle-oil', 'drain axle-oil', '#         ^^^^^^^^ L303'],
    ['fill axle-oil'],
  ),
  right: oilJob(
    ['SAE 75W-90', 'fill 1.9 L, until level at fill-plug, per "S-1"'],
    ['drain axle-oil'],
    ['fill axle-oil'],
  ),
});
