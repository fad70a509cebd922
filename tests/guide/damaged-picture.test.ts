// A damaged picture costs the guide that picture and nothing else: it is a finding at its line, and a note stands where
// it would be.
import { deflateSync } from 'node:zlib';
import { createLibrary, DEFAULT_SETTINGS } from '@baywright/language';
import { afterAll, describe, expect, test } from 'vitest';
import type { Block } from '../../compiler/src/document/blocks.js';
import type { GuideDocument } from '../../compiler/src/document/document.js';
import { lowerGuide } from '../../compiler/src/document/lower/index.js';
import type { Picture } from '../../compiler/src/document/picture.js';
import { readPicture } from '../../compiler/src/document/read-picture.js';
import { renderPdf } from '../../compiler/src/output.js';
import { openEngine } from '../../compiler/src/pdf/engine.js';
import { PHOTO } from './fixtures/every-kind.js';
import { fh12 } from './fixtures/fh-12.js';
import { CATALOGUE } from './lower-helper.js';
import { pdfDamage, pdfText } from './support.js';

const engine = openEngine();
afterAll(engine.close);

const bytes = (...parts: readonly (string | readonly number[])[]): Uint8Array =>
  Uint8Array.from(
    parts.flatMap((part) => (typeof part === 'string' ? [...part].map((c) => c.charCodeAt(0)) : [...part])),
  );

/** A JPEG with a header of 16 by 16 and an end, and nothing sound between. */
const JPEG = bytes(
  [0xff, 0xd8, 0xff, 0xe0, 0, 16],
  'JFIF\0',
  [1, 1, 0, 0, 1, 0, 1, 0, 0],
  [0xff, 0xc0, 0, 17, 8, 0, 16, 0, 16, 3, 1, 0x22, 0, 2, 0x11, 1, 3, 0x11, 1],
  [0xff, 0xda, 0, 12, 3, 1, 0, 2, 0x11, 3, 0x11, 0, 63, 0, 1, 2, 3],
  [0xff, 0xd9],
);
const WEBP = bytes('RIFF', [22, 0, 0, 0], 'WEBPVP8L', [10, 0, 0, 0, 0x2f, 15, 0xc0, 3, 0, 7, 7, 7, 7, 7]);

describe('a file that ends too early is known by its own bytes', () => {
  test.for<[string, Uint8Array]>([
    ['PNG', PHOTO.data.slice(0, PHOTO.data.length - 9)],
    [
      'PNG with a changed byte',
      PHOTO.data.map((byte, i) => (i === PHOTO.data.length - 20 ? byte ^ 1 : byte)),
    ],
    ['JPEG', JPEG.slice(0, JPEG.length - 2)],
    ['WebP', WEBP.slice(0, WEBP.length - 3)],
  ])('%s', ([, data]) => {
    expect(readPicture(data, 'x')).toEqual({
      problem: 'is damaged: the file is not whole; copy or save it again',
    });
  });

  test('a whole one is read', () => {
    expect(readPicture(PHOTO.data, 'x')).toHaveProperty('picture');
  });
});

const PROCEDURE = `procedure T-01: Wheel off

use "catalogue.bay"

applies to van

removal
  step: Take it off
    picture "hub.png": The hub from behind.
    remove wheel-nut, wheel
      picture "nut.png"
`;

test('where a picture cannot be read, the guide says so at its place', () => {
  const files: Readonly<Record<string, string>> = { 'catalogue.bay': CATALOGUE, 'main.bay': PROCEDURE };
  const library = createLibrary(
    { read: (path) => files[path], list: () => Object.keys(files) },
    DEFAULT_SETTINGS,
  );
  const analysis = library.analyse('main.bay');
  if (!analysis) throw new Error('main.bay is not there');
  const { document, findings } = lowerGuide(
    analysis,
    { sheet: 'guide', option: {}, units: 'as written', language: 'en' },
    { settings: DEFAULT_SETTINGS, bytes: () => PHOTO.data.slice(0, 60) },
  );
  expect(findings.map(({ message, line }) => [line, message])).toEqual([
    [9, 'The picture “hub.png” is damaged: the file is not whole; copy or save it again'],
    [11, 'The picture “nut.png” is damaged: the file is not whole; copy or save it again'],
  ]);
  expect(JSON.stringify(document.blocks)).toContain('The picture “hub.png” cannot be shown here.');
  expect(JSON.stringify(document.blocks)).toContain('The picture “nut.png” cannot be shown here.');
});

function withPicture(data: Uint8Array, type: Picture['type']): GuideDocument {
  const base = fh12();
  const picture: Picture = {
    type,
    data,
    width: 16,
    height: 16,
    alt: 'The hub from behind',
    name: 'hub.jpg',
    source: { file: 'procedures/FH-12.bay', line: 77 },
  };
  const blocks = base.blocks.map(
    (block): Block =>
      block.kind === 'step' && block.number === '1'
        ? { ...block, items: [{ kind: 'figure', picture, rail: { off: 0, loose: 0 } }, ...block.items] }
        : block,
  );
  return { ...base, blocks };
}

const svg = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10';

test.for<[string, Picture['type'], Uint8Array]>([
  ['JPEG', 'jpeg', JPEG],
  ['WebP', 'webp', WEBP],
  ['PNG', 'png', pngOf(deflateSync(Buffer.alloc(3)))],
  ['SVG', 'svg', bytes(svg)],
])('a %s that the typesetter refuses leaves a note, and the rest is printed', async ([, type, data]) => {
  const { pdf, findings } = await renderPdf(withPicture(data, type), {}, engine);
  expect(findings).toEqual([
    {
      message: 'The picture “hub.jpg” is damaged and cannot be printed; save it again',
      file: 'procedures/FH-12.bay',
      line: 77,
    },
  ]);
  expect(pdfDamage(pdf)).toBe('');
  const text = pdfText(pdf, '-raw').replace(/\s+/g, ' ');
  expect(text).toContain('The picture “hub.jpg” cannot be shown here. The hub from behind');
  expect(text).toContain('Chock the rear wheels');
});

/** A PNG of 16 by 16 with sound chunks around the given picture data. */
function pngOf(data: Uint8Array): Uint8Array {
  const head = [0, 0, 0, 16, 0, 0, 0, 16, 8, 2, 0, 0, 0];
  return bytes(
    [0x89],
    'PNG\r\n',
    [0x1a, 0x0a],
    chunk('IHDR', head),
    chunk('IDAT', [...data]),
    chunk('IEND', []),
  );
}

function chunk(name: string, data: readonly number[]): readonly number[] {
  const body = bytes(name, data);
  let crc = ~0;
  for (const byte of body) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  const word = (value: number) => [24, 16, 8, 0].map((shift) => (value >>> shift) & 255);
  return [...word(data.length), ...body, ...word(~crc)];
}
