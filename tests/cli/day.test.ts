// The day that is written into files: that of the shop.
import { afterEach, expect, it } from 'vitest';
import { dayOf } from '../../compiler/src/cli/day.js';

const zone = process.env.TZ;
afterEach(() => {
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
});

it.each([
  ['UTC', '2026-10-05'],
  ['Pacific/Auckland', '2026-10-06'],
  ['America/Los_Angeles', '2026-10-05'],
])('at 20:30 of Greenwich, in %s', (place, day) => {
  process.env.TZ = place;
  expect(dayOf(new Date('2026-10-05T20:30:00Z'))).toBe(day);
});
