// The shipped type: what the check believes it has is what the fonts have, read by another reader.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { create } from 'fontkit';
import { expect, test } from 'vitest';
import { SUBSTITUTE } from '../../compiler/src/document/clean.js';
import { characters, isPrintable } from '../../compiler/src/pdf/coverage.js';
import { EQUIVALENTS } from '../../compiler/src/pdf/equivalents.js';

const folder = fileURLToPath(new URL('../../compiler/fonts/', import.meta.url));
const faces = readdirSync(folder).filter((name) => name.endsWith('.ttf'));

test.for(faces)('%s', (name) => {
  const data = readFileSync(folder + name);
  const font = create(data);
  const expected = 'characterSet' in font ? [...font.characterSet] : [];
  // The end mark of the map is no character.
  expect([...characters(data)].sort((a, b) => a - b)).toEqual(
    expected.filter((code) => code !== 0xffff).sort((a, b) => a - b),
  );
});

test('signs of the trade are all there', () => {
  for (const sign of '0123456789N·m°±×–—−½¼¾μΩ≥≤√€“”‘’…◊')
    expect(isPrintable(sign.codePointAt(0) ?? 0), sign).toBe(true);
  expect(isPrintable(0x1f527)).toBe(false);
});

test('what stands in for a missing character is there itself', () => {
  for (const [missing, equivalent] of Object.entries(EQUIVALENTS)) {
    expect(isPrintable(missing.codePointAt(0) ?? 0), missing).toBe(false);
    for (const sign of equivalent) expect(isPrintable(sign.codePointAt(0) ?? 0), equivalent).toBe(true);
  }
  expect(isPrintable(SUBSTITUTE.codePointAt(0) ?? 0)).toBe(true);
});
