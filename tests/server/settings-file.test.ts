// `baywright.json` in an editor: keys, values and their words from the schema, findings while it is written, and
// nothing twice where the editor reads the schema itself.
import { afterEach, describe, expect, test } from 'vitest';
import type { CompletionItem, CompletionList, Hover } from 'vscode-languageserver-protocol';
import { applied, type Session, startSession } from './session.js';
import { HEAD, PATH, shop } from './shop.js';

let session: Session;
afterEach(() => session.close());

const FILE = 'baywright.json';
const start = async (more: Partial<Parameters<typeof startSession>[0]> = {}): Promise<void> => {
  session = await startSession({ files: shop(HEAD), ...more });
  session.open(FILE, '{}\n');
};
const offered = async (text: string): Promise<CompletionItem[]> =>
  (await session.request<CompletionList | null>('textDocument/completion', session.rewrite(FILE, text)))
    ?.items ?? [];
const accepted = async (text: string, label: string): Promise<string> => {
  const item = (await offered(text)).find((i) => i.label === label);
  if (!item?.textEdit || !('range' in item.textEdit)) throw new Error(`${label} is not offered`);
  return applied(session.text(FILE), [item.textEdit]);
};
const labels = async (text: string): Promise<string[]> => (await offered(text)).map((i) => i.label);

describe('completion', () => {
  test('of keys that are not there yet, with the usual value', async () => {
    await start();
    expect(await labels('{ $0 }')).toEqual(expect.arrayContaining(['shop', 'page', 'severity', 'release']));
    expect(await labels('{ "page": "A4", $0 }')).not.toContain('page');
    expect(await accepted('{ "pa$0" }', 'page')).toBe(`{ "page": "${'$'}{1|A4,Letter|}" }`);
    expect(await accepted('{ "pa$0": "A4" }', 'page')).toBe('{ "page": "A4" }');
    expect(await accepted('{ "release": { $0 "by": [] } }', 'twoInitials')).toBe(
      `{ "release": { "twoInitials": ${'$'}{1:true}, "by": [] } }`,
    );
    const page = (await offered('{ $0 }')).find((i) => i.label === 'page');
    expect(page?.documentation).toMatchObject({ value: 'The paper that guides are printed on.' });
  });
  test('of values, findings and starter rules', async () => {
    await start();
    expect(await labels('{ "page": $0 }')).toEqual(['A4', 'Letter']);
    expect(await accepted('{ "units": "m$0" }', 'metric first')).toBe('{ "units": "metric first" }');
    expect(await labels('{ "languages": ["en", "$0"] }')).toEqual(['en', 'es', 'fr', 'de']);
    expect(await labels('{ "wording": $0 }')).toEqual(['true', 'false']);
    const codes = await labels('{ "severity": { "$0" } }');
    expect(codes).toContain('W102');
    expect(codes).not.toContain('S301');
    expect(await labels('{ "severity": { "W102": "$0" } }')).toContain('off');
    expect(await labels('{ "starterRulesOff": [{ "rule": "$0" }] }')).toContain('all');
    expect(await labels('{ "shop": { "name": "$0" } }')).toEqual([]);
  });
});

test('hover says what a setting does and what it is where it is not written', async () => {
  await start();
  const hovered = async (text: string): Promise<string> =>
    JSON.stringify(
      (await session.request<Hover | null>('textDocument/hover', session.rewrite(FILE, text)))?.contents ??
        '',
    );
  expect(await hovered('{ "pa$0ge": "A4" }')).toContain('The paper that guides are printed on.');
  expect(await hovered('{ "page": "A$04" }')).toContain('`Letter`');
  expect(await hovered('{ "severity": { "W1$002": "off" } }')).toContain('W102');
  expect(await hovered('{ "nothing$0": 1 }')).toBe('""');
});

test('findings follow what is written, and the library what it says', async () => {
  await start();
  session.open(PATH, `${HEAD}    remove wheel-nut\n    remove wheel\n`);
  const codes = (list: readonly { code?: unknown }[]): unknown[] => list.map((d) => d.code);
  session.rewrite(FILE, '{ "pages": "A4" }\n');
  expect(codes(await session.diagnostics(FILE))).toEqual(['R803']);
  const before = await session.diagnostics(PATH);
  const milder = before.find((d) => d.severity === 2)?.code;
  session.rewrite(FILE, `{ "severity": { "${milder}": "off" } }\n`);
  await session.until(PATH, (d) => !codes(d).includes(milder));
  // A text that cannot be read while it is typed leaves the library as it was.
  session.rewrite(FILE, `{ "severity": { "${milder}": "off" }, \n`);
  expect(codes(await session.diagnostics(FILE))).toEqual(['R801']);
  expect(codes(await session.diagnostics(PATH))).not.toContain(milder);
});

test('an editor that reads the schema has each answer once', async () => {
  await start({ initializationOptions: { settingsBySchema: true } });
  expect(await offered('{ $0 }')).toEqual([]);
  session.rewrite(FILE, '{ "pages": "A4", "severity": { "S301": "off" } }\n');
  expect((await session.diagnostics(FILE)).map((d) => d.code)).toEqual(['R804']);
});
