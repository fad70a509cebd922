// What a client can do wrong, and edits faster than checks: the server stays alive and right.
import { afterEach, describe, expect, test } from 'vitest';
import { CancellationTokenSource, LSPErrorCodes } from 'vscode-languageserver-protocol';
import { positionsOf } from '../../server/src/positions.js';
import { type Session, startSession } from './session.js';
import { HEAD, PATH, shop } from './shop.js';

let session: Session;
afterEach(() => session.close());
const start = async (more: Partial<Parameters<typeof startSession>[0]> = {}): Promise<void> => {
  session = await startSession({ files: shop(HEAD), ...more });
  session.open(PATH, HEAD);
};
const alive = async (): Promise<unknown> =>
  session.request('textDocument/documentSymbol', { textDocument: { uri: session.uri(PATH) } });

describe('odd requests', () => {
  test('malformed messages, unknown documents, methods and positions', async () => {
    await start();
    session.process.stdin?.write('Content-Length: 9\r\n\r\n{"broken"');
    expect(
      await session.request('textDocument/hover', {
        textDocument: { uri: 'file:///nowhere.bay' },
        position: { line: 0, character: 0 },
      }),
    ).toBeNull();
    await expect(
      session.request('baywright/state', { uri: 'untitled:1', position: { line: 0, character: 0 } }),
    ).rejects.toThrow('no Baywright file');
    await expect(session.request('textDocument/nothing', {})).rejects.toThrow();
    for (const position of [
      { line: -1, character: -1 },
      { line: 1e9, character: 1e9 },
      { line: 3, character: 1e6 },
      { line: 0.5, character: Number.MAX_SAFE_INTEGER },
    ]) {
      for (const method of [
        'hover',
        'definition',
        'completion',
        'signatureHelp',
        'prepareRename',
        'documentHighlight',
        'linkedEditingRange',
      ]) {
        await session.request(`textDocument/${method}`, {
          textDocument: { uri: session.uri(PATH) },
          position,
        });
      }
    }
    session.edit(
      PATH,
      { start: { line: 9999, character: 3 }, end: { line: 99999, character: 3 } },
      '# end\n',
    );
    expect(await alive()).toBeTruthy();
  });
  test('a document that has no name yet is helped like any other, and goes when it is closed', async () => {
    await start();
    const uri = 'untitled:Untitled-1';
    const text = 'procedure A-1: Pump\n\nremoval\n  step: Off\n    remove pump\n';
    const tell = (method: string, more: object) =>
      session.connection.sendNotification(`textDocument/${method}`, { textDocument: { uri, ...more } });
    const shown = () => session.published.findLast((p) => p.uri === uri)?.diagnostics.map((d) => d.code);
    await tell('didOpen', { languageId: 'baywright', version: 1, text });
    await expect.poll(shown).toEqual(['N101']);
    const asked = { textDocument: { uri }, position: { line: 4, character: 6 } };
    expect(await session.request('textDocument/hover', asked)).toBeTruthy();
    expect(await session.request('baywright/choices', { uri })).toMatchObject({ number: 'A-1' });
    await tell('didClose', {});
    await expect.poll(shown).toEqual([]);
  });
  test('a line of a million characters', async () => {
    await start();
    session.rewrite(PATH, `${HEAD}    remove ${'wheel-nut, '.repeat(90_000)}wheel\n`);
    const line = HEAD.split('\n').length - 1;
    await session.request('textDocument/completion', {
      textDocument: { uri: session.uri(PATH) },
      position: { line, character: 900_000 },
    });
    expect(await alive()).toBeTruthy();
  });
  test('a request taken back is said to be cancelled, unless the answer was quicker', async () => {
    await start();
    await session.diagnostics(PATH);
    const source = new CancellationTokenSource();
    const asked = session.connection.sendRequest('baywright/check', {}, source.token);
    source.cancel();
    const outcome = await asked.then(
      () => 'answered',
      (error: { code?: number }) => error.code,
    );
    expect(['answered', LSPErrorCodes.RequestCancelled]).toContain(outcome);
    expect(await alive()).toBeTruthy();
  });
});

test('a thousand edits without waiting end in the findings of the last text', async () => {
  await start();
  const line = HEAD.split('\n').length - 1;
  for (let i = 0; i < 1000; i++)
    session.edit(PATH, { start: { line, character: i }, end: { line, character: i } }, i < 4 ? ' ' : 'x');
  session.rewrite(PATH, `${HEAD}    remove wheel-nut, wheel\n`);
  expect((await session.diagnostics(PATH)).map((d) => d.code)).toContain('S301');
});

describe('position encodings', () => {
  const TEXT = HEAD.replace('Caliper bolts', 'Bremssattel-Schrauben für 🔧 überall').replace(
    'torque 110 N·m, per',
    'torque 110 N·m, per',
  );
  test('UTF-8 where the client asks for it first', async () => {
    await start({ encodings: ['utf-8', 'utf-16'] });
    expect(session.result.capabilities.positionEncoding).toBe('utf-8');
    session.rewrite(PATH, TEXT);
    const line = TEXT.split('\n').findIndex((l) => l.includes('per "HL-90"'));
    const character = Buffer.byteLength(
      (TEXT.split('\n')[line] ?? '').slice(0, (TEXT.split('\n')[line] ?? '').indexOf('HL-90') + 1),
    );
    const found = await session.request<{ uri: string } | null>('textDocument/definition', {
      textDocument: { uri: session.uri(PATH) },
      position: { line, character },
    });
    expect(found?.uri).toBe(session.uri('catalogue/van.bay'));
  });
  test('UTF-16 where it does not', async () => {
    await start();
    expect(session.result.capabilities.positionEncoding).toBe('utf-16');
  });
  test('every offset and back', async () => {
    await start();
    for (const encoding of ['utf-8', 'utf-16'] as const) {
      const positions = positionsOf(TEXT, encoding);
      for (let offset = 0; offset <= TEXT.length; offset++) {
        const code = TEXT.charCodeAt(offset);
        if (code >= 0xdc00 && code < 0xe000) continue;
        expect(positions.offset(positions.position(offset))).toBe(offset);
      }
    }
  });
});
