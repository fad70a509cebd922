// What a guide says it is for.
import { describe, expect, it } from 'vitest';
import { plain } from '../../compiler/src/document/inline.js';
import { CATALOGUE, HEAD, lower } from './lower-helper.js';

const said = (applies: string, files = {}, language: 'en' | 'de' = 'en') =>
  plain(lower(HEAD.replace('applies to van', applies), { files, language }).block('masthead').appliesTo);
const OPEN = { 'catalogue.bay': CATALOGUE.replace('    years 2018 to 2025\n', '') };

describe('what it applies to', () => {
  it.each([
    ['applies to van', 'Test van'],
    ['applies to van from 2019 to 2021', 'Test van, 2019 to 2021'],
    ['applies to van from 2020 to 2020', 'Test van, 2020'],
    ['applies to van from 2019', 'Test van, 2019 to 2025'],
    ['applies to van from 2025', 'Test van, 2025'],
    ['applies to van from 2019, when axle heavy', 'Test van, 2019 to 2025, axle heavy'],
  ])('%s', (applies, expected) => {
    expect(said(applies)).toBe(expected);
  });

  it('has no end where the vehicle has none', () => {
    expect(said('applies to van from 2019', OPEN)).toBe('Test van, from 2019');
    expect(said('applies to van from 2019', OPEN, 'de')).toBe('Test van, ab 2019');
  });

  it.each([
    ['SX7M300ALJ1000001', 'Test van, VIN SX7M300ALJ1000001'],
    ['SX7M300ALJ1000001 to SX7M300ALS1999999', 'Test van'],
  ])('names the one vehicle it is written for: %s', (vin, expected) => {
    const one = { 'catalogue.bay': CATALOGUE.replace('    years 2018 to 2025\n', `    vin ${vin}\n`) };
    expect(said('applies to van', one)).toBe(expected);
  });
});
