// Files that are made from sources and kept in the tree are up to date.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { pageScripts } from '../../compiler/scripts/page-script.mjs';
import { JOB_RECORD } from '../../compiler/src/record-schema.js';

const read = (path: string) => readFileSync(new URL(`../../compiler/${path}`, import.meta.url), 'utf8');

test('the page scripts are those of their sources; make them with: node compiler/scripts/page-script.mjs', async () => {
  for (const [name, text] of Object.entries(await pageScripts()))
    expect(read(`templates/html/${name}`)).toBe(text);
});

test('the published schema of the record is the one that is used', async () => {
  const schema = { $id: 'baywright-record-1', title: 'Record of a job', ...z.toJSONSchema(JOB_RECORD) };
  await expect(`${JSON.stringify(schema, null, 2)}\n`).toMatchFileSnapshot(
    '../../compiler/schemas/record.schema.json',
  );
});
