// The page in a browser, whatever it shows: accessible, valid, usable at every width and on paper, readable without
// script. Needs Debian's chromium.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { LANGUAGES } from '@baywright/language';
import { HtmlValidate } from 'html-validate';
import { describe, expect, test } from 'vitest';
import { type GuideDocument, SHEETS } from '../../compiler/src/document/document.js';
import { renderHtml } from '../../compiler/src/output.js';
import { SAFETY_COLOURS } from '../../compiler/src/safety-colours.js';
import { useBrowser, withPage } from './browser.js';
import { marks, row, socket } from './fixtures/build.js';
import { everyKind } from './fixtures/every-kind.js';
import { fh12 } from './fixtures/fh-12.js';
import { BOTH, HEAD, lower, twoVehicles } from './lower-helper.js';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
useBrowser();

const DOCUMENTS: readonly [string, GuideDocument][] = [
  ...SHEETS.map((sheet): [string, GuideDocument] => [sheet, fh12(sheet)]),
  ['every kind', everyKind()],
  // One line has a torque for each of two vehicles, and a box and a blank for each.
  ['two vehicles', twoVehicles()],
  ['both sides', lower(BOTH).document],
  ['record of both sides', lower(BOTH, { sheet: 'record' }).document],
];

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
    ['light', 1280, 900],
    // So low that the list beside the page scrolls.
    ['dark', 1280, 500],
    ['light', 360, 900],
  ] as const)('has no fault that axe finds, %s at %i × %i px', async ([colorScheme, width, height]) => {
    // The checker is put into the page past its policy; the page itself runs under it in every other test.
    await withPage(document, { colorScheme, viewport: { width, height }, bypassCSP: true }, async (page) => {
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
    });
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

test.for(LANGUAGES)(
  'signal words of %s stay whole, its counts fit, and lists have its colon',
  async (language) => {
    const text = `${HEAD}
messages
  loose: The nut flies.

inspection
  step: Look
    warning loose
    inspect wheel
      reject: cracks
`;
    const { document } = lower(text, { language });
    for (const width of [360, 768, 1000]) {
      await withPage(document, { viewport: { width, height: 900 } }, async (page) => {
        expect(await page.evaluate(() => window.document.documentElement.scrollWidth)).toBe(width);
        // From a tablet on, one line.
        if (width > 360) expect((await page.locator('.bar').boundingBox())?.height).toBeLessThan(70);
        const high = await page.locator('.signal > strong').evaluateAll((words) =>
          words.map((word) => {
            const range = window.document.createRange();
            range.selectNodeContents(word.lastChild ?? word);
            return range.getBoundingClientRect().height;
          }),
        );
        expect(high.length).toBeGreaterThan(0);
        expect(Math.max(...high)).toBeLessThan(32);
        const [listed = ''] = await page.locator('#list-readings li').allTextContents();
        expect(listed.includes('\u00a0:')).toBe(language === 'fr');
      });
    }
  },
);

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

test('without script the page is a document: all text, ticks, links, and no control that would do nothing', async () => {
  await withPage(fh12(), { javaScriptEnabled: false }, async (page) => {
    expect(await page.locator('h1').textContent()).toBe('Front hub and bearing, replace');
    expect(await page.locator('.act').count()).toBe(41);
    expect(await page.locator('button:visible').count()).toBe(0);
    await page.locator('#t-r1-1').check();
    expect(await page.locator('#t-r1-1').isChecked()).toBe(true);
  });
});

test('heads to tick stand in columns beside their label, however many rows they take', async () => {
  const many = [
    row('5.11', 'Torque the **oil pan bolts** (18).', {
      line: 1,
      rail: [0, 0],
      marks: [marks('Tick each', 18)],
    }),
  ];
  await withPage({ ...fh12(), blocks: many }, { viewport: { width: 768, height: 900 } }, async (page) => {
    const label = await page.locator('.marks legend').boundingBox();
    const heads = await Promise.all((await page.locator('.mark').all()).map((head) => head.boundingBox()));
    const firsts = new Map(heads.toReversed().map((head) => [head?.y, head?.x ?? 0]));
    expect(firsts.size).toBeGreaterThan(1);
    expect(new Set(firsts.values()).size).toBe(1);
    expect(Math.min(...firsts.values())).toBeGreaterThan((label?.x ?? 0) + (label?.width ?? 0));
  });
});

test.for([
  [6, 'Tick each', 360],
  [11, 'Tick each', 768],
  [10, 'Jede Schraube abhaken', 768],
  [16, 'Tick each', 1280],
] as const)(
  'of %i heads to tick none is alone in its row, after “%s” at %i px',
  async ([count, label, width]) => {
    const some = [
      row('5.11', 'Torque the **oil pan bolts**.', {
        line: 1,
        rail: [0, 0],
        beside: [socket('10')],
        marks: [marks(label, count)],
      }),
    ];
    await withPage({ ...fh12(), blocks: some }, { viewport: { width, height: 900 } }, async (page) => {
      const heads = await Promise.all((await page.locator('.mark').all()).map((head) => head.boundingBox()));
      const rows = [...new Set(heads.map((head) => head?.y))];
      expect(rows.length).toBeGreaterThan(1);
      for (const y of rows) expect(heads.filter((head) => head?.y === y).length).toBeGreaterThan(1);
    });
  },
);

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
    expect(await page.locator('.tally summary').textContent()).toBe('Off now, 33');
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
    // Pen on paper: the box would go on saying that there is no reading beside the one that was written into it.
    const verdict = page.locator('[data-reading] output');
    expect(await verdict.isVisible()).toBe(false);
    await page.emulateMedia({ media: 'screen' });
    await page.locator('[data-reading] input').first().fill('22.4');
    await page.emulateMedia({ media: 'print' });
    expect(await verdict.isVisible()).toBe(true);
  });
});
