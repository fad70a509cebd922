// The print: structure, tags, fonts, identity, sameness.
import { copyFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { SHEETS } from '../../compiler/src/document/document.js';
import { renderPdf } from '../../compiler/src/output.js';
import { packagePath } from '../../compiler/src/package-files.js';
import { openEngine } from '../../compiler/src/pdf/engine.js';
import { everyKind } from './fixtures/every-kind.js';
import { fh12 } from './fixtures/fh-12.js';
import { pdfDamage, pdfFacts, pdfFonts, pdfObjects, pdfStructure, pdfText } from './support.js';

const engine = openEngine();
afterAll(engine.close);

/** The text as it was written into the file, without the spaces that a slanted word is given. */
const letters = (pdf: Uint8Array) => pdfText(pdf, '-raw').replace(/\s+/g, '');

test.for(SHEETS)('the %s has the expected tags and text', async (sheet) => {
  const { pdf, findings } = await renderPdf(fh12(sheet), {}, engine);
  expect(findings).toEqual([]);
  expect(pdfDamage(pdf)).toBe('');
  await expect(pdfStructure(pdf)).toMatchFileSnapshot(`golden/fh-12-${sheet}.print.golden.txt`);
});

test('a document with every kind prints in every form', async () => {
  const { pdf } = await renderPdf(everyKind(), { print: 'training' }, engine);
  await expect(pdfStructure(pdf)).toMatchFileSnapshot('golden/every-kind.print.golden.txt');
  for (const print of ['bay', 'walk'] as const)
    for (const paper of ['a4', 'letter'] as const) {
      const out = await renderPdf(everyKind(), { print, paper, colour: true }, engine);
      expect(out.pages).toBeGreaterThan(4);
      expect(pdfFacts(out.pdf)).toMatch(
        paper === 'a4' ? /Page size: +595\.\d+ x 841\.\d+/ : /Page size: +612 x 792/,
      );
    }
});

test('a long job is about six pages, and every page says what it is', async () => {
  const { pdf, pages } = await renderPdf(fh12(), {}, engine);
  expect(pages).toBe(6);
  const texts = pdfText(pdf, '-layout').split('\f').slice(0, pages);
  texts.forEach((page, i) => {
    expect(page).toContain('FH-12');
    expect(page).toContain('revision 4 of 2026-10-05');
    expect(page).toContain('Left side');
    expect(page).toContain(`page ${i + 1} of 6`);
    expect(page).toContain('Job number');
    expect(page).toContain('Local codes, the maker’s data and licensed practice come first.');
  });
  expect(letters(pdf).match(/DRAFT/g)).toHaveLength(6);
  expect(texts.map((page) => page.includes('Keep the van off its wheels until 7.1'))).toEqual([
    false,
    false,
    true,
    true,
    false,
    false,
  ]);
});

/** Where the running head of each page begins, in points from the left edge. */
const headsOf = (pdf: Uint8Array) =>
  pdfText(pdf, '-bbox')
    .split('<page ')
    .slice(1)
    .map((page) => Number(/<word xMin="([\d.]+)"[^>]*>FH-12</.exec(page)?.[1]));

test('on two-sided paper the binding edge alternates and the record is a sheet of its own', async () => {
  const { pdf, pages } = await renderPdf(fh12(), { twoSided: true }, engine);
  const heads = headsOf(pdf);
  const [odd, even] = [(20 / 25.4) * 72, (12 / 25.4) * 72];
  expect(heads).toHaveLength(pages);
  const texts = pdfText(pdf, '-layout').split('\f');
  heads.forEach((x, i) => {
    if (texts[i]?.includes('FH-12')) expect(x).toBeCloseTo(i % 2 === 0 ? odd : even, 0);
  });
  expect(texts.findIndex((text) => text.includes('tear off')) % 2).toBe(0);
  expect(pdfDamage(pdf)).toBe('');
});

test('on one-sided paper every page is bound at the left', async () => {
  const { pdf } = await renderPdf(fh12(), {}, engine);
  for (const x of headsOf(pdf)) expect(x).toBeCloseTo((20 / 25.4) * 72, 0);
});

test('signal words are black and white unless the colours of the standards are asked for', async () => {
  const red = /0\.74\d* 0\.11\d* 0\.14\d* scn?/;
  const black = pdfObjects((await renderPdf(everyKind(), {}, engine)).pdf);
  expect(black).not.toMatch(red);
  const coloured = (await renderPdf(everyKind(), { safetyColours: true }, engine)).pdf;
  expect(pdfObjects(coloured)).toMatch(red);
  expect(pdfText(coloured)).toBe(pdfText((await renderPdf(everyKind(), {}, engine)).pdf));
});

test('a released guide is not marked as a draft', async () => {
  const { pdf } = await renderPdf(everyKind(), {}, engine);
  expect(letters(pdf)).not.toContain('DRAFT');
});

test('the file is accessible: tagged, titled, in its language, PDF/UA-1, with bookmarks', async () => {
  const { pdf } = await renderPdf(fh12(), {}, engine);
  expect(pdfFacts(pdf)).toMatch(/Title: +FH-12 Front hub and bearing, replace Left side/);
  expect(pdfFacts(pdf)).toMatch(/Tagged: +yes/);
  const objects = pdfObjects(pdf);
  expect(objects).toMatch(/<pdfuaid:part>1<\/pdfuaid:part>|pdfuaid:part="1"/);
  expect(objects).toMatch(/\/Lang \(en-GB\)/);
  expect(objects).toMatch(/\/Outlines/);
  expect(objects.match(/\/S \/(?:LI|TH|Figure|H2)\b/g)?.length).toBeGreaterThan(60);
});

test('an archive form is made on request', async () => {
  const objects = pdfObjects((await renderPdf(everyKind(), { standard: 'a-2a' }, engine)).pdf);
  expect(objects).toMatch(/pdfaid:part(?:>|=")2/);
  expect(objects).toMatch(/pdfaid:conformance(?:>|=")A/);
});

test('only the shipped type is used, and all of it is embedded', async () => {
  const lines = pdfFonts((await renderPdf(everyKind(), {}, engine)).pdf)
    .trim()
    .split('\n')
    .slice(2);
  expect(lines.length).toBeGreaterThan(2);
  for (const line of lines) expect(line).toMatch(/AtkinsonHyperlegibleNext.* yes yes +yes/);
});

test('the same document gives the same bytes, in another process too', async () => {
  const other = openEngine();
  const [first, second, third] = [
    await renderPdf(everyKind(), {}, engine),
    await renderPdf(everyKind(), {}, engine),
    await renderPdf(everyKind(), {}, other),
  ];
  other.close();
  expect(Buffer.compare(first.pdf, second.pdf)).toBe(0);
  expect(Buffer.compare(first.pdf, third.pdf)).toBe(0);
});

test('the time stamp is the one asked for', async () => {
  const { pdf } = await renderPdf(fh12('record'), { timestamp: 1_700_000_000 }, engine);
  expect(pdfFacts(pdf)).toMatch(/CreationDate: +Tue Nov 14 22:13:20 2023 UTC/);
});

test('the typesetter is replaced when it has grown, and goes on', async () => {
  const small = openEngine({ memoryLimit: 1 });
  const one = await renderPdf(fh12('record'), {}, small);
  const two = await renderPdf(fh12('record'), {}, small);
  small.close();
  expect(Buffer.compare(one.pdf, two.pdf)).toBe(0);
});

test.each([
  [
    'gives no reason',
    'process.send({ problems: [], memory: 0 })',
    /^The typesetter refused this guide without a reason\.$/,
  ],
  ['ends', 'process.exit(1)', /^The typesetter stopped while it worked on this guide\.$/],
])('a typesetter that %s is told in one sentence', async (_, does, said) => {
  const folder = mkdtempSync(join(tmpdir(), 'baywright-broken-'));
  const script = join(folder, 'typesetter.mjs');
  writeFileSync(script, `process.on('message', () => ${does});`);
  const broken = openEngine({ script });
  await expect(renderPdf(fh12('record'), {}, broken)).rejects.toThrow(said);
  broken.close();
  rmSync(folder, { recursive: true });
});

test('a guide that ends the typesetter takes no other with it', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'baywright-ended-'));
  const script = join(folder, 'typesetter.mjs');
  const set = 'process.send({ pdf: new Uint8Array(), pages: 1, memory: 0 })';
  writeFileSync(
    script,
    `process.on('message', ({ timestamp }) => timestamp === 1 ? process.exit(1) : ${set});`,
  );
  const ended = openEngine({ script });
  const job = (timestamp: number) =>
    ended.typeset({ main: '', settings: '', pictures: [], pages: 1, standard: 'ua-1', timestamp });
  const all = await Promise.allSettled([0, 1, 2, 3].map(job));
  ended.close();
  expect(all.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled', 'fulfilled']);
  rmSync(folder, { recursive: true });
});

test('a guide that the typesetter does not come to an end with is given up, and the others are set', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'baywright-endless-'));
  const script = join(folder, 'typesetter.mjs');
  const set = 'process.send({ pdf: new Uint8Array(), pages: 1, memory: 0 })';
  writeFileSync(
    script,
    `process.on('message', ({ timestamp }) => { if (timestamp === 1) for (;;); ${set}; });`,
  );
  const endless = openEngine({ script, longest: 2000 });
  const job = (timestamp: number) =>
    endless.typeset({ main: '', settings: '', pictures: [], standard: 'ua-1', timestamp });
  const all = await Promise.allSettled([0, 1, 2].map(job));
  endless.close();
  expect(all.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
  expect(all[1]).toMatchObject({
    reason: { message: expect.stringMatching(/^The typesetter did not come to an end/) },
  });
  rmSync(folder, { recursive: true });
});

test('without its package the typesetter says so in one sentence', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'baywright-alone-'));
  const script = join(folder, 'typesetter.mjs');
  copyFileSync(packagePath('templates', 'pdf', 'typesetter.mjs'), script);
  const alone = openEngine({ script });
  await expect(renderPdf(fh12('record'), {}, alone)).rejects.toThrow(
    /^no PDF can be made: the typesetter does not start here \(Cannot find package '@\S+'\)\. Install Baywright anew, or make pages alone with --format html$/,
  );
  alone.close();
  rmSync(folder, { recursive: true });
});
