// From draft to an issued guide through the editor: the status line as an edit, the files of the issue, and what the
// library has moved away from since.
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { guideRenderers } from '../../compiler/src/cli/lend-guides.js';
import { nodeShell } from '../../compiler/src/cli/node-shell.js';
import { createLibrary, DEFAULT_SETTINGS, readSettings } from '../../language/src/index.js';
import type { GuideSource } from '../../server/src/renderers.js';

const PATH = 'WP-01.bay';
const TEXT = `procedure WP-01: Washer pump

revision 1 on 2026-03-02: First edition.
status draft

parts
  bumper: Rear bumper cover

removal
  step: Look behind the cover
    inspect bumper
`;

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'baywright-signing-'));
  write('baywright.json', '{}\n');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const lent = guideRenderers(nodeShell(), true);

function write(path: string, text: string): void {
  mkdirSync(dirname(join(folder, path)), { recursive: true });
  writeFileSync(join(folder, path), text);
}

function source(text: string, path = PATH): GuideSource {
  write(path, text);
  const { settings } = readSettings('baywright.json', '{}', []);
  const analysis = createLibrary(
    { read: (one) => (one === path ? text : undefined), list: () => [path] },
    settings,
  ).analyse(path);
  if (!analysis) throw new Error('no analysis');
  const rootUri = `${pathToFileURL(folder).href}/`;
  return { analysis, settings, rootUri, uri: rootUri + path, readBase64: async () => undefined };
}

const sign = async (text: string, to: 'proved' | 'released', initials: string): Promise<string> => {
  const answer = await lent.sign?.(source(text), { uri: '', to, initials });
  if (!answer?.signed) throw new Error(answer?.reasons.join('; '));
  return answer.text;
};
const released = async (text = TEXT): Promise<string> =>
  sign(await sign(text, 'proved', 'RB'), 'released', 'TK');

test('a print does not take the place of that of another file of the same name', async () => {
  const print = (path: string) =>
    lent.print?.(source(TEXT, path), { uri: '', kind: 'guide', options: {}, format: 'html' });
  expect(await print(PATH)).toMatchObject({ made: true, file: { name: 'WP-01.html' } });
  expect(await print('trucks/WP-01.bay')).toMatchObject({ made: true, file: { name: 'trucks-WP-01.html' } });
  expect(await print(PATH)).toMatchObject({ made: true, file: { name: 'WP-01.html' } });
});

describe('a signature', () => {
  test('is a status line in the text, and writes no file', async () => {
    const proved = await sign(TEXT, 'proved', 'RB');
    expect(proved).toMatch(/^status proved by RB on \d{4}-\d{2}-\d{2}$/m);
    expect(readFileSync(join(folder, PATH), 'utf8')).toBe(TEXT);
  });
  test('is refused where the rules of the house stand in the way', async () => {
    const answer = await lent.sign?.(source(TEXT), { uri: '', to: 'released', initials: 'TK' });
    expect(answer).toMatchObject({ signed: false, reasons: [expect.stringContaining('from draft')] });
  });
});

describe('an issue', () => {
  test('keeps the guides, the PDF first; the same again is current', async () => {
    const text = await released();
    const answer = await lent.issue?.(source(text), { uri: '', copies: ['bay 2'] });
    expect(answer).toMatchObject({ state: 'issued', revision: 1, change: 'First issue.' });
    const files = answer?.state === 'issued' ? answer.files : [];
    expect(files.map(({ name }) => name)).toEqual(['guide.pdf', 'guide.html']);
    for (const { uri } of files) expect(existsSync(new URL(uri ?? ''))).toBe(true);
    expect(await lent.issue?.(source(text), { uri: '', copies: [] })).toEqual({
      state: 'current',
      revision: 1,
    });
  });
  test('is refused for a draft, in words', async () => {
    expect(await lent.issue?.(source(TEXT), { uri: '', copies: [] })).toMatchObject({
      state: 'refused',
      reasons: [expect.stringContaining('draft')],
    });
  });
  test('is out of date once the text has moved on', async () => {
    const text = await released();
    const moved = (now: string): string | undefined => {
      const { analysis, rootUri } = source(now);
      return lent.outOfDate?.({
        number: 'WP-01',
        settings: DEFAULT_SETTINGS,
        rootUri,
        analysis: () => analysis,
      });
    };
    expect(moved(text)).toBeUndefined();
    await lent.issue?.(source(text), { uri: '', copies: [] });
    expect(moved(text)).toBeUndefined();
    expect(moved(`${text}    clean bumper\n`)).toContain('1 line of the work changed');
  });
});

test('a folder that is not on disk: guides are handed over, nothing is signed', async () => {
  const remote: GuideSource = { ...source(TEXT), rootUri: 'library:/' };
  const print = await lent.print?.(remote, { uri: '', kind: 'guide', options: {}, format: 'html' });
  if (!print?.made) throw new Error(print?.reason);
  expect(Buffer.from(print.file.base64 ?? '', 'base64').toString()).toContain('Washer pump');
  expect(await lent.sign?.(remote, { uri: '', to: 'proved', initials: 'RB' })).toMatchObject({
    signed: false,
  });
});
