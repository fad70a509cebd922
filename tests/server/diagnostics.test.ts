// Findings as they reach the editor: which, where, when, and that they go again.

import { existsSync } from 'node:fs';
import { afterEach, describe, expect, test } from 'vitest';
import type { DocumentDiagnosticReport } from 'vscode-languageserver-protocol';
import { type Session, type SessionOptions, startSession } from './session.js';
import { CATALOGUE, HEAD, PATH, shop } from './shop.js';

let session: Session;
const start = async (options: SessionOptions): Promise<Session> => {
  session = await startSession(options);
  return session;
};
afterEach(() => session.close());

const LEFT_OFF = `${HEAD}    remove wheel-nut, wheel\n`;
const codes = (list: readonly { code?: unknown }[]): unknown[] => list.map((d) => d.code);

describe('push', () => {
  test('of an open document, with its place and version', async () => {
    await start({ files: shop(HEAD) });
    session.open(PATH, LEFT_OFF);
    const found = await session.diagnostics(PATH);
    const off = found.find((d) => d.code === 'S301');
    expect(off?.range.start.line).toBe(LEFT_OFF.split('\n').length - 2);
    expect(off?.source).toBe('baywright');
  });
  test('what is not used is faded; what belongs to a finding elsewhere is shown beside it', async () => {
    const twice = HEAD.replace('  caliper: Brake caliper', '  disc: Disc again\n  caliper: Brake caliper');
    await start({ files: shop(HEAD) });
    session.open(PATH, `${twice}    accept F203: old sheet\n    loosen wheel-nut\n`);
    const found = await session.diagnostics(PATH);
    expect(found.find((d) => d.code === 'R901')?.tags).toEqual([1]);
    expect(found.find((d) => d.code === 'S301')?.tags).toBeUndefined();
    const again = found.find((d) => d.code === 'N102');
    const [first] = again?.relatedInformation ?? [];
    expect(first?.location.uri).toBe(session.uri(PATH));
    expect(session.text(PATH).split('\n')[first?.location.range.start.line ?? 0]).toBe('  disc: Brake disc');
  });
  test('a code leads to its page in the shop’s copy of the reference, and nowhere where there is none', async () => {
    await start({ files: shop(HEAD) });
    session.open(PATH, LEFT_OFF);
    const page = async (): Promise<string | undefined> =>
      (await session.diagnostics(PATH)).find((d) => d.code === 'S301')?.codeDescription?.href;
    expect(await page()).toBeUndefined();
    session.changeSettings({ reference: { address: 'https://shop.test/reference' } });
    await expect.poll(page).toBe('https://shop.test/reference/findings/s301-never-put-back.md');
    const docs = new URL('../../language/docs/reference/findings/s301-never-put-back.md', import.meta.url);
    expect(existsSync(docs)).toBe(true);
  });
  test('a client that shows pages itself gets their text', async () => {
    await start({ files: shop(HEAD), initializationOptions: { showsPages: true } });
    session.open(PATH, LEFT_OFF);
    const href = (await session.diagnostics(PATH)).find((d) => d.code === 'S301')?.codeDescription?.href;
    expect(href).toBe('baywright-page:/findings/s301-never-put-back.md');
    const page = href?.split('/').at(-1);
    const { markdown } = await session.request<{ markdown?: string }>('baywright/explain', { page });
    expect(markdown).toMatch(/^# S301 never-put-back\n[\s\S]*## Wrong[\s\S]*## Right/);
    expect(await session.request('baywright/explain', { page: 'S999' })).toEqual({});
  });
  test('of the whole library, files that are not open among them', async () => {
    await start({
      files: { ...shop(LEFT_OFF), 'procedures/other.bay': 'procedure XX-1: Other\n\nremovel\n' },
    });
    expect((await session.until('procedures/other.bay', (d) => d.length > 0)).length).toBeGreaterThan(0);
    expect(codes(await session.until(PATH, (d) => d.length > 0))).toContain('S301');
  });
  test('of what only the whole library can tell, mended by an edit elsewhere', async () => {
    const spare = CATALOGUE.replace('parts\n', 'parts\n  wheel-trim: Wheel trim\n');
    await start({ files: { ...shop(HEAD), 'catalogue/van.bay': spare } });
    const spared = await session.until('catalogue/van.bay', (d) =>
      d.some((f) => f.code === 'R201' && /wheel-trim/.test(String(f.message))),
    );
    expect(spared.find((f) => f.code === 'R201')?.tags).toEqual([1]);
    session.open(PATH, `${HEAD}    inspect wheel-trim\n`);
    await session.until('catalogue/van.bay', (d) => !d.some((f) => /wheel-trim/.test(String(f.message))));
  });
  test('of open files alone when the settings say so, live', async () => {
    await start({ files: shop(LEFT_OFF) });
    await session.until(PATH, (d) => d.length > 0);
    session.changeSettings({ findings: { scope: 'open files' } });
    expect(await session.until(PATH, (d) => d.length === 0)).toEqual([]);
  });
  test('goes when the text is mended, and never twice the same for a closed file', async () => {
    await start({ files: shop(LEFT_OFF) });
    session.open(PATH, LEFT_OFF);
    expect(codes(await session.diagnostics(PATH))).toContain('S301');
    session.rewrite(
      PATH,
      `${LEFT_OFF}\ninstallation\n  step: Fit the wheel\n    install wheel, wheel-nut\n    snug wheel-nut\n    lower vehicle\n    torque wheel-nut\n    unchock rear-wheels\n`,
    );
    expect(
      (await session.diagnostics(PATH))
        .map((d) => `${d.code} ${d.message}`)
        .filter((d) => d.startsWith('S301')),
    ).toEqual([]);
  });
  test('a changed catalogue rechecks what uses it', async () => {
    await start({ files: shop(`${HEAD}    remove wheel-nut\n`) });
    session.open(PATH);
    const before = codes(await session.diagnostics(PATH));
    session.open('catalogue/van.bay', CATALOGUE);
    await session.diagnostics('catalogue/van.bay');
    session.rewrite(
      'catalogue/van.bay',
      CATALOGUE.replace('  wheel-nut: Wheel nuts', '  wheel-stud: Wheel nuts'),
    );
    await session.until(PATH, (d) => JSON.stringify(codes(d)) !== JSON.stringify(before));
  });
  test('so does one that was edited as soon as it was opened, and one that is closed unsaved', async () => {
    await start({ files: shop(`${HEAD}    remove wheel-nut\n`) });
    session.open(PATH);
    const before = codes(await session.diagnostics(PATH));
    const edited = CATALOGUE.replace('  wheel-nut: Wheel nuts', '  wheel-stud: Wheel nuts');
    const { textDocument } = session.open('catalogue/van.bay', CATALOGUE);
    session.rewrite('catalogue/van.bay', edited);
    await session.until(PATH, (d) => JSON.stringify(codes(d)) !== JSON.stringify(before));
    await session.connection.sendNotification('textDocument/didClose', { textDocument });
    await session.until(PATH, (d) => JSON.stringify(codes(d)) === JSON.stringify(before));
    // What an editor kept unsaved when it was shut comes back as a text that no file has.
    session.open('catalogue/van.bay', edited);
    await session.until(PATH, (d) => JSON.stringify(codes(d)) !== JSON.stringify(before));
  });
  test('files made, written and deleted outside the editor', async () => {
    await start({ files: shop(HEAD) });
    await session.until(PATH, (d) => d.length > 0);
    session.write('procedures/new.bay', 'procedure XX-2: New\n\nremovel\n');
    const tell = (path: string, type: number) =>
      session.connection.sendNotification('workspace/didChangeWatchedFiles', {
        changes: [{ uri: session.uri(path), type }],
      });
    await tell('procedures/new.bay', 1);
    await session.until('procedures/new.bay', (d) => d.length > 0);
    session.write('procedures/new.bay', undefined);
    await tell('procedures/new.bay', 3);
    expect(await session.until('procedures/new.bay', (d) => d.length === 0)).toEqual([]);
  });
  test('pictures that are not there, and come', async () => {
    await start({ files: shop(HEAD) });
    session.open(PATH, `${HEAD}      picture "jack.png": Where the jack goes\n`);
    expect(codes(await session.diagnostics(PATH))).toContain('R102');
    session.write('procedures/jack.png', 'picture');
    await session.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: session.uri('procedures/jack.png'), type: 1 }],
    });
    await session.until(PATH, (d) => !codes(d).includes('R102'));
  });
  test('a day of review that has passed', async () => {
    await start({ files: shop(HEAD) });
    session.open(
      PATH,
      HEAD.replace('applies to', 'status released by KM, TR on 2019-10-05\nreview 2020-10-05\n\napplies to'),
    );
    expect(codes(await session.diagnostics(PATH))).toContain('R106');
  });
  test('a mistake in the settings file stands in it, and goes without a restart', async () => {
    await start({ files: { ...shop(HEAD), 'baywright.json': '{ "pages": "A4" }\n' } });
    expect(codes(await session.until('baywright.json', (d) => d.length > 0))).toEqual(['R803']);
    session.write('baywright.json', '{ "page": "A4" }\n');
    await session.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: session.uri('baywright.json'), type: 2 }],
    });
    expect(await session.until('baywright.json', (d) => d.length === 0)).toEqual([]);
    const tell = (type: number) =>
      session.connection.sendNotification('workspace/didChangeWatchedFiles', {
        changes: [{ uri: session.uri('baywright.json'), type }],
      });
    session.write('baywright.json', '{ "page');
    await tell(2);
    await session.until('baywright.json', (d) => d.length > 0);
    session.write('baywright.json', undefined);
    await tell(3);
    expect(await session.until('baywright.json', (d) => d.length === 0)).toEqual([]);
  });
});

describe('pull', () => {
  test('is offered to clients that do not listen, so that nobody sees a finding twice', async () => {
    await start({ files: shop(HEAD) });
    expect(session.result.capabilities.diagnosticProvider).toBeUndefined();
    await session.close();
    await start({ files: shop(HEAD), capabilities: { textDocument: { diagnostic: {} } } });
    expect(session.result.capabilities.diagnosticProvider).toMatchObject({ identifier: 'baywright' });
  });
  test('is asked for again when a file it depends on was checked', async () => {
    await start({
      files: shop(HEAD),
      capabilities: {
        workspace: { configuration: true, diagnostics: { refreshSupport: true } },
        textDocument: { diagnostic: {} },
      },
    });
    let asked = 0;
    session.connection.onRequest('workspace/diagnostic/refresh', () => {
      asked += 1;
      return null;
    });
    session.open(PATH);
    session.open('catalogue/van.bay', CATALOGUE);
    await expect.poll(() => asked).toBeGreaterThan(0);
    const before = asked;
    session.rewrite(
      'catalogue/van.bay',
      CATALOGUE.replace('  wheel-nut: Wheel nuts', '  stud-nut: Wheel nuts'),
    );
    await expect.poll(() => asked).toBeGreaterThan(before);
  });
  test('gives the same as push, and says when nothing changed', async () => {
    await start({ files: shop(HEAD) });
    const { textDocument } = session.open(PATH, LEFT_OFF);
    const report = await session.request<DocumentDiagnosticReport>('textDocument/diagnostic', {
      textDocument,
    });
    if (report.kind !== 'full') throw new Error('a full report was expected');
    expect(report.items).toEqual(await session.diagnostics(PATH));
    expect(
      await session.request('textDocument/diagnostic', { textDocument, previousResultId: report.resultId }),
    ).toEqual({ kind: 'unchanged', resultId: report.resultId });
  });
});

describe('suppression', () => {
  test('by accept in the file, by glob in the settings, never of errors', async () => {
    await start({
      files: shop(HEAD),
      settings: { findings: { suppress: [{ files: 'procedures/**', codes: ['S403', 'F204'] }] } },
    });
    session.open(PATH, `${HEAD}    remove wheel-nut, wheel\n`);
    const found = await session.diagnostics(PATH);
    expect(codes(found)).toContain('S301');
    session.rewrite(PATH, `${HEAD}    accept S301: the van is scrapped\n    remove wheel-nut, wheel\n`);
    expect(codes(await session.diagnostics(PATH))).not.toContain('S301');
  });
  test('entries that silence nothing are told', async () => {
    const told: string[] = [];
    await start({
      files: shop(HEAD),
      settings: { findings: { suppress: [{ files: '**', codes: ['W999'] }] } },
    });
    session.connection.onNotification('window/showMessage', ({ message }: { message: string }) => {
      told.push(message);
    });
    session.changeSettings({ findings: { suppress: [{ files: '**', codes: ['W998'] }] } });
    await expect.poll(() => told.join('\n')).toContain('W998');
  });
});

describe('several folders', () => {
  test('each settings file has a library of its own', async () => {
    const files = {
      'a/baywright.json': '{}',
      'a/x.bay': 'procedure A-1: One\n\nremovel\n',
      'b/baywright.json': '{ "severity": { "G": "hint" } }',
      'b/y.bay': 'procedure A-1: One\n\nremovel\n',
    };
    await start({ files, folders: ['a', 'b'] });
    await session.until('a/x.bay', (d) => d.length > 0);
    await session.until('b/y.bay', (d) => d.length > 0);
    await session.connection.sendNotification('workspace/didChangeWorkspaceFolders', {
      event: { added: [], removed: [{ uri: session.uri('b'), name: 'b' }] },
    });
    expect(await session.until('b/y.bay', (d) => d.length === 0)).toEqual([]);
  });
});
