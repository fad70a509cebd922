// L201: a fluid goes into a system that it must not meet.
import { defineDiagnostic } from './define.js';
import { oilJob } from './oil-example.js';

export const mustNotMix = defineDiagnostic<{ readonly reason: string; readonly source: string }>({
  code: 'L201',
  name: 'must-not-mix',
  severity: 'error',
  message: (d) => d.reason,
  advice: (d) => d.source,
  why: `Silicone brake fluid takes up no water, so in a glycol system the water gathers in pockets and boils; engine oil in an axle wears the gears; two refrigerants make a third that no machine can recover. The system must be drained, flushed and its seals looked at before it runs again.`,
  wrong: oilJob(
    ['SAE 75W-90, API GL-5', 'fill 1.9 L, until level at fill-plug, per "S-1"'],
    ['drain axle-oil'],
    ['fill axle-oil from engine-oil-can', '#                      ^^^^^^^^^^^^^^ L201'],
    '\nsupplies\n  engine-oil-can: Engine oil\n    SAE 5W-30\n',
  ),
  right: oilJob(
    ['SAE 75W-90, API GL-5', 'fill 1.9 L, until level at fill-plug, per "S-1"'],
    ['drain axle-oil'],
    ['fill axle-oil from gear-oil-can'],
    '\nsupplies\n  gear-oil-can: Gear oil\n    SAE 75W-90\n',
  ),
});
