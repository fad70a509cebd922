// The matcher of the editor's tasks reads what `baywright check` writes for people.
import { readFileSync } from 'node:fs';
import picocolors from 'picocolors';
import { expect, test } from 'vitest';
import { textReport } from '../../compiler/src/cli/report/text.js';
import { checkedOf } from '../cli/fake-library.js';

interface Manifest {
  readonly contributes: { readonly problemPatterns: readonly Readonly<Record<string, string | number>>[] };
}
const { contributes } = JSON.parse(
  readFileSync(new URL('../../extension/package.json', import.meta.url), 'utf8'),
) as Manifest;

test.each([
  ['error', 'S101 never-put-back: left off here', 'S101'],
  ['question', 'F203 torque-low: is that meant?', 'F203'],
])('the first line of a finding of severity %s', (severity, rest, code) => {
  const report = textReport(checkedOf({ 'a.bay': `first line\n!${severity} ${rest}\n` }), {
    paint: picocolors.createColors(false),
    columns: 80,
    folder: '/shop',
    limit: 0,
  });
  const [pattern = {}] = contributes.problemPatterns;
  const regexp = new RegExp(String(pattern.regexp));
  const found = report.split('\n').flatMap((line) => regexp.exec(line) ?? []);
  const part = (name: string): string | undefined => found[Number(pattern[name])];
  expect(part('file')).toBe('lib/a.bay');
  expect(part('line')).toBe('2');
  expect(part('severity')).toBe(severity);
  expect(part('code')).toBe(code);
  expect(part('message')).toMatch(/\w/);
});
