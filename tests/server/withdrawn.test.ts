// What is out of date is struck out wherever it is named: findings, completion, symbols, callers; and what took its
// place is one fix away.
import { afterAll, beforeAll, expect, test } from 'vitest';
import {
  type CallHierarchyItem,
  type CodeAction,
  CompletionItemTag,
  DiagnosticTag,
  type DocumentSymbol,
  SymbolTag,
  type WorkspaceSymbol,
} from 'vscode-languageserver-protocol';
import { applied, editsOf, offeredAt, type Session, startSession } from './session.js';
import { HEAD, PATH, shop } from './shop.js';

const wheel = (number: string, status: string): string =>
  `procedure ${number}: Wheel\n${status}\nuse "../catalogue/van.bay"\n\nremoval\n  operation wheel-off: Wheel off\n    step: Off\n      remove wheel-nut, wheel\n`;
const OLD = 'procedures/WH-01.bay';
const WORK = `${HEAD}  perform wheel-off from WH-01\n`;
let session: Session;
beforeAll(async () => {
  session = await startSession({
    files: {
      ...shop(WORK),
      [OLD]: wheel('WH-01', '\nstatus withdrawn by RB, TK on 2026-03-12\n'),
      'procedures/WH-02.bay': wheel('WH-02', ''),
      'catalogue/store.bay':
        'catalogue: Store\n\nsupplies\n  engine-oil: Engine oil\n    SAE 10W-40, API SG\n',
    },
  });
  session.open(PATH, WORK);
});
afterAll(() => session.close());

test('a finding of it has the tag of the protocol', async () => {
  const found = (await session.diagnostics(PATH)).find(({ code }) => code === 'R112');
  expect(found?.tags).toEqual([DiagnosticTag.Deprecated]);
  const [grade] = await session.until('catalogue/store.bay', (all) =>
    all.some(({ code }) => code === 'L103'),
  );
  expect(grade?.tags).toEqual([DiagnosticTag.Deprecated]);
});

test('one fix names the procedure that has the operation now', async () => {
  const { textDocument, range } = session.rewrite(PATH, WORK.replace('from WH', 'from $0WH'));
  const context = { diagnostics: [], only: ['quickfix'] };
  const actions = await session.request<CodeAction[]>('textDocument/codeAction', {
    textDocument,
    range,
    context,
  });
  const fix = actions.find(({ title }) => title.startsWith('Perform'));
  expect(applied(WORK, editsOf(fix?.edit, session.uri(PATH)))).toBe(WORK.replace('WH-01', 'WH-02'));
});

test('it is offered last, and struck out', async () => {
  const numbers = await offeredAt(session, PATH, `${HEAD}  perform wheel-off from $0\n`);
  expect(numbers.map(({ label, tags }) => [label, tags])).toEqual([
    ['WH-02', undefined],
    ['WH-01', [CompletionItemTag.Deprecated]],
  ]);
  const operations = await offeredAt(session, PATH, `${HEAD}  perform $0\n`);
  expect(operations.map(({ detail, tags }) => [detail, tags])).toEqual([
    ['Wheel off, WH-02', undefined],
    ['Wheel off, WH-01', [CompletionItemTag.Deprecated]],
  ]);
});

test('once it is in use again, nothing is left of it', async () => {
  session.rewrite(PATH, WORK);
  await session.until(PATH, (all) => all.some(({ code }) => code === 'R112'));
  session.open(OLD, wheel('WH-01', ''));
  await session.until(PATH, (all) => all.every(({ code }) => code !== 'R112'));
  session.rewrite(OLD, wheel('WH-01', '\nstatus withdrawn by RB, TK on 2026-03-12\n'));
  await session.until(PATH, (all) => all.some(({ code }) => code === 'R112'));
});

test('it is struck out among symbols and calls', async () => {
  const symbols = await session.request<WorkspaceSymbol[]>('workspace/symbol', { query: 'WH-0' });
  const tagged = symbols.filter(({ tags }) => tags?.includes(SymbolTag.Deprecated));
  expect(tagged.map(({ name }) => name)).toContain('WH-01');
  expect(tagged.map(({ name }) => name)).not.toContain('WH-02');
  const textDocument = { uri: session.uri(OLD) };
  const [outline] = await session.request<DocumentSymbol[]>('textDocument/documentSymbol', { textDocument });
  expect(outline?.tags).toEqual([SymbolTag.Deprecated]);
  const position = { line: 0, character: 12 };
  const items = await session.request<CallHierarchyItem[]>('textDocument/prepareCallHierarchy', {
    textDocument,
    position,
  });
  expect(items[0]?.tags).toEqual([SymbolTag.Deprecated]);
});
