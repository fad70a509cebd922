// The page in a browser: accessible, valid, usable at every width, alive in the bay, kept over a reload, readable
// without script. Needs Debian's chromium.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { HtmlValidate } from 'html-validate';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { GuideDocument } from '../../compiler/src/document/document.js';
import { SHEETS } from '../../compiler/src/document/document.js';
import { renderHtml } from '../../compiler/src/output.js';
import { JOB_RECORD } from '../../compiler/src/record-schema.js';
import { SAFETY_COLOURS } from '../../compiler/src/safety-colours.js';
import { useBrowser, withPage } from './browser.js';
import { everyKind } from './fixtures/every-kind.js';
import { fh12 } from './fixtures/fh-12.js';
import { HEAD, lower } from './lower-helper.js';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
useBrowser();

const DOCUMENTS: readonly [string, GuideDocument][] = [
  ...SHEETS.map((sheet): [string, GuideDocument] => [sheet, fh12(sheet)]),
  ['every kind', everyKind()],
];

const tickTo = (page: Page, last: string) =>
  page.evaluate((id) => {
    for (const box of document.querySelectorAll<HTMLInputElement>('[data-row]')) {
      if (!box.checked) box.click();
      if (box.dataset.row === id) return;
    }
  }, last);
const shown = (page: Page, id: string) => page.locator(`#${id}`).textContent();

describe.for(DOCUMENTS)('%s', ([, document]) => {
  test('is valid HTML', async () => {
    const validator = new HtmlValidate({
      extends: ['html-validate:recommended', 'html-validate:standard'],
      rules: {
        // Matters of style, not of validity.
        'long-title': 'off',
        'no-inline-style': 'error',
        'no-trailing-whitespace': 'off',
        'prefer-native-element': 'off',
        'attribute-boolean-style': 'off',
        'no-implicit-button-type': 'error',
        'wcag/h30': 'error',
        'wcag/h67': 'error',
        // Lists keep their role when their bullets are styled away.
        'no-redundant-role': 'off',
        'tel-non-breaking': 'off',
        'input-missing-label': 'error',
        'valid-id': 'error',
        'element-required-attributes': 'error',
      },
    });
    const report = await validator.validateString(renderHtml(document).html);
    expect(
      report.results.flatMap(({ messages }) =>
        messages.map(({ ruleId, message, line }) => `${line}: ${ruleId}: ${message}`),
      ),
    ).toEqual([]);
  });

  test.for([
    ['light', 1280],
    ['dark', 1280],
    ['light', 360],
  ] as const)('has no fault that axe finds, %s at %i px', async ([colorScheme, width]) => {
    // The checker is put into the page past its policy; the page itself runs under it in every other test.
    await withPage(
      document,
      { colorScheme, viewport: { width, height: 900 }, bypassCSP: true },
      async (page) => {
        await page.evaluate(axe);
        const { violations } = await page.evaluate(() =>
          (
            window as unknown as {
              axe: {
                run: (options: object) => Promise<{
                  violations: { id: string; nodes: { html: string; failureSummary: string }[] }[];
                }>;
              };
            }
          ).axe.run({
            runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
          }),
        );
        expect(
          violations.map(
            ({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 200)} ${nodes[0]?.failureSummary}`,
          ),
        ).toEqual([]);
      },
    );
  });

  test.for([360, 768, 1280])('fits %i px', async (width) => {
    await withPage(document, { viewport: { width, height: 900 } }, async (page) => {
      expect(await page.evaluate(() => window.document.documentElement.scrollWidth)).toBeLessThanOrEqual(
        width,
      );
      const cut = await page.evaluate(() =>
        [...window.document.querySelectorAll('.wide, .torque, .reading, .clock')]
          .filter((frame) => frame.scrollWidth > frame.clientWidth)
          .map((frame) => `${frame.className} ${frame.scrollWidth} in ${frame.clientWidth}`),
      );
      expect(cut).toEqual([]);
    });
  });

  test('a unit is not broken at its hyphen', async () => {
    await withPage(document, { viewport: { width: 360, height: 900 } }, async (page) => {
      const broken = await page.evaluate(() =>
        [...window.document.querySelectorAll('.whole')]
          .filter((unit) => {
            const foots = [...unit.getClientRects()].map(({ bottom }) => Math.round(bottom));
            return new Set(foots).size > 1 || unit.clientHeight > 40;
          })
          .map((unit) => unit.textContent),
      );
      expect(broken).toEqual([]);
    });
  });

  test('the words of a line have room at every width', async () => {
    await withPage(document, { viewport: { width: 360, height: 900 } }, async (page) => {
      for (const width of [360, 480, 640, 720, 768, 1024, 1100, 1280, 1400]) {
        await page.setViewportSize({ width, height: 900 });
        const narrow = await page.evaluate(
          (least) =>
            [...window.document.querySelectorAll('.act > .txt')]
              .filter((words) => words.clientWidth < least)
              .map((words) => `${words.parentElement?.id} ${words.clientWidth}`),
          // A line inside a case stands further in.
          width < 720 ? 240 : 260,
        );
        expect(narrow, `at ${width} px`).toEqual([]);
      }
    });
  });

  test('what is touched is at least 44 px', async () => {
    await withPage(document, { viewport: { width: 360, height: 900 } }, async (page) => {
      const small = await page.evaluate(() =>
        [...window.document.querySelectorAll('button, select, input, summary')]
          .map((control) => control.closest('label') ?? control)
          .filter((target) => target.checkVisibility())
          .map((target) => ({ box: target.getBoundingClientRect(), text: target.outerHTML.slice(0, 90) }))
          .filter(({ box }) => box.height < 44 || box.width < 44)
          .map(({ text, box }) => `${Math.round(box.width)} × ${Math.round(box.height)} ${text}`),
      );
      expect(small).toEqual([]);
    });
  });
});

test('signal words in the colours of the standards can be read', async () => {
  const contrast = (ground: string, letters: string) => {
    const light = (colour: string) => {
      const [r = 0, g = 0, b = 0] = [1, 3, 5]
        .map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255)
        .map((value) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4));
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const [a, b] = [light(ground), light(letters)];
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  };
  for (const { ground, letters } of Object.values(SAFETY_COLOURS))
    expect(contrast(ground, letters)).toBeGreaterThan(4.5);
  const plain = renderHtml(everyKind()).html;
  const coloured = renderHtml(everyKind(), { safetyColours: true }).html;
  for (const { ground } of Object.values(SAFETY_COLOURS)) {
    expect(plain).not.toContain(ground);
    expect(coloured).toContain(`background:${ground}`);
  }
});

test('the page lets in nothing from outside', () => {
  const { html } = renderHtml(everyKind());
  const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/
    .exec(html)?.[1]
    ?.replaceAll('&#39;', "'");
  expect(policy).toMatch(
    /^default-src 'none'; img-src data:; media-src data:; font-src data:; style-src 'sha256-[^']{44}' 'sha256-[^']{44}'; script-src 'sha256-[^']{44}'; base-uri 'none'; form-action 'none'$/,
  );
  expect(html).not.toMatch(/\sstyle="/);
  expect(html.replace(/xmlns(?::xlink)?="[^"]*"/g, '')).not.toMatch(
    /(?:src|href)="http(?!s:\/\/example\.org\/sheet")/,
  );
});

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

      await page.fill('#disc-thickness', '0.866');
      await page.selectOption('#unit-disc-thickness', 'in');
      const verdict = page.locator('[data-reading] output');
      expect(await verdict.textContent()).toBe('Fail: 21.996 mm is below 22.0 mm.');
      await page.selectOption('#unit-disc-thickness', 'mm');
      await page.fill('#disc-thickness', '22,4');
      expect(await verdict.textContent()).toBe('Pass: 22.4 mm. Limit 22.0 mm.');
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
    expect(await page.locator('.record .skipped').textContent()).toContain('1.3Wheel nuts');

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
    await page.locator('#t-r1-2').click();
    const open = page.locator('[data-clock=open] output');
    await page.clock.runFor(61_000);
    expect(await open.textContent()).toMatch(/^(?:3:59|4:00) left, then it is too late$/);
    await page.clock.runFor(240_000);
    expect(await open.textContent()).toMatch(/^Too late: 0:0\d over\.$/);
    expect(await page.locator('[data-clock=open]').getAttribute('class')).toContain('rings');
    expect(await page.locator('[data-clock=cure] output').textContent()).toMatch(/^3:5\d:\d\d left$/);
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

test('without script the page is a document: all text, ticks, links, and no control that would do nothing', async () => {
  await withPage(fh12(), { javaScriptEnabled: false }, async (page) => {
    expect(await page.locator('h1').textContent()).toBe('Front hub and bearing, replace');
    expect(await page.locator('.act').count()).toBe(41);
    expect(await page.locator('button:visible').count()).toBe(0);
    await page.locator('#t-r1-1').check();
    expect(await page.locator('#t-r1-1').isChecked()).toBe(true);
  });
});

test('a long list of what is off folds up to its counts, and stands open on paper', async () => {
  const tally = (things: string): GuideDocument => ({
    ...fh12(),
    blocks: [
      {
        kind: 'tally',
        body: [
          { kind: 'strong', children: [{ kind: 'text', text: 'Off now, 33:' }] },
          { kind: 'text', text: ` ${things}.` },
        ],
        rail: { off: 33, loose: 0 },
      },
    ],
  });
  const list = '.tally p';
  await withPage(tally('wheel nuts'), {}, async (page) => {
    expect(await page.locator(list).isVisible()).toBe(true);
  });
  await withPage(tally('wheel nuts, '.repeat(40)), {}, async (page) => {
    expect(await page.locator('.tally summary').textContent()).toBe('Off now, 33: ');
    expect(await page.locator(list).isVisible()).toBe(false);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator(list).isVisible()).toBe(true);
    await page.emulateMedia({ media: 'screen' });
    await page.locator('.tally summary').click();
    expect(await page.locator(list).isVisible()).toBe(true);
  });
});

test('printed, it leaves the screen behind', async () => {
  await withPage(fh12(), {}, async (page) => {
    await page.emulateMedia({ media: 'print' });
    for (const name of ['nav', 'aside', '.skip', '#undo', '.finish'])
      expect(await page.locator(name).isVisible(), name).toBe(false);
    expect(await page.locator('.step').first().isVisible()).toBe(true);
  });
});
