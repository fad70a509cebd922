// The laws of the formatter over generated files: it changes no meaning, once is enough, a tidy file stays, and its
// edits lead to its text.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { format, formatRange, sameMeaning } from '../../language/src/format/index.js';
import { meaningOf } from '../../language/src/format/same-meaning.js';
import { parse } from '../../language/src/syntax/index.js';
import { procedureText } from '../generate.js';

test('generated files have no finding of grammar', () => {
  fc.assert(
    fc.property(procedureText(), (text) => {
      expect(
        parse(text, 'a.bay').findings.map(
          ({ message, span }) => `${message}: ${text.slice(span.start - 20, span.end + 20)}`,
        ),
      ).toEqual([]);
    }),
    { numRuns: 300, seed: 1 },
  );
});

test('formatting keeps the meaning', () => {
  fc.assert(
    fc.property(procedureText(), (text) => {
      const before = parse(text, 'a.bay').tree;
      const after = parse(format(text, 'a.bay').text, 'a.bay').tree;
      if (!sameMeaning(before, after)) expect(meaningOf(after)).toEqual(meaningOf(before));
    }),
    { numRuns: 300, seed: 2 },
  );
});

test('formatting twice is formatting once', () => {
  fc.assert(
    fc.property(procedureText(), (text) => {
      const once = format(text, 'a.bay').text;
      expect(format(once, 'a.bay').text).toBe(once);
    }),
    { numRuns: 300, seed: 3 },
  );
});

test('a tidy file stays as it is', () => {
  fc.assert(
    fc.property(procedureText({ untidy: false }), (text) => {
      expect(format(text, 'a.bay').text).toBe(text);
    }),
    { numRuns: 200, seed: 5 },
  );
});

test('a range is formatted as the whole file would be', () => {
  fc.assert(
    fc.property(procedureText(), fc.nat(), fc.nat(), (text, from, length) => {
      const start = from % text.length;
      const range = { start, end: Math.min(text.length, start + (length % 200)) };
      const all = format(text, 'a.bay').edits.map((edit) => JSON.stringify(edit));
      for (const edit of formatRange(text, 'a.bay', range)) expect(all).toContain(JSON.stringify(edit));
    }),
    { numRuns: 100, seed: 4 },
  );
});
