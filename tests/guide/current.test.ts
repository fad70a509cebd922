// Files that are made from sources and kept in the tree are up to date.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { pageFiles } from '../../compiler/scripts/page-files.mjs';
import { JOB_RECORD } from '../../compiler/src/record-schema.js';

const read = (path: string) => readFileSync(new URL(`../../compiler/${path}`, import.meta.url), 'utf8');

test('scripts and styles of the pages are those of their sources; `npm run generate` makes them', async () => {
  const old = Object.entries(await pageFiles()).filter(
    ([name, text]) => read(`templates/html/${name}`) !== text,
  );
  expect(old.map(([name]) => name)).toEqual([]);
});

test('the published schema of the record is the one that is used', async () => {
  const schema = { $id: 'baywright-record-1', title: 'Record of a job', ...z.toJSONSchema(JOB_RECORD) };
  await expect(`${JSON.stringify(schema, null, 2)}\n`).toMatchFileSnapshot(
    '../../compiler/schemas/record.schema.json',
  );
});
