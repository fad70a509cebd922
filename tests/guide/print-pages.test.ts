// How the print deals steps, legend and record out to pages.
import { afterAll, expect, test } from 'vitest';
import type { Block, Field } from '../../compiler/src/document/blocks.js';
import type { GuideDocument } from '../../compiler/src/document/document.js';
import { text } from '../../compiler/src/document/inline.js';
import { renderPdf } from '../../compiler/src/output.js';
import { openEngine } from '../../compiler/src/pdf/engine.js';
import { frameOf } from '../../compiler/src/pdf/steps/frame.js';
import { DEFAULT_PRINT } from '../../compiler/src/print-options.js';
import { row } from './fixtures/build.js';
import { fh12 } from './fixtures/fh-12.js';
import { pdfText } from './support.js';

const engine = openEngine();
afterAll(engine.close);

const pagesOf = async (document: GuideDocument): Promise<readonly string[]> => {
  const { pdf, pages } = await renderPdf(document, {}, engine);
  return pdfText(pdf, '-raw').split('\f').slice(0, pages);
};

/** The guide with other blocks in place of its steps. */
function withSteps(...steps: readonly Block[]): GuideDocument {
  const base = fh12();
  const first = base.blocks.findIndex(({ kind }) => kind === 'step');
  const rest = base.blocks.filter(({ kind }) => kind !== 'step');
  return { ...base, bans: [], blocks: [...rest.slice(0, first), ...steps, ...rest.slice(first)] };
}

const step = (number: string, rows: number): Block => ({
  kind: 'step',
  id: `s${number}`,
  number,
  title: `Work ${number}`,
  phase: 'Removal',
  before: { off: 0, loose: 0 },
  items: Array.from({ length: rows }, (_, i) =>
    row(`${number}.${i + 1}`, `Do line ${number}-${i + 1}.`, { line: i + 1, rail: [0, 0] }),
  ),
});

const linesOn = (page: string, number: string): number =>
  page.match(new RegExp(`Do line ${number}-\\d+\\.`, 'g'))?.length ?? 0;

test.for([30, 31, 32, 33, 34])('no page begins with the last line of a step of %i lines', async (count) => {
  const onPages = (await pagesOf(withSteps(step('1', count)))).map((page) => linesOn(page, '1'));
  expect(onPages.reduce((sum, lines) => sum + lines, 0)).toBe(count);
  for (const lines of onPages) expect(lines).not.toBe(1);
});

test('a step goes to the next page whole where that leaves little empty', async () => {
  const pages = await pagesOf(withSteps(step('1', 24), step('2', 8)));
  expect(pages.map((page) => [linesOn(page, '1'), linesOn(page, '2')]).filter(([a, b]) => a || b)).toEqual([
    [24, 0],
    [0, 8],
  ]);
});

test('a step is parted where the page would stay half empty', async () => {
  const pages = await pagesOf(withSteps(step('1', 10), step('2', 26)));
  const shares = pages.map((page) => linesOn(page, '2')).filter((lines) => lines > 0);
  expect(shares).toHaveLength(2);
  expect(shares[0]).toBeGreaterThan(8);
});

test('what explains the guide stands on the first page where there is room, and never alone behind the steps', async () => {
  const base = withSteps(step('1', 27));
  const short = { ...base, blocks: base.blocks.filter(({ kind }) => kind !== 'needs') };
  const pages = await pagesOf(short);
  expect(pages[0]).toContain('How to read the pages');
  expect(pages[0]).toContain('Sources');
  expect(pages.slice(1).join(' ')).not.toContain('How to read the pages');
});

test('a record on its own begins on the first page', async () => {
  const pages = await pagesOf(fh12('record'));
  expect(pages[0]).toContain('Record: tear off');
});

/** A record with so many readings, torques and holds, and frames to write in. */
function recordOf(readings: number, torques: number, holds: number): GuideDocument {
  const base = fh12('record');
  const list = <T>(count: number, one: (i: number) => T) =>
    Array.from({ length: count }, (_, i) => one(i + 1));
  const field = (key: string): Field => ({ key, label: [text(`Field ${key}`)], lines: 2, input: 'text' });
  const record: Block = {
    kind: 'record',
    title: 'Record',
    items: [
      { kind: 'fields', columns: 4, fields: list(4, (i) => ({ ...field(`head ${i}`), lines: 1 })) },
      {
        kind: 'record-readings',
        rows: list(readings, (i) => ({
          row: `r${i}`,
          number: `1.${i}`,
          reading: `l${i}`,
          places: 1,
          what: `Play ${i} of the bearing`,
          limit: [text('at most 0.05 mm')],
          unit: 'mm',
        })),
      },
      {
        kind: 'record-torques',
        rows: list(torques, (i) => ({
          row: `t${i}`,
          number: `2.${i}`,
          joint: `Joint ${i} of the arm`,
          count: 2,
          torque: [text('first 60 N·m, then 90°')],
        })),
      },
      {
        kind: 'record-holds',
        rows: list(holds, (i) => ({ row: `h${i}`, number: `3.${i}`, what: [text(`Hold ${i}`)] })),
      },
      { kind: 'fields', title: 'Sign-off', columns: 3, fields: list(5, (i) => field(`sign ${i}`)) },
    ],
  };
  return { ...base, blocks: [record] };
}

test.for<[readings: number, torques: number, holds: number]>([
  [2, 2, 1],
  [5, 14, 2],
  [12, 6, 1],
])('a record of %i readings, %i torques and %i holds stands on one page', async (counts) => {
  const pages = await pagesOf(recordOf(...counts));
  expect(pages).toHaveLength(1);
  for (let i = 1; i <= counts[1]; i++) expect(pages[0]).toContain(`Joint ${i} of`);
});

test('a longer record goes on with its name and the heads of its tables, and no section is parted for nothing', async () => {
  const pages = await pagesOf(recordOf(20, 12, 4));
  expect(pages).toHaveLength(2);
  expect(pages[1]).toContain('Record, continued');
  expect(pages[0]?.match(/Play \d+ of/g)).toHaveLength(20);
  expect(pages[0]).not.toContain('Joint');
  const long = await pagesOf(recordOf(70, 2, 2));
  expect(long.length).toBeGreaterThan(2);
  for (const page of long.slice(0, -1)) expect(page).toMatch(/What\s+Limit/);
  expect(long[1]).toContain('Readings and inspections, continued');
  const fasteners = await pagesOf(recordOf(2, 120, 0));
  const joints = fasteners.map((page) =>
    [...page.matchAll(/Joint (\d+) of/g)].map(([, number]) => Number(number)),
  );
  expect(joints.flat().sort((a, b) => a - b)).toEqual(Array.from({ length: 120 }, (_, i) => i + 1));
  for (const [i, numbers] of joints.entries())
    expect(Math.min(...numbers)).toBeGreaterThan(Math.max(0, ...(joints[i - 1] ?? [])));
  const rows = long.map((page) => page.match(/Play \d+ of/g)?.length ?? 0);
  expect(rows.reduce((sum, count) => sum + count, 0)).toBe(70);
  for (const count of rows) expect(count).not.toBe(1);
});

test('blanks for the places of one reading stand beside each other, their unit behind the last', async () => {
  const base = fh12('record');
  const inPlaces = (blocks: readonly Block[]): readonly Block[] =>
    blocks.map((block) =>
      block.kind === 'record'
        ? { ...block, items: inPlaces(block.items) }
        : block.kind === 'record-readings'
          ? { ...block, rows: block.rows.map((one) => ({ ...one, places: 5 })) }
          : block,
    );
  const { pdf } = await renderPdf({ ...base, blocks: inPlaces(base.blocks) }, {}, engine);
  const laid = pdfText(pdf, '-layout');
  expect(laid).toMatch(/ 1 +2 +3\n/);
  expect(laid).toMatch(/ 4 +5 +mm\n/);
});

test('nothing of a ban is cut off in the running head, however long it is', async () => {
  const base = fh12();
  const said =
    'Keep every part of the van off its wheels and every hand out from under it, whoever asks and however late it is, until 7.1 is signed';
  const long = {
    ...base,
    bans: base.bans.map((ban) => ({ ...ban, text: [text(said)] })),
  };
  const pages = (await pagesOf(long)).map((page) => page.replace(/\s+/g, ' '));
  expect(pages.filter((page) => page.includes(said)).length).toBe(2);
});

test('the page before a record on double-sided paper says that it is left blank, and has its number', async () => {
  for (const rows of [10, 40]) {
    const { pdf, pages } = await renderPdf(withSteps(step('1', rows)), { twoSided: true }, engine);
    const printed = pdfText(pdf, '-raw').split('\f').slice(0, pages);
    const blank = printed.findIndex((page) => page.includes('left blank'));
    const record = printed.findIndex((page) => page.includes('Record: tear off'));
    expect(record % 2).toBe(0);
    expect(blank).toBe(rows === 10 ? -1 : record - 1);
    if (blank >= 0) expect(printed[blank]).toContain(`page ${blank + 1} of ${pages}`);
  }
});

test('so it is where only the typesetter can count the pages', async () => {
  let found = 0;
  for (const issues of [60, 90, 120]) {
    const base = withSteps(step('1', 10));
    const blocks = base.blocks.map(
      (block): Block =>
        block.kind === 'revisions'
          ? {
              ...block,
              rows: Array.from({ length: issues }, (_, i) => ({
                revision: String(i),
                date: '2026-10-05',
                what: [text('Issued.')],
              })),
            }
          : block,
    );
    const { pdf, pages } = await renderPdf({ ...base, blocks }, { twoSided: true }, engine);
    const printed = pdfText(pdf, '-raw').split('\f').slice(0, pages);
    const record = printed.findIndex((page) => page.includes('Record: tear off'));
    expect(record % 2).toBe(0);
    const blank = printed.findIndex((page) => page.includes('left blank'));
    const before = printed[record - 1] ?? '';
    if (blank < 0) {
      expect(before).toContain('Issued.');
      continue;
    }
    found += 1;
    expect(blank).toBe(record - 1);
    expect(before).toContain('FH-12');
    expect(before).toContain(`page ${blank + 1} of ${pages}`);
  }
  expect(found).toBeGreaterThan(0);
});

test('lines stand closer where that saves a page with little on it', async () => {
  const counts = async (rows: number) => {
    const guide = withSteps(step('1', rows));
    const blocks = guide.blocks.filter(({ kind }) => kind === 'masthead' || kind === 'step');
    return (await pagesOf({ ...guide, blocks })).map((page) => linesOn(page, '1')).filter(Boolean);
  };
  expect(await counts(32)).toEqual([32]);
  // So many do not fit however close they stand: then they stand as usual.
  expect((await counts(40)).length).toBe(2);
});

test('sources and revisions are not alone on a page where the last step can go with them', async () => {
  const base = withSteps(step('1', 40), step('2', 14));
  const pages = await pagesOf(base);
  const last = pages.findIndex((page) => page.includes('Revisions'));
  expect(linesOn(pages[last] ?? '', '2')).toBeGreaterThan(0);
});

test('a line behind a branch stays on the page of the warning before the branch', async () => {
  const rail = { off: 0, loose: 0 };
  const last = step('2', 8);
  const more = last.kind === 'step' ? last.items : [];
  const press = row('1.90', 'Press the pin out.', { line: 90, rail: [0, 0] });
  const warned: readonly Block[] = [
    { kind: 'panel', signal: 'warning', word: 'WARNING', body: [text('The press stores force.')], rail },
    {
      kind: 'branch',
      heading: [text('If needed: The pin will not move.')],
      rail,
      items: [row('1.89', 'Heat the eye.', { line: 89, rail: [0, 0] })],
    },
    press,
  ];
  for (let rows = 15; rows < 30; rows++) {
    const before = step('1', rows);
    if (before.kind !== 'step') throw new Error('no step');
    const items = [...before.items, ...warned, ...more];
    const pages = await pagesOf(withSteps({ ...before, items }));
    const page = pages.find(
      (one) => one.includes('The press stores force.') && one.includes('Heat the eye.'),
    );
    expect(page, `behind ${rows} lines`).toContain('Press the pin out.');
  }
});

test.for([26, 28, 30, 58, 60])(
  'with a last step of %i lines, its last lines stand with sources and revisions',
  async (rows) => {
    const pages = await pagesOf(withSteps(step('1', rows)));
    const last = pages.find((page) => page.includes('Revisions')) ?? '';
    // On the first page, or behind lines.
    expect(linesOn(last, '1') > 2 || last.includes('You will need')).toBe(true);
    expect(pages.reduce((sum, page) => sum + linesOn(page, '1'), 0)).toBe(rows);
  },
);

test('a page keeps no room for bans that it does not show', async () => {
  const plain = withSteps(step('1', 60));
  const lines = async (document: GuideDocument) =>
    (await pagesOf(document)).map((page) => linesOn(page, '1'));
  const ban = (id: string, edge: 'start' | 'end'): Block => ({
    kind: 'banner',
    ban: id,
    edge,
    body: [text('Keep off.')],
    rail: { off: 0, loose: 0 },
  });
  const names = ['a', 'b', 'c', 'd'];
  const late = step('2', 12);
  const banned: Block =
    late.kind === 'step'
      ? {
          ...late,
          items: [
            ...names.map((id) => ban(id, 'start')),
            ...late.items,
            ...names.map((id) => ban(id, 'end')),
          ],
        }
      : late;
  const guide: GuideDocument = {
    ...withSteps(step('1', 60), banned),
    bans: names.map((id) => ({ id, text: [text(`Ban ${id}: keep off.`)], fromRow: '', untilRow: '' })),
  };
  const [usual, shown] = [await lines(plain), await lines(guide)];
  // The first pages hold as many lines as if there were no bans at all.
  const full = Math.max(...usual);
  expect(shown.filter((count) => count === full).length).toBeGreaterThan(0);
  const pages = await pagesOf(guide);
  const last = pages.findIndex((page) => linesOn(page, '2') > 0);
  for (const id of names) expect(pages[last]).toContain(`Ban ${id}: keep off.`);
});

test('the last step is not parted for a few lines on a page of their own', async () => {
  const guide = withSteps(step('1', 20), step('2', 16));
  const blocks = guide.blocks.filter(({ kind }) => kind === 'masthead' || kind === 'step');
  const pages = await pagesOf({ ...guide, blocks });
  const counts = pages.map((page) => [linesOn(page, '1'), linesOn(page, '2')]).filter(([a, b]) => a || b);
  expect(counts).toEqual([
    [20, 0],
    [0, 16],
  ]);
});

test('times stand beside each other, smaller where that makes room', async () => {
  const base = fh12();
  const times = [
    { label: 'Hands-on, axle standard', value: '10 h 40 min' },
    { label: 'Hands-on, axle heavy', value: '11 h 40 min' },
    { label: 'Waiting', value: '10 min' },
    { label: 'Technicians', value: '2' },
  ];
  const blocks = base.blocks.map((block): Block => (block.kind === 'masthead' ? { ...block, times } : block));
  const { pdf } = await renderPdf({ ...base, blocks }, {}, engine);
  expect(pdfText(pdf, '-layout')).toMatch(/10 h 40 min +11 h 40 min +10 min +2\b/);
});

test('what things are needed for gets more room where that makes the list lower', async () => {
  const base = fh12();
  const said = 'Upper cover screws; lower cover screws';
  const blocks = base.blocks.map(
    (block): Block =>
      block.kind !== 'needs'
        ? block
        : {
            ...block,
            groups: [{ title: 'Tools', rows: [{ what: [text('Six-lobe T30')], for: [text(said)] }] }],
          },
  );
  const { pdf } = await renderPdf({ ...base, blocks }, {}, engine);
  expect(pdfText(pdf, '-layout')).toContain(said);
});

test('what stands behind the steps keeps its distance from them, in a walk-it print as well', async () => {
  for (const print of ['bay', 'walk'] as const) {
    const { pdf } = await renderPdf(withSteps(step('1', 20)), { print }, engine);
    const words = [...pdfText(pdf, '-bbox').matchAll(/yMin="([\d.]+)".*?yMax="([\d.]+)">([^<]*)</g)].map(
      ([, from, to, said]) => ({ from: Number(from), to: Number(to), said }),
    );
    const title = words.find(({ said }) => said === 'Sources');
    const above = words.filter(({ said, to }) => said === '1-20.' && title && to <= title.from + 5);
    // Points.
    expect((title?.from ?? 0) - (above[0]?.to ?? 0)).toBeGreaterThan(8);
  }
});

test('no page is empty in a walk-it print, however full those before it are', async () => {
  for (let rows = 28; rows < 36; rows++) {
    const { pdf, pages } = await renderPdf(
      withSteps(step('1', rows), step('2', 30)),
      { print: 'walk' },
      engine,
    );
    for (const page of pdfText(pdf, '-raw').split('\f').slice(0, pages)) expect(page.trim()).not.toBe('');
  }
});

test('a page that sees one ban end and another begin has room for both', () => {
  const names = ['a', 'b'];
  const banned = names.map((id): Block => {
    const edge = (which: 'start' | 'end'): Block => ({
      kind: 'banner',
      ban: id,
      edge: which,
      body: [text('Keep off.')],
      rail: { off: 0, loose: 0 },
    });
    const own = step(id, 3);
    return own.kind === 'step' ? { ...own, items: [edge('start'), ...own.items, edge('end')] } : own;
  });
  const guide: GuideDocument = {
    ...withSteps(...banned),
    bans: names.map((id) => ({ id, text: [text(`Ban ${id}.`)], fromRow: '', untilRow: '' })),
  };
  const frame = frameOf(guide, DEFAULT_PRINT);
  expect(frame.stepTop(new Set(names))).toBeGreaterThan(frame.stepTop(new Set(['a'])));
  expect(frame.leastHeight).toBe(frame.stepHeight(new Set(names)));
});
