// The release desk: signing, issuing, history that cannot be changed unseen.
import { describe, expect, it } from 'vitest';
import { guide, SHOP } from './desk.js';
import { baywright, type FakeWorld, type Ran } from './fake-shell.js';

const world = (files: Iterable<[string, string | Uint8Array]>): FakeWorld => ({
  files: Object.fromEntries(files),
});
const then = (ran: Ran, changes: Record<string, string> = {}): FakeWorld =>
  world([...ran.files, ...Object.entries(changes)]);
const text = (ran: Ran, path: string): string => String(ran.files.get(path));

describe('sign', () => {
  const draft = { ...SHOP, 'M-1.bay': guide('M-1', 'Door mirror, replace', 'status draft') };

  it('goes from draft to proved to released, by two people', async () => {
    const proved = await baywright('sign M-1 proved --by KM', { files: draft });
    expect(text(proved, 'M-1.bay')).toContain('\nstatus proved by KM on 2026-10-05\n');
    const released = await baywright('sign M-1 released --by TR', then(proved));
    expect(released.out).toBe('M-1.bay: status released by KM, TR on 2026-10-05\n');
    expect(text(released, 'M-1.bay')).toBe(SHOP['M-1.bay']);
    expect((await baywright('check --strict', then(released))).code).toBe(0);
  });

  it.each([
    ['M-1 released --by TR', {}, 'from draft it goes to proved, not to released'],
    ['M-1 proved --by XY', {}, 'XY may not sign this; KM, TR may'],
    ['M-1 draft', {}, 'it is draft already'],
  ])('%s stays', async (line, more, reason) => {
    const { code, out, files } = await baywright(`sign ${line}`, { files: { ...draft, ...more } });
    expect(code).toBe(1);
    expect(out).toContain(reason);
    expect(files.get('M-1.bay')).toBe(draft['M-1.bay']);
  });

  it('one person alone says why', async () => {
    const proved = await baywright('sign M-1 proved --by TR', { files: draft });
    const alone = await baywright('sign M-1 released --by TR', then(proved));
    expect(alone.out).toContain('TR proved it, and this house asks for a second person');
    const noted = await baywright('sign M-1 released --by TR --note "KM is on leave"', then(proved));
    expect(text(noted, 'M-1.bay')).toContain('status released by TR on 2026-10-05: KM is on leave');
    expect((await baywright('check --strict', then(noted))).code).toBe(0);
    const built = await baywright('build --format html', then(noted));
    expect(text(built, 'out/M-1.html')).toContain('Released by TR on 5 October 2026: KM is on leave.');
  });

  it('one person is one person, however the initials are typed', async () => {
    const house = { ...draft, 'baywright.json': '{}' };
    const proved = await baywright('sign M-1 proved --by TR', { files: house });
    const alone = await baywright('sign M-1 released --by tr', then(proved));
    expect(alone.out).toContain('tr proved it, and this house asks for a second person');
    const noted = await baywright('sign M-1 released --by tr --note "KM is on leave"', then(proved));
    expect(text(noted, 'M-1.bay')).toContain('status released by tr on 2026-10-05: KM is on leave');
  });

  it.each([
    [
      'a list that is none',
      '{ "release": { "by": "TR" } }',
      'R802 release.by: expected a list in [ ], found "TR"',
    ],
    ['a slip in a word', '{ "realease": { "by": ["TR"] } }', 'R803 there is no setting realease'],
    ['no JSON', '{ "release": ', 'R801 the settings are not JSON'],
  ])(
    'nobody signs or issues while the rules of the house cannot be read: %s',
    async (_, settings, reason) => {
      const files = { ...draft, 'baywright.json': settings };
      const signed = await baywright('sign M-1 proved --by XY', { files });
      expect([signed.code, signed.files.get('M-1.bay')]).toEqual([1, draft['M-1.bay']]);
      expect(signed.out).toContain(
        `the rules of the house are not known while baywright.json has a fault: ${reason}`,
      );
      const issued = await baywright('issue M-2', { files });
      expect(issued.code).toBe(1);
      expect(issued.out).toContain(reason);
      expect((await baywright('sign M-2 draft', { files })).code).toBe(0);
    },
  );

  it('with an error or a question in it nothing is released', async () => {
    for (const [old, now, reason] of [
      ['    torque mirror-bolt\n', '', 'error: S303'],
      ['labour 20 min', 'labour ?', 'question: Q120'],
      // Dated back, a change would seem older than the signature under it.
      [
        'revision 1',
        'revision 2 on 2026-10-01: Dated back.\nrevision 1',
        'R107: revision 2 is of 2026-10-01',
      ],
    ] as const) {
      const files = { ...draft, 'M-1.bay': (draft['M-1.bay'] ?? '').replace(old, now) };
      const proved = await baywright('sign M-1 proved --by KM', { files });
      expect((await baywright('sign M-1 released --by TR', then(proved))).out).toContain(reason);
    }
  });

  it('a withdrawal says why, and starts again as a draft', async () => {
    expect((await baywright('sign M-1 withdrawn --by TR', { files: SHOP })).out).toContain(
      'a note must say why',
    );
    const gone = await baywright('sign M-1 withdrawn --by TR --note "Mirrors are renewed whole."', {
      files: SHOP,
    });
    expect(text(gone, 'M-1.bay')).toContain(
      'status withdrawn by TR on 2026-10-05: Mirrors are renewed whole.',
    );
    expect((await baywright('sign M-1 draft', then(gone))).code).toBe(0);
  });
});

describe('issue', () => {
  it('writes source, guides, model and hashes into one folder', async () => {
    const issued = await baywright('issue M-1 --copy "bay 1"', { files: SHOP });
    expect(issued).toMatchObject({
      code: 0,
      out: 'M-1 revision 1 issued: issued/M-1/1\n  First issue.\n',
      err: '',
    });
    const names = [...issued.files.keys()].filter((name) => name.startsWith('issued/')).sort();
    expect(names).toEqual([
      'issued/M-1/1/guide.html',
      'issued/M-1/1/guide.pdf',
      'issued/M-1/1/issue.json',
      'issued/M-1/1/model.json',
      'issued/M-1/1/source/M-1.bay',
      'issued/M-1/1/source/catalogue/mirrors.bay',
      'issued/register.json',
    ]);
    const record = JSON.parse(text(issued, 'issued/M-1/1/issue.json'));
    expect(record).toMatchObject({
      number: 'M-1',
      revision: 1,
      by: ['KM', 'TR'],
      copies: ['bay 1'],
      before: null,
    });
    expect(Object.keys(record.files)).toHaveLength(5);
    // History is no part of the library: it is not checked again, and its numbers do not clash.
    expect((await baywright('check --strict', then(issued))).out).toBe('3 files checked: no findings.\n');
  });

  it('a second time nothing is left to do', async () => {
    const first = await baywright('issue', { files: SHOP });
    expect(first.out).toContain('M-2 revision 1 issued');
    const second = await baywright('issue', then(first));
    expect(second).toMatchObject({ code: 0, out: 'All that is released is issued.\n' });
    expect([...second.files]).toEqual([...first.files]);
  });

  it('a change under the same revision is refused, and found by check', async () => {
    const first = await baywright('issue M-1', { files: SHOP });
    const changed = {
      'catalogue/mirrors.bay': (SHOP['catalogue/mirrors.bay'] ?? '').replace('9 N·m', '10 N·m'),
    };
    const { code, out } = await baywright('issue M-1', then(first, changed));
    expect(code).toBe(1);
    expect(out).toContain(
      'since then Mirror bolts: torque 9 N·m → 10 N·m; add a line `revision 2 on DAY: …`',
    );
    const check = await baywright('check', then(first, changed));
    expect(check.out).toContain(
      'warning R103 changed since revision 1 was issued: Mirror bolts: torque 9 N·m → 10 N·m',
    );
    const raised = (SHOP['M-1.bay'] ?? '').replace(
      'revision 1',
      'revision 2 on 2026-10-05: Torque.\nrevision 1',
    );
    const next = await baywright('issue M-1', then(first, { ...changed, 'M-1.bay': raised }));
    expect(next.out).toContain(
      'M-1 revision 2 issued: issued/M-1/2\n  Mirror bolts: torque 9 N·m → 10 N·m.\n',
    );
    expect((await baywright('compare M-1@1 M-1@2', then(next))).out).toContain(
      'Mirror bolts: torque 9 N·m → 10 N·m',
    );
    expect((await baywright('issue --verify', then(next))).out).toBe('2 issues: all as they were written.\n');
  });

  it.each([
    ['a guide is touched', 'issued/M-1/1/guide.html', 'guide.html was changed after it was issued'],
    ['a source is touched', 'issued/M-1/1/source/M-1.bay', 'M-1.bay was changed after it was issued'],
    ['the record is touched', 'issued/M-1/1/issue.json', 'issue.json is not the record of an issue'],
    [
      'the register is touched',
      'issued/register.json',
      'register.json cannot be read as the register of issues',
    ],
  ])('history changed behind its back: %s', async (_, path, reason) => {
    const first = await baywright('issue M-1', { files: SHOP });
    const touched = then(first, { [path]: `${text(first, path)}x` });
    const verify = await baywright('issue --verify', touched);
    expect(verify.code).toBe(1);
    expect(verify.out).toContain(reason);
    const { code, err } = await baywright('issue M-2', touched);
    expect(code).toBe(2);
    expect(err).toContain(reason);
    expect(err).toContain('Put these files back from a copy.');
  });

  it('an issue that is gone is missed, a file put beside it too', async () => {
    const first = await baywright('issue', { files: SHOP });
    const without = [...first.files].filter(([name]) => !name.startsWith('issued/M-2/'));
    expect((await baywright('issue --verify', world(without))).out).toContain(
      'M-2 revision 1 was issued, and its folder is gone',
    );
    const more = then(first, { 'issued/M-1/1/note.txt': 'x' });
    expect((await baywright('issue --verify', more)).out).toContain('note.txt was added after the issue');
  });

  it('a changed record that is valid in itself is found by the hash of what follows it', async () => {
    const first = await baywright('issue M-1', { files: SHOP });
    const raised = (SHOP['M-1.bay'] ?? '').replace(
      'revision 1',
      'revision 2 on 2026-10-05: Again.\nrevision 1',
    );
    const next = await baywright('issue M-1', then(first, { 'M-1.bay': raised.replace('20 min', '25 min') }));
    const record = text(next, 'issued/M-1/1/issue.json').replace('"KM"', '"XX"');
    const { out } = await baywright('issue --verify', then(next, { 'issued/M-1/1/issue.json': record }));
    expect(out).toContain('issued/M-1/1/issue.json was changed after it was issued');
  });

  it.each([
    ['a draft', 'status draft', 'its status is draft, not released'],
    [
      'not signed by one who may',
      'status released by KM, XY on 2026-10-05',
      'R109: none of KM, XY may release',
    ],
    [
      'a review that is due',
      'status released by KM, TR on 2024-10-05\nreview 2025-10-05',
      'R106: the review was due',
    ],
    [
      'one person in two spellings',
      'status released by TR, tr on 2026-10-05',
      'R109: released by TR alone, and this house asks for two',
    ],
    [
      'a revision that is younger than the signatures',
      'status released by KM, TR on 2026-10-04',
      'R109: released on 2026-10-04, before revision 1 of 2026-10-05 was written',
    ],
    [
      'a day that is still to come',
      'status released by KM, TR on 2026-10-07',
      'R109: released on 2026-10-07, which is still to come',
    ],
  ])('%s is refused', async (_, status, reason) => {
    const files = { ...SHOP, 'M-1.bay': guide('M-1', 'Door mirror, replace', status) };
    const { code, out, files: after } = await baywright('issue M-1', { files });
    expect(code).toBe(1);
    expect(out).toContain(reason);
    expect([...after.keys()].filter((name) => name.startsWith('issued/'))).toEqual([]);
  });

  it('a register that is gone is missed', async () => {
    const first = await baywright('issue', { files: SHOP });
    const without = world([...first.files].filter(([name]) => name !== 'issued/register.json'));
    expect((await baywright('issue --verify', without)).out).toContain(
      'issued/register.json, the register of issues, is gone',
    );
  });

  it('nothing is issued by a clock that was set back', async () => {
    const first = await baywright('issue M-1', { files: SHOP });
    const record = JSON.parse(text(first, 'issued/M-1/1/issue.json'));
    const later = `${JSON.stringify({ ...record, issued: '2027-01-02T08:00:00.000Z' }, undefined, 2)}\n`;
    const files = [...first.files].filter(([name]) => name !== 'issued/register.json');
    const ran = await baywright('issue M-2', world([...files, ['issued/M-1/1/issue.json', later]]));
    expect(ran.code).toBe(2);
    expect(ran.err).toContain(
      'the clock of this computer stands at 2026-10-05T08:00:00.000Z, before the last issue was written (2027-01-02T08:00:00.000Z)',
    );
  });

  it('a copy has a place, and is not noted after the issue', async () => {
    expect((await baywright('issue M-1 --copy ""', { files: SHOP })).err).toBe(
      'baywright: --copy names no place; write --copy "bay 2"\n',
    );
    const first = await baywright('issue M-1', { files: SHOP });
    expect((await baywright('issue M-1 --copy "bay 2"', then(first))).out).toBe(
      'M-1 revision 1 is issued already, and nothing changed since; bay 2 is not noted: an issue is never changed\n',
    );
  });

  it('what is read of a touched history is told with a warning', async () => {
    const first = await baywright('issue M-1', { files: SHOP });
    const source = text(first, 'issued/M-1/1/source/M-1.bay').replace('20 min', '30 min');
    for (const command of ['master-list', 'reissue']) {
      const { code, err } = await baywright(command, then(first, { 'issued/M-1/1/source/M-1.bay': source }));
      expect(code).toBe(2);
      expect(err).toContain('what was issued is not as it was written, so this may be wrong');
      expect(err).toContain('M-1.bay was changed after it was issued');
    }
  });

  it('a trial writes nothing', async () => {
    const { out, files } = await baywright('issue --trial', { files: SHOP });
    expect(out).toContain('M-1 revision 1 can be issued');
    expect([...files.keys()].sort()).toEqual(Object.keys(SHOP).sort());
  });
});
