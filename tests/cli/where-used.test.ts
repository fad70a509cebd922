// `where-used`: what a name stands for and who uses it.
import { describe, expect, it } from 'vitest';
import { SHOP } from './desk.js';
import { baywright } from './fake-shell.js';

describe('where-used', () => {
  it.each([
    ['mirror-bolt', 'mirror-bolt Mirror bolts (fastener) catalogue/mirrors.bay:13'],
    ['"mirror bolts"', 'mirror-bolt Mirror bolts (fastener)'],
    ['DM-114', 'door-mirror Door mirror (part)'],
    ['M6x1.0', 'mirror-bolt Mirror bolts (fastener)'],
    ['catalogue/mirrors.bay', 'catalogue/mirrors.bay Mirrors (catalogue)'],
  ])('%s', async (name, head) => {
    const { code, out } = await baywright(`where-used ${name}`, { files: SHOP });
    expect(code).toBe(0);
    expect(out).toContain(head);
    expect(out).toContain('  M-1 Door mirror, replace\n');
    expect(out).toContain('  M-2 Door mirror, paint\n');
  });

  it('tells every line', async () => {
    const { out } = await baywright('where-used mirror-bolt', { files: SHOP });
    expect(out.split('\n').slice(1, 8)).toEqual([
      '  used in 3 files, 7 lines:',
      '  M-1 Door mirror, replace',
      '    M-1.bay:11 remove mirror-bolt, door-mirror',
      '    M-1.bay:15 install door-mirror, mirror-bolt',
      '    M-1.bay:16 torque mirror-bolt',
      '  M-2 Door mirror, paint',
      '    M-2.bay:11 remove mirror-bolt, door-mirror',
    ]);
  });

  it('a hazard is used where its caution is called for', async () => {
    const raising = `procedure R-1: Wheel, look behind

preparation
  step: Up
    raise vehicle
`;
    const { out } = await baywright('where-used lifting', { files: { 'R-1.bay': raising } });
    expect(out).toContain('R-1.bay:5 raise vehicle');
  });

  it('a procedure by number, through the operations it lends', async () => {
    const lender = `procedure L-1: Wheel\n\nremoval\n  operation wheel-off: Take the wheel off\n    step: Off\n      raise vehicle\n`;
    const user = 'procedure U-1: Brake\n\nremoval\n  perform wheel-off from L-1\n';
    const files = { 'a.bay': lender, 'b.bay': user };
    for (const name of ['L-1', 'wheel-off']) {
      const { out } = await baywright(`where-used ${name}`, { files });
      expect(out).toContain('b.bay:4 perform wheel-off from L-1');
    }
  });

  it('as data, with lines from 1', async () => {
    const { out } = await baywright('where-used DM-114 --format json', { files: SHOP });
    const [found] = JSON.parse(out).found;
    expect(found).toMatchObject({ name: 'door-mirror', file: 'catalogue/mirrors.bay', line: 7 });
    expect(found.uses[0]).toMatchObject({ file: 'M-1.bay', line: 11, way: 'acts on' });
  });

  it('a name of nothing exits with 1', async () => {
    expect(await baywright('where-used door-handle', { files: SHOP })).toMatchObject({
      code: 1,
      out: '',
      err: 'Nothing here goes by the name “door-handle”.\n',
    });
  });
});
