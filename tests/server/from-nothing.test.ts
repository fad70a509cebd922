// A procedure of a kind that no sample shows, written from an empty file by what the server offers: each step is what a
// person would type or choose, and in the end nothing is left to mend.

import { afterAll, beforeAll, expect, test } from 'vitest';
import type { CodeAction, CompletionList, TextEdit } from 'vscode-languageserver-protocol';
import { applied, editsOf, type Session, startSession } from './session.js';
import { shop } from './shop.js';

const FILE = 'procedures/WW-02.bay';
let session: Session;
let text = '';
beforeAll(async () => {
  session = await startSession({ files: shop('procedure FB-03: Other\n') });
  session.open(FILE, '');
});
afterAll(() => session.close());

/** Types at the end of the text, then chooses an offer that must be among the first few. */
async function type(typed: string, choice?: string): Promise<void> {
  text += typed;
  if (choice === undefined) return;
  const cursor = session.rewrite(FILE, `${text}$0`);
  const list = await session.request<CompletionList>('textDocument/completion', cursor);
  const item = list.items.slice(0, 10).find((i) => i.label === choice);
  if (!item?.textEdit)
    throw new Error(`${choice} is not among ${list.items.slice(0, 10).map((i) => i.label)}`);
  text = applied(text, [item.textEdit as TextEdit, ...(item.additionalTextEdits ?? [])]);
}

/** Chooses an action at the first place of a text. */
async function choose(place: string, title: RegExp): Promise<void> {
  const { textDocument, range } = session.rewrite(FILE, text.replace(place, `$0${place}`));
  const context = { diagnostics: [] };
  const found = await session.request<CodeAction[]>('textDocument/codeAction', {
    textDocument,
    range,
    context,
  });
  const action = found.find((a) => title.test(a.title));
  if (!action) throw new Error(`no action ${title} among ${found.map((a) => a.title)}`);
  text = applied(text, editsOf(action.edit, session.uri(FILE)));
}

test('a wiper linkage', async () => {
  await type('', 'procedure');
  await type('WW-02: Wiper linkage, replace\n\n');
  await type('', 'applies to');
  await type('', 'maristow-300');
  await type('\n');
  await type('', 'labour');
  await type('50 ', 'min');
  await type('\n\nremoval\n  step: Take the arms off\n    ', 'remove');
  await type('arm-nut, wiper-arm\n    ', 'remove');
  await type('cowl-clip, cowl\n    ', 'disconnect');
  await type('motor-plug\n    ', 'remove');
  await type('linkage-bolt, linkage\n');
  await choose('arm-nut', /^Declare all 7/);

  const below = async (entry: string, lines: readonly (readonly [string, string?])[]): Promise<void> => {
    const end = text.indexOf(`\n  ${entry}: `);
    const at = text.indexOf('\n', end + 1) + 1;
    const rest = text.slice(at);
    text = text.slice(0, at);
    for (const [typed, choice] of lines) await type(typed, choice);
    text = `${text}\n${rest}`;
  };
  await below('wiper-arm', [
    ['    ', 'held by'],
    ['', 'arm-nut'],
  ]);
  await below('cowl', [
    ['    ', 'held by'],
    ['', 'cowl-clip'],
    ['\n    ', 'behind'],
    ['', 'wiper-arm'],
  ]);
  await below('linkage', [
    ['    ', 'held by'],
    ['', 'linkage-bolt'],
    ['\n    ', 'behind'],
    ['', 'cowl'],
  ]);
  await below('arm-nut', [
    ['    2 ', 'of'],
    ['', 'M8x1.25'],
    [', ', 'hex'],
    ['', '13 mm'],
    ['\n    ', 'torque'],
    ['20 ', 'N·m'],
    [', ', 'per'],
    ['', 'HL-90'],
  ]);
  await below('cowl-clip', [['    6 ', 'of'], ['clip']]);
  await below('linkage-bolt', [
    ['    3 ', 'of'],
    ['', 'M6x1.0'],
    [', ', 'class'],
    ['', '8.8'],
    [', ', 'hex'],
    ['', '10 mm'],
    ['\n    ', 'torque'],
    ['9 ', 'N·m'],
    [', ', 'per'],
    ['', 'HL-90'],
  ]);
  await below('motor-plug', [
    ['    ', 'behind'],
    ['', 'cowl'],
  ]);
  await choose('remove linkage-bolt', /fitting half/);

  session.rewrite(FILE, text);
  expect((await session.diagnostics(FILE)).map((d) => `${d.code} ${d.message}`)).toEqual([]);
  const options = { tabSize: 2, insertSpaces: true };
  const { textDocument } = session.rewrite(FILE, text);
  const format = await session.request<TextEdit[]>('textDocument/formatting', { textDocument, options });
  expect(applied(text, format)).toBe(text);
  expect(text).toContain('    install linkage, linkage-bolt\n    torque linkage-bolt\n');
});
