// `export` and `import`: what goes out can be read by others, what comes in is judged row by row.
import Ajv2020 from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { issueRecordJsonSchema } from '../../compiler/src/desk/issue-record.js';
import { exportJsonSchema } from '../../compiler/src/desk/model-schema.js';
import { columnMapJsonSchema, columnMapSchema } from '../../compiler/src/desk/spec-import.js';
import { CATALOGUE, SHOP } from './desk.js';
import { baywright } from './fake-shell.js';

const validator = (schema: unknown) => new Ajv2020.default({ strict: false }).compile(schema as object);

describe('export', () => {
  it('the model fits its published schema and has figures in SI', async () => {
    const { code, out } = await baywright('export', { files: SHOP });
    expect(code).toBe(0);
    const data = JSON.parse(out);
    const fits = validator(exportJsonSchema());
    expect(fits(data), JSON.stringify(fits.errors)).toBe(true);
    const guide = data.files.find((file: { number: string }) => file.number === 'M-1');
    expect(guide).toMatchObject({
      title: 'Door mirror, replace',
      status: { word: 'released', by: ['KM', 'TR'] },
    });
    const bolt = guide.things.find((thing: { name: string }) => thing.name === 'mirror-bolt');
    const torque = bolt.clauses.find((clause: { word: string }) => clause.word === 'torque');
    expect(torque.quantities).toEqual([{ written: '9 N·m', kind: 'torque', nominal: 9, low: 9, high: 9 }]);
    expect(guide.work.map((line: { text: string }) => line.text)).toContain('torque mirror-bolt');
  });

  it('the record of an issue fits its published schema', async () => {
    const { files } = await baywright('issue M-1', { files: SHOP });
    const fits = validator(issueRecordJsonSchema());
    expect(fits(JSON.parse(String(files.get('issued/M-1/1/issue.json')))), JSON.stringify(fits.errors)).toBe(
      true,
    );
  });

  it('figures as a table', async () => {
    const { out } = await baywright('export catalogue --what figures', { files: SHOP });
    expect(out).toContain(
      '\r\ncatalogue/mirrors.bay,mirror-bolt,Mirror bolts,fastener,torque,9 N·m,,torque,9,9,9,MS-1\r\n',
    );
    expect(out.startsWith('\uFEFFfile,name,title,kind')).toBe(true);
  });

  it('the pull list names what is handed out', async () => {
    const files = {
      ...SHOP,
      'catalogue/mirrors.bay': CATALOGUE.replace('    number DM-114', '    number DM-114\n    renew'),
    };
    const { out } = await baywright('export M-1.bay --what pull', { files });
    expect(out).toMatch(/M-1,"Door mirror, replace",[^,]*,Door mirror,DM-114,1,/);
  });
});

describe('import', () => {
  it('takes back what export wrote', async () => {
    const { out } = await baywright('export catalogue --what specs', { files: SHOP });
    const { code, files, err } = await baywright('import specs.csv --into new.bay', {
      files: { 'specs.csv': out },
    });
    expect({ code, err }).toEqual({ code: 0, err: '2 rows written to new.bay.\n' });
    expect(String(files.get('new.bay'))).toBe(`catalogue: Specifications

parts
  door-mirror: Door mirror
    held by mirror-bolt
    number DM-114
    once

fasteners
  mirror-bolt: Mirror bolts
    3 of M6x1.0, class 8.8, hex 10 mm
    torque 9 N·m, per "MS-1"
    once
`);
  });

  it('takes back values of variants, each with its condition', async () => {
    const van = `catalogue: Test van

vehicles
  van: Test van
    years 2018 to 2025
    option axle light, heavy

sources
  S-1: Sheet

fasteners
  nut: Nuts
    5 of M14x1.5, hex 21 mm
    torque 160 N·m, order star, dry, per "S-1"
    torque 180 N·m, per "S-1", when axle heavy
  bolt: Bolts of the heavy axle
    2 of M8x1.25, class 8.8, hex 13 mm, only when axle heavy
    torque 24 N·m, per "S-1"
`;
    const { out } = await baywright('export van.bay --what specs', { files: { 'van.bay': van } });
    expect(out).toContain('fasteners,nut,Nuts,when axle heavy,');
    const [head = ''] = van.split('\nfasteners');
    const { code, files } = await baywright('import specs.csv --into van.bay', {
      files: { 'specs.csv': out, 'van.bay': head },
    });
    expect(code).toBe(0);
    expect(String(files.get('van.bay'))).toBe(van);
  });

  it('a value of a variant is judged at its own row, and asks for the row it varies', async () => {
    const files = {
      'bolts.csv': `name,title,when,count,thread,torque
nut,Nuts,,5,M14x1.5,160 N·m
nut,,axle heavy,,,180 psi
pin,Pins,axle heavy,2,M8x1.25,
`,
      'van.bay': 'catalogue: Van\n\nvehicles\n  van: Van\n    option axle light, heavy\n',
    };
    const { out } = await baywright('import bolts.csv --into van.bay', { files });
    expect(out.split('\n')).toEqual([
      expect.stringContaining('bolts.csv:3 bad row: Q102'),
      'bolts.csv:4 bad row: when: no row above says what `pin` is whatever the variant',
      '',
    ]);
  });

  const COLUMNS =
    '{ "Bolt": "title", "Nm": { "to": "torque", "unit": "N·m" }, "Qty": "count", "Thread": "thread", "Bin": "-" }';

  it('columns by other names, bare numbers with their unit, into the section that is there', async () => {
    const files = {
      'bolts.csv': 'Bolt;Nm;Qty;Thread;Bin\nLamp bolts;6;2;M5x0.8;A 4\n',
      'columns.json': COLUMNS,
      'catalogue/mirrors.bay': CATALOGUE,
    };
    const { code, files: after } = await baywright(
      'import bolts.csv --columns columns.json --into catalogue/mirrors.bay',
      { files },
    );
    expect(code).toBe(0);
    expect(after.get('catalogue/mirrors.bay')).toBe(`${CATALOGUE}  lamp-bolts: Lamp bolts
    2 of M5x0.8
    torque 6 N·m
`);
  });

  it('every bad row is told by its line, and nothing is written', async () => {
    const files = {
      'bolts.csv': `Bolt,Nm,Qty,Thread
Good bolt,6,2,M5x0.8
,6,2,M5x0.8
Odd thread,6,2,M13
Wrong unit,6 psi,2,M5x0.8
Mirror bolts,9,3,M6x1.0
Five cells,6,2,M5x0.8,more
"Two
lines",6,2,M5x0.8
`,
      'columns.json': COLUMNS,
      'van.bay': CATALOGUE.replace('mirror-bolt: Mirror', 'mirror-bolts: Mirror').replace(
        'held by mirror-bolt',
        'held by mirror-bolts',
      ),
    };
    const ran = await baywright('import bolts.csv --columns columns.json --into van.bay', { files });
    expect(ran.code).toBe(1);
    expect(ran.out.split('\n')).toEqual([
      'bolts.csv:3 bad row: title: is empty',
      'bolts.csv:4 bad row: F101 M13 is not a diameter of ISO 261',
      expect.stringContaining('bolts.csv:5 bad row: Q102'),
      'bolts.csv:6 bad row: name: `mirror-bolts` is declared already',
      'bolts.csv:7 bad row: has more cells than there are headings',
      'bolts.csv:8 bad row: has a cell of several lines',
      '',
    ]);
    expect(ran.files.get('van.bay')).toBe(files['van.bay']);
    const good = await baywright('import bolts.csv --columns columns.json --into van.bay --good-only', {
      files,
    });
    expect(String(good.files.get('van.bay'))).toContain(
      '  good-bolt: Good bolt\n    2 of M5x0.8\n    torque 6 N·m\n',
    );
  });

  it.each([
    ['t.csv', 'name,colour\na,red\n', 'no clause goes by the heading “colour”'],
    ['t.csv', '', 'the table is empty'],
    ['t.csv', 'name,title\n"a,b\n', 't.csv: a quotation mark is opened and never closed (line 2)'],
  ])('a table that cannot be read is refused', async (name, table, reason) => {
    const { code, err } = await baywright(`import ${name} --into a.bay`, { files: { [name]: table } });
    expect(code).toBe(2);
    expect(err).toContain(reason);
  });

  it('of two rows of one name the first stands', async () => {
    const table =
      'name,title,count,thread\nnut,Nuts,4,M8x1.25\nnut,Other nuts,2,M8x1.25\nlid-nut,Nuts,two,M8x1.25\n';
    const { out, files } = await baywright('import t.csv --into a.bay --good-only', {
      files: { 't.csv': table },
    });
    expect(out).toBe(
      't.csv:3 bad row: name: `nut` stands in line 2 already\nt.csv:4 bad row: count: “two” is no whole number\n',
    );
    expect(String(files.get('a.bay'))).toContain('  nut: Nuts\n');
  });

  it('takes the decimal comma of a table that semicolons part, and inches', async () => {
    const table =
      'name;title;count;thread;class;hex;torque;number\nnut;"Nuts; long";4;M8x1,25;8,8;13;22,5 Nm;"A,5"\nbolt;Bolts;2;1/2-13 UNC;;3/4";90 ft-lb;\nodd;Odd;2;M8x1,25;;13;1,250 Nm;\n';
    const { out, files } = await baywright('import t.csv --columns map.json --into a.bay --good-only', {
      files: { 't.csv': table, 'map.json': '{ "hex": { "to": "hex", "unit": "mm" } }' },
    });
    expect(out).toContain('t.csv:4 bad row: Q106 the comma in 1,250 can be misread');
    expect(String(files.get('a.bay'))).toBe(`catalogue: Specifications

fasteners
  nut: Nuts; long
    4 of M8x1.25, class 8.8, hex 13 mm
    torque 22.5 N·m
    number "A,5"
  bolt: Bolts
    2 of 1/2-13 UNC, hex 3/4 in
    torque 90 ft·lbf
`);
  });

  it.each([
    ['[1]', 'map.json is no map of columns'],
    ['{ "Nm": { "to": "torque" } }', 'map.json: “Nm” leads to no column; write "torque"'],
  ])('the map of columns %s is refused in words', async (map, reason) => {
    const { code, err } = await baywright('import t.csv --columns map.json --into a.bay', {
      files: { 't.csv': 'name,title\na,b\n', 'map.json': map },
    });
    expect(code).toBe(2);
    expect(err).toContain(reason);
  });

  it('writes into catalogues alone', async () => {
    const { err } = await baywright('import t.csv --into a.txt', { files: { 't.csv': 'name,title\na,b\n' } });
    expect(err).toContain('a.txt is no catalogue: its name must end in .bay');
  });

  it('text that would start a clause or a line of its own stays inside its cell', async () => {
    const table = 'name,title,number\nlid,"Lid: of the box",1\nbox,Box,"2, renew"\n';
    const { files } = await baywright('import t.csv --into a.bay --section parts', {
      files: { 't.csv': table },
    });
    const text = String(files.get('a.bay') ?? '');
    expect(text).toContain('  lid: Lid: of the box\n');
    expect(text).toContain('  box: Box\n    number "2, renew"\n');
  });

  it('the map of columns has a published schema', () => {
    const fits = validator(columnMapJsonSchema());
    expect(fits(JSON.parse(COLUMNS))).toBe(true);
    expect(fits({ Bolt: { to: 'torque' } })).toBe(false);
    expect(columnMapSchema.safeParse({ Bolt: { to: 'torque' } }).success).toBe(false);
  });
});
