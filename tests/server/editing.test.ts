// Edits the server proposes: formatting, fixes, refactors. What counts is the text after the edit is applied.

import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { CodeAction, TextEdit } from 'vscode-languageserver-protocol';
import { applied, editsOf, type Session, startSession } from './session.js';
import { CATALOGUE, HEAD, PATH, shop } from './shop.js';

let session: Session;
beforeAll(async () => {
  session = await startSession({ files: shop(HEAD) });
  session.open(PATH, HEAD);
});
afterAll(() => session.close());

async function actions(text: string, only?: string[]): Promise<CodeAction[]> {
  const { textDocument, range } = session.rewrite(PATH, text);
  return (
    (await session.request<CodeAction[] | null>('textDocument/codeAction', {
      textDocument,
      range,
      context: { diagnostics: [], ...(only ? { only } : {}) },
    })) ?? []
  );
}
async function textAfter(text: string, title: RegExp, only?: string[], path = PATH): Promise<string> {
  const found = (await actions(text, only)).find((a) => title.test(a.title));
  if (!found) throw new Error(`no action ${title}`);
  return applied(path === PATH ? session.text(PATH) : CATALOGUE, editsOf(found.edit, session.uri(path)));
}

describe('formatting', () => {
  const options = { tabSize: 2, insertSpaces: true };
  test('of a document, and of a range alone', async () => {
    const messy = HEAD.replace('torque 110 N·m, per', 'torque   110 Nm,per').replace(
      'loosen wheel-nut, 1/2 turn',
      'loosen   wheel-nut ,1/2 turn',
    );
    const { textDocument } = session.rewrite(PATH, messy);
    expect(
      applied(messy, await session.request<TextEdit[]>('textDocument/formatting', { textDocument, options })),
    ).toBe(HEAD);
    const line = messy.split('\n').findIndex((l) => l.includes('110 Nm'));
    const edits = await session.request<TextEdit[]>('textDocument/rangeFormatting', {
      textDocument,
      options,
      range: { start: { line, character: 0 }, end: { line, character: 5 } },
    });
    expect(applied(messy, edits)).toBe(
      HEAD.replace('loosen wheel-nut, 1/2 turn', 'loosen   wheel-nut ,1/2 turn'),
    );
  });
  test('a new line gets the indent of what may follow', async () => {
    const typed = async (above: string, line: string): Promise<string> => {
      const { textDocument, position } = session.rewrite(PATH, `${HEAD}${above}\n${line}$0`);
      const edits = await session.request<TextEdit[]>('textDocument/onTypeFormatting', {
        textDocument,
        position,
        ch: '\n',
        options,
      });
      return (
        applied(session.text(PATH), edits ?? [])
          .split('\n')
          .at(-1) ?? ''
      );
    };
    expect(await typed('  step: More', '')).toBe('    ');
    expect(await typed('    remove wheel-nut,', '    ')).toBe('      ');
    expect(await typed('    remove wheel-nut', '')).toBe('    ');
    expect(await typed('    note:', '')).toBe('      ');
  });
});

describe('fixes', () => {
  test('of the finding at the place, tied to it', async () => {
    const found = await actions(`${HEAD}    remove$0 wheel-nut, wheel\n`, ['quickfix']);
    const fix = found.find((a) => a.title.startsWith('Insert `install'));
    expect(fix?.diagnostics?.[0]?.code).toBe('S301');
    expect(applied(session.text(PATH), editsOf(fix?.edit, session.uri(PATH)))).toContain(
      'install wheel, wheel-nut',
    );
  });
  test('declares all names that are used, with kinds read from use', async () => {
    const text = await textAfter(
      `${HEAD}    remove shield-bolt, dust-shi$0eld\n    disconnect wear-plug\n    relieve tilt-circuit\n`,
      /^Declare all/,
    );
    expect(text).toContain('fasteners\n  caliper-bolt:');
    expect(text).toContain('  shield-bolt: Shield bolt\n');
    expect(text).toMatch(/parts\n[\s\S]*dust-shield: Dust shield\n[\s\S]*fasteners/);
    expect(text).toContain('connections\n  wear-plug: Wear plug\n');
    expect(text).toContain('circuits\n  tilt-circuit: Tilt circuit\n');
  });
});

test('edits have the line breaks of the file they go into', async () => {
  const text = `${HEAD}    remove wheel-nut, wheel\n    remove shield-bolt, dust-shield\n`.replaceAll(
    '\n',
    '\r\n',
  );
  const at = (needle: string): string => text.replace(needle, `${needle.slice(0, 6)}$0${needle.slice(6)}`);
  const places = [at('remove wheel-nut'), at('dust-shield'), at('raise vehicle'), at('disc: Brake disc')];
  for (const place of places)
    for (const { title, edit } of await actions(place)) {
      for (const e of editsOf(edit, session.uri(PATH))) expect(e.newText, title).not.toMatch(/(?<!\r)\n/);
      for (const e of editsOf(edit, session.uri('catalogue/van.bay')))
        expect(e.newText, title).not.toContain('\r');
    }
  const { textDocument } = session.rewrite(
    PATH,
    text.replaceAll('torque 110 N·m,', 'torque   110 Nm ,').replace('hex 18', 'hex   18'),
  );
  const options = { tabSize: 2, insertSpaces: true };
  const edits = await session.request<TextEdit[]>('textDocument/formatting', { textDocument, options });
  expect(applied(session.text(PATH), edits)).toBe(text);
});

describe('refactors', () => {
  test('write the fitting half from the taking-off half', async () => {
    const text = await textAfter(
      `${HEAD}    remove wheel-nut, wheel\n    remove caliper-bolt, caliper$0, disc\n`,
      /fitting half/,
    );
    expect(text.slice(text.indexOf('installation'))).toBe(
      'installation\n  step: Fit the brake disc and the brake caliper\n    install disc, caliper, caliper-bolt\n    torque caliper-bolt\n  step: Fit the road wheel\n    install wheel, wheel-nut\n    snug wheel-nut\n\ncompletion\n  step: Lower and hand back\n    lower vehicle\n    torque wheel-nut\n    unchock rear-wheels\n',
    );
    session.rewrite(PATH, text);
    expect((await session.diagnostics(PATH)).filter((d) => d.severity === 1)).toEqual([]);
  });
  test('the fitting half is offered at the work, not beside a part', async () => {
    const text = `${HEAD}    remove wheel-nut, wheel\n`;
    const offered = async (at: string): Promise<string[]> =>
      (await actions(text.replace(at, `$0${at}`))).map((a) => a.title).filter((t) => /fitting half/.test(t));
    expect(await offered('disc: Brake disc')).toEqual([]);
    expect(await offered('chock rear-wheels')).toHaveLength(1);
  });
  test('split a step, turn repeated steps into an operation', async () => {
    expect(await textAfter(HEAD.replace('    raise vehicle', '    rai$0se vehicle'), /^Split/)).toContain(
      'turn\n  step: Raise the van, continued\n    raise vehicle',
    );
    const twice = `${HEAD}$0  step: Clean\n    clean sill-points\n$0  step: Other\n    inspect sill-points\n  step: Clean\n    clean sill-points\n`;
    const text = await textAfter(twice, /into an operation/);
    expect(text).toContain('  operation clean: Clean\n    step: Clean\n      clean sill-points\n');
    expect(text).toMatch(/ {2}perform clean\n$/);
  });
  test('move a declaration to the catalogue that is used', async () => {
    const text = HEAD.replace('  disc: Brake disc', '  di$0sc: Brake disc');
    expect(await textAfter(text, /^Move disc/)).not.toContain('disc: Brake disc');
    expect(await textAfter(text, /^Move disc/, undefined, 'catalogue/van.bay')).toContain(
      '    marked wheel\n  disc: Brake disc\n    behind caliper\n',
    );
  });
  test('a step is split above what is said of the line', async () => {
    const said = HEAD.replace('    raise vehicle', '    notice: Mind the sill.\n    rai$0se vehicle');
    expect(await textAfter(said, /^Split/)).toContain(
      '  step: Raise the van, continued\n    notice: Mind the sill.\n    raise vehicle',
    );
  });
  test('a line that repeats a declared figure is not converted', async () => {
    const line = (amount: string) => `${HEAD}    torque caliper-bolt, ${amount}\n`;
    const offers = async (amount: string) =>
      (await actions(line(amount))).filter((a) => /^Write as/.test(a.title));
    expect(await offers('11$00 N·m')).toEqual([]);
    expect(await offers('10$00 N·m')).toHaveLength(1);
  });
  test('the last entry of a section takes it along, and no second blank line stays', async () => {
    const text = HEAD.replace('\nparts\n', '\nplaces\n  hub-fa$0ce: Hub face\n\nparts\n');
    expect(await textAfter(text, /^Move hub-face/)).toBe(HEAD);
  });
  test('a declaration is moved to a catalogue in use, that of the vehicle first', async () => {
    const offers = await actions(HEAD.replace('  disc: Brake disc', '  di$0sc: Brake disc'));
    expect(offers.filter((a) => a.title.startsWith('Move')).map((a) => a.title)).toEqual([
      'Move disc to catalogue/van.bay',
    ]);
    const unused = HEAD.replace('use "../catalogue/van.bay"\n\n', '').replace('  disc: B', '  di$0sc: B');
    expect(await textAfter(unused, /^Move disc to catalogue/)).toContain(
      'replace\n\nuse "../catalogue/van.bay"\n',
    );
  });
  test('convert a quantity, refer to a figure instead of repeating it', async () => {
    expect(await textAfter(HEAD.replace('110 N·m', '11$00 N·m'), /^Write as/)).toContain(
      'torque 81.1 ft·lbf, per',
    );
    expect(await textAfter(`${HEAD}    note: Torque to 1$010 Nm.\n`, /^Refer to/)).toContain(
      'note: Torque to {caliper-bolt torque}.',
    );
  });
  test('organise imports', async () => {
    const text = HEAD.replace(
      'use "../catalogue/van.bay"',
      'use "../catalogue/van.bay"\nuse "../catalogue/van.bay"',
    );
    expect(await textAfter(text, /^Organise/, ['source.organizeImports'])).toBe(HEAD);
  });
});

describe('edits are made when an action is chosen', () => {
  const LEFT_OFF = `${HEAD}    remove wheel-nut, wheel\n`;
  let asking: Session;
  beforeAll(async () => {
    const codeAction = { resolveSupport: { properties: ['edit'] }, dataSupport: true };
    asking = await startSession({
      files: shop(LEFT_OFF),
      capabilities: { workspace: { configuration: true }, textDocument: { codeAction } },
    });
    asking.open(PATH, LEFT_OFF);
  });
  afterAll(() => asking.close());
  const listed = (): Promise<CodeAction[]> => {
    const { textDocument, range } = asking.rewrite(
      PATH,
      LEFT_OFF.replace('remove wheel-nut', 'rem$0ove wheel-nut'),
    );
    return asking.request('textDocument/codeAction', { textDocument, range, context: { diagnostics: [] } });
  };

  test('where the client says that it asks for them', async () => {
    expect(asking.result.capabilities.codeActionProvider).toMatchObject({ resolveProvider: true });
    expect(session.result.capabilities.codeActionProvider).toMatchObject({ resolveProvider: false });
    const found = await listed();
    expect(found.map((a) => a.edit)).toEqual(found.map(() => undefined));
    const fix = found.find((a) => a.title.startsWith('Insert `install'));
    const whole = await asking.request<CodeAction>('codeAction/resolve', fix);
    expect(applied(asking.text(PATH), editsOf(whole.edit, asking.uri(PATH)))).toContain(
      'install wheel, wheel-nut',
    );
    const half = found.find((a) => /fitting half/.test(a.title));
    expect((await asking.request<CodeAction>('codeAction/resolve', half)).edit).toBeDefined();
  });
  test('not of a text that was edited since', async () => {
    const [fix] = await listed();
    asking.rewrite(PATH, HEAD);
    await expect(asking.request('codeAction/resolve', fix)).rejects.toThrow('edited since');
  });
});
