// `baywright check` on whole libraries, the odd ones included.
import { describe, expect, it } from 'vitest';
import { STARTER_KINDS, STARTERS } from '../../compiler/src/cli/starters.js';
import { baywright } from './fake-shell.js';

const CLEAN = STARTERS.procedure.text({ number: 'A-1', title: 'Cover, remove and refit', day: '2026-10-05' });
/** The same with the cover never torqued. */
const UNTORQUED = CLEAN.replace('    torque cover-bolt\n', '');

describe('what is checked', () => {
  it.each(STARTER_KINDS)('a %s from `new` is clean', async (kind) => {
    const { files } = await baywright(`new A-1 Job --kind ${kind}`);
    expect(await baywright('check --strict', { files: Object.fromEntries(files) })).toMatchObject({
      code: 0,
      out: '1 file checked: no findings.\n',
      err: '',
    });
  });

  it('the current folder, without hidden folders, output and what the settings ignore', async () => {
    const files = {
      'baywright.json': '{ "ignore": ["old"], "output": "guides" }',
      'a.bay': CLEAN,
      'deep/er/b.bay': CLEAN.replace('A-1', 'A-2'),
      'old/c.bay': 'nonsense',
      'guides/d.bay': 'nonsense',
      '.hidden/e.bay': 'nonsense',
      'node_modules/f.bay': 'nonsense',
      'notes.txt': 'nonsense',
    };
    expect(await baywright('check', { files })).toMatchObject({
      code: 0,
      out: '2 files checked: no findings.\n',
    });
  });

  it('only what is named', async () => {
    const files = { 'a.bay': CLEAN, 'b.bay': 'nonsense' };
    expect(await baywright('check a.bay', { files })).toMatchObject({
      code: 0,
      out: '1 file checked: no findings.\n',
    });
  });

  it('a file named twice counts once', async () => {
    expect((await baywright('check a.bay . ./a.bay', { files: { 'a.bay': CLEAN } })).out).toBe(
      '1 file checked: no findings.\n',
    );
  });

  it('the nearest settings hold, none are merged', async () => {
    const files = {
      'baywright.json': '{ "severity": { "W": "off" } }',
      'inner/baywright.json': '{ "outptu": "x" }',
      'inner/a.bay': CLEAN,
    };
    const { code, out } = await baywright('check', { files });
    expect(code).toBe(1);
    expect(out).toContain(
      'inner/baywright.json:1:3 warning R803 there is no setting outptu; did you mean “output”?',
    );
  });
});

describe('findings', () => {
  it('a fastener that is never torqued is an error at its line, exit code 1', async () => {
    const { code, out } = await baywright('check', { files: { 'a.bay': UNTORQUED } });
    expect(code).toBe(1);
    expect(out).toMatch(/^a\.bay:\d+:\d+ error [FS]\d+ .*cover-bolt/m);
    expect(out).toMatch(/1 file checked: 1 error\.\n$/);
  });

  it('questions and hints alone exit with 0, with --strict 1', async () => {
    const files = { 'a.bay': CLEAN.replace('torque 9 N·m', 'torque ?') };
    const { code, out } = await baywright('check', { files });
    expect(out).toMatch(/question/);
    expect(code).toBe(0);
    expect((await baywright('check --strict', { files })).code).toBe(1);
  });

  it('--format json is one JSON value on standard output', async () => {
    const { code, out, err } = await baywright('check --format json', { files: { 'a.bay': UNTORQUED } });
    expect({ code, err }).toEqual({ code: 1, err: '' });
    expect(JSON.parse(out)).toMatchObject({
      findings: [{ severity: 'error', file: 'a.bay' }],
      summary: { files: 1, errors: 1 },
    });
  });

  it('--fix writes what it can mend and leaves a clean library', async () => {
    const { err, files } = await baywright('check --fix', {
      files: { 'a.bay': CLEAN.replace('  HS-1', '\tHS-1') },
    });
    expect(err).toMatch(/^[1-9]\d* findings? mended in 1 file\.\n/);
    expect((await baywright('check --strict', { files: Object.fromEntries(files) })).code).toBe(0);
  });
});

describe('--fix keeps the work as it was written', () => {
  const WORK = [
    '  step: Take the hoses off',
    '    disconnect hose-in, hose-out',
    '    disconnect drive-belt-plug',
    '    remove bolt-1, bolt-2',
  ].join('\n');

  it.each([
    ['that nothing declares', ''],
    ['that are like declared ones', 'connections\n  hose-in: Hose in\nfasteners\n  bolt-1: Bolt\n'],
    ['with a slip of the fingers', 'connections\n  drive-blet-plug: Plug\n'],
  ])('for names %s', async (_, declared) => {
    const text = `procedure A-1: Hoses\n\n${declared}\nremoval\n${WORK}\n`;
    const { files } = await baywright('check --fix', { files: { 'a.bay': text } });
    expect(files.get('a.bay')).toContain(WORK);
  });

  it('declares all at once, however many', async () => {
    const names = Array.from({ length: 30 }, (_, i) => `part-${i}`);
    const text = `procedure A-1: Parts\n\nremoval\n  step: S\n    remove ${names.join(', ')}\n`;
    const { files } = await baywright('check --fix', { files: { 'a.bay': text } });
    for (const name of names) expect(files.get('a.bay')).toContain(`\n  ${name}: `);
  });
});

describe('odd input has a clear answer and a documented exit code', () => {
  it('a folder without procedures', async () => {
    const { code, out } = await baywright('check', { files: { 'notes.txt': 'x' } });
    expect({ code, out }).toEqual({ code: 0, out: 'No procedures here: nothing was checked.\n' });
  });

  it('a path that is not there', async () => {
    const { code, err } = await baywright('check gone.bay');
    expect({ code, err }).toEqual({ code: 2, err: 'baywright: gone.bay does not exist\n' });
  });

  it('an empty file, as an editor makes one', async () => {
    const { code, out } = await baywright('check', { files: { 'a.bay': '' } });
    expect(code).toBe(0);
    expect(out).toContain('a.bay:1:1 question G113 the file does not begin with `procedure` or `catalogue`');
  });

  it('garbage', async () => {
    const { code, err } = await baywright('check', {
      files: { 'a.bay': ')(*&^%$ : : """ \u0001\uFFFF {{{{' },
    });
    expect({ code, err }).toEqual({ code: 1, err: '' });
  });

  it.each([
    ['binary', new Uint8Array([0x62, 0, 0, 1]), 'is not a text file (it holds zero bytes)'],
    ['not UTF-8', new Uint8Array([0x62, 0xe9, 0x20]), 'is not UTF-8 text; save it as UTF-8'],
  ])('a file that is %s, the others are still checked', async (_, bytes, problem) => {
    const { code, out, err } = await baywright('check', { files: { 'a.bay': bytes, 'b.bay': CLEAN } });
    expect({ code, out, err }).toEqual({
      code: 2,
      out: '1 file checked: no findings.\n',
      err: `baywright: a.bay ${problem}\n`,
    });
  });

  it('a folder that may not be read', async () => {
    const refused = { locked: 'may not be opened: permission is missing' };
    const { code, err } = await baywright('check', { files: { 'b.bay': CLEAN }, refused });
    expect({ code, err }).toEqual({
      code: 2,
      err: 'baywright: locked may not be opened: permission is missing\n',
    });
  });

  it('ten megabytes', async () => {
    const line = '# a note that goes on and on and on and on and on and on and on and on\n';
    const { code } = await baywright('check', {
      files: { 'a.bay': CLEAN + line.repeat(Math.ceil(10_000_000 / line.length)) },
    });
    expect(code).toBe(0);
  });

  it('a missing import', async () => {
    const { code, out } = await baywright('check', {
      files: { 'a.bay': CLEAN.replace('labour', 'use "gone.bay"\n\nlabour') },
    });
    expect(code).toBe(1);
    expect(out).toMatch(/a\.bay:\d+:\d+ error N\d+ .*gone\.bay/);
  });

  it('an import that leads out of the library', async () => {
    const files = {
      'lib/baywright.json': '{}',
      'lib/a.bay': CLEAN.replace('labour', 'use "../out.bay"\n\nlabour'),
      'out.bay': 'catalogue: Out\n',
    };
    const { code, out } = await baywright('check lib', { files });
    expect(code).toBe(1);
    expect(out).toMatch(/lib\/a\.bay:\d+:\d+ error N\d+ .*out\.bay/);
  });

  it('imports that go round', async () => {
    const files = { 'a.bay': 'catalogue: A\n\nuse "b.bay"\n', 'b.bay': 'catalogue: B\n\nuse "a.bay"\n' };
    const { code, out } = await baywright('check', { files });
    expect(code).toBe(1);
    expect(out).toMatch(/error N\d+ /);
  });

  it('settings that are not JSON', async () => {
    const { code, out } = await baywright('check', { files: { 'baywright.json': '{', 'a.bay': CLEAN } });
    expect(code).toBe(1);
    expect(out).toContain('baywright.json:1:2 error R801 the settings are not JSON: a closing } is missing');
  });
});
