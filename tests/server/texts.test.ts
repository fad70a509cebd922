// What the server itself says comes in the language of the client; messages of findings stay in English.
import { afterEach, describe, expect, test } from 'vitest';
import type { CodeAction, CodeLens, Hover } from 'vscode-languageserver-protocol';
import type * as protocol from '../../server/src/protocol.js';
import { languageFor, TEXTS } from '../../server/src/texts/index.js';
import { type Session, startSession } from './session.js';
import { HEAD, PATH, shop } from './shop.js';

let session: Session | undefined;
afterEach(async () => {
  await session?.close();
  session = undefined;
});

const WORK = `${HEAD}    remove wheel-nut, wheel\n    remove caliper-bolt\n`;

test('a locale stands for its language, an unknown one for English', () => {
  expect(['de-AT', 'fr', 'ES_mx', 'ja', undefined].map(languageFor)).toEqual(['de', 'fr', 'es', 'en', 'en']);
});

describe('every language', () => {
  const sample: Readonly<Record<string, readonly unknown[]>> = { mayMean: ['t', ['a', 'b']] };
  const said = (text: unknown, key: string): string =>
    typeof text === 'function'
      ? String(
          text(
            ...(sample[key] ?? [3, 4, 5, 6]).map((x) =>
              Array.isArray(x) ? x : typeof x === 'number' ? x : String(x),
            ),
          ),
        )
      : String(text);
  test.each(['es', 'fr', 'de'] as const)('says all of it in words of its own: %s', (language) => {
    const own = Object.entries(TEXTS[language]);
    expect(own.map(([key]) => key).sort()).toEqual(Object.keys(TEXTS.en).sort());
    const english = new Map(
      Object.entries(TEXTS.en).map(([key, text]) => [key, typeof text === 'string' ? text : '']),
    );
    expect(own.filter(([key, text]) => typeof text === 'string' && text === english.get(key))).toEqual([]);
    for (const [key, text] of own)
      if (typeof text === 'string') expect(said(text, key)).not.toMatch(/[{}]|undefined/);
  });
});

test('a German client reads German lenses, hovers, actions and views, and English findings', async () => {
  session = await startSession({ files: shop(WORK), locale: 'de-DE' });
  const cursor = session.open(PATH, WORK.replace('remove caliper-bolt', 'remove caliper-b$0olt'));
  const { textDocument, position, range } = cursor;
  const lenses = await session.request<CodeLens[]>('textDocument/codeLens', { textDocument });
  expect(lenses.map((l) => l.command?.title)).toEqual([expect.stringMatching(/^3 ab · \d+ offen$/)]);
  const hover = await session.request<Hover>('textDocument/hover', cursor);
  expect(JSON.stringify(hover.contents)).toMatch(
    /Ausbau nach wheel-nut, wheel.*Vorspannkraft|Vorspannkraft.*Ausbau nach wheel-nut, wheel/,
  );
  const actions = await session.request<CodeAction[]>('textDocument/codeAction', {
    textDocument,
    range,
    context: { diagnostics: [] },
  });
  expect(actions.map((a) => a.title)).toContain('Den Einbau aus dem Ausbau schreiben');
  const state = await session.request<protocol.VehicleState>('baywright/state', {
    uri: textDocument.uri,
    position,
  });
  expect(state.sections.map((s) => s.title)).toContain('Ausgebaut');
  expect(state.sections.flatMap((s) => s.entries.map((e) => e.detail)).join()).toContain(
    'alle 5 · seit „Raise the van“',
  );
  expect((await session.diagnostics(PATH)).map((d) => d.message).join('\n')).toContain('never put back');
});
