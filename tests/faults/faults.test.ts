// Every one-edit fault of every clean sample is found, at a line that answers for it, and the finding's own fix leaves nothing
// of it behind.
import { describe, expect, test } from 'vitest';
import { applyEdits, grave, libraryOver, readLibrary } from './library.js';
import { type Fault, type FaultKind, lineNumber, seedFaults } from './seed.js';

const root = new URL('../../samples', import.meta.url).pathname;
const { library, withText } = libraryOver(readLibrary(root));
const procedures = library.host.list().filter((p) => p.startsWith('procedures/'));

interface Outcome {
  readonly path: string;
  readonly fault: Fault;
  readonly found: readonly { code: string; message: string; line: number }[];
  /** What the first finding's own fix leaves; undefined when it has none. */
  readonly left: readonly string[] | undefined;
}

const outcomes: Outcome[] = procedures.flatMap((path) => {
  const analysis = library.analyse(path);
  if (!analysis) return [];
  return seedFaults(analysis).map((fault): Outcome => {
    const found = grave(withText(path, fault.text).findings);
    const fix = found[0]?.fixes[0];
    const left = fix
      ? grave(withText(path, applyEdits(fault.text, path, fix.edits)).findings).map(
          (f) => `${f.code} ${f.message}`,
        )
      : undefined;
    return {
      path,
      fault,
      found: found.map((f) => ({
        code: f.code,
        message: f.message,
        line: lineNumber(fault.text, f.span.start),
      })),
      left,
    };
  });
});

const told = (o: Outcome): string =>
  `${o.path}:${o.fault.line} ${o.fault.kind}: ${o.fault.what} → ${o.found.map((f) => `${f.line} ${f.code} ${f.message}`).join(' | ') || 'nothing'}`;

describe('seeded faults', () => {
  test('samples are clean before they are spoilt', () => {
    for (const path of procedures)
      expect(
        grave(library.analyse(path)?.findings ?? []).map((f) => `${path} ${f.code} ${f.message}`),
      ).toEqual([]);
  });

  test('at least 800 faults are seeded, and all are found', () => {
    const kinds = [...new Set(outcomes.map((o) => o.fault.kind))];
    const row = (kind: FaultKind): string => {
      const own = outcomes.filter((o) => o.fault.kind === kind);
      const count = (test: (o: Outcome) => boolean): number => own.filter(test).length;
      return `${kind.padEnd(26)} seeded ${own.length}, found ${count((o) => o.found.length > 0)}, alone ${count((o) => o.found.length === 1)}, with a fix ${count((o) => o.left !== undefined)}`;
    };
    console.log(
      [`faults seeded in ${procedures.length} procedures: ${outcomes.length}`, ...kinds.map(row)].join('\n'),
    );
    expect(outcomes.filter((o) => o.found.length === 0).map(told)).toEqual([]);
    expect(outcomes.length).toBeGreaterThanOrEqual(800);
  });

  test('a deleted line that puts something back, or makes the vehicle safe, gives exactly one finding', () => {
    const kinds: readonly FaultKind[] = ['put-back line deleted', 'chocks deleted'];
    const wrong = outcomes.filter((o) => kinds.includes(o.fault.kind) && o.found.length !== 1);
    expect(wrong.map(told)).toEqual([]);
  });

  test('the finding names one of the things of the line', () => {
    const wrong = outcomes.filter(
      (o) =>
        o.fault.kind === 'put-back line deleted' &&
        !o.fault.names.some((n) => o.found[0]?.message.includes(n)),
    );
    expect(wrong.map(told)).toEqual([]);
  });

  test("no echo: the first finding's own fix leaves nothing that the fault caused", () => {
    const independent = (o: Outcome): boolean =>
      o.fault.kind === 'take-apart line deleted' && o.found.length > 1;
    const wrong = outcomes.filter((o) => o.left !== undefined && o.left.length > 0 && !independent(o));
    expect(wrong.map((o) => `${told(o)} ⇒ ${o.left?.join(' & ')}`)).toEqual([]);
  });
});
