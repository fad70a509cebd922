// After a change in a catalogue: the guides to issue again, the slip of copies to pull, the master list.
import { describe, expect, it } from 'vitest';
import { guide, SHOP } from './desk.js';
import { baywright, type FakeWorld, type Ran } from './fake-shell.js';

const world = (files: Iterable<[string, string | Uint8Array]>): FakeWorld => ({
  files: Object.fromEntries(files),
});
const then = (ran: Ran, changes: Record<string, string> = {}): FakeWorld =>
  world([...ran.files, ...Object.entries(changes)]);
const text = (ran: Ran, path: string): string => String(ran.files.get(path));

describe('after a change in the catalogue', () => {
  const raise = (first: Ran): FakeWorld =>
    then(first, {
      'catalogue/mirrors.bay': (SHOP['catalogue/mirrors.bay'] ?? '').replace('9 N·m', '10 N·m'),
    });

  it('reissue lists the guides, one line for all, and the copies to pull', async () => {
    const first = await baywright('issue --copy "bay 1"', { files: SHOP });
    expect((await baywright('reissue', then(first))).code).toBe(0);
    const { code, out, files } = await baywright('reissue --slip slip.html', raise(first));
    expect(code).toBe(1);
    expect(out).toBe(`M-1 Door mirror, replace: revision 1 → 2; pull bay 1
  Mirror bolts: torque 9 N·m → 10 N·m
M-2 Door mirror, paint: revision 1 → 2; pull bay 1
  Mirror bolts: torque 9 N·m → 10 N·m

Revision line for all 2: Mirror bolts: torque 9 N·m → 10 N·m.
Slip: slip.html
`);
    expect(String(files.get('slip.html'))).toContain('>M-1</td>');
    expect(String(files.get('slip.html'))).toContain('<time>2026-10-05</time>');
    expect(String(files.get('slip.html'))).toContain('<p>The new issue follows.</p>');
  });

  it('a guide tells in its revision line what changed in it, not what changed in another one', async () => {
    const first = await baywright('issue', { files: SHOP });
    const glass = guide('M-2', 'Door mirror, paint').replace('labour 20 min', 'labour 30 min');
    const changed = then(first, { ...raise(first).files, 'M-2.bay': glass } as Record<string, string>);
    const written = await baywright('reissue --write', changed);
    expect(written.out).toContain(`
Revision line for M-1: Mirror bolts: torque 9 N·m → 10 N·m.
Revision line for M-2: labour 20 min → 30 min; Mirror bolts: torque 9 N·m → 10 N·m.
`);
    expect(text(written, 'M-1.bay')).toContain(
      'revision 2 on 2026-10-05: Mirror bolts: torque 9 N·m → 10 N·m.\n',
    );
    expect(text(written, 'M-2.bay')).toContain('revision 2 on 2026-10-05: labour 20 min → 30 min; Mirror');
  });

  it('what is withdrawn stays so when its revision line is written, and says why it goes', async () => {
    const first = await baywright('issue --copy "bay 1"', { files: SHOP });
    const gone = await baywright('sign M-1 withdrawn --by TR --note "Fleet is sold."', then(first));
    const list = await baywright('master-list', then(gone));
    expect(list.out).toContain('revision 1 of 2026-10-05, changed\n     Withdrawn: Fleet is sold.\n');
    const slip = await baywright('reissue --slip slip.html', then(gone));
    expect(String(slip.files.get('slip.html'))).toContain('<p>No new issue follows.</p>');
    const both = await baywright('reissue --slip slip.html', {
      files: { ...then(gone).files, 'M-2.bay': guide('M-2', 'Door mirror, wash') },
    });
    expect(String(both.files.get('slip.html'))).toContain(
      'A new issue follows, except of what is withdrawn.',
    );
    const written = await baywright('reissue --write', then(gone));
    expect(written.out).toContain('revision 1 → 2; pull bay 1\n  Withdrawn: Fleet is sold.\n');
    expect(written.out).toContain('M-1.bay: revision 2, withdrawn\n');
    expect(text(written, 'M-1.bay')).toContain(
      'status withdrawn by TR on 2026-10-05: Fleet is sold.\nrevision 2 on 2026-10-05: Withdrawn: Fleet is sold.\n',
    );
    const issued = await baywright('issue', then(written));
    expect(issued.out).toContain('M-1 revision 2 issued: issued/M-1/2\n');
    expect(issued.out).toContain('\n  pull revision 1: bay 1\n');
    expect((await baywright('reissue', then(issued))).code).toBe(0);
  });

  it('the sheets of the office are in the language of the shop', async () => {
    const settings = String(SHOP['baywright.json']).replace('{', '{ "languages": ["de"],');
    const german = { ...SHOP, 'baywright.json': settings };
    const first = await baywright('issue', { files: german });
    const slip = await baywright('reissue --slip slip.html', raise(first));
    expect(String(slip.files.get('slip.html'))).toContain('Diese Anleitungen einziehen');
    expect(String(slip.files.get('slip.html'))).toContain('Mirror bolts: Drehmoment 9 N·m → 10 N·m');
    const list = await baywright('master-list --format html --out list.html', raise(first));
    const page = String(list.files.get('list.html'));
    expect(page).toContain('<html lang="de">');
    expect(page).toContain('Liste der gültigen Anleitungen');
    expect(page).toContain('>seither geändert</td>');
  });

  it('--write puts the line into each and makes it a draft again', async () => {
    const first = await baywright('issue', { files: SHOP });
    const written = await baywright('reissue --write --words "Torque raised."', raise(first));
    for (const path of ['M-1.bay', 'M-2.bay']) {
      expect(text(written, path)).toContain(
        'status draft\nrevision 2 on 2026-10-05: Torque raised.\nrevision 1 on',
      );
    }
    const again = await baywright('reissue --write', then(written));
    expect(again.out).toContain('its line is written');
    expect(again.out).toContain('0 procedures changed');
  });

  it('the master list says what is in the workshop and what changed since', async () => {
    const first = await baywright('issue M-1 --copy "bay 1"', { files: SHOP });
    const { out } = await baywright('master-list', raise(first));
    expect(out).toBe(`M-1  Door mirror, replace: revision 1 of 2026-10-05, changed
     Mirror bolts: torque 9 N·m → 10 N·m.
M-2  Door mirror, paint: released, never issued
`);
    const csv = await baywright('master-list --format csv', raise(first));
    expect(csv.out).toContain('M-1,"Door mirror, replace",1,2026-10-05,"KM, TR",bay 1,changed,');
    const page = await baywright('master-list --format html --out list.html', raise(first));
    expect(String(page.files.get('list.html'))).toContain('Master list of guides');
  });
});
