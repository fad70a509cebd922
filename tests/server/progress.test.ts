// Long work tells how far it is and can be taken back; several libraries, closed documents, live settings.

import { afterEach, expect, test } from 'vitest';
import { CancellationTokenSource } from 'vscode-languageserver-protocol';
import type * as protocol from '../../server/src/protocol.js';
import { type Session, startSession } from './session.js';
import { HEAD, shop } from './shop.js';

let session: Session;
afterEach(() => session.close());

const many = (n: number): Record<string, string> => ({
  ...shop(HEAD),
  ...Object.fromEntries(
    Array.from({ length: n }, (_, i) => [`procedures/P-${i}.bay`, HEAD.replace('FB-03', `P-${i}`)]),
  ),
});

interface Progress {
  readonly token: string | number;
  readonly value: { readonly kind: string; readonly percentage?: number };
}

test('checking a library in the background shows a bar from begin to end', async () => {
  session = await startSession({
    files: many(80),
    capabilities: { workspace: { configuration: true }, window: { workDoneProgress: true } },
  });
  const seen: Progress[] = [];
  session.connection.onNotification('$/progress', (p: Progress) => {
    seen.push(p);
  });
  await session.until('procedures/P-79.bay', (d) => d.length > 0);
  await expect.poll(() => seen.map((p) => p.value.kind)).toContain('end');
  const shares = seen.flatMap((p) => p.value.percentage ?? []);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
});

test('a check on request reports on the token it was given, and stops when it is taken back', async () => {
  session = await startSession({ files: many(60) });
  await session.until('procedures/P-59.bay', (d) => d.length > 0);
  const seen: Progress[] = [];
  session.connection.onNotification('$/progress', (p: Progress) => {
    seen.push(p);
  });
  const answer = await session.request<protocol.CheckAnswer>('baywright/check', { workDoneToken: 'mine' });
  expect(answer.files).toBe(62);
  const kinds = seen.filter((p) => p.token === 'mine').map((p) => p.value.kind);
  expect([kinds[0], kinds.at(-1)]).toEqual(['begin', 'end']);
  // Taken back at once, but the answer may be quicker: asked until it is not.
  let procedures = Number.POSITIVE_INFINITY;
  while (procedures > 60) {
    const source = new CancellationTokenSource();
    const asked = session.connection
      .sendRequest<protocol.Library>('baywright/library', null, source.token)
      .then(
        (library) => library.procedures.length,
        () => 0,
      );
    source.cancel();
    procedures = await asked;
  }
});

test('closing the bar takes the work back', async () => {
  session = await startSession({ files: many(120) });
  await session.until('procedures/P-119.bay', (d) => d.length > 0);
  session.connection.onNotification('$/progress', ({ token, value }: Progress) => {
    if (token === 'mine' && value.kind === 'begin')
      void session.connection.sendNotification('window/workDoneProgress/cancel', { token });
  });
  // The work may end before the word comes through: asked until it does not.
  let files = Number.POSITIVE_INFINITY;
  while (files > 121) {
    const check = { workDoneToken: 'mine' };
    files = (await session.request<protocol.CheckAnswer>('baywright/check', check)).files;
  }
});

test('references come in parts where the client asks for parts', async () => {
  session = await startSession({ files: many(3) });
  const { textDocument } = session.open('procedures/P-1.bay');
  await session.diagnostics('procedures/P-1.bay');
  const parts: unknown[] = [];
  session.connection.onNotification('$/progress', ({ token, value }: { token: string; value: unknown[] }) => {
    if (token === 'parts') parts.push(...value);
  });
  const line = HEAD.split('\n').findIndex((l) => l.includes('loosen wheel-nut'));
  const asked = { textDocument, position: { line, character: 14 }, context: { includeDeclaration: true } };
  const whole = await session.request<unknown[]>('textDocument/references', asked);
  expect(await session.request('textDocument/references', { ...asked, partialResultToken: 'parts' })).toEqual(
    [],
  );
  expect(parts).toEqual(whole);
});
