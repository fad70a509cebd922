// How the print deals steps, legend and record out to pages.
import { afterAll, expect, test } from 'vitest';
import type { Block } from '../../compiler/src/document/blocks.js';
import type { GuideDocument } from '../../compiler/src/document/document.js';
import { renderPdf } from '../../compiler/src/output.js';
import { openEngine } from '../../compiler/src/pdf/engine.js';
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

test('blanks for the places of one reading stand two beside each other', async () => {
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
  const text = pdfText(pdf, '-layout');
  expect(text).toMatch(/ 1 +2\n/);
  expect(text).toMatch(/ mm +mm/);
});

test('nothing of a ban is cut off in the running head, however long it is', async () => {
  const base = fh12();
  const text =
    'Keep every part of the van off its wheels and every hand out from under it, whoever asks and however late it is, until 7.1 is signed';
  const long = {
    ...base,
    bans: base.bans.map((ban) => ({ ...ban, text: [{ kind: 'text' as const, text }] })),
  };
  const pages = (await pagesOf(long)).map((page) => page.replace(/\s+/g, ' '));
  expect(pages.filter((page) => page.includes(text)).length).toBe(2);
});
