// The page at work in the bay: ticks and counts, readings, bans, clocks, sign-off and the record, all kept over a
// reload, with the keyboard too. Needs Debian's chromium.

import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { JOB_RECORD } from '../../compiler/src/record-schema.js';
import { useBrowser, withPage } from './browser.js';
import { everyKind } from './fixtures/every-kind.js';
import { fh12 } from './fixtures/fh-12.js';
import { HEAD, lower, spaced, twoVehicles } from './lower-helper.js';

useBrowser();

const tickTo = (page: Page, last: string) =>
  page.evaluate((id) => {
    for (const box of document.querySelectorAll<HTMLInputElement>('[data-row]')) {
      if (!box.checked) box.click();
      if (box.dataset.row === id) return;
    }
  }, last);
const shown = (page: Page, id: string) => page.locator(`#${id}`).textContent();
test('the bay: counts, readings, ban, hold, sign, keep, undo, record', async () => {
  await withPage(
    fh12(),
    { viewport: { width: 1024, height: 900 }, acceptDownloads: true, locale: 'en-GB' },
    async (page) => {
      await tickTo(page, 'r3-3');
      expect(await shown(page, 'off')).toBe('8');
      expect(await page.locator('#bans').textContent()).toBe(
        'Keep the van off its wheels until 7.1, axle nut torqued.',
      );
      expect(await page.locator('#list-off').textContent()).toContain('caliper bracket bolts (2)');

      const listed = page.locator('#list-readings');
      expect(await listed.textContent()).toContain('2.6 Disc thickness, left: open');
      expect(await listed.textContent()).toContain('4.2 Inspect the bore and face of the knuckle: open');
      await page.fill('#disc-thickness', '0.866');
      await page.selectOption('#unit-disc-thickness', 'in');
      const verdict = page.locator('[data-reading] output');
      expect(spaced((await verdict.textContent()) ?? '')).toBe('Fail: 21.996 mm is below 22.0 mm.');
      await page.selectOption('#unit-disc-thickness', 'mm');
      await page.fill('#disc-thickness', '22,4');
      expect(spaced((await verdict.textContent()) ?? '')).toBe('Pass: 22.4 mm. Limit 22.0 mm.');
      expect(spaced((await listed.textContent()) ?? '')).toContain(
        '2.6 Disc thickness, left: Pass: 22.4 mm. Limit 22.0 mm.',
      );
      expect(await page.locator('#r2-7').textContent()).toContain('Not needed: 2.6 passed.');
      await page.fill('#disc-thickness', '21');
      expect(await page.locator('#r2-7').textContent()).not.toContain('Not needed');
      await page.fill('#disc-thickness', '22,4');

      await page.reload();
      expect(await shown(page, 'off')).toBe('8');
      expect(await page.inputValue('#disc-thickness')).toBe('22,4');

      await tickTo(page, 'r3-4');
      expect(await shown(page, 'off')).toBe('9');
      await page.click('#undo');
      expect(await shown(page, 'off')).toBe('8');
      expect(await page.isChecked('#t-r3-4')).toBe(false);

      await tickTo(page, 'r9-7');
      await page.check('#knuckle-bore-good');
      expect(await page.isDisabled('#sign')).toBe(true);
      expect(await shown(page, 'why')).toBe('Not yet: 9.5 is open.');
      await page.fill('#h9-5', 'AB');
      expect(await page.inputValue('#time-h9-5')).toMatch(/^\d\d:\d\d$/);
      expect(await shown(page, 'why')).toBe('Not yet: technician is not filled in.');
      await page.fill('#field-technician', 'C. D.');
      await page.click('#sign');
      expect(await shown(page, 'why')).toMatch(/^Signed at \d{4}-\d\d-\d\d \d\d:\d\d/);

      const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
      expect(download.suggestedFilename()).toBe('FH-12-left-axle-light-record.json');
      const record = JOB_RECORD.parse(JSON.parse(readFileSync(await download.path(), 'utf8')));
      expect(record).toMatchObject({ open: 0, stillOff: [], holds: [{ line: '9.5', initials: 'AB' }] });
      expect(record.signedAt).not.toBeNull();

      await page.uncheck('#t-r9-2');
      expect(await shown(page, 'why')).toMatch(/^Not yet: 0 still off, 1 to torque/);
    },
  );
});

test('the counts lead to what they count, and what is open leads to its line', async () => {
  await withPage(fh12(), { viewport: { width: 360, height: 700 }, reducedMotion: 'reduce' }, async (page) => {
    const leads = (name: string) => page.locator(name).getAttribute('href');
    expect(await leads('#next')).toBe('#r1-1');
    await tickTo(page, 'r3-3');
    expect(await leads('#next')).toBe('#r3-4');
    await page.click('#next');
    await page.waitForFunction(() => location.hash === '#r3-4');
    const bar = await page.locator('.top').boundingBox();
    const line = await page.locator('#r3-4').boundingBox();
    expect(line?.y).toBeGreaterThanOrEqual(bar?.height ?? 700);
    expect(line?.y).toBeLessThan(350);
    // Where it comes on again.
    expect(await leads('#list-off li:has-text("wheel-speed sensor") a')).toBe('#r5-4');
    expect(await leads('#list-readings li:has-text("2.6") a')).toBe('#r2-6');
    expect(await leads('#list-holds a')).toBe('#r9-5');
    expect(await leads('#why a')).toBe('#r2-6');
    await page.click('.counts a');
    await page.waitForFunction(() => location.hash === '#list-off');
    const heading = await page.locator('aside h2').first().boundingBox();
    const top = await page.locator('.top').boundingBox();
    expect(heading?.y).toBeGreaterThanOrEqual((top?.y ?? 0) + (top?.height ?? 0));
  });
});

test('what falls away says so at its line and in the record, which prints alone', async () => {
  const { document } = lower(`${HEAD}
inspection
  step: Look
    inspect wheel
      reject: cracks
      if rejected
        clean wheel
      otherwise
        torque wheel-nut
    torque wheel-nut
`);
  await withPage(document, {}, async (page) => {
    const told = () => page.locator('.na:not([hidden])').allTextContents();
    await page.check('#look-r1-1-good');
    expect(await told()).toEqual(['Not needed: 1.1 passed.']);
    await page.check('#look-r1-1-bad');
    expect(await told()).toEqual(['Not needed after 1.1.', 'Not needed after 1.1.']);
    expect(await page.locator('.record tr:has(.skipped)').textContent()).toContain('1.35 × Wheel nuts');

    await page.evaluate(() => {
      window.print = () => {};
    });
    await page.click('#print');
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.step').isVisible()).toBe(false);
    expect(await page.locator('.record .of').textContent()).toContain('T-1 Wheel, change');
    expect(await page.locator('#why').isVisible()).toBe(true);
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    expect(await page.locator('.step').isVisible()).toBe(true);
  });
});

test('torques of two vehicles at one line are written down apart', async () => {
  await withPage(twoVehicles(), { acceptDownloads: true }, async (page) => {
    await page.fill('#wrench-r3-5', 'W 1');
    await page.fill('#wrench-r3-5-2', 'W 2');
    const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
    const record = JOB_RECORD.parse(JSON.parse(readFileSync(await download.path(), 'utf8')));
    expect(record.torques.map(({ line, wrench }) => `${line} ${wrench}`)).toEqual(['3.5 W 1', '3.5 W 2']);
  });
});

test('a record by itself is filled in by hand, and not signed before somebody is named', async () => {
  await withPage(fh12('record'), { acceptDownloads: true }, async (page) => {
    expect(await page.isDisabled('#sign')).toBe(true);
    await page.fill('#field-found-disc-thickness', '22.4');
    await page.fill('#field-hold-r9-5', 'AB');
    expect(await shown(page, 'why')).toBe('Not yet: technician is not filled in.');
    await page.fill('#field-technician', 'C. D.');
    await page.click('#sign');
    const [download] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
    const record = JOB_RECORD.parse(JSON.parse(readFileSync(await download.path(), 'utf8')));
    expect(record.fields).toMatchObject({ 'found-disc-thickness': '22.4', 'hold-r9-5': 'AB' });
  });
});

test('clocks run from the tick of their line and say when it is too late', async () => {
  await withPage(everyKind(), {}, async (page) => {
    await page.clock.install({ time: new Date('2026-01-05T08:00:00Z') });
    await page.reload();
    // From here on time stands still but for what is run.
    await page.clock.pauseAt(new Date('2026-01-05T09:00:00Z'));
    await page.locator('#t-r1-2').click();
    const open = page.locator('[data-clock=open] output');
    await page.clock.runFor(61_000);
    expect(await open.textContent()).toBe('3:59 left, then it is too late');
    await page.clock.runFor(240_000);
    expect(await open.textContent()).toBe('Too late: 0:01 over.');
    expect(await page.locator('[data-clock=open]').getAttribute('class')).toContain('rings');
    expect(await page.locator('[data-clock=cure] output').textContent()).toBe('3:54:59 left');
  });
});

test('a joint closed in time is never too late', async () => {
  const { document } = lower(`${HEAD}
parts
  cover: Axle cover
    sealed with paste on face
    closes axle-oil

supplies
  paste: Sealing paste
    sealant
    fit within 10 min

places
  face: Cover face

installation
  step: Close
    remove cover
    clean face
    apply paste to face
    install cover
`);
  await withPage(document, {}, async (page) => {
    await page.clock.install({ time: new Date('2026-01-05T08:00:00Z') });
    await page.reload();
    await page.clock.pauseAt(new Date('2026-01-05T09:00:00Z'));
    const told = page.locator('[data-clock] output');
    await page.click('#t-r1-3');
    await page.clock.runFor(60_000);
    await page.click('#t-r1-4');
    await page.clock.runFor(900_000);
    expect(await told.textContent()).toBe('9:00 left');
    expect(await page.locator('[data-clock]').getAttribute('class')).not.toContain('rings');
    expect(await page.locator('#list-clocks').textContent()).toBe('nothing');
    // Taken back, it runs on.
    await page.click('#t-r1-4');
    expect(await told.textContent()).toBe('Too late: 6:00 over.');
  });
});

test('the keyboard reaches every control, and focus stays clear of the bar', async () => {
  await withPage(fh12(), { viewport: { width: 360, height: 700 } }, async (page) => {
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => window.document.activeElement?.className)).toBe('skip');
    const bar = await page.locator('.top').boundingBox();
    const hidden: string[] = [];
    for (let i = 0; i < 40; i++) {
      await page.keyboard.press('Tab');
      const found = await page.evaluate(() => {
        const active = window.document.activeElement;
        const inBar = active?.closest('.top') !== null;
        return { inBar, top: active?.getBoundingClientRect().top ?? 0, what: active?.id ?? '' };
      });
      if (!found.inBar && found.top < (bar?.height ?? 0) - 1) hidden.push(found.what);
    }
    expect(hidden).toEqual([]);
    await page.focus('#t-r1-1');
    await page.keyboard.press('Space');
    expect(await page.isChecked('#t-r1-1')).toBe(true);
  });
});

test('on a telephone that lies on its side the ban stays in sight, the bar does not, and both leave the line free', async () => {
  await withPage(fh12(), { viewport: { width: 740, height: 360 }, reducedMotion: 'reduce' }, async (page) => {
    await tickTo(page, 'r3-3');
    await page.focus('#t-r9-1');
    await page.focus('#t-r3-5');
    const place = (name: string) =>
      page.evaluate((found) => {
        const { top = 0, bottom = 0 } = window.document.querySelector(found)?.getBoundingClientRect() ?? {};
        return { top, bottom };
      }, name);
    const ban = await place('#bans');
    expect((await place('.bar')).bottom).toBeLessThanOrEqual(1);
    expect(ban.bottom).toBeGreaterThan(ban.top);
    expect(ban.top).toBeGreaterThanOrEqual(0);
    expect((await place('#t-r3-5')).top).toBeGreaterThan(ban.bottom);
  });
});
