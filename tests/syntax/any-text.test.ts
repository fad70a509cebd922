// Any text at all is read: nothing throws, nothing is lost, nothing takes more than linear time or a deep stack.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { format } from '../../language/src/format/index.js';
import { meaningOf } from '../../language/src/format/same-meaning.js';
import { type Line, parse, type Tree, walkLines } from '../../language/src/syntax/index.js';
import { lineAt, namesOf, nodeFields, pathAt } from '../../language/src/syntax/walk.js';

const WORDS = [
  'procedure',
  'parts',
  'step',
  'remove',
  'when',
  'held by',
  'torque',
  '115',
  '±',
  '10',
  'N·m',
  ',',
  ':',
  '"',
  '?',
  'of',
  'to',
  'then',
  'back',
  '-',
  'if below limit',
  'otherwise',
  'caution',
  'reject',
  'rules',
  'after',
  'require',
  'any',
  'marked',
  'over',
  '{',
  '}',
  '#',
  '# ',
  '\t',
  '  ',
  '    ',
  '\n',
  '\r\n',
  '\r',
  'at least',
  'é',
  '車',
  '\u{1f600}',
  '\\',
  '3/4"',
  '+10/-5',
  '2026-10-05',
  'since',
  'or',
  'and',
  'conditions',
  'prerequisites',
  'only',
  'accept',
  'clip',
  'at',
];
const text = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc.array(fc.constantFrom(...WORDS), { maxLength: 60 }).map((words) => words.join(' ')),
  fc
    .array(fc.tuple(fc.integer({ min: 0, max: 5 }), fc.array(fc.constantFrom(...WORDS), { maxLength: 6 })), {
      maxLength: 20,
    })
    .map((lines) => lines.map(([indent, words]) => ' '.repeat(indent) + words.join(' ')).join('\n')),
);

describe('any text', () => {
  test('is read, and every character belongs to a token, a comment, text or what parts them', () => {
    fc.assert(
      fc.property(text, (written) => {
        const { tree } = parse(written, 'any.bay');
        expect(leftOut(tree)).toBe('');
      }),
      { numRuns: 3000, seed: 7 },
    );
  });

  test('has findings and lines inside it, in order', () => {
    fc.assert(
      fc.property(text, (written) => {
        const { tree, findings } = parse(written, 'any.bay');
        for (const { span, fixes } of findings) {
          expect(span.start >= 0 && span.start <= span.end && span.end <= written.length).toBe(true);
          for (const { edits } of fixes)
            for (const edit of edits) expect(edit.span.end).toBeLessThanOrEqual(written.length);
        }
        walkLines(tree, (line, parent) => {
          expect(line.end).toBeGreaterThanOrEqual(line.code.end);
          for (const field of nodeFields(line)) expect(line).toHaveProperty(field);
          if (parent !== undefined) {
            expect(line.start).toBeGreaterThan(parent.start);
            expect(line.end).toBeLessThanOrEqual(parent.end);
          }
          return undefined;
        });
      }),
      { numRuns: 2000, seed: 8 },
    );
  });

  test('can be asked what stands at every offset', () => {
    fc.assert(
      fc.property(text, (written) => {
        const { tree } = parse(written, 'any.bay');
        for (let offset = 0; offset <= written.length; offset++) {
          const line = lineAt(tree, offset);
          expect(line === undefined || pathAt(tree, offset).includes(line)).toBe(true);
          if (line) namesOf(line);
        }
      }),
      { numRuns: 300, seed: 9 },
    );
  });

  test('is formatted once and for all', () => {
    fc.assert(
      fc.property(text, (written) => {
        const once = format(written, 'any.bay').text;
        expect(format(once, 'any.bay').text).toBe(once);
      }),
      { numRuns: 3000, seed: 10 },
    );
  });
});

test('formatting any text keeps its meaning', () => {
  fc.assert(
    fc.property(text, (written) => {
      const after = format(written, 'any.bay').text;
      expect(meaningOf(parse(after, 'any.bay').tree)).toEqual(meaningOf(parse(written, 'any.bay').tree));
    }),
    { numRuns: 5000, seed: 11 },
  );
});

describe('large texts', () => {
  test('ten thousand levels', () => {
    const nested = [
      'procedure A-1: T',
      '',
      'removal',
      ...Array.from({ length: 10_000 }, (_, i) => `${'  '.repeat(i + 1)}when axle heavy`),
    ].join('\n');
    const { tree, findings } = parse(nested, 'deep.bay');
    let deepest = 0;
    walkLines(tree, (line) => {
      deepest = Math.max(deepest, line.depth);
      return undefined;
    });
    expect(deepest).toBe(10_000);
    expect(findings).toEqual([]);
    expect(format(nested.slice(0, 1_000_000), 'deep.bay').text.length).toBeGreaterThan(900_000);
  });

  test.each([
    ['text', `procedure A-1: ${'long '.repeat(2_000_000)}`],
    ['code', `procedure A-1: T\nremoval\n  step: S\n    remove ${'bolt, '.repeat(1_700_000)}nut`],
    ['commas', `remove ${','.repeat(10_000_000)}`],
    ['quotes', `use ${'"'.repeat(10_000_000)}`],
    ['braces', `procedure A-1: ${'{'.repeat(10_000_000)}`],
    ['letters', 'a'.repeat(10_000_000)],
    ['blanks', `${' '.repeat(10_000_000)}x`],
  ])('a line of ten million characters of %s', (_, long) => {
    expect(leftOut(parse(long, 'long.bay').tree)).toBe('');
  });
});

/** The characters in no token, comment or text that are no blank and not the colon of a line. */
function leftOut(tree: Tree): string {
  const spans: { start: number; end: number }[] = [...tree.comments];
  walkLines(tree, (line: Line) => {
    spans.push(...line.tokens, ...(line.prose?.lines ?? []));
    if (line.colon !== undefined) spans.push({ start: line.colon, end: line.colon + 1 });
    return undefined;
  });
  spans.sort((a, b) => a.start - b.start);
  let left = '';
  let at = tree.text.startsWith('\ufeff') ? 1 : 0;
  for (const { start, end } of [...spans, { start: tree.text.length, end: tree.text.length }]) {
    if (start < at) return `overlap at ${start}`;
    left += tree.text.slice(at, start).replace(/[\s\u0085]+/g, '');
    at = end;
  }
  return left;
}
