// What a writer may type, by mistake or on purpose, comes out as text or as a finding: never as markup, code or a
// broken page.
import { afterAll, describe, expect, test } from 'vitest';
import type { GuideDocument } from '../../compiler/src/document/document.js';
import { plain } from '../../compiler/src/document/inline.js';
import { readProse } from '../../compiler/src/document/prose.js';
import { readPicture } from '../../compiler/src/document/read-picture.js';
import { renderHtml, renderPdf } from '../../compiler/src/output.js';
import { openEngine } from '../../compiler/src/pdf/engine.js';
import { row } from './fixtures/build.js';
import { fh12 } from './fixtures/fh-12.js';
import { pageOutline, pdfText } from './support.js';

const engine = openEngine();
afterAll(engine.close);

function withText(text: string, title = 'Make the van safe'): GuideDocument {
  const base = fh12();
  const blocks = base.blocks.map((block) =>
    block.kind === 'step' && block.number === '1'
      ? { ...block, title, items: [row('1.1', text, { line: 68, rail: [0, 0], note: text })] }
      : block,
  );
  return { ...base, blocks };
}

const HOSTILE = {
  tag: '<script>alert(1)</script>',
  'event handler': '<img src=x onerror=alert(1)>',
  'script link': '[click](javascript:alert(1))',
  'data link': '[click](data:text/html,x)',
  'typesetter import': '#import "/etc/passwd": *',
  'typesetter code': '#eval("1+1") $x$ @ref <label> \\u{41} #{1+1}',
  'typesetter raw': '= Heading\n#set page(width: 1pt)',
  'string end': '"); panic("x',
  'comment end': '*/ /* // -->',
  'data end': '</script><script>alert(2)</script>',
  'style end': '</style><b>bold</b>',
  'template slot': '{{constructor}} #{7*7} {page}',
};

describe.for(Object.entries(HOSTILE))('%s', ([, text]) => {
  const words = plain(readProse(text)).replace(/\s+/g, ' ').trim();
  test('is text on the page', () => {
    const { html } = renderHtml(withText(text));
    expect(pageOutline(html).replace(/\s+/g, ' ')).toContain(words);
    expect(html.match(/<script\b/g)).toHaveLength(2);
    expect(html).not.toMatch(/<[a-z][^>]*\son[a-z]+=/);
    expect(html).not.toMatch(/href="(?!#|https?:|mailto:)/);
  });
  test('is text in print', async () => {
    const { pdf } = await renderPdf(withText(text), {}, engine);
    expect(pdfText(pdf).replace(/[\s\u200B]+/g, '')).toContain(words.replace(/\s+/g, ''));
  });
});

test('controls that turn the writing round are left out and reported', async () => {
  const document = withText('Torque to \u202e511\u202c N·m');
  const html = renderHtml(document);
  expect(html.html).not.toMatch(/[\u202a-\u202e\u2066-\u2069]/);
  expect(html.findings).toContainEqual({
    message: 'The invisible characters U+202E, U+202C were left out',
    file: 'FH-12-front-hub.bay',
    line: 68,
  });
  const print = await renderPdf(document, {}, engine);
  expect(pdfText(print.pdf)).toContain('Torque to 511 N·m');
  expect(print.findings).toContainEqual({
    message: 'The invisible characters U+202E, U+202C were left out',
    file: 'FH-12-front-hub.bay',
    line: 68,
  });
});

test('marks heaped on a letter stay out of the lines around it', () => {
  const { html, findings } = renderHtml(withText(`Z${'\u0301'.repeat(60)} on`));
  expect(html).toMatch(/(?<!\u0301)\u0301{3,4} on/);
  expect(findings).toEqual([
    expect.objectContaining({ message: expect.stringMatching(/^Of \d+ marks on one letter/) }),
  ]);
});

test('characters that the type does not have show as a box and are reported', async () => {
  const document = withText('Fit 🔧 the ブレーキ, 刹车');
  const { pdf, findings } = await renderPdf(document, {}, engine);
  expect(pdfText(pdf)).toContain('Fit ◊ the ◊◊◊◊');
  expect(findings.map(({ message }) => message)).toEqual([
    'The print cannot show the characters 🔧 (U+1F527), ブ (U+30D6), レ (U+30EC), ー (U+30FC), キ (U+30AD), 刹 (U+5239), 车 (U+8F66); each prints as ◊',
  ]);
  expect(findings.every(({ file, line }) => file === 'FH-12-front-hub.bay' && line === 68)).toBe(true);
  expect(renderHtml(document).html).toContain('Fit 🔧 the ブレーキ');
});

test('emphasis within emphasis without end is set as far as it can be', async () => {
  const text = `${'*'.repeat(2000)}Go on${'*'.repeat(2000)}`;
  const { pdf } = await renderPdf(withText(text), {}, engine);
  expect(pdfText(pdf)).toContain('Go on');
  expect(renderHtml(withText(text)).html.match(/<strong>/g)?.length).toBeLessThan(100);
});

test('words of a drawing are cleaned as those of a line', async () => {
  const svg =
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20"><text y="9">Fit 🔧\u202e 刹</text></svg>';
  const read = readPicture(new TextEncoder().encode(svg), 'The bracket.');
  if (!('picture' in read)) throw new Error(read.problem);
  const source = { file: 'FH-12-front-hub.bay', line: 70 };
  const base = withText('Go on.');
  const blocks = base.blocks.map((block) =>
    block.kind === 'step' && block.number === '1'
      ? {
          ...block,
          items: [{ kind: 'figure' as const, picture: read.picture, rail: { off: 0, loose: 0 }, source }],
        }
      : block,
  );
  const { pdf, findings } = await renderPdf({ ...base, blocks }, {}, engine);
  expect(pdfText(pdf)).toContain('Fit ◊ ◊');
  expect(findings.map(({ message, line }) => [message, line])).toEqual([
    ['The invisible character U+202E was left out', 70],
    ['The print cannot show the characters 🔧 (U+1F527), 刹 (U+5239); each prints as ◊', 70],
  ]);
  expect(renderHtml({ ...base, blocks }).findings).toHaveLength(1);
});

test('letters with marks, superscripts and the signs of the trade print as they are', async () => {
  const text = 'Größe é ñ ç Å œ — “quoted” ½ ° ± × · µ Ω ≥ ≤ €';
  const { pdf, findings } = await renderPdf(withText(text), {}, engine);
  expect(findings).toEqual([]);
  expect(pdfText(pdf)).toContain('Größe é ñ ç Å œ');
});

test('a word of 5,000 characters breaks and stays on the page', async () => {
  const word = 'x'.repeat(5000);
  const { pdf } = await renderPdf(withText(word), {}, engine);
  expect(pdfText(pdf).replace(/[^x]/g, '').length).toBeGreaterThanOrEqual(10_000);
  expect(renderHtml(withText(word)).html).toContain(word);
});

test('empty titles fall back to the number', async () => {
  const base = withText('Go on.', ' ');
  const document = { ...base, identity: { ...base.identity, title: '' } };
  expect(renderHtml(document).html).toContain('<h1>FH-12</h1>');
  expect((await renderPdf(document, {}, engine)).pages).toBeGreaterThan(4);
});

test('a document without any block still prints', async () => {
  const document = { ...fh12(), blocks: [], bans: [] };
  expect((await renderPdf(document, {}, engine)).pages).toBe(1);
  expect(renderHtml(document).html).toContain('FH-12');
});
