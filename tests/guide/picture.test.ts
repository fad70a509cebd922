// Pictures: kinds told by their bytes, drawings cleaned.
import { crc32, deflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { cleanSvg } from '../../compiler/src/document/clean-svg.js';
import { readPicture } from '../../compiler/src/document/read-picture.js';
import { PHOTO } from './fixtures/every-kind.js';

const svg = (inner: string, attributes = 'viewBox="0 0 10 10"') =>
  `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>${inner}</svg>`;
const bytes = (text: string) => new TextEncoder().encode(text);

test.for<[string, string[]]>([
  ['<script>alert(1)</script>', ['<script>']],
  ['<foreignObject><body xmlns="http://www.w3.org/1999/xhtml">x</body></foreignObject>', ['<foreignObject>']],
  ['<rect onclick="alert(1)" width="1" height="1"/>', ['onclick']],
  ['<use href="https://example.org/x.svg#a"/>', ['href="https://example.org/x.svg#a"']],
  ['<image href="file:///etc/passwd"/>', ['href="file:///etc/passwd"']],
  ['<rect fill="url(https://example.org/p)" width="1" height="1"/>', ['fill="url(https://example.org/p)"']],
  ['<style>@import "https://example.org/a.css"</style>', ['<style>']],
  ['<animate attributeName="href" to="javascript:alert(1)"/>', ['<animate>']],
  ['<a href="javascript:alert(1)"><path d="M0 0"/></a>', ['<a>']],
])('%s is left out and named', ([inner, removed]) => {
  const cleaned = cleanSvg(svg(inner));
  expect(cleaned).toMatchObject({ removed });
  expect('svg' in cleaned && cleaned.svg).not.toMatch(/script|alert|onclick|example\.org|passwd|import/);
});

test('what draws stays', () => {
  const inner =
    '<defs><linearGradient id="g"><stop offset="0" stop-color="#fff"></stop></linearGradient></defs><path d="M0 0L1 1" fill="url(#g)"></path><text x="1" y="2">A &amp; B</text>';
  expect(cleanSvg(svg(inner))).toEqual({
    svg: `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="0 0 10 10">${inner}</svg>`,
    width: 10,
    height: 10,
    removed: [],
  });
});

test('entities that would grow are refused', () => {
  const bomb = `<!DOCTYPE svg [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;">]>${svg('<text>&b;</text>')}`;
  expect(cleanSvg(bomb)).toHaveProperty('problem');
});

test.for<[string, string]>([
  ['<html></html>', 'is not an SVG drawing'],
  [svg('', ''), 'has no size that can be used: give it a viewBox, or a width and a height'],
  [
    svg('', 'viewBox="0 0 NaN 5"'),
    'has no size that can be used: give it a viewBox, or a width and a height',
  ],
  [
    svg('', 'viewBox="0 0 1e12 1e12"'),
    'has no size that can be used: give it a viewBox, or a width and a height',
  ],
  [
    svg('', 'viewBox="0 0 Infinity 5"'),
    'has no size that can be used: give it a viewBox, or a width and a height',
  ],
])('%s %s', ([text, problem]) => {
  expect(cleanSvg(text)).toEqual({ problem });
});

test('a part used by what is used again and again is refused, and one that uses itself', () => {
  const level = (n: number): string => `<g id="a${n}">${`<use href="#a${n - 1}"/>`.repeat(10)}</g>`;
  const levels = Array.from({ length: 6 }, (_, i) => level(i + 1)).join('');
  expect(cleanSvg(svg(`<g id="a0"><path d="M0 0"/></g>${levels}`))).toEqual({
    problem: 'draws more than 200 thousand parts; draw it simpler',
  });
  expect(cleanSvg(svg('<g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g>'))).toEqual({
    problem: 'has a part that uses itself; draw it simpler',
  });
  const nut = '<g id="nut"><circle r="2"/><path d="M0 0h3"/></g>';
  expect(cleanSvg(svg(nut + '<use href="#nut" x="9"/>'.repeat(2000)))).toHaveProperty('svg');
});

/** A PNG of so many pixels, whole by its marks and sums, with hardly a byte in it. */
const hollowPng = (width: number, height: number, exif?: Buffer): Uint8Array => {
  const chunk = (type: string, data: Buffer): Buffer => {
    const body = Buffer.concat([Buffer.from(type), data]);
    const ends = Buffer.alloc(8);
    ends.writeUInt32BE(data.length, 0);
    ends.writeUInt32BE(crc32(body), 4);
    return Buffer.concat([ends.subarray(0, 4), body, ends.subarray(4)]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head[8] = 1;
  const mark = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    mark,
    chunk('IHDR', head),
    ...(exif ? [chunk('eXIf', exif)] : []),
    chunk('IDAT', deflateSync(Buffer.alloc(9))),
    chunk('IEND', Buffer.alloc(0)),
  ]);
};

test('pictures of more pixels than memory is for, and of a shape that nobody sees', () => {
  expect(readPicture(hollowPng(30_000, 30_000), 'x')).toEqual({
    problem: 'has 900 million pixels; save it smaller',
  });
  const inside = `<image href="data:image/png;base64,${Buffer.from(hollowPng(30_000, 30_000)).toString('base64')}"/>`;
  expect(readPicture(bytes(svg(inside)), 'x')).toEqual({
    problem: 'holds a picture that has 900 million pixels; save it smaller',
  });
  expect(readPicture(hollowPng(30_000, 20), 'x')).toEqual({
    problem: 'is 1500 times as wide as it is high; cut it to what is to be seen',
  });
  expect(readPicture(bytes(svg('', 'viewBox="0 0 1 90"')), 'x')).toEqual({
    problem: 'is 90 times as high as it is wide; cut it to what is to be seen',
  });
});

/** The note of a camera that was held on its side: turned a quarter (6). */
const ON_ITS_SIDE = Buffer.from('4d4d002a00000008000101120003000000010006000000000000', 'hex');

/** The file of a photograph of 30 by 20 with that note, in three forms. */
const SIDEWAYS: Readonly<Record<string, Uint8Array>> = {
  png: hollowPng(30, 20, ON_ITS_SIDE),
  jpeg: Buffer.concat([
    Buffer.from('ffd8ffe10022457869660000', 'hex'),
    ON_ITS_SIDE,
    Buffer.from(
      'ffc0001108001400 1e03012200021101031101ffda000c03010002110311003f000102ffd9'.replace(' ', ''),
      'hex',
    ),
  ]),
  webp: Buffer.concat([
    Buffer.from('RIFF'),
    Buffer.from([56, 0, 0, 0]),
    Buffer.from('WEBPVP8X'),
    Buffer.from('0a00000008000000 1d0000130000'.replace(' ', ''), 'hex'),
    Buffer.from('EXIF'),
    Buffer.from([26, 0, 0, 0]),
    ON_ITS_SIDE,
  ]),
};

test.for(Object.entries(SIDEWAYS))(
  'a picture stored on its side has the size it is seen in, or is told: %s',
  ([type, data]) => {
    // Browsers do not agree on the note in the other two.
    expect(readPicture(data, 'x')).toMatchObject(
      type === 'jpeg'
        ? { picture: { type, width: 20, height: 30 } }
        : { problem: 'is stored turned, and not every screen turns it back; turn it and save it again' },
    );
  },
);

test('kinds are told by their bytes, not by a name', () => {
  expect(readPicture(PHOTO.data, 'x')).toMatchObject({ picture: { type: 'png', width: 120, height: 80 } });
  expect(readPicture(bytes(svg('<path d="M0 0"/>')), 'x')).toMatchObject({
    picture: { type: 'svg', width: 10 },
  });
  expect(readPicture(bytes('GIF89a'), 'x')).toEqual({ problem: 'is not a PNG, JPEG, WebP or SVG picture' });
  expect(readPicture(PHOTO.data.slice(0, 12), 'x')).toEqual({
    problem: 'is damaged: its size cannot be read',
  });
  expect(readPicture(bytes(svg('<script/>')), 'x')).toMatchObject({
    warning: expect.stringContaining('<script>'),
  });
});
