// A round of every fuzz target, the same each time. Longer rounds with other seeds: `npm run fuzz -w tests`.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CORPUS } from './inputs.js';
import { TARGETS } from './targets.js';

test.each(TARGETS.map((target) => [target.name, target.law, target] as const))(
  '%s: %s',
  async (_name, _law, target) => {
    await fc.assert(
      fc.asyncProperty(target.input, async (input) => target.run(input)),
      { numRuns: target.runs, seed: 20261005 },
    );
  },
);

test('the corpus is not empty', () => expect(CORPUS.length).toBeGreaterThan(5));
