// Completion where people stop to think: what stands first in the list, and what the line reads after accepting.

import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { CompletionItem, InsertReplaceEdit, TextEdit } from 'vscode-languageserver-protocol';
import { SECTIONS, trade } from '../../language/src/index.js';
import { RAW } from '../../server/src/features/completion/values.js';
import { applied, offeredAt, type Session, startSession } from './session.js';
import { HEAD, PATH, shop } from './shop.js';

const HOUSE = `catalogue: House rules

tools
  paint-pen: Paint pen
  gloves: Nitrile gloves

messages
  hot-oil: Hot oil burns.

supplies
  solvent: Cleaner
    cleaner
`;
const USED = HEAD.replace('van.bay"\n', 'van.bay"\nuse "../house/general.bay"\n').replace(
  '\nremoval\n',
  '\nlimits\n  disc-thickness: Disc thickness\n    at least 22.0 mm\n\nremoval\n',
);
let session: Session;
beforeAll(async () => {
  session = await startSession({
    files: {
      ...shop(HEAD),
      'house/general.bay': HOUSE,
      'procedures/WH-01.bay':
        'procedure WH-01: Wheel\n\nuse "../catalogue/van.bay"\nuse "../house/general.bay"\n\napplies to maristow-300\n\nremoval\n  operation wheel-off: Wheel off\n    step: Off\n      wear gloves\n      remove wheel-nut, wheel\n',
    },
    capabilities: {
      workspace: { configuration: true, workspaceFolders: true },
      textDocument: { completion: { completionItem: { snippetSupport: true, insertReplaceSupport: true } } },
    },
  });
  session.open(PATH, HEAD);
});
afterAll(() => session.close());

const offered = (text: string): Promise<CompletionItem[]> => offeredAt(session, PATH, text);
const labels = async (text: string): Promise<string[]> => (await offered(text)).map((i) => i.label);
const first = async (text: string, count = 1): Promise<string[]> => (await labels(text)).slice(0, count);
const step = (line: string): string => `${USED}    ${line}\n`;
const entry = (line: string): string =>
  USED.replace('    2 of M12x1.5, class 10.9, hex 18 mm\n    torque 110 N·m, per "HL-90"\n', `    ${line}\n`);

/** The whole text after accepting, with what else the item writes. */
async function written(text: string, label: string, way: 'insert' | 'replace' = 'insert'): Promise<string> {
  const item = (await offered(text)).find((i) => i.label === label);
  if (!item?.textEdit) throw new Error(`${label} is not offered`);
  const own = item.textEdit as TextEdit & InsertReplaceEdit;
  const edit = { range: own.range ?? own[way], newText: own.newText };
  return applied(session.text(PATH), [edit, ...(item.additionalTextEdits ?? [])]);
}

describe('a text in quotes is replaced whole', () => {
  test('a sheet behind per, with the closing quote that the editor wrote', async () => {
    const wanted = entry('torque 110 N·m, per "HL-90"');
    for (const line of ['per $0', 'per "$0', 'per "$0"', 'per "H$0', 'per "HL$0"'])
      expect(await written(entry(`torque 110 N·m, ${line}`), 'HL-90')).toBe(wanted);
  });
  test('an import that is half written', async () => {
    for (const line of ['use $0', 'use "$0"', 'use "../h$0', 'use "../ho$0use/x.bay"'])
      expect(await written(HEAD.replace('van.bay"\n', `van.bay"\n${line}\n`), '../house/general.bay')).toBe(
        HEAD.replace('van.bay"\n', 'van.bay"\nuse "../house/general.bay"\n'),
      );
  });
});

test('in the middle of a word, the rest may be replaced or kept', async () => {
  expect(await written(step('remove whe$0els'), 'wheel-nut', 'replace')).toContain('    remove wheel-nut\n');
  expect(await written(step('remove whe$0els'), 'wheel-nut', 'insert')).toContain(
    '    remove wheel-nutels\n',
  );
});

describe('the left edge', () => {
  test('an empty file is opened, nothing else', async () => {
    expect(await labels('$0')).toEqual(['procedure …', 'catalogue …', 'procedure', 'catalogue']);
  });
  test('behind the opening line come the lines of the head, then sections', async () => {
    const offers = await labels('procedure X-1: Pump\n\n$0');
    expect(offers.slice(0, 3)).toEqual(['use', 'applies to', 'sides']);
    expect(offers).not.toContain('procedure');
  });
  test('between sections come the sections that are lacking, in their order', async () => {
    expect(await first(HEAD.replace('\nremoval\n', '\n$0\n\nremoval\n'), 2)).toEqual([
      'connections',
      'circuits',
    ]);
  });
  test('a catalogue has no work', async () => {
    const offers = await labels('catalogue: Van\n\n$0');
    expect(offers).toEqual(expect.arrayContaining(['use', 'parts', 'rules']));
    expect(offers).not.toEqual(expect.arrayContaining(['removal']));
    expect(offers).not.toEqual(expect.arrayContaining(['applies to']));
  });
  test('a vehicle of a catalogue that is not used yet brings its import', async () => {
    expect(await written('procedure X-1: Pump\n\napplies to $0\n', 'maristow-300')).toBe(
      'procedure X-1: Pump\n\nuse "../catalogue/van.bay"\n\napplies to maristow-300\n',
    );
  });
  test('the next revision, who may sign', async () => {
    const text = HEAD.replace('parts\n', 'revision 3 on 2026-01-02: Torque raised.\nrevision $0\n\nparts\n');
    expect((await labels(text))[0]).toMatch(/^4 on \d{4}-\d\d-\d\d$/);
    const line = (own: string): string => HEAD.replace('parts\n', `${own}\n\nparts\n`);
    expect(await labels(line('status released $0'))).toEqual(['by']);
    expect(await labels(line('status released by KM, TR $0'))).toEqual(['on']);
    expect(await labels(line('applies to maristow-300 from $0'))).toEqual(['2018 to 2025']);
  });
});

describe('entries', () => {
  test('each section has the snippet of its kind', async () => {
    expect(await first(USED.replace('limits\n', 'limits\n  $0\n'))).toEqual(['limit …']);
    expect(await labels(USED.replace('limits\n', 'limits\n  $0\n'))).not.toContain('part …');
  });
  test('what a kind says most stands first', async () => {
    expect(await first(entry('$0'), 4)).toEqual(['4 of …', 'class', 'hex', 'torque']);
    expect(await first(entry('2 of M12x1.5, $0'), 3)).toEqual(['class', 'hex', 'torque']);
    expect(await first(USED.replace('at least 22.0 mm', '$0'), 2)).toEqual(['at least', 'at most']);
  });
  test('a count asks for its thread', async () => {
    expect(await written(entry('2 $0'), 'of')).toContain('    2 of \n');
    expect(await labels(entry('2 of $0'))).toEqual(expect.arrayContaining(['M12x1.5', 'clip']));
  });
  test('what holds nothing yet stands first behind held by, the entry itself not at all', async () => {
    const bare = USED.replace('    held by caliper-bolt\n', '    held by $0\n');
    expect(await first(bare)).toEqual(['caliper-bolt']);
    expect(await labels(bare)).not.toContain('caliper');
  });
  test('what is not known yet may be said so', async () => {
    expect(await labels(entry('torque $0'))).toEqual(['?']);
    expect(await labels(entry('class $0'))).toContain('?');
  });
  test('units of a workshop first, those of the entry before them', async () => {
    expect(await first(entry('torque 110 $0'), 3)).toEqual(['N·m', 'ft·lbf', 'in·lbf']);
    expect(await first(entry('torque 60 N·m then 90 $0'))).toEqual(['°']);
    expect(await first(USED.replace('22.0 mm', '22.0 mm, new 24 $0'))).toEqual(['mm']);
    expect(await labels(USED.replace('at least 22.0 mm', 'at most 22 $0'))).toContain('A');
  });
  test('a stage follows a stage', async () => {
    expect(await first(entry('torque 60 N·m $0'))).toEqual(['then']);
    expect(await labels(entry('torque 60 N·m then $0'))).toEqual(['back']);
  });
  test('a grade goes on behind the first of its words', async () => {
    const oil = USED.replace('limits\n', 'fluids\n  rear-oil: Oil\n    ISO VG $0\n\nlimits\n');
    expect(await labels(oil)).toEqual(['22', '32', '46', '68']);
  });
  test('a flange is tightened in its usual passes', async () => {
    const flange = (count: number, torque: string): string =>
      entry(`${count} of M10x1.5, class 8.8, hex 16 mm\n    torque ${torque}`);
    const passes = '14 N·m then 27 N·m then 45 N·m';
    expect(await first(flange(8, '45 N·m $0'), 2)).toEqual(['then', passes]);
    expect(await written(flange(8, '45 N·m $0'), passes)).toContain(`    torque ${passes}\n`);
    expect(await written(flange(8, '45 N·m th$0'), passes)).toContain(`    torque ${passes}\n`);
    expect(await labels(flange(14, '33 ft-lb $0'))).toContain(
      '6.6 ft·lbf then 13 ft·lbf then 26 ft·lbf then 33 ft-lb',
    );
    for (const line of [flange(2, '45 N·m $0'), flange(8, '40 to 50 N·m $0'), flange(8, '9 N·m then 90° $0')])
      expect((await labels(line)).filter((label) => label.includes(' then '))).toEqual([]);
  });
  test('marks that the checks know, with what they do', async () => {
    const marks = await offered(USED.replace('    held by caliper-bolt\n', '    marked $0\n'));
    const caliper = marks.find((m) => m.label === 'brake-caliper');
    expect(JSON.stringify(caliper?.documentation)).toContain('pedal and reservoir');
  });
});

test('every value that is offered reads by its standard', () => {
  for (const [word, values] of Object.entries(RAW))
    for (const text of values) {
      const standard = trade.GRADE_STANDARDS.find((s) => s === word);
      if (standard) expect(trade.readGrade(standard, text), text).toMatchObject({ ok: true });
      if (word === 'class' || word === 'grade')
        expect(trade.readClass(text, word), text).toHaveProperty('kind');
    }
});

test('every snippet reads as it is inserted', async () => {
  const inserted = async (text: string, label = ' …'): Promise<string[]> => {
    const item = (await offered(text)).find((i) => i.label.endsWith(label));
    const plain = expanded(item);
    const indent = /[ ]*(?=\$0)/.exec(text)?.[0] ?? '';
    session.rewrite(PATH, text.replace('$0', plain.trimEnd().replaceAll('\n', `\n${indent}`)));
    const found = await session.diagnostics(PATH);
    return found.filter((d) => /^G|^N20/.test(String(d.code))).map((d) => `${d.code} ${d.message}`);
  };
  for (const { word, declares } of SECTIONS)
    if (declares) expect(await inserted(`${USED}\n${word}\n  $0\n`), word).toEqual([]);
  expect(await inserted('$0')).toEqual([]);
  for (const label of ['measure … if', 'inspect … reject', 'raise … support'])
    expect(await inserted(step('$0'), label), label).toEqual([]);
});

/** The text as an editor inserts it when nothing is changed: each stop with its default or first choice. */
function expanded(item: CompletionItem | undefined): string {
  if (!item) throw new Error('no snippet is offered');
  const { newText = '' } = (item.textEdit ?? {}) as Partial<TextEdit>;
  return newText.replaceAll(/\$\{\d+(?::([^}]*)|\|([^,|]*)[^}]*)\}/g, '$1$2').replaceAll('$0', '');
}

test('the snippets of a step name what the library has', async () => {
  const items = await offered(step('$0'));
  const text = (label: string): string => expanded(items.find((i) => i.label === label));
  expect(text('measure … if')).toBe('measure disc-thickness\n  if below limit\n    note: What is done then.');
  expect(text('raise … support')).toBe(
    'warning: Support the vehicle on rated stands before anyone reaches under it.\nchock rear-wheels\nraise vehicle with trolley-jack at sill-points\nsupport vehicle with axle-stands at sill-points',
  );
});

test('a verb is found by the words that shops say for it', async () => {
  const found = async (typed: string): Promise<(string | undefined)[]> =>
    (await offered(step(`${typed}$0`))).filter((i) => i.label === 'install').map((i) => i.filterText);
  expect(await found('')).toEqual(['install']);
  expect(await found('f')).toEqual(['fit install']);
  expect(await found('re')).toEqual(['refit reinstall install']);
  // What the letters themselves begin comes before.
  const sorted = (await offered(step('st$0')))
    .filter((i) => i.filterText?.trim().startsWith('st'))
    .sort((a, b) => ((a.sortText ?? '') < (b.sortText ?? '') ? -1 : 1));
  expect(sorted.map((i) => i.label)).toEqual(['step', 'stake', 'store', 'stop', 'remove', 'run', 'tap']);
});

describe('rules', () => {
  const rule = (line: string): string => `${USED}\nrules\n  mine: Mine\n    ${line}\n`;
  test('marks of the whole library and of the starter pack', async () => {
    const marks = await labels(rule('after install any part marked $0'));
    expect(marks).toEqual(expect.arrayContaining(['wheel', 'brake-caliper', 'hydraulic']));
  });
  test('only what has a state may be asked for', async () => {
    const names = await labels(rule('while $0'));
    expect(names).toContain('disc');
    expect(names).not.toContain('mine');
    expect(names).not.toContain('HL-90');
  });
});

describe('lines of work', () => {
  test('verbs of the phase first', async () => {
    expect(await first(step('$0'), 2)).toEqual(['remove', 'disconnect']);
  });
  test('what is joined to a thing on the line comes next', async () => {
    const off = `${USED}    remove wheel-nut, wheel, caliper-bolt, caliper, disc\n`;
    expect(await first(`${off}    install disc, caliper, $0`)).toEqual(['caliper-bolt']);
  });
  test('a count takes what there are several of, and no clause', async () => {
    expect(await labels(step('remove 2 of $0'))).toEqual(['wheel-nut']);
  });
  test('a name that is asked for is offered though it cannot be done yet', async () => {
    const items = await offered(step('remove cal$0'));
    const caliper = items.find((i) => i.label === 'caliper');
    expect(caliper?.detail).toBe('Brake caliper · Not yet: wheel-nut, wheel, caliper-bolt first.');
    expect(caliper?.tags).toBeUndefined();
  });
  test('tools that are made for it, and what it was used with before', async () => {
    expect(await first(step('raise vehicle with $0'))).toEqual(['trolley-jack']);
    expect(await first(step('clean disc with $0'))).toEqual(['solvent']);
    expect(await first(step('wear $0'))).toEqual(['gloves']);
  });
  test('gear and messages of a house catalogue that is not used yet bring its import', async () => {
    const used = HEAD.replace('van.bay"\n', 'van.bay"\nuse "../house/general.bay"\n');
    expect(await first(`${HEAD}    wear $0\n`)).toEqual(['gloves']);
    expect(await written(`${HEAD}    wear $0\n`, 'gloves')).toBe(`${used}    wear gloves\n`);
    expect(await written(`${HEAD}    clean disc with $0\n`, 'solvent')).toBe(
      `${used}    clean disc with solvent\n`,
    );
    expect(await written(`${HEAD}    warning $0\n`, 'hot-oil')).toBe(`${used}    warning hot-oil\n`);
  });
  test('readings are of limits first, distances in kilometres', async () => {
    expect(await first(step('measure $0'))).toEqual(['disc-thickness']);
    expect(await first(step('recheck wheel-nut, after 80 $0'), 2)).toEqual(['km', 'mi']);
  });
  test('an operation is performed from a procedure that has it', async () => {
    expect(await labels(`${USED}  perform wheel-off from $0`)).toEqual(['WH-01']);
  });
  test('model years behind when', async () => {
    expect(await labels(step('remove wheel-nut, when year $0'))).toEqual(['2018 to 2025']);
  });
  test('codes found on the line below are accepted first', async () => {
    const text = `${HEAD}    remove wheel-nut, wheel\n`;
    session.rewrite(PATH, text);
    await session.diagnostics(PATH);
    expect(await first(text.replace('    remove', '    accept $0\n    remove'))).toEqual(['S301']);
  });
});
