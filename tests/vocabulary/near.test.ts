// Nearest words, for "did you mean".
import fc from 'fast-check';
import { distance } from 'fastest-levenshtein';
import { describe, expect, it } from 'vitest';
import { editDistance, nearest, nearestName, nearestWord } from '../../language/src/vocabulary/near.js';

describe('editDistance', () => {
  it.each([
    ['hub', 'hub', 0],
    ['hub', 'hbu', 1],
    ['hub', 'hubs', 1],
    ['hub', 'hob', 1],
    ['kitten', 'sitting', 3],
    // No letter is edited twice: the unrestricted distance would be 2.
    ['ca', 'abc', 3],
    ['', 'abc', 3],
  ])('%s to %s is %i', (a, b, edits) => {
    expect(editDistance(a, b)).toBe(edits);
    expect(editDistance(b, a)).toBe(edits);
  });

  const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c', '-'), maxLength: 9 });

  it('is never more than the plain edit distance, and never less than half of it', () => {
    fc.assert(
      fc.property(word, word, (a, b) => {
        const edits = editDistance(a, b);
        expect(edits).toBeLessThanOrEqual(distance(a, b));
        expect(edits * 2).toBeGreaterThanOrEqual(distance(a, b));
      }),
    );
  });

  it('says the same with a limit, up to the limit', () => {
    fc.assert(
      fc.property(word, word, fc.integer({ min: 0, max: 5 }), (a, b, limit) => {
        expect(editDistance(a, b, limit)).toBe(Math.min(editDistance(a, b), limit + 1));
      }),
    );
  });
});

describe('nearest', () => {
  const names = ['hub', 'hub-bolt', 'hub-nut', 'axle-nut', 'caliper-bolt', 'caliper', 'disc'];

  it('finds slips of the fingers', () => {
    expect(nearest('hub-blot', names)).toEqual(['hub-bolt']);
    expect(nearest('calliper', names)).toEqual(['caliper']);
    expect(nearest('dsic', names)).toEqual(['disc']);
  });

  it('gives nothing when nothing is near, and not the word itself', () => {
    expect(nearest('gearbox', names)).toEqual([]);
    expect(nearest('hub', ['hub'])).toEqual([]);
    expect(nearest('a', ['b'])).toEqual([]);
  });

  it('gives at most three, nearest first, then by common beginning, then by alphabet', () => {
    expect(nearest('bolt-1', ['bolt-4', 'bolt-3', 'bolt-2', 'colt-1', 'bolt-12'])).toEqual([
      'bolt-12',
      'bolt-2',
      'bolt-3',
    ]);
    expect(nearest('bolt-1', ['bolt-4', 'bolt-3'], 1)).toEqual(['bolt-3']);
  });
});

describe('nearestName', () => {
  const names = [
    'inlet-hose',
    'upper-arm',
    'drive-belt',
    'cover-bolt',
    'bolt-1',
    'coolant-hose-in',
    'wheel-nut',
  ];

  it('finds slips of the fingers within a word, and of the hyphen', () => {
    expect(nearestName('inelt-hose', names)).toEqual(['inlet-hose']);
    expect(nearestName('cover-blot', names)).toEqual(['cover-bolt']);
    expect(nearestName('wheelnut', names)).toEqual(['wheel-nut']);
    expect(nearestName('drive-bel', names)).toEqual(['drive-belt']);
  });

  it.each(['outlet-hose', 'lower-arm', 'bolt-2', 'bolt-11', 'coolant-hose-out', 'wheel-nut-2'])(
    'takes %s for another thing',
    (name) => {
      expect(nearestName(name, names)).toEqual([]);
    },
  );

  it('takes a word that some name has for meant', () => {
    expect(nearestName('drive-bolt', ['drive-belt'])).toEqual(['drive-belt']);
    expect(nearestName('drive-bolt', names)).toEqual([]);
  });
});

describe('nearestWord', () => {
  const words = ['torque', 'thread', 'count', 'install', 'inspect', 'hang'];

  it('finds slips of the fingers first', () => {
    expect(nearestWord('tourque', words)).toEqual(['torque']);
  });

  it('takes a word that is cut short for what it begins', () => {
    expect(nearestWord('torq', words)).toEqual(['torque']);
    expect(nearestWord('inst', words)).toEqual(['install']);
  });

  it('leaves what is too short, or begins too much', () => {
    expect(nearestWord('in', words)).toEqual([]);
    expect(nearestWord('abc', ['abcd1', 'abcd2', 'abcd3', 'abcd4'])).toEqual([]);
  });
});
