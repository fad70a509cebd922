// The records of the samples: one page to tear off where it can be, else as few as can be, and each of them worth its paper.
import { afterAll, expect, test } from 'vitest';
import type { Block, BlockOf } from '../../compiler/src/document/blocks.js';
import type { GuideDocument } from '../../compiler/src/document/document.js';
import { text } from '../../compiler/src/document/inline.js';
import { renderPdf } from '../../compiler/src/output.js';
import { openEngine } from '../../compiler/src/pdf/engine.js';
import { itemsHigh } from '../../compiler/src/pdf/front/items.js';
import { recordPages } from '../../compiler/src/pdf/front/record-pages.js';
import { frameOf, HAIR } from '../../compiler/src/pdf/steps/frame.js';
import { DEFAULT_PRINT, type PrintOptions } from '../../compiler/src/print-options.js';
import { openSamples } from './sample-guides.js';
import { pdfText } from './support.js';

const engine = openEngine();
afterAll(engine.close);

function dealt(document: GuideDocument, paper: PrintOptions['paper']) {
  const frame = frameOf(document, { ...DEFAULT_PRINT, paper });
  const context = {
    words: document.words,
    title: document.identity.title,
    training: false,
    safetyColours: false,
    frame,
    column: 178,
    isPart: false,
    addPicture: () => undefined,
  };
  const full = frame.plainHeight - HAIR - 1;
  const record = document.blocks.find((block): block is BlockOf<'record'> => block.kind === 'record');
  if (!record) throw new Error('no record');
  return { pages: recordPages(record, context, full).pages.map(itemsHigh), full };
}

/** Seventeen torques, seventeen readings and six holds on both sides: no page holds them in type that can be read. */
const isTooLong = (name: string, side: string): boolean => name.startsWith('SP-02') && side === 'both';

const LIBRARIES = [
  ['', 'a4'],
  ['us', 'letter'],
] as const;

const RECORDS = LIBRARIES.flatMap(([folder, paper]) => {
  const { procedures, lower } = openSamples(folder);
  return procedures.flatMap((name) =>
    (['both', 'left'] as const).map((side) => {
      const choice = { sheet: 'record', ...(side === 'left' ? { side } : {}) } as const;
      return [name, side, paper, () => lower(`procedures/${name}`, choice).document] as const;
    }),
  );
});

test.for(RECORDS)(
  '%s, side %s, on %s: the record is one page unless it asks very much',
  ([name, side, paper, lower]) => {
    const { pages, full } = dealt(lower(), paper);
    expect(pages).toHaveLength(isTooLong(name, side) ? 2 : 1);
    for (const high of pages) {
      expect(high).toBeLessThanOrEqual(full);
      if (pages.length > 1) expect(high).toBeGreaterThan(0.45 * full);
    }
  },
);

test('in other languages a record is one page on A4 as well, on Letter two at most, neither of them nearly empty', () => {
  for (const [folder] of LIBRARIES) {
    const { procedures, lower } = openSamples(folder);
    for (const name of procedures)
      for (const language of ['es', 'fr', 'de'] as const)
        for (const paper of ['a4', 'letter'] as const) {
          const { document } = lower(`procedures/${name}`, { sheet: 'record', language });
          const { pages, full } = dealt(document, paper);
          const isShort = paper === 'a4' && !isTooLong(name, 'both');
          expect(pages.length).toBeLessThanOrEqual(isShort ? 1 : 2);
          if (pages.length === 2) expect(Math.min(...pages)).toBeGreaterThan(0.4 * full);
        }
  }
});

test('what is asked of both sides alike is one row with blanks for each, where that saves a page', async () => {
  const { document } = openSamples().lower('procedures/ST-23-front-strut.bay', { sheet: 'record' });
  const { pdf, pages } = await renderPdf(document, {}, engine);
  expect(pages).toBe(1);
  const laid = pdfText(pdf, '-layout');
  expect(laid).toMatch(/Left +Right/);
  // Both lines that ask for it are named, and the limit stands once.
  expect(laid).toMatch(/\n4\.6\s[\s\S]*\n10\.6\s/);
  expect(laid.match(/352 to 366/g)).toHaveLength(1);
  // What is measured of the whole vehicle has boxes of its own.
  expect(laid).toMatch(/17\.8 +Toe, front axle, total .*Pass +Fail/);
});

test('blanks for several places stand beside each other for both sides, and what is looked at takes their room', async () => {
  const { document } = openSamples().lower('procedures/RD-04-rear-door.bay', { sheet: 'record' });
  const { pdf, pages } = await renderPdf(document, {}, engine);
  expect(pages).toBe(1);
  const laid = pdfText(pdf, '-layout');
  expect(laid).toMatch(/Gap at the hinge edge[\s\S]{0,200}?1 +2 +3 +1 +2 +3/);
  expect(laid.match(/Reject: torn, hard, out of its flange/g)).toHaveLength(1);
});

test('each page of a record says of which vehicle it is', async () => {
  const { document } = openSamples('us').lower('procedures/SP-02-spindle.bay', { sheet: 'record' });
  const { pdf, pages } = await renderPdf(document, { paper: 'letter' }, engine);
  expect(pages).toBe(2);
  for (const page of pdfText(pdf, '-raw').split('\f').slice(0, pages)) {
    expect(page).toContain('Registration or fleet number');
    expect(page).toContain('Job number');
  }
});

test('sides with limits of their own stay rows of their own', async () => {
  const { document } = openSamples().lower('procedures/ST-23-front-strut.bay', { sheet: 'record' });
  const apart = document.blocks.map((block): Block => {
    if (block.kind !== 'record') return block;
    const items = block.items.map((item): Block => {
      if (item.kind !== 'record-readings') return item;
      return { ...item, rows: item.rows.map((row, i) => ({ ...row, limit: [text(`at least ${i} mm`)] })) };
    });
    return { ...block, items };
  });
  const { pdf } = await renderPdf({ ...document, blocks: apart }, {}, engine);
  const limits = [...pdfText(pdf, '-layout').matchAll(/at least (\d+) mm/g)].map(([, number]) =>
    Number(number),
  );
  expect(limits).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
});

test('holds of both sides name theirs where each has a row of its own', async () => {
  const { document } = openSamples().lower('procedures/FB-04-front-pads.bay', { sheet: 'record' });
  const { pdf, pages } = await renderPdf(document, {}, engine);
  expect(pages).toBe(1);
  const said = pdfText(pdf, '-raw').replace(/\s+/g, ' ');
  expect(said).toContain('4.18 Left: A second technician checks the carrier bolts.');
  expect(said).toContain('8.18 Right: A second technician checks the carrier bolts.');
});
