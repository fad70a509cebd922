// Going about a library: definition, references, highlights, rename, symbols, links, calls, folding, selections.

import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type {
  CallHierarchyItem,
  CodeLens,
  DocumentHighlight,
  DocumentLink,
  DocumentSymbol,
  FoldingRange,
  Location,
  SelectionRange,
  SymbolInformation,
  WorkspaceEdit,
} from 'vscode-languageserver-protocol';
import { applied, editsOf, type Session, startSession } from './session.js';
import { CATALOGUE, HEAD, PATH, shop } from './shop.js';

const OTHER = 'procedures/WH-01.bay';
const OTHER_TEXT = `procedure WH-01: Road wheel

use "../catalogue/van.bay"

applies to maristow-300

removal
  operation wheel-off: Wheel off
    step: Take the wheel off
      remove wheel-nut, wheel
`;
const WORK = `${HEAD}    remove wheel-nut, wheel: Keep the {wheel-nut torque} in mind.\n    remove caliper-bolt, caliper\n  step: Back\n    install caliper, caliper-bolt\n    perform wheel-off from WH-01\n`;

let session: Session;
beforeAll(async () => {
  session = await startSession({ files: { ...shop(WORK), [OTHER]: OTHER_TEXT } });
  session.open(PATH, WORK);
});
afterAll(() => session.close());
const at = (needle: string, mark: string) => session.rewrite(PATH, WORK.replace(needle, mark));

describe('definition', () => {
  test('of a thing in a catalogue, of an import, of an operation', async () => {
    const wheel = await session.request<Location>(
      'textDocument/definition',
      at('remove wheel-nut, wheel', 'remove wheel-nut, wh$0eel'),
    );
    expect(wheel.uri).toBe(session.uri('catalogue/van.bay'));
    expect(CATALOGUE.split('\n')[wheel.range.start.line]).toBe('  wheel: Road wheel');
    const file = await session.request<Location>(
      'textDocument/definition',
      at('../catalogue', '../cat$0alogue'),
    );
    expect(file.uri).toBe(session.uri('catalogue/van.bay'));
    const operation = await session.request<Location>(
      'textDocument/implementation',
      at('perform wheel-off', 'perform whe$0el-off'),
    );
    expect(operation.uri).toBe(session.uri(OTHER));
    const option = await session.request<Location>(
      'textDocument/declaration',
      at('held by caliper-bolt', 'held by calip$0er-bolt'),
    );
    expect(option.uri).toBe(session.uri(PATH));
  });
});

describe('references', () => {
  test('over the library, in text too', async () => {
    const cursor = at('remove wheel-nut, wheel', 'remove wheel-n$0ut, wheel');
    const found = await session.request<Location[]>('textDocument/references', {
      ...cursor,
      context: { includeDeclaration: false },
    });
    const count = (path: string): number => found.filter((l) => l.uri === session.uri(path)).length;
    expect([count(PATH), count('catalogue/van.bay'), count(OTHER)]).toEqual([3, 1, 1]);
  });
  test('highlights tell taking off from putting on', async () => {
    const found = await session.request<DocumentHighlight[]>(
      'textDocument/documentHighlight',
      at('remove caliper-bolt, caliper', 'remove caliper-bolt, cal$0iper'),
    );
    const kinds = found.map((h) => [
      session.text(PATH).split('\n')[h.range.start.line]?.trim().split(' ')[0],
      h.kind,
    ]);
    expect(kinds).toContainEqual(['remove', 3]);
    expect(kinds).toContainEqual(['install', 2]);
  });
});

describe('rename', () => {
  test('changes every file, and prepare gives the name', async () => {
    const cursor = at('remove wheel-nut, wheel', 'remove wheel-n$0ut, wheel');
    expect(await session.request('textDocument/prepareRename', cursor)).toMatchObject({
      start: { character: 11 },
      end: { character: 20 },
    });
    const edit = await session.request<WorkspaceEdit>('textDocument/rename', {
      ...cursor,
      newName: 'road-nut',
    });
    expect(applied(CATALOGUE, editsOf(edit, session.uri('catalogue/van.bay')))).toBe(
      CATALOGUE.replaceAll('wheel-nut', 'road-nut'),
    );
    expect(applied(OTHER_TEXT, editsOf(edit, session.uri(OTHER)))).toBe(
      OTHER_TEXT.replaceAll('wheel-nut', 'road-nut'),
    );
    expect(applied(session.text(PATH), editsOf(edit, session.uri(PATH)))).toBe(
      session.text(PATH).replaceAll('wheel-nut', 'road-nut'),
    );
  });
  test('of an option, of its value and of the value of a condition, over the library', async () => {
    const van = CATALOGUE.replace(
      'parts\n',
      'conditions\n  brake: Parking brake\n    applied, released\n\nparts\n',
    );
    const guarded = WORK.replace(
      'loosen wheel-nut, 1/2 turn',
      'loosen wheel-nut, 1/2 turn, when axle heavy\n    set brake applied',
    );
    const renamed = async (needle: string, mark: string, newName: string): Promise<[string, string]> => {
      const cursor = session.rewrite(PATH, guarded.replace(needle, mark));
      expect(await session.request('textDocument/prepareRename', cursor)).not.toBeNull();
      const edit = await session.request<WorkspaceEdit>('textDocument/rename', { ...cursor, newName });
      return [
        applied(van, editsOf(edit, session.uri('catalogue/van.bay'))),
        applied(session.text(PATH), editsOf(edit, session.uri(PATH))),
      ];
    };
    session.open('catalogue/van.bay', van);
    expect(await renamed('when axle', 'when ax$0le', 'rear-axle')).toEqual([
      van.replace('option axle', 'option rear-axle'),
      guarded.replace('when axle', 'when rear-axle'),
    ]);
    expect(await renamed('axle heavy', 'axle hea$0vy', 'twin')).toEqual([
      van.replace('light, heavy', 'light, twin'),
      guarded.replace('axle heavy', 'axle twin'),
    ]);
    expect(await renamed('brake applied', 'brake app$0lied', 'on')).toEqual([
      van.replace('applied, released', 'on, released'),
      guarded.replace('brake applied', 'brake on'),
    ]);
    await expect(renamed('axle heavy', 'axle hea$0vy', 'light')).rejects.toThrow('already there');
    await expect(renamed('axle heavy', 'axle hea$0vy', 'or')).rejects.toThrow('cannot stand here');
    const cursor = session.rewrite(PATH, guarded.replace('brake applied', 'brake app$0lied'));
    const declared = await session.request<Location>('textDocument/definition', cursor);
    expect(van.split('\n')[declared.range.start.line]).toBe('    applied, released');
    await session.connection.sendNotification('textDocument/didClose', {
      textDocument: { uri: session.uri('catalogue/van.bay') },
    });
  });
  test('of a vehicle changes the lines that hold for it alone', async () => {
    const text = WORK.replace('1/2 turn', '1/2 turn, when vehicle maristow-300');
    const cursor = session.rewrite(PATH, text.replace('applies to mari', 'applies to mari$0'));
    const edit = await session.request<WorkspaceEdit>('textDocument/rename', {
      ...cursor,
      newName: 'van-300',
    });
    expect(applied(text, editsOf(edit, session.uri(PATH)))).toBe(text.replaceAll('maristow-300', 'van-300'));
  });
  test('of an operation follows perform', async () => {
    const edit = await session.request<WorkspaceEdit>('textDocument/rename', {
      ...at('perform wheel-off', 'perform whe$0el-off'),
      newName: 'wheel-away',
    });
    expect(applied(OTHER_TEXT, editsOf(edit, session.uri(OTHER)))).toContain('operation wheel-away:');
    expect(applied(session.text(PATH), editsOf(edit, session.uri(PATH)))).toContain(
      'perform wheel-away from',
    );
  });
  test('refuses a name that is taken or cannot be one, in words', async () => {
    const cursor = at('remove wheel-nut, wheel', 'remove wheel-n$0ut, wheel');
    await expect(session.request('textDocument/rename', { ...cursor, newName: 'disc' })).rejects.toThrow(
      'already the name of',
    );
    await expect(session.request('textDocument/rename', { ...cursor, newName: 'two words' })).rejects.toThrow(
      'cannot be a name',
    );
    for (const newName of ['when', 'behind'])
      await expect(session.request('textDocument/rename', { ...cursor, newName })).rejects.toThrow(
        'means something',
      );
    expect(await session.request('textDocument/rename', { ...cursor, newName: 'remove' })).toBeTruthy();
    const sheet = at('per "HL-90"', 'per "HL$0-90"');
    await expect(session.request('textDocument/rename', { ...sheet, newName: 'HL"90' })).rejects.toThrow(
      'cannot be a name',
    );
    expect(await session.request('textDocument/rename', { ...sheet, newName: 'HL-91' })).toBeTruthy();
    expect(
      await session.request('textDocument/prepareRename', at('  step: Back', '  st$0ep: Back')),
    ).toBeNull();
  });
  test('of a file takes the imports along', async () => {
    const edit = await session.request<WorkspaceEdit>('workspace/willRenameFiles', {
      files: [{ oldUri: session.uri('catalogue/van.bay'), newUri: session.uri('fleet/maristow.bay') }],
    });
    expect(applied(OTHER_TEXT, editsOf(edit, session.uri(OTHER)))).toContain('use "../fleet/maristow.bay"');
    const moved = await session.request<WorkspaceEdit>('workspace/willRenameFiles', {
      files: [{ oldUri: session.uri(OTHER), newUri: session.uri('WH-01.bay') }],
    });
    expect(applied(OTHER_TEXT, editsOf(moved, session.uri(OTHER)))).toContain('use "catalogue/van.bay"');
    const folder = await session.request<WorkspaceEdit>('workspace/willRenameFiles', {
      files: [{ oldUri: session.uri('catalogue'), newUri: session.uri('fleet') }],
    });
    expect(applied(OTHER_TEXT, editsOf(folder, session.uri(OTHER)))).toContain('use "../fleet/van.bay"');
  });
});

test('of a picture takes the lines along that show it, and a moved file its own', async () => {
  session.rewrite(PATH, `${WORK}    inspect wheel\n      picture "../pictures/hub.png": Hub\n`);
  const shown = async (from: string, to: string): Promise<string> => {
    const edit = await session.request<WorkspaceEdit>('workspace/willRenameFiles', {
      files: [{ oldUri: session.uri(from), newUri: session.uri(to) }],
    });
    const text = applied(session.text(PATH), editsOf(edit, session.uri(PATH)));
    return /picture .*/.exec(text)?.[0] ?? '';
  };
  expect(await shown('pictures/hub.png', 'pictures/front/hub.png')).toBe(
    'picture "../pictures/front/hub.png": Hub',
  );
  expect(await shown(PATH, 'FB-03.bay')).toBe('picture "pictures/hub.png": Hub');
});

describe('structure', () => {
  test('outline, with entries and steps', async () => {
    const { textDocument } = at('xx', 'xx');
    const symbols = await session.request<DocumentSymbol[]>('textDocument/documentSymbol', { textDocument });
    expect(symbols.map((s) => s.name)).toEqual(['FB-03', 'parts', 'fasteners', 'removal']);
    expect(symbols.at(-1)?.children?.map((s) => s.name)).toEqual(['Raise the van', 'Back']);
  });
  test('symbols of the workspace by name, number and title', async () => {
    const names = async (query: string) =>
      (await session.request<SymbolInformation[]>('workspace/symbol', { query })).map((s) => s.name);
    expect((await names('wheel-nut'))[0]).toBe('wheel-nut');
    expect(await names('WH-01')).toContain('WH-01');
    expect(await names('road wheel')).toContain('wheel');
  });
  test('links, folding, selections', async () => {
    const { textDocument } = at('xx', 'xx');
    const links = await session.request<DocumentLink[]>('textDocument/documentLink', { textDocument });
    const sheet = CATALOGUE.split('\n').findIndex((l) => l.startsWith('  HL-90')) + 1;
    expect(links.map((l) => [l.target, l.tooltip])).toEqual([
      [session.uri('catalogue/van.bay'), undefined],
      [`${session.uri('catalogue/van.bay')}#L${sheet}`, 'Wheels and tyres sheet, issue 6'],
    ]);
    const folds = await session.request<FoldingRange[]>('textDocument/foldingRange', { textDocument });
    expect(folds.length).toBeGreaterThan(6);
    const cursor = at('remove caliper-bolt, caliper', 'remove caliper-b$0olt, caliper');
    const [selection] = await session.request<SelectionRange[]>('textDocument/selectionRange', {
      textDocument,
      positions: [cursor.position],
    });
    const texts: string[] = [];
    for (let s: SelectionRange | undefined = selection; s; s = s.parent)
      texts.push(
        session
          .text(PATH)
          .split('\n')
          [s.range.start.line]?.slice(
            s.range.start.character,
            s.range.start.line === s.range.end.line ? s.range.end.character : undefined,
          ) ?? '',
      );
    expect(texts.slice(0, 2)).toEqual(['caliper-bolt', 'remove caliper-bolt, caliper']);
  });
  test('who performs an operation, and what a procedure performs', async () => {
    const [item] = await session.request<CallHierarchyItem[]>(
      'textDocument/prepareCallHierarchy',
      at('perform wheel-off', 'perform whe$0el-off'),
    );
    const incoming = await session.request<{ from: CallHierarchyItem }[]>('callHierarchy/incomingCalls', {
      item,
    });
    expect(incoming.map((c) => c.from.name)).toEqual(['FB-03']);
    const [procedure] = await session.request<CallHierarchyItem[]>(
      'textDocument/prepareCallHierarchy',
      at('procedure FB-03', 'proc$0edure FB-03'),
    );
    const outgoing = await session.request<{ to: CallHierarchyItem }[]>('callHierarchy/outgoingCalls', {
      item: procedure,
    });
    expect(outgoing.map((c) => c.to.name)).toEqual(['wheel-off']);
  });
  test('a lens on an operation and on a catalogue says who uses it, and shows where', async () => {
    await session.close();
    session = await startSession({
      files: { ...shop(WORK), [OTHER]: OTHER_TEXT },
      initializationOptions: { showsUses: true },
    });
    session.open(PATH, WORK);
    const lensOf = async (path: string, text: string) => {
      const { textDocument } = session.open(path, text);
      const lenses = await session.request<CodeLens[]>('textDocument/codeLens', { textDocument });
      return lenses.find((l) => /used by/.test(l.command?.title ?? ''))?.command;
    };
    const operation = await lensOf(OTHER, OTHER_TEXT);
    expect(operation?.title).toBe('used by 1 procedure');
    const [uri, , places] = (operation?.arguments ?? []) as [string, unknown, Location[]];
    expect([operation?.command, uri]).toEqual(['baywright.showUses', session.uri(OTHER)]);
    expect(places.map((p) => [p.uri, WORK.split('\n')[p.range.start.line]?.trim()])).toEqual([
      [session.uri(PATH), 'perform wheel-off from WH-01'],
    ]);
    const catalogue = await lensOf('catalogue/van.bay', CATALOGUE);
    expect(catalogue?.title).toBe('used by 2 procedures');
  });
  test('a name and its uses in one file are edited as one', async () => {
    const linked = await session.request<{ ranges: unknown[] } | null>(
      'textDocument/linkedEditingRange',
      at('  caliper: Brake', '  cal$0iper: Brake'),
    );
    expect(linked?.ranges.length).toBe(4);
  });
});
