// `baywright build` in a world in memory; the typesetter has its own tests.
import { describe, expect, it } from 'vitest';
import { baywright } from './fake-shell.js';

const VAN = `catalogue: Test van

vehicles
  van: Test van
    years 2018 to 2025
    option axle light, heavy

places
  step-board: Step board
`;
const GOOD = `procedure A-1: Step board, look at

use "van.bay"

applies to van
sides left, right
labour 10 min
status draft

inspection
  step: Look
    inspect step-board
      reject: cracks
      if rejected
        stop: Tag the van.
`;
const BAD = GOOD.replace('A-1', 'A-2').replace('inspect step-board', 'inspect step-bord');
const files = { 'baywright.json': '{ "shop": { "name": "Test shop" } }', 'van.bay': VAN, 'a.bay': GOOD };

describe('build', () => {
  it('makes PDFs for readers, and with --archive those for archives beside them, the same each time', async () => {
    const line = 'build a.bay --side left --format pdf';
    const env = { SOURCE_DATE_EPOCH: '1700000000' };
    const usual = await baywright(line, { files, env });
    const archive = await baywright(`${line} --archive`, { files, env });
    const again = await baywright(`${line} --archive`, { files, env });
    const pdf = ({ files: made }: typeof usual, path: string): string =>
      Buffer.from(made.get(path) ?? '').toString('latin1');
    expect(pdf(usual, 'out/a.left.pdf')).toContain('pdfuaid:part');
    expect(pdf(archive, 'out/a.left.archive.pdf')).toMatch(/pdfaid:part(?:>|=")2/);
    expect(pdf(again, 'out/a.left.archive.pdf')).toBe(pdf(archive, 'out/a.left.archive.pdf'));
  });

  it('writes a page for each side and both, and a page that lists them', async () => {
    const { code, out, files: after } = await baywright('build --format html', { files });
    expect(out).toContain('A-1 Step board, look at: draft');
    expect(out).toContain('1 procedure: 1 written (3 files), 0 refused.');
    expect([...after.keys()].filter((path) => path.startsWith('out/'))).toEqual([
      'out/a.left.html',
      'out/a.right.html',
      'out/a.both.html',
      'out/index.html',
    ]);
    expect(after.get('out/index.html')).toContain('./a.left.html');
    expect(after.get('out/a.left.html')).toContain('Test shop');
    expect(code).toBe(0);
  });

  it('gives no guide to a procedure with errors, and says so', async () => {
    const {
      code,
      out,
      files: after,
    } = await baywright('build --format html --side left', { files: { ...files, 'b.bay': BAD } });
    expect(out).toMatch(/A-2 Step board, look at: refused, \d error/);
    expect([...after.keys()]).not.toContain('out/b.left.html');
    expect(code).toBe(1);
  });

  it('says of a guide from before that it is not to be worked by, where the new text has errors', async () => {
    const fine = { ...files, 'b.bay': GOOD.replace('A-1', 'A-2'), 'bb.bay': GOOD.replace('A-1', 'A-3') };
    const first = await baywright('build --format html --side left', { files: fine });
    const { out } = await baywright('build --format html --side left', {
      files: { ...Object.fromEntries(first.files), 'b.bay': BAD },
    });
    expect(out).toMatch(
      /refused, \d errors?\n {2}note: out\/b\.left\.html is of an earlier text: do not work by it\n/,
    );
    expect(out).not.toContain('bb.left.html is of');
  });

  it('the list of guides is in the language of the shop, whatever the guides are in', async () => {
    const house = { ...files, 'baywright.json': '{ "languages": ["en", "de"] }' };
    const { files: after } = await baywright('build --format html --side left', { files: house });
    const list = String(after.get('out/index.html'));
    expect(list).toContain('<small>Draft</small>');
    expect(list).not.toContain('Entwurf');
    const german = { ...files, 'baywright.json': '{ "languages": ["de", "en"] }' };
    const whole = await baywright('build --format html', {
      files: { ...german, 'b.bay': GOOD.replace('A-1', 'A-2').replace('sides left, right\n', '') },
    });
    const links = String(whole.files.get('out/index.html')).match(/(?<=<a href="\.\/[ab]\.[^>]*>)[^<]*/g);
    const sides = ['Links', 'Rechts', 'Beide Seiten'];
    expect(links).toEqual([
      ...['de', 'en'].flatMap((code) => sides.map((side) => `${side} ${code}`)),
      'De',
      'En',
    ]);
  });

  it('gives no guide for what only the whole library can tell, where the house calls that an error', async () => {
    const grease = (title: string) =>
      GOOD.replace('inspection\n', `supplies\n  slip-agent: ${title}\n    number "9"\n\ninspection\n`);
    const library = {
      ...files,
      'baywright.json': '{ "severity": { "R203": "error" } }',
      'a.bay': grease('Grease'),
      'b.bay': grease('Paste').replace('A-1', 'A-2').replace('  slip-agent:', '  slip-paste:'),
    };
    const { out, code } = await baywright('build --format html --side left', { files: library });
    expect(out).toContain('A-1 Step board, look at: draft');
    expect(out).toContain('A-2 Step board, look at: refused, 1 error');
    expect(out).toMatch(/R203.*[\s\S]*1 error\./);
    expect(code).toBe(1);
  });

  it('writes the sheet, option and language asked for under a name of their own', async () => {
    const { files: after } = await baywright(
      'build a.bay --format html --only record --side left --option axle=heavy --language fr -o made',
      { files: { ...files, 'van.bay': `${VAN}    number "1", when axle heavy\n` } },
    );
    expect([...after.keys()].filter((path) => path.startsWith('made/'))).toHaveLength(1);
    expect([...after.keys()].find((path) => path.startsWith('made/'))).toMatch(
      /^made\/a\.record\.left\..*fr\.html$/,
    );
  });

  it('makes the same bytes from the same source', async () => {
    const [first, second] = [
      await baywright('build a.bay --format html', { files }),
      await baywright('build a.bay --format html', { files }),
    ];
    expect(first.files.get('out/a.left.html')).toBe(second.files.get('out/a.left.html'));
  });

  it('says what was made as data', async () => {
    const { out } = await baywright('build --format html --side left --json', { files });
    expect(JSON.parse(out)).toMatchObject({
      procedures: [{ number: 'A-1', state: 'written', error: 0, files: [{ path: '/shop/out/a.left.html' }] }],
      index: ['/shop/out/index.html'],
    });
  });

  it('makes no guide for a side or an option that there is not, and says which there are', async () => {
    const side = await baywright('build --format html --side middle', { files });
    expect(side.out).toContain(
      'A-1 Step board, look at: passed over, it has no side “middle”; it has left, right\n',
    );
    expect(side.code).toBe(2);
    const value = await baywright('build --format html --option axle=hevy', { files });
    expect(value.out).toContain(
      'passed over, none of its vehicles has the axle “hevy”; they have light, heavy',
    );
    expect([...value.files.keys()].filter((path) => path.startsWith('out/'))).toEqual([]);
    expect(value.code).toBe(2);
    const name = await baywright('build --format html --option axel=heavy', { files });
    expect(name.err).toBe(
      'baywright: no vehicle of these procedures has the option “axel”: nothing was left out for it\n',
    );
    expect(name.code).toBe(2);
  });

  it('keeps the guides of two files of one name apart, whichever is made', async () => {
    const two = {
      ...files,
      'a.bay': '',
      'vans/door.bay': GOOD.replace('van.bay', '../van.bay'),
      'trucks/Door.bay': GOOD.replace('van.bay', '../van.bay').replace('A-1', 'B-1'),
    };
    for (const line of ['build --format html --side left', 'build vans/door.bay --format html --side left'])
      expect([...(await baywright(line, { files: two })).files.keys()]).toContain('out/vans-door.left.html');
    const all = await baywright('build --format html --side left', { files: two });
    expect([...all.files.keys()]).toContain('out/trucks-Door.left.html');
    const list = { ...files, 'a.bay': '', 'index.bay': GOOD.replace('sides left, right\n', '') };
    const made = [...(await baywright('build --format html', { files: list })).files.keys()];
    expect(made).toEqual(expect.arrayContaining(['out/index-guide.html', 'out/index.html']));
  });

  it('prints the rest of a library for one variant of some', async () => {
    const trailer = GOOD.replaceAll('A-1', 'B-1').replace('applies to van\n', '');
    const { out, code } = await baywright('build --format html --option axle=heavy', {
      files: { ...files, 'b.bay': trailer },
    });
    expect(out).toContain('2 procedures: 2 written');
    expect(code).toBe(0);
  });

  it('does not end well with errors in a catalogue or the settings', async () => {
    const wrong = { ...files, 'van.bay': `${VAN}    colour red\n` };
    expect((await baywright('build --format html', { files: wrong })).code).toBe(1);
    const settings = { ...files, 'baywright.json': '{ "units": 7 }' };
    expect((await baywright('build --format html', { files: settings })).code).toBe(1);
  });

  it('asks for the line of a hand-over sheet, and looks whether there is one', async () => {
    const { err } = await baywright('build --only off-now', { files });
    expect(err).toBe('baywright: say before which line the work stopped: --only off-now --at 40\n');
    const far = await baywright('build --format html --only off-now --at 400', { files });
    expect(far.out).toContain('passed over, it has 16 lines, no line 400');
    expect(far.code).toBe(2);
  });

  it.each([
    ['build --at 30', '--at goes with --only off-now'],
    ['build --only off-now --at x', '“x” is no line number'],
    ['build --format docx', 'there is no format “docx”'],
    ['build --language xx', 'there is no language “xx”'],
    ['build --option heavy', '“heavy” is no option of a vehicle'],
  ])('%s', async (line, message) => {
    const { code, err } = await baywright(line, { files });
    expect(err).toContain(message);
    expect(code).toBe(2);
  });
});
