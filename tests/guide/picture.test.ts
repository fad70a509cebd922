// Pictures: kinds told by their bytes, drawings cleaned.
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
  [svg('', ''), 'has no size: give it a viewBox, or a width and a height'],
])('%s %s', ([text, problem]) => {
  expect(cleanSvg(text)).toEqual({ problem });
});

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
