// `baywright format`: in place, as a check, through standard input.
import { describe, expect, it } from 'vitest';
import { STARTERS } from '../../compiler/src/cli/starters.js';
import { baywright } from './fake-shell.js';

const TIDY = STARTERS.procedure.text({ number: 'A-1', title: 'Cover', day: '2026-10-05' });
const UNTIDY = TIDY.replace('torque 9 N·m,  per', 'torque 9 N·m, per').replace(
  'torque 9 N·m',
  'torque   9 Nm',
);

describe('format', () => {
  it('writes changed files and names them', async () => {
    const { code, out, err, files } = await baywright('format', {
      files: { 'a.bay': UNTIDY, 'b.bay': TIDY },
    });
    expect({ code, out, err }).toEqual({ code: 0, out: 'a.bay\n', err: '1 of 2 files changed.\n' });
    expect(files.get('a.bay')).toBe(TIDY);
  });

  it('--check changes nothing and exits with 1', async () => {
    const { code, out, files } = await baywright('format --check', { files: { 'a.bay': UNTIDY } });
    expect({ code, out }).toEqual({ code: 1, out: 'a.bay\n' });
    expect(files.get('a.bay')).toBe(UNTIDY);
    expect((await baywright('format --check', { files: { 'a.bay': TIDY } })).code).toBe(0);
  });

  it.each([
    ['format -', UNTIDY, 0, TIDY],
    ['format - --check', UNTIDY, 1, ''],
    ['format - --check', TIDY, 0, ''],
  ])('%s reads standard input', async (line, stdin, code, out) => {
    expect(await baywright(line, { stdin })).toMatchObject({ code, out, err: '' });
  });

  it('what `new` writes is in its form already', async () => {
    for (const kind of ['procedure', 'catalogue', 'rules']) {
      const { files } = await baywright(`new A-1 Job --kind ${kind}`);
      expect((await baywright('format --check', { files: Object.fromEntries(files) })).code).toBe(0);
    }
  });

  it.each([
    ['format - a.bay', '- stands alone'],
    ['format gone.bay', 'gone.bay does not exist'],
  ])('%s is refused with the reason', async (line, reason) => {
    expect(await baywright(line, { files: { 'a.bay': TIDY } })).toMatchObject({
      code: 2,
      err: expect.stringContaining(reason),
    });
  });
});
