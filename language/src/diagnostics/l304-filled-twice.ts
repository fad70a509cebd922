// L304: a full system is filled again.
import { defineDiagnostic } from './define.js';
import { oilJob } from './oil-example.js';

export const filledTwice = defineDiagnostic<{ readonly name: string }>({
  code: 'L304',
  name: 'filled-twice',
  severity: 'warning',
  message: (d) => `\`${d.name}\` is filled a second time and nothing let it out`,
  advice: () => 'to make up the level, write `top-up`, or `fill` under `if below limit`',
  why: `Read as written, twice the amount goes in. Mostly a check of the level with a top-up is meant: write \`check-level\` and \`top-up\`, and the guide says so.`,
  wrong: oilJob(
    ['SAE 75W-90', 'fill 1.9 L, until level at fill-plug, per "S-1"'],
    ['drain axle-oil'],
    ['fill axle-oil, 1.9 L', 'fill axle-oil, 1.9 L', '#        ^^^^^^^^ L304'],
  ),
  right: oilJob(
    ['SAE 75W-90', 'fill 1.9 L, until level at fill-plug, per "S-1"'],
    ['drain axle-oil'],
    ['fill axle-oil, 1.9 L', 'top-up axle-oil'],
  ),
});
