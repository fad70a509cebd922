// Starting a file.
import { describe, expect, it } from 'vitest';
import { baywright } from './fake-shell.js';

describe('new', () => {
  it('writes a starter and tells where', async () => {
    const { code, out, files } = await baywright('new FH-12 "Front hub: replace (élan)"');
    expect({ code, out }).toEqual({ code: 0, out: 'FH-12-front-hub-replace-elan.bay\n' });
    expect(files.get('FH-12-front-hub-replace-elan.bay')).toMatch(
      /^procedure FH-12: Front hub: replace \(élan\)\n/,
    );
    expect(files.get('FH-12-front-hub-replace-elan.bay')).toContain('revision 1 on 2026-10-05: First draft.');
  });

  it('into a folder', async () => {
    const { files } = await baywright('new fleet "Vans" --kind catalogue --in lib/catalogue');
    expect([...files.keys()]).toEqual(['lib/catalogue/fleet-vans.bay']);
  });

  it('never overwrites', async () => {
    const { code, err, files } = await baywright('new A-1 Job', { files: { 'A-1-job.bay': 'mine' } });
    expect(code).toBe(2);
    expect(err).toContain('A-1-job.bay is there already; nothing was changed');
    expect(files.get('A-1-job.bay')).toBe('mine');
  });

  it.each([
    ['new ../x Job', '“../x” cannot be a number'],
    ['new A-1 ""', 'a title is one line of text'],
    ['new A-1', "missing required argument 'title'"],
  ])('%s is refused with the reason', async (line, reason) => {
    const { code, err, files } = await baywright(line);
    expect(code).toBe(2);
    expect(err).toContain(reason);
    expect(files.size).toBe(0);
  });
});
