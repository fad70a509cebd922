// Lines that an edit leaves alone are not read again; the tree and the findings are those of a fresh reading.
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { EarlierLines, parse } from '../../language/src/syntax/index.js';

const FOLDERS = ['../../samples/procedures/', '../../samples/catalogue/', '../../samples/house/'];
const SAMPLES = FOLDERS.flatMap((folder) => {
  const at = new URL(folder, import.meta.url);
  return readdirSync(at)
    .filter((name) => name.endsWith('.bay'))
    .map((name) => ({ name, text: readFileSync(new URL(name, at), 'utf8') }));
});
/** What a hand puts in: letters, marks of the language, whole lines, an indent, a line end. */
const PUT = [
  '',
  'x',
  ' ',
  ':',
  ',',
  '"',
  '#',
  '?',
  '\n',
  '\n  ',
  '\n    note: Look\n',
  'step: Turn\n',
  ', when side left',
  '{',
  '3',
];

describe.each(SAMPLES)('$name', ({ name, text }) => {
  test('reads the same after any edits', () => {
    const edit = fc.record({
      at: fc.double({ min: 0, max: 1, noNaN: true }),
      take: fc.nat(12),
      put: fc.constantFrom(...PUT),
    });
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 6 }), (edits) => {
        const earlier = new EarlierLines();
        parse(text, name, earlier);
        let now = text;
        for (const { at, take, put } of edits) {
          const start = Math.floor(at * now.length);
          now = now.slice(0, start) + put + now.slice(start + take);
          expect(parse(now, name, earlier)).toEqual(parse(now, name));
        }
      }),
      { numRuns: 12, seed: 7 },
    );
  });
});

test('a line that did not move is the same node', () => {
  const earlier = new EarlierLines();
  const text = 'procedure X-1: Job\n\nparts\n  cover: Cover\n    held by bolt\n';
  const before = parse(text, 'x.bay', earlier).tree.lines[1]?.children[0]?.children[0];
  const after = parse(`${text}\n`, 'x.bay', earlier).tree.lines[1]?.children[0]?.children[0];
  expect(before?.kind).toBe('clauses');
  expect(after?.tokens).toBe(before?.tokens);
});

test('a step above the edit is the same node, in a section that is not', () => {
  const earlier = new EarlierLines();
  const text =
    'procedure X-1: Job\n\nremoval\n  step: One\n    remove cap\n  # look\n  step: Two\n    remove lid\n';
  const before = parse(text, 'x.bay', earlier).tree.lines[1];
  const after = parse(`${text}    remove pin\n`, 'x.bay', earlier).tree;
  expect(after.lines[1]?.children[0]).toBe(before?.children[0]);
  expect(after.lines[1]).not.toBe(before);
  expect(after).toEqual(parse(`${text}    remove pin\n`, 'x.bay').tree);
});
