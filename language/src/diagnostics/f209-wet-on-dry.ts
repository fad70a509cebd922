// F209: something slippery on threads whose torque holds for dry ones.
import { boltCatalogue } from './bolt-example.js';
import { defineDiagnostic } from './define.js';

export const wetOnDry = defineDiagnostic<{
  readonly name: string;
  readonly what: string;
  readonly torque: string;
  readonly same: string;
}>({
  code: 'F209',
  name: 'wet-on-dry',
  severity: 'warning',
  message: (d) => `the torque of \`${d.name}\` holds for dry threads, and ${d.what} goes on them`,
  advice: (d) => `${d.torque} on dry threads is about ${d.same} with it; the maker's own figure comes first`,
  why: `Oil, grease, anti-seize and wet threadlocker let the same torque stretch the bolt further: with anti-seize a dry figure gives two thirds more preload (T = K·d·F, Shigley eq. 8-27). State what the figure holds for, or leave the threads dry.`,
  wrong: boltCatalogue(
    '2 of M8x1.25, class 8.8, hex 13 mm',
    'torque 15 N·m, dry, lubricant anti-seize, per "S-1"',
    '#                       ^^^^^^^^^^^^^^^^^^^^ F209',
  ),
  right: boltCatalogue(
    '2 of M8x1.25, class 8.8, hex 13 mm',
    'torque 16 N·m, lubricant anti-seize, per "S-1"',
  ),
});
