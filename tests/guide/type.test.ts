// The shipped type: what the check believes it has is what the fonts have, read by another reader.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { create } from 'fontkit';
import { expect, test } from 'vitest';
import { SUBSTITUTE } from '../../compiler/src/document/clean.js';
import { isPrintable } from '../../compiler/src/pdf/coverage.js';
import { EQUIVALENTS } from '../../compiler/src/pdf/equivalents.js';
import { FACES, fontOf, widthOf } from '../../compiler/src/pdf/type/faces.js';

const folder = fileURLToPath(new URL('../../compiler/fonts/', import.meta.url));

test.for(FACES)('%s', (face) => {
  const font = create(readFileSync(`${folder}AtkinsonHyperlegibleNext_${face}.ttf`));
  if (!('characterSet' in font)) throw new Error('it is one font');
  // The end mark of the map is no character.
  expect([...fontOf(face).glyphs.keys()].sort((a, b) => a - b)).toEqual(
    font.characterSet.filter((code) => code !== 0xffff).sort((a, b) => a - b),
  );
  const width = (text: string, features: readonly string[]) =>
    font.layout(text, [...features]).positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0) /
    font.unitsPerEm;
  for (const text of ['AVATAR To Wy. “Torque” 110 N·m — fly, qj', 'L’été 7/8, Größe, 12.5 × 40'])
    for (const tabular of [false, true])
      expect(widthOf(text, face, 72 / 25.4, tabular), text).toBeCloseTo(
        width(text, tabular ? ['kern', 'tnum'] : ['kern']),
        6,
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
