// The fitting half proposed for the sample procedures brings the vehicle back together: what it writes is checked by
// the same checker, after everything the sample itself puts back has been cut away.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { createLibrary, DEFAULT_SETTINGS, fittingHalf, stateAt, VERBS } from '../../language/src/index.js';

const ROOT = new URL('../fixtures/design/', import.meta.url);
const files = new Map<string, string>();
for (const folder of ['catalogue', 'house', 'procedures'])
  for (const name of readdirSync(new URL(`${folder}/`, ROOT)))
    files.set(`${folder}/${name}`, readFileSync(new URL(`${folder}/${name}`, ROOT), 'utf8'));

const analyse = (path: string, text: string) => {
  const library = createLibrary(
    { read: (p) => (p === path ? text : files.get(p)), list: () => [...files.keys()] },
    DEFAULT_SETTINGS,
  );
  const analysis = library.analyse(path);
  if (!analysis?.run) throw new Error(`${path} has no work`);
  return { ...analysis, run: analysis.run };
};

const procedures = [...files.keys()].filter((p) => p.startsWith('procedures/') && !p.includes('WH-01'));

/** The lines proposed for a piece of work, its things declared. */
function proposedFor(work: string): string[] {
  const text = `procedure X-1: Hose, renew

parts
  hose: Hose
    held by hose-clamp
    once

fasteners
  hose-clamp: Hose clamp
    1 of clamp, hex 7 mm
    torque 3 N·m, per "S-1"
    once

sources
  S-1: Sheet

temporary
  dust-cap: Dust cap

tools
  strap: Strap

removal
  step: Take it off
${work}`;
  const { installation, completion } = fittingHalf(analyse('procedures/X-1.bay', text).run);
  return [...installation, ...completion].flatMap((step) => step.lines);
}

describe('the fitting half', () => {
  test('takes away what was put on for the job, tags and ties too', () => {
    expect(proposedFor('    tag vehicle\n    tie hose with strap\n    place dust-cap on hose\n')).toEqual(
      expect.arrayContaining(['untag vehicle', 'untie hose', 'remove dust-cap']),
    );
  });
  test('ends, whatever was left undone', () => {
    for (const verb of VERBS)
      for (const thing of ['vehicle', 'suspension', 'hose', 'hose-clamp', 'dust-cap'])
        expect(proposedFor(`    ${verb.word} ${thing}\n`).length, verb.word).toBeLessThan(10);
  });
  for (const path of procedures) {
    test(`of ${path}`, () => {
      const whole = files.get(path) ?? '';
      const half = whole.slice(0, whole.indexOf('\ninstallation') + 1);
      const { run } = analyse(path, half);
      const before = stateAt(run, half.length)
        .filter((f) => f.group === 'off' || f.group === 'disconnected')
        .map((f) => f.thing.name);
      const proposed = fittingHalf(run);
      const written = (['installation', 'completion'] as const)
        .map(
          (phase) =>
            `${phase}\n${proposed[phase].map((s) => `  step: ${s.title}\n${s.lines.map((l) => `    ${l}\n`).join('')}`).join('')}`,
        )
        .join('\n');
      const after = analyse(path, `${half}${written}`);
      const left = new Set(proposed.left.map((t) => t.name));
      const still = stateAt(after.run, Number.MAX_SAFE_INTEGER).filter(
        (f) =>
          ['off', 'hung', 'disconnected', 'capped', 'untorqued', 'raised', 'placed'].includes(f.group) &&
          !left.has(f.thing.name),
      );
      expect(before.length).toBeGreaterThan(0);
      expect(still.map((f) => `${f.thing.name} ${f.group}`)).toEqual([]);
      const order = after.findings.filter(
        (f) => f.severity === 'error' && f.span.start >= half.length && /^S[12]/.test(f.code),
      );
      expect(order.map((f) => `${f.code} ${f.message}`)).toEqual([]);
    });
  }
});
