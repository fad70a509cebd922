// What the editor types for the user must read: each snippet, put where it belongs, and the walkthrough's procedure.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { createLibrary } from '../../language/src/analysis.js';
import { settingsSchema } from '../../language/src/settings/index.js';
import { parse } from '../../language/src/syntax/index.js';

interface Snippet {
  readonly prefix: string;
  readonly body: readonly string[];
  readonly description: string;
}

const read = (name: string): string =>
  readFileSync(new URL(`../../extension/${name}`, import.meta.url), 'utf8');
const snippets = JSON.parse(read('snippets/baywright.json')) as Record<string, Snippet>;

/** The text as the editor inserts it when nothing is changed: each stop with its default or first choice. */
function expand(body: readonly string[]): string {
  let text = body.join('\n').replace(/\$\{\d+\|([^,|]*)[^|]*\|\}/g, '$1');
  while (/\$\{\d+:[^${}]*\}/.test(text)) text = text.replace(/\$\{\d+:([^${}]*)\}/g, '$1');
  return text.replace(/\$\d+/g, '');
}

/** The lines that must stand above a snippet, by its prefix; the deeper ones indent it. */
const ABOVE: Readonly<Record<string, readonly string[]>> = {
  procedure: [],
  catalogue: [],
  part: ['parts'],
  bolt: ['fasteners'],
  connection: ['connections'],
  fluid: ['fluids'],
  limit: ['limits'],
  step: ['removal'],
};

function inPlace({ prefix, body }: Snippet): string {
  const above = ABOVE[prefix] ?? ['removal', '  step: Work'];
  const indent = '  '.repeat(above.length);
  const head = above.length === 0 ? [] : ['procedure X-1: Work'];
  return [
    ...head,
    ...above,
    ...expand(body)
      .split('\n')
      .map((line) => (line.trim() === '' ? '' : indent + line)),
  ].join('\n');
}

describe('each snippet reads without a finding about its form', () => {
  test.each(Object.entries(snippets))('%s', (_name, snippet) => {
    const text = inPlace(snippet);
    expect(
      parse(text, 'snippet.bay').findings.map(({ code, message }) => `${code} ${message}`),
      text,
    ).toEqual([]);
  });
});

test('the procedure of the walkthrough has one thing forgotten: the wheel nuts are never torqued', () => {
  const text = read('walkthrough/first-procedure.bay');
  const library = createLibrary(
    { read: (path) => (path === 'new.bay' ? text : undefined), list: () => ['new.bay'] },
    settingsSchema.parse({}),
  );
  const findings = library.analyse('new.bay')?.findings ?? [];
  expect(findings.map(({ code, message }) => `${code} ${message}`)).toEqual([
    expect.stringMatching(/wheel.nut/),
  ]);
});
