// What a shop lead meets while typing a procedure from nothing: words half typed, things not declared yet, the word of
// the shop for a verb, dates, and the half that is still to be written.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { CodeAction, CompletionItem, TextEdit } from 'vscode-languageserver-protocol';
import { applied, editsOf, offeredAt, type Session, startSession } from './session.js';
import { HEAD, PATH, shop } from './shop.js';

let session: Session;
beforeAll(async () => {
  session = await startSession({
    files: {
      ...shop(HEAD),
      'baywright.json': '{ "release": { "reviewMonths": 24 } }\n',
      'house/general.bay': 'catalogue: House rules\n',
      'procedures/WW-09.bay':
        'procedure WW-09: Wiper\n\nuse "../catalogue/van.bay"\nuse "../house/general.bay"\n\napplies to maristow-300\n',
    },
  });
  session.open(PATH, HEAD);
});
afterAll(() => session.close());

const offered = (text: string): Promise<CompletionItem[]> => offeredAt(session, PATH, text);
const labels = async (text: string): Promise<string[]> => (await offered(text)).map((i) => i.label);
const head = (line: string): string => HEAD.replace('parts\n', `${line}\n\nparts\n`);
const part = (line: string): string => HEAD.replace('    behind caliper\n', `    ${line}\n`);
const step = (line: string): string => `${HEAD}    ${line}\n`;

/** The line of the cursor after accepting. */
async function accepted(text: string, label: string): Promise<string> {
  const item = (await offered(text)).find((i) => i.label === label);
  const edit = item?.textEdit as TextEdit | undefined;
  if (!edit) throw new Error(`${label} is not offered`);
  const line = applied(session.text(PATH), [edit]).split('\n')[edit.range.start.line] ?? '';
  return line.trim();
}

test('a new procedure has the catalogue of its vehicle, and what others of it use as a rule', async () => {
  const item = (await offered('$0')).find((i) => i.label === 'procedure …');
  const edit = item?.textEdit as TextEdit | undefined;
  expect(edit?.newText.split('\n').slice(1, 6)).toEqual([
    '',
    'use "../catalogue/van.bay"',
    'use "../house/general.bay"',
    '',
    'applies to maristow-300',
  ]);
  expect(item?.detail).toBe('Maristow 300 delivery van');
});

describe('a phrase that is half typed goes on, and is not begun again', () => {
  test.each([
    ['applies to', head('applies $0'), 'applies to', 'applies to'],
    ['held by', part('held $0'), 'held by', 'held by'],
    ['held by, a letter further', part('held b$0'), 'held by', 'held by'],
    ['only when', part('only $0'), 'only when', 'only when'],
    ['no torque', HEAD.replace('torque 110 N·m, per "HL-90"', 'no $0'), 'no torque', 'no torque'],
    ['on ground', step('torque wheel-nut, on $0'), 'on ground', 'torque wheel-nut, on ground'],
  ])('%s', async (_name, text, label, line) => {
    expect(await accepted(text, label)).toBe(line);
    // Nothing else can follow there.
    const first = /\S+/.exec(label)?.[0] ?? '';
    expect((await labels(text)).filter((l) => !l.startsWith(first))).toEqual([]);
  });
});

describe('days', () => {
  const day = /^\d{4}-\d\d-\d\d$/;
  test('a revision is of today', async () => {
    const [revision] = await labels(head('revision $0'));
    expect(revision).toMatch(/^1 on \d{4}-\d\d-\d\d$/);
    expect((await labels(head('revision 1 on $0')))[0]).toMatch(day);
  });
  test('so is a signature', async () => {
    expect((await labels(head('status proved by KM on $0')))[0]).toMatch(day);
  });
  test('a review comes as late as the house says', async () => {
    const [today = ''] = await labels(head('status proved by KM on $0'));
    const [review = ''] = await labels(head('review $0'));
    expect(Number(review.slice(0, 4))).toBe(Number(today.slice(0, 4)) + 2);
  });
});

describe('what is named and not declared yet', () => {
  const open = HEAD.replace('held by caliper-bolt', 'held by slide-bolt');
  test('what holds a part comes off before it', async () => {
    const off = `${open}    remove wheel-nut, wheel\n`;
    expect((await labels(`${off}    remove $0\n`)).slice(0, 2)).toEqual(['slide-bolt', 'caliper']);
  });
  test('once it is off it goes back on, and is tightened', async () => {
    const off = `${open}    remove wheel-nut, wheel\n    remove slide-bolt, caliper\n`;
    expect(await labels(`${off}    remove $0\n`)).not.toContain('slide-bolt');
    expect(await labels(`${off}    install caliper, $0\n`)).toContain('slide-bolt');
    expect(await labels(`${off}    install caliper, slide-bolt\n    torque $0\n`)).toContain('slide-bolt');
  });
});

describe('the word of the shop for a verb', () => {
  test('takes what the verb takes', async () => {
    expect((await labels(step('unbolt $0')))[0]).toBe('wheel-nut');
    expect(await labels(step('jack vehicle $0'))).toContain('at');
  });
});

test('sheets that the file takes figures from come first', async () => {
  const two = HEAD.replace(
    'fasteners\n',
    'sources\n  HL-10: Another sheet\n\nfasteners\n  drum-bolt: Bolt\n    torque 20 N·m, per $0\n',
  );
  expect(await labels(two)).toEqual(['HL-90', 'HL-10', '?']);
});

test('a condition is set to another value than it has', async () => {
  const brake = HEAD.replace(
    'fasteners\n',
    'conditions\n  brake: Parking brake\n    applied, released\n\nfasteners\n',
  );
  expect((await labels(`${brake}    set brake $0\n`))[0]).toBe('released');
  expect((await labels(`${brake}    set brake released\n    set brake $0\n`))[0]).toBe('applied');
});

test('a place is chocked that the shop chocks', async () => {
  const place = HEAD.replace('removal\n', 'places\n  adjuster: Adjuster\n\nremoval\n');
  expect((await labels(`${place}    unchock rear-wheels\n    chock $0\n`))[0]).toBe('rear-wheels');
});

test('an amount behind a clause has the units of the verb', async () => {
  const settings = HEAD.replace(
    'fasteners\n',
    'adjustments\n  cable: Cable tension\n\nplaces\n  nut: Nut\n\nfasteners\n',
  );
  expect(await labels(`${settings}    adjust cable at nut, 2 $0\n`)).toContain('turns');
});

test('a part of a turn is a turn', async () => {
  expect((await labels(step('loosen wheel-nut, 1/2 $0')))[0]).toBe('turn');
});

describe('what ends a block is offered at its indent, and goes to its own column', () => {
  test.each([
    ['the next step', `${HEAD}    st$0\n`, 'step', '  step: '],
    ['the next section of work', `${HEAD}\n    ins$0\n`, 'inspection', 'inspection'],
    ['the next section of things', HEAD.replace('removal\n', '    fl$0\nremoval\n'), 'fluids', 'fluids'],
  ])('%s', async (_name, text, label, line) => {
    const item = (await offered(text)).find((i) => i.label === label);
    const edit = item?.textEdit as TextEdit;
    expect(edit.range.start.character).toBe(0);
    expect(applied(session.text(PATH), [edit]).split('\n')[edit.range.start.line]).toBe(line);
    // An editor compares what it replaces with this.
    expect(item?.filterText).toBe(`    ${label}`);
  });
  test('a section that is there is not begun again', async () => {
    expect(await labels(`${HEAD}    fa$0\n`)).not.toContain('fasteners');
  });
});

describe('the half that is still to be written', () => {
  const half = `${HEAD}    remove wheel-nut, wheel\n`;
  const written =
    'installation\n  step: Fit the road wheel\n    install wheel, wheel-nut\n    snug wheel-nut\n\ncompletion\n  step: Lower and hand back\n    lower vehicle\n    torque wheel-nut\n    unchock rear-wheels\n';
  test('comes with its section', async () => {
    const item = (await offered(`${half}\nin$0\n`)).find((i) => i.label === 'installation …');
    const text = applied(session.text(PATH), [item?.textEdit as TextEdit]);
    expect(text).toBe(`${half}\n${written}`);
  });
  test('is offered on the empty line behind the work too', async () => {
    const { textDocument, range } = session.rewrite(PATH, `${half}\n$0`);
    const actions = await session.request<CodeAction[]>('textDocument/codeAction', {
      textDocument,
      range,
      context: { diagnostics: [] },
    });
    const action = actions.find(({ title }) => title.includes('fitting half'));
    expect(applied(session.text(PATH), editsOf(action?.edit, session.uri(PATH))).trimEnd()).toBe(
      `${half}\n${written}`.trimEnd(),
    );
  });
});
