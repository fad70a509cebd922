// Fuzzes for as long as asked, each round with another seed, and tells how many inputs each target took.
// FUZZ_SECONDS: how long in all (60). FUZZ_SEED: the first seed (the clock). FUZZ_ONLY: a target by name.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { TARGETS } from './targets.js';

const SECONDS = Number(process.env.FUZZ_SECONDS ?? 60);
const FIRST_SEED = Number(process.env.FUZZ_SEED ?? Math.floor(Date.now() / 1000));
const ONLY = process.env.FUZZ_ONLY;
const REPORT = fileURLToPath(new URL('../.cache/fuzz', import.meta.url));

test(
  'fuzz',
  async () => {
    const targets = TARGETS.filter(({ name }) => ONLY === undefined || name === ONLY);
    const counts = new Map(
      targets.map(({ name }) => [name, { inputs: 0, rounds: 0, failures: [] as string[] }]),
    );
    const end = Date.now() + SECONDS * 1000;
    for (let seed = FIRST_SEED; Date.now() < end; seed++) {
      for (const target of targets) {
        const count = counts.get(target.name);
        if (count === undefined || Date.now() >= end) continue;
        const property = fc.asyncProperty(target.input, async (input) => target.run(input));
        const result = await fc.check(property, { numRuns: target.runs, seed, endOnFailure: false });
        count.inputs += result.numRuns;
        count.rounds++;
        if (!result.failed) continue;
        const error =
          result.errorInstance instanceof Error ? result.errorInstance.message : String(result.errorInstance);
        count.failures.push(
          `seed ${seed}: ${error.slice(0, 400)}\n${JSON.stringify(result.counterexample).slice(0, 4000)}`,
        );
      }
    }
    const rows = [...counts].map(
      ([name, { inputs, rounds, failures }]) =>
        `${name.padEnd(18)} ${String(inputs).padStart(9)} inputs ${String(rounds).padStart(5)} rounds ${String(failures.length).padStart(3)} failures`,
    );
    const failures = [...counts].flatMap(([name, count]) =>
      count.failures.map((one) => `## ${name}\n${one}`),
    );
    const report = `Fuzzed for ${SECONDS} s from seed ${FIRST_SEED}\n${rows.join('\n')}\n${failures.length > 0 ? `\n${failures.join('\n\n')}\n` : ''}`;
    mkdirSync(REPORT, { recursive: true });
    writeFileSync(join(REPORT, 'report.txt'), report);
    process.stdout.write(`\n${report}`);
    expect(failures).toEqual([]);
  },
  (SECONDS + 600) * 1000,
);
