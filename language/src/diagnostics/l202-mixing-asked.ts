// L202: a fluid goes into a system that names another grade of its family.
import { defineDiagnostic } from './define.js';
import { oilJob } from './oil-example.js';

export const mixingAsked = defineDiagnostic<{ readonly reason: string; readonly source: string }>({
  code: 'L202',
  name: 'mixing-asked',
  severity: 'question',
  message: (d) => `is that meant? ${d.reason}`,
  advice: (d) => d.source,
  why: `Two grades of one family seldom do harm at once, and seldom do what the maker tested. Someone who knows the system should say that the other grade will do.`,
  wrong: oilJob(
    ['SAE 75W-90', 'fill 1.9 L, until level at fill-plug, per "S-1"'],
    ['drain axle-oil'],
    ['fill axle-oil from gear-oil-can', '#                      ^^^^^^^^^^^^ L202'],
    '\nsupplies\n  gear-oil-can: Gear oil\n    SAE 85W-140\n',
  ),
  right: oilJob(
    ['SAE 75W-90', 'fill 1.9 L, until level at fill-plug, per "S-1"'],
    ['drain axle-oil'],
    ['fill axle-oil from gear-oil-can'],
    '\nsupplies\n  gear-oil-can: Gear oil\n    SAE 75W-90\n',
  ),
});
