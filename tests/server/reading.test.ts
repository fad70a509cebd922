// What the editor shows beside the text: hovers, inlay hints, signatures, lenses, semantic tokens.

import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type {
  CodeLens,
  Hover,
  InlayHint,
  SemanticTokens,
  SignatureHelp,
} from 'vscode-languageserver-protocol';
import { TOKEN_TYPES } from '../../server/src/protocol.js';
import { type Session, startSession } from './session.js';
import { HEAD, PATH, shop } from './shop.js';

let session: Session;
const WORK = `${HEAD}    remove wheel-nut, wheel\n    remove caliper-bolt, caliper\n`;
beforeAll(async () => {
  session = await startSession({ files: shop(WORK) });
  session.open(PATH, WORK);
});
afterAll(() => session.close());
const at = (needle: string, mark: string) => session.rewrite(PATH, WORK.replace(needle, mark));
const hovered = async (needle: string, mark: string): Promise<string> => {
  const hover = await session.request<Hover | null>('textDocument/hover', at(needle, mark));
  return hover && 'value' in (hover.contents as object) ? (hover.contents as { value: string }).value : '';
};

describe('hover', () => {
  test('a quantity in both systems, a tolerance as a range', async () => {
    expect(await hovered('110 N·m', '11$00 N·m')).toContain('81.1 ft·lbf');
    expect(await hovered('110 N·m', '110 ft·$0lbf')).toContain('1 ft·lbf = 1.355818 N·m (NIST SP 811)');
    expect(await hovered('110 N·m', '110 N·$0m')).not.toContain('NIST');
    expect(await hovered('110 N·m', '11$00 ±5 N·m')).toContain('105 to 115 N·m');
    expect(await hovered('110 N·m', '11$00 N·m')).toMatch(/preload \d+ kN, \d+ % of proof \(/);
  });
  test('a fastener with joint figures, sheet and its state at the line', async () => {
    const card = await hovered('remove caliper-bolt, caliper', 'remove caliper-b$0olt, caliper');
    expect(card).toContain('Caliper bolts');
    expect(card).toMatch(/preload \d+ kN, \d+ % of proof/);
    expect(card).toContain('Wheels and tyres sheet, issue 6');
    expect(
      await hovered('remove caliper-bolt, caliper', 'remove caliper-bolt, caliper\n    inspect wh$0eel'),
    ).toContain('Before this line: off the vehicle');
  });
  test('what a nut itself bears of the load that its torque gives', async () => {
    const nut = WORK.replace('2 of M12x1.5, class 10.9', '2 of M12x1.5, class 10').replace(
      'torque 110 N·m',
      'torque 11$00 N·m',
    );
    const hover = await session.request<Hover>('textDocument/hover', session.rewrite(PATH, nut));
    // 110 N·m at K 0.2 is 45.8 kN; 88.1 mm² at 1050 MPa (ISO 898-2) bears 92.5 kN.
    expect((hover.contents as { value: string }).value).toContain('the nut itself at 50 % of its proof');
    expect(await hovered('110 N·m', '11$00 N·m')).not.toContain('nut itself');
  });
  describe('the mix of a coolant', () => {
    const coolant = async (clauses: string): Promise<string> => {
      const entry = `fluids\n  coolant: Coolant\n    ${clauses}\n\nremoval\n`;
      const fill = `${WORK.replace('removal\n', entry)}    drain cool$0ant\n`;
      const hover = await session.request<Hover>('textDocument/hover', session.rewrite(PATH, fill));
      return (hover.contents as { value: string }).value;
    };
    test('how far it protects, what to pour, how to mend a weak one', async () => {
      const card = await coolant('ASTM D3306\n    mix 50 %\n    fill 8.0 L, per "HL-90"');
      expect(card).toContain('Freezes at -37 °C (ethylene glycol) · ASHRAE Fundamentals');
      expect(card).toContain('Freezes at -33 °C (propylene glycol) · Lange');
      expect(card).toContain('8.0 L: 4 L of concentrate and 4 L of water');
      // 8 L from 40 % to 50 %: 8 × 0.1 / 0.6.
      expect(card).toContain('found at 40 %, drain 1.3 L and fill with concentrate');
    });
    test('of the type that the grade names alone', async () => {
      const card = await coolant('ASTM D3306 type IV\n    mix 40 to 50 %\n    fill 8 L, per "HL-90"');
      expect(card).toContain('Freezes at -21 °C (propylene glycol)');
      expect(card).not.toContain('ethylene');
      expect(card).not.toContain('concentrate and');
    });
    test('of what is no coolant by its grade, the amounts alone', async () => {
      const card = await coolant('mix 25 %\n    fill 4 L, per "HL-90"');
      expect(card).toContain('4 L: 1 L of concentrate and 3 L of water');
      expect(card).not.toContain('Freezes');
    });
  });
  test('verbs, clauses, sections and the finding at the place', async () => {
    expect(await hovered('    loosen wheel-nut', '    loo$0sen wheel-nut')).toContain('**loosen**');
    const remove = await hovered('    remove caliper-bolt, caliper', '    remo$0ve caliper-bolt, caliper');
    expect(remove).toContain('- everything that holds it is off');
    // That is asked of caps and chocks alone.
    expect(remove).not.toContain('- it is placed');
    expect(await hovered('trolley-jack at sill', 'trolley-jack a$0t sill')).toContain('**at**');
    expect(await hovered('removal', 'rem$0oval')).toContain('Take things off');
    // Findings are those on the screen: until the text is checked, the ones from before.
    const place = at('    remove wheel-nut, wheel', '    remo$0ve wheel-nut, wheel');
    await session.diagnostics(PATH);
    const hover = await session.request<Hover>('textDocument/hover', place);
    expect((hover.contents as { value: string }).value).toContain('S301');
  });
  test('what an operation needs and leaves, where it is performed', async () => {
    const operation = 'preparation\n  operation wheel-off: Wheel off\n    step: Off\n      remove wheel\n\n';
    const card = await hovered('removal', `${operation}removal\n  perform wheel-o$0ff`);
    expect(card).toContain('**Wheel off** · operation');
    expect(card).toContain('Needs before it: wheel-nut off');
    expect(card).toMatch(/Leaves: .*wheel off/);
  });
  test('what must come off before a part, the first first', async () => {
    expect(await hovered('remove caliper-bolt, caliper', 'remove caliper-bolt, cal$0iper')).toContain(
      'Comes off after wheel-nut, wheel, caliper-bolt',
    );
  });
  test('what is set with a crowfoot on a self-locking nut', async () => {
    const work = `${WORK.replace('"HL-90"\n    behind wheel\n\nremoval', '"HL-90"\n    prevailing 10 N·m\n    behind wheel\n\ntools\n  crowfoot: Crowfoot\n    offset 50 mm\n  wrench: Torque wrench\n    torque 20 to 200 N·m\n    length 400 mm\n\nremoval')}    torque caliper-bo$0lt with wrench, crowfoot\n`;
    const hover = await session.request<Hover>('textDocument/hover', session.rewrite(PATH, work));
    expect((hover.contents as { value: string }).value).toContain(
      'Set **107 N·m** on the wrench for caliper-bolt: 110 N·m, 10 N·m of drag, crowfoot of 50 mm on wrench of 400 mm',
    );
  });
  test('what the steps come to, on the labour', async () => {
    expect(
      await hovered('applies to maristow-300\n', 'applies to maristow-300\nlab$0our 1 h 40 min\n'),
    ).toMatch(/The steps come to \*\*\d+ min\*\* with hands on/);
  });
  test('how long what wears lasts', async () => {
    expect(
      await hovered(
        '\nremoval',
        '\nlimits\n  pad-thick$0ness: Pad thickness\n    at least 3 mm, new 12 mm, wear 0.5 mm\n\nremoval',
      ),
    ).toContain('Lasts to the next service from 3.5 mm; a new one lasts 18 services');
  });
  test('a time of an hour or more in hours too', async () => {
    expect(
      await hovered('applies to maristow-300\n', 'applies to maristow-300\nlabour 9$00 min\n'),
    ).toContain('**90 min** = 1 h 30 min');
  });
  test('a thread, a class, a grade, a mark: what its standard or the checks say of it', async () => {
    expect(await hovered('2 of M12x1.5', '2 of M12$0x1.5')).toContain(
      '**M12×1.5** · fine  \nPitch 1.5 mm  \nTensile stress area 88.13 mm²  \nISO 261',
    );
    expect(await hovered('class 10.9', 'class 10$0.9')).toContain('Proof 830 MPa, tensile 1040 MPa');
    const part = (clause: string): [string, string] => [
      '    behind caliper\n',
      `    behind caliper\n    ${clause}\n`,
    ];
    expect(await hovered(...part('marked brake-cal$0iper'))).toContain('pedal and reservoir');
    const fluid = '\nfluids\n  oil: Oil\n    SAE 75W$0-90\n\nremoval';
    expect(await hovered('\nremoval', fluid)).toContain('**SAE 75W-90** · gear oil');
  });
  test('a figure that text refers to, an import, a value, what an if asks', async () => {
    expect(
      await hovered('remove caliper-bolt, caliper', 'remove caliper: See {caliper-bolt tor$0que}.'),
    ).toContain('torque 110 N·m ≈ 81.1 ft·lbf');
    expect(await hovered('use "../catalogue', 'use "../cata$0logue')).toContain(
      '**Maristow 300 delivery van**',
    );
    expect(await hovered('1/2 turn', '1/2 turn, when axle hea$0vy')).toContain('axle light, heavy');
    expect(
      await hovered('remove caliper-bolt, caliper', 'inspect disc\n      if rej$0ected\n        remove disc'),
    ).toContain('**rejected**: What was looked at is unfit.');
  });
  test('the card of a fastener has each stage in both systems, and no wrench that is not there', async () => {
    const text = WORK.replace('torque 110 N·m', 'torque 60 N·m then 110 N·m').replace(
      'remove caliper-bolt',
      'remove caliper-b$0olt',
    );
    const hover = await session.request<Hover>('textDocument/hover', session.rewrite(PATH, text));
    const card = (hover.contents as { value: string }).value;
    expect(card).toContain('torque 60 N·m ≈ 44.3 ft·lbf  \ntorque 110 N·m ≈ 81.1 ft·lbf');
    expect(card).not.toContain('in  \n');
  });
  test('a bound is said once', async () => {
    const limits = '\nlimits\n  disc-thickness: Disc thickness\n    at least 22.0 mm\n\nremoval';
    expect(await hovered('\nremoval', limits.replace('  disc-th', '  disc-$0th'))).toContain(
      'at least 22.0 mm ≈ 0.867 in',
    );
  });
  test('nothing beside the text', async () => {
    expect(
      await session.request('textDocument/hover', {
        textDocument: { uri: session.uri(PATH) },
        position: { line: 9999, character: 5 },
      }),
    ).toBeNull();
  });
});

describe('inlay hints', () => {
  const all = () =>
    session.request<InlayHint[]>('textDocument/inlayHint', {
      textDocument: { uri: session.uri(PATH) },
      range: { start: { line: 0, character: 0 }, end: { line: 999, character: 0 } },
    });
  test('the other unit alone, until asked for more; one switch for all', async () => {
    at('xx', 'xx');
    expect((await all()).map((h) => h.label)).toContain('≈ 81.1 ft·lbf');
    expect((await all()).map((h) => h.label)).not.toContain('5× 21 mm');
    // The size of a head is that of a wrench, not a length.
    expect((await all()).map((h) => h.label)).not.toContain('≈ 0.83 in');
    session.changeSettings({ inlay: { fasteners: true, renewed: true, jointFigures: true } });
    await expect.poll(async () => (await all()).map((h) => h.label)).toContain('5× hex 21 mm');
    expect((await all()).some((h) => /^preload/.test(String(h.label)))).toBe(true);
    session.rewrite(
      PATH,
      `${WORK.replace('    behind wheel\n\nfasteners', '    behind wheel\n    renew\n\nfasteners')}    install caliper, caliper-bolt\n`,
    );
    expect((await all()).filter((h) => h.label === 'new')).toHaveLength(1);
    at('xx', 'xx');
    session.changeSettings({ inlay: { enabled: false } });
    await expect.poll(all).toEqual([]);
    session.changeSettings({});
  });
});

test('signature help marks the clause at the cursor', async () => {
  const help = await session.request<SignatureHelp>(
    'textDocument/signatureHelp',
    at('at sill-points\n    support', 'at $0sill-points\n    support'),
  );
  const [signature] = help.signatures;
  expect(signature?.label).toMatch(/^raise /);
  expect(signature?.parameters?.[help.activeParameter ?? 0]?.label).toMatch(/^at /);
});

test('signature help on a line that goes on with a statement, and in the clause of an entry', async () => {
  const label = async (needle: string, mark: string): Promise<string | undefined> =>
    (await session.request<SignatureHelp | null>('textDocument/signatureHelp', at(needle, mark)))
      ?.signatures[0]?.label;
  const below = 'remove caliper-bolt, caliper\n      with $0';
  expect(await label('remove caliper-bolt, caliper', below)).toMatch(/^remove .*\[with tool/);
  expect(await label('torque 110', 'torque $0110')).toBe('torque torque | angle');
  expect(await label('held by caliper-bolt', 'held by $0')).toBe(
    'held by fastener | connection | part | condition',
  );
  expect(await label('class 10.9', 'class $0')).toBe('class 8.8 | 10.9 | 12.9 | A2-70 | A4-80');
  expect(await label('hex 18 mm', 'hex 18 mm, $0')).toBeUndefined();
});

test('a lens on each phase says what is off and owed', async () => {
  at('xx', 'xx');
  const lenses = await session.request<CodeLens[]>('textDocument/codeLens', {
    textDocument: { uri: session.uri(PATH) },
  });
  expect(lenses.map((l) => l.command?.title)).toEqual([expect.stringMatching(/^4 off · \d+ owed$/)]);
});

describe('semantic tokens', () => {
  test('full, range and delta agree', async () => {
    const { textDocument } = at('xx', 'xx');
    const full = await session.request<SemanticTokens>('textDocument/semanticTokens/full', { textDocument });
    expect(decoded(full.data, session.text(PATH))).toEqual(
      expect.arrayContaining([
        'wheel-nut fastener',
        'remove function',
        'N·m unit',
        'removal keyword',
        'warning signal',
        'maristow-300 vehicle',
      ]),
    );
    const range = await session.request<SemanticTokens>('textDocument/semanticTokens/range', {
      textDocument,
      range: { start: { line: 0, character: 0 }, end: { line: 3, character: 0 } },
    });
    expect(full.data.slice(0, range.data.length)).toEqual(range.data);
    at('remove caliper-bolt, caliper', 'remove caliper-bolt');
    const delta = await session.request<{ edits: { start: number; deleteCount: number; data?: number[] }[] }>(
      'textDocument/semanticTokens/full/delta',
      { textDocument, previousResultId: full.resultId },
    );
    const patched = [...full.data];
    for (const edit of delta.edits) patched.splice(edit.start, edit.deleteCount, ...(edit.data ?? []));
    expect(patched).toEqual(
      (await session.request<SemanticTokens>('textDocument/semanticTokens/full', { textDocument })).data,
    );
  });
});

function decoded(data: readonly number[], text: string): string[] {
  const lines = text.split('\n');
  const out: string[] = [];
  let line = 0;
  let character = 0;
  for (let i = 0; i < data.length; i += 5) {
    const [dl = 0, dc = 0, length = 0, type = 0] = data.slice(i, i + 4);
    line += dl;
    character = dl === 0 ? character + dc : dc;
    out.push(`${lines[line]?.slice(character, character + length)} ${TOKEN_TYPES[type]}`);
  }
  return out;
}
