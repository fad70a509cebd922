// The whole examples: they read without a finding and are in the formatter's own form.
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { format } from '../../language/src/format/index.js';
import { parse, walkLines } from '../../language/src/syntax/index.js';
import { namesOf } from '../../language/src/syntax/walk.js';

const folder = new URL('../fixtures/design/', import.meta.url);
const examples = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
  name.endsWith('.bay'),
);

test.each(examples)('%s', (name) => {
  const text = readFileSync(new URL(name, folder), 'utf8');
  const { tree, findings } = parse(text, name);
  expect(findings).toEqual([]);
  expect(format(text, name).text).toBe(text);
  walkLines(tree, (line) => {
    for (const { text: written, start, end } of namesOf(line)) expect(text.slice(start, end)).toBe(written);
    return undefined;
  });
});
