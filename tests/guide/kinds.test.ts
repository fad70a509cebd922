// Every kind of block and box has an example, and both outputs render it.
import { expect, test } from 'vitest';
import { walkBlocks } from '../../compiler/src/document/blocks.js';
import { SHEETS } from '../../compiler/src/document/document.js';
import { renderHtml } from '../../compiler/src/output.js';
import { everyKind } from './fixtures/every-kind.js';
import { fh12 } from './fixtures/fh-12.js';
import { pageOutline } from './support.js';

const documents = [everyKind(), ...SHEETS.map((sheet) => fh12(sheet))];
const blocks = documents.flatMap((document) => [...walkBlocks(document.blocks)]);

test('the examples hold every kind of block', () => {
  expect([...new Set(blocks.map(({ kind }) => kind))].sort()).toEqual([
    'banner',
    'branch',
    'clip',
    'dangers',
    'fields',
    'figure',
    'heading',
    'key',
    'masthead',
    'needs',
    'note',
    'off-now',
    'panel',
    'questions',
    'reason',
    'record',
    'record-holds',
    'record-readings',
    'record-torques',
    'repeat',
    'revisions',
    'row',
    'sources',
    'statement',
    'step',
    'stop',
    'tally',
    'torque-table',
    'wear',
  ]);
});

test('the examples hold every kind of box', () => {
  const boxes = blocks.flatMap((block) => (block.kind === 'row' ? block.beside.map(({ kind }) => kind) : []));
  expect([...new Set(boxes)].sort()).toEqual([
    'clock',
    'hold',
    'inspection',
    'picture',
    'reading',
    'socket',
    'torque',
  ]);
});

test.for(SHEETS)('the page of the %s reads as expected', async (sheet) => {
  await expect(pageOutline(renderHtml(fh12(sheet)).html)).toMatchFileSnapshot(
    `golden/fh-12-${sheet}.page.golden.txt`,
  );
});

test('the page with every kind reads as expected', async () => {
  await expect(pageOutline(renderHtml(everyKind(), { print: 'training' }).html)).toMatchFileSnapshot(
    'golden/every-kind.page.golden.txt',
  );
});

test('the same document gives the same page', () => {
  expect(renderHtml(everyKind()).html).toBe(renderHtml(everyKind()).html);
});

test('a guide with its type, drawings and script stays small', () => {
  expect(renderHtml(fh12()).html.length).toBeLessThan(250_000);
});
