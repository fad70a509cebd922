// Fixes through a session: one finding, all of its kind, all that are safe, and names that another file declares.

import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { CodeAction } from 'vscode-languageserver-protocol';
import { applied, editsOf, type Session, startSession } from './session.js';
import { HEAD, PATH, shop } from './shop.js';

const HOUSE = 'catalogue: House rules\n\nsources\n  HL-7: House sheet\n\ntools\n  gloves: Nitrile gloves\n';
const WHEEL =
  'procedure WH-01: Wheel\n\nuse "../catalogue/van.bay"\n\nremoval\n  operation wheel-off: Wheel off\n    step: Off\n      remove wheel-nut, wheel\n';
let session: Session;
beforeAll(async () => {
  session = await startSession({
    files: { ...shop(HEAD), 'house/general.bay': HOUSE, 'procedures/WH-01.bay': WHEEL },
  });
  session.open(PATH, HEAD);
});
afterAll(() => session.close());

async function actions(text: string, only?: string[]): Promise<CodeAction[]> {
  const { textDocument, range } = session.rewrite(PATH, text);
  const context = { diagnostics: [], ...(only ? { only } : {}) };
  return (
    (await session.request<CodeAction[]>('textDocument/codeAction', { textDocument, range, context })) ?? []
  );
}
const titles = async (text: string): Promise<string[]> => (await actions(text)).map((a) => a.title);
async function textAfter(text: string, title: RegExp, only?: string[]): Promise<string> {
  const found = (await actions(text, only)).find((a) => title.test(a.title));
  if (!found) throw new Error(`no action ${title}`);
  return applied(session.text(PATH), editsOf(found.edit, session.uri(PATH)));
}

describe('a name that a file of the library declares', () => {
  const import_ = HEAD.replace('van.bay"\n', 'van.bay"\nuse "../house/general.bay"\n');
  test('a thing', async () => {
    expect(await textAfter(`${HEAD}    wear glo$0ves\n`, /^Use /)).toBe(`${import_}    wear gloves\n`);
  });
  test('a sheet', async () => {
    expect(await textAfter(HEAD.replace('per "HL-90"', 'per "HL$0-7"'), /^Use /)).toBe(
      import_.replace('per "HL-90"', 'per "HL-7"'),
    );
  });
  test('a vehicle, in a file that uses nothing yet', async () => {
    const text = 'procedure X-1: Pump\n\napplies to mari$0stow-300\n';
    expect(await textAfter(text, /^Use /)).toBe(
      'procedure X-1: Pump\n\nuse "../catalogue/van.bay"\n\napplies to maristow-300\n',
    );
  });
  test('an operation, from the procedure that has it', async () => {
    const wanted = `${HEAD}  perform wheel-off from WH-01\n`;
    expect(await textAfter(`${HEAD}  perform wheel-o$0ff\n`, /^Perform /)).toBe(wanted);
    expect(await textAfter(`${HEAD}  perform wheel-off from XX$0-9\n`, /^Perform /)).toBe(wanted);
  });
  test('nothing where no file does', async () => {
    expect((await titles(`${HEAD}    wear mit$0tens\n`)).filter((t) => t.startsWith('Use '))).toEqual([]);
  });
});

describe('all of a kind', () => {
  const SPELLED = `${HEAD.replace('torque 110 N·m', 'torque 110 lb')}    wait 10 lb\n`;
  test('one action mends every finding of a code in the file', async () => {
    const twice = `${HEAD}    remov wheel-nut\n    remo$0v wheel\n`;
    expect(await textAfter(twice, /^Mend all 2/)).toBe(`${HEAD}    remove wheel-nut\n    remove wheel\n`);
    expect((await titles(SPELLED.replace('110 lb', '11$00 lb'))).filter((t) => /^Mend all/.test(t))).toEqual(
      [],
    );
  });
  test('where a fix of its own does that already, it is not offered twice', async () => {
    const text = `${HEAD}    wear mit$0tens\n    inspect dust-shield\n`;
    expect((await titles(text)).filter((t) => /all/.test(t))).toEqual(['Declare all 2 undeclared names']);
  });
  test('all that are safe, for a client that mends on saving', async () => {
    const text = `$0${HEAD}    remov wheel-nut\n`;
    expect(await textAfter(text, /^Apply all safe/, ['source.fixAll'])).toBe(`${HEAD}    remove wheel-nut\n`);
  });
  test('an accept that silences nothing is not accepted in its turn', async () => {
    const text = `${HEAD}    accept F20$03: old sheet\n    loosen wheel-nut\n`;
    expect((await titles(text)).filter((t) => /R901/.test(t))).toEqual([]);
  });
  test('accept stands above the line, at its indent', async () => {
    const text = HEAD.replace('per "HL-90"\n    behind', 'per ?\n    behind').replace('per ?', 'per $0?');
    const [found] = (await titles(text)).filter((t) => /^Accept/.test(t));
    expect(await textAfter(text, /^Accept/)).toMatch(
      new RegExp(`\n    accept ${found?.split(' ')[1]}: reason\n    torque 110`),
    );
  });
});
