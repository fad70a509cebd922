// Correct procedures are silent: the samples, and the six design procedures with what they truly leave open.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { findingsOf } from '../suite-helper.js';

const FAMILIES = /^[FLHWR]/;

function folder(root: string): Map<string, string> {
  const files = new Map<string, string>();
  for (const entry of readdirSync(root, { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name).slice(root.length + 1);
    if (
      entry.isFile() &&
      (/^(?:catalogue|house|procedures|pictures)\//.test(path) || path === 'baywright.json')
    )
      files.set(path, readFileSync(join(root, path), 'utf8'));
  }
  return files;
}

const samples = join(import.meta.dirname, '../../samples');

describe.each([
  ['samples', samples],
  ['samples of the yard', join(samples, 'us')],
])('%s', (_name, root) => {
  test('have no finding of fasteners, fluids, hazards, wording or register', () => {
    const found = findingsOf(folder(root)).filter((f) => FAMILIES.test(f.code));
    expect(found.map((f) => `${f.file}: ${f.code} ${f.message}`)).toEqual([]);
  });
});

test('the design procedures leave open just what they do not say', () => {
  const found = findingsOf(folder(join(import.meta.dirname, '../fixtures/design'))).filter((f) =>
    FAMILIES.test(f.code),
  );
  expect(found.map((f) => `${f.file.split('/').at(-1)}: ${f.code} ${f.severity}`)).toEqual([
    'CH-08-clutch-hydraulics.bay: W106 hint',
    'FD-05-final-drive-cover.bay: F208 hint',
    'FD-05-final-drive-cover.bay: F208 hint',
    'FH-12-front-hub.bay: W106 hint',
  ]);
});
