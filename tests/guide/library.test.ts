// The list of guides: whole without script, searched with it, closed to the network. Needs Debian's chromium.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { LibraryGuide } from '../../compiler/src/html/library.js';
import { renderLibrary } from '../../compiler/src/output.js';
import { WORDS } from './fixtures/words.js';

const guide = (number: string, title: string, more: Partial<LibraryGuide>): LibraryGuide => ({
  number,
  title,
  revision: '2',
  date: '2026-05-04',
  statusText: 'Released',
  vehicles: ['Maristow 300'],
  parts: [],
  tools: [],
  files: [
    { href: `${number}/left side.html`, label: 'Left side' },
    { href: `${number}/left side.pdf`, label: 'PDF' },
  ],
  ...more,
});
const html = renderLibrary({
  title: 'Guides',
  shop: 'Saltmarsh Depot',
  standing: 'Local codes come first.',
  language: 'en',
  words: WORDS,
  guides: [
    guide('FH-12', 'Front hub and bearing, replace', {
      parts: ['brake disc'],
      tools: ['disc micrometer'],
    }),
    guide('HC-17', 'Cylinder-head cover, reseal', { parts: ['cover gasket'] }),
    guide('WH-01', 'Road wheel <b>', { vehicles: ['Pellam F25 Größe'] }),
  ],
});
const folder = mkdtempSync(join(tmpdir(), 'baywright-library-'));
const path = join(folder, 'index.html');
let browser: Browser;
beforeAll(async () => {
  writeFileSync(path, html);
  browser = await chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu'],
  });
});
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
});

const numbers = (page: Page) =>
  page
    .locator('tbody tr:visible b:first-child')
    .evaluateAll((cells) =>
      cells.filter((cell) => cell.parentElement?.matches(':first-child')).map((cell) => cell.textContent),
    );

test.for([
  ['', ['FH-12', 'HC-17', 'WH-01']],
  ['fh-12', ['FH-12']],
  ['bearing front', ['FH-12']],
  ['micrometer', ['FH-12']],
  ['micrometre', ['FH-12']],
  ['gask', ['HC-17']],
  ['grosse', ['WH-01']],
  ['große', ['WH-01']],
  ['maristow', ['FH-12', 'HC-17']],
  ['clutch', []],
] as const)('"%s" finds %j', async ([typed, found]) => {
  const page = await browser.newPage();
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await page.goto(pathToFileURL(path).href);
  await page.fill('#search', typed);
  expect((await numbers(page)).sort()).toEqual([...found]);
  expect(await page.locator('#none').isVisible()).toBe(found.length === 0);
  expect(asked.filter((url) => !/^(?:file|data):/.test(url))).toEqual([]);
  await page.close();
});

test('what a title holds is text, and links stay beside the page', () => {
  expect(html).toContain('Road wheel &lt;b&gt;');
  expect(html).toContain('href="./FH-12/left%20side.html"');
  const odd = renderLibrary({
    title: 'G',
    shop: '',
    standing: '',
    language: 'en',
    words: WORDS,
    guides: [guide('X', 'X', { files: [{ href: 'javascript:alert(1)', label: 'x' }] })],
  });
  expect(odd).toContain('href="./javascript%3Aalert(1)"');
});
