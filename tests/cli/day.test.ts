// The day that is written into files and that reviews fall due on: that of the shop.
import { afterEach, expect, it } from 'vitest';
import { dayOf } from '../../server/src/day.js';
import { guide, SHOP } from './desk.js';
import { baywright } from './fake-shell.js';

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

it('a review falls due by the day of the shop', async () => {
  const reviewed = 'status released by KM, TR on 2026-10-03\nreview 2026-10-04';
  const files = {
    ...SHOP,
    'M-1.bay': guide('M-1', 'Door mirror, replace', reviewed).replace('on 2026-10-05', 'on 2026-10-02'),
  };
  const check = async (place: string): Promise<string> => {
    process.env.TZ = place;
    return (await baywright('check M-1.bay', { files })).out;
  };
  // The clock of these tests stands at 8:00 of the fifth in Greenwich.
  expect(await check('UTC')).toContain('R106');
  expect(await check('Pacific/Honolulu')).not.toContain('R106');
});
