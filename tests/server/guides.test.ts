// What the command lends the server: previews that follow the cursor, prints in the output folder.
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { guideRenderers } from '../../compiler/src/cli/lend-guides.js';
import { nodeShell } from '../../compiler/src/cli/node-shell.js';
import { createLibrary, DEFAULT_SETTINGS } from '../../language/src/index.js';
import type { GuideSource } from '../../server/src/renderers.js';
import { HEAD, PATH, shop } from './shop.js';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'baywright-guides-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function source(): GuideSource {
  const files = shop(HEAD);
  const analysis = createLibrary(
    { read: (path) => files[path], list: () => Object.keys(files) },
    DEFAULT_SETTINGS,
  ).analyse(PATH);
  if (!analysis) throw new Error('no analysis');
  const rootUri = `${pathToFileURL(folder).href}/`;
  return {
    analysis,
    settings: DEFAULT_SETTINGS,
    rootUri,
    uri: rootUri + PATH,
    readBase64: async () => undefined,
  };
}

test('a preview carries the zero-based line of each row of its own file', async () => {
  const html = await guideRenderers(nodeShell(), false).preview?.(source(), 'guide', {});
  const line = HEAD.split('\n').findIndex((l) => l.includes('chock rear-wheels'));
  expect(html).toContain(`data-line="${line}"`);
  expect(html).not.toContain('data-file');
});

test('a print lies in the output folder, whole', async () => {
  const question = { uri: '', kind: 'guide', options: {}, format: 'html' } as const;
  const answer = await guideRenderers(nodeShell(), false).print?.(source(), question);
  expect(answer).toMatchObject({ made: true, file: { name: 'FB-03.html' } });
  expect(existsSync(join(folder, 'out/FB-03.html'))).toBe(true);
  expect(readFileSync(join(folder, 'out/FB-03.html'), 'utf8')).toContain('Front brake disc, replace');
});
