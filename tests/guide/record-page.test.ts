// The record on the page: both sides of a job beside each other, with blanks that are the same as before. Needs Debian's
// chromium.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { useBrowser, withPage } from './browser.js';
import { BOTH, lower } from './lower-helper.js';

useBrowser();

const cells = (page: Page, title: string) =>
  page.evaluate((heading) => {
    const part = [...document.querySelectorAll('.record section')].find(
      (one) => one.querySelector('h3,h2')?.textContent === heading,
    );
    return [...(part?.querySelectorAll('tr') ?? [])].map((row) =>
      [...row.children]
        .map((cell) => cell.textContent + (cell.querySelector('input') ? '[_]' : ''))
        .map((said) => said.replaceAll('\u00a0', ' ').trim())
        .join(' | '),
    );
  }, title);

test('both sides stand in one row of the record, each with its own blanks', async () => {
  await withPage(lower(BOTH).document, { viewport: { width: 768, height: 900 } }, async (page) => {
    expect(await cells(page, 'Readings and inspections')).toEqual([
      'At | What | Limit | Left | Right',
      'Found | Found',
      '1.1 2.1 | Road wheel | Reject: cracks |  | ',
      '1.2 2.2 | Run-out | at most 0.5 mm | mm | mm',
    ]);
    expect(await cells(page, 'Torques')).toEqual([
      'At | Joint, Torque | Left | Right',
      'Wrench | Initials | Wrench | Initials',
      '1.3 2.3 | 5 × Wheel nutsaxle light 160 N·m, axle heavy 180 N·m | [_] | [_] | [_] | [_]',
      'At | Joint | Torque | Wrench | Initials',
      '3.1 | 10 × Wheel nuts, recheck | axle light 160 N·m, axle heavy 180 N·m | [_] | [_]',
    ]);
    await page.check('#t-r1-1');
    await page.locator('[data-inspection] input').first().check();
    await page.locator('[data-reading] input').first().fill('0,3');
    const found = await page.locator('[data-found]').allTextContents();
    expect(found.map((said) => said.replaceAll('\u00a0', ' '))).toEqual(['good', '', '0.3 mm · Pass', 'mm']);
  });
});

test('places that are open are told once, those that are read one by one', async () => {
  const places = BOTH.replace('sides left, right\n', '').replace(
    'measure run-out',
    'measure run-out, at 3 places',
  );
  await withPage(lower(places).document, { viewport: { width: 360, height: 700 } }, async (page) => {
    const told = async () =>
      (await page.locator('#list-readings li').allTextContents()).map((said) =>
        said.replaceAll('\u00a0', ' '),
      );
    expect(await told()).toEqual(['1.1 Inspect the road wheel: open', '1.2 Run-out: open']);
    await page.locator('.places input').nth(1).fill('0.7');
    expect(await told()).toEqual([
      '1.1 Inspect the road wheel: open',
      '1.2 Run-out: open',
      '1.2 Run-out, 2: Fail: 0.7 mm is above 0.5 mm.',
    ]);
  });
});

test('a unit stays beside its blank, and a code by itself leaves the title free', async () => {
  const text = BOTH.replace('measure run-out', 'measure run-out, at 3 places');
  for (const width of [360, 768]) {
    await withPage(
      lower(text, { sheet: 'record' }).document,
      { viewport: { width, height: 900 } },
      async (page) => {
        const highest = await page.evaluate(() =>
          Math.max(...[...document.querySelectorAll('.found td > div')].map((line) => line.clientHeight)),
        );
        expect(highest).toBeLessThan(60);
      },
    );
  }
  const long = lower(text.replace('Wheel, change', `Wheel, ${'change '.repeat(20)}`), { side: 'left' });
  for (const document of [long.document, lower(text.replace('sides left, right\n', '')).document])
    await withPage(document, { viewport: { width: 768, height: 900 } }, async (page) => {
      const [code, title] = await Promise.all([
        page.locator('.code').boundingBox(),
        page.locator('h1').boundingBox(),
      ]);
      const isBeside = (title?.x ?? 0) + (title?.width ?? 0) <= (code?.x ?? 0);
      expect(isBeside || (title?.y ?? 0) + (title?.height ?? 0) <= (code?.y ?? 0)).toBe(true);
    });
});
