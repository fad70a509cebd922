// `compare`: changes in shop terms, whatever the two sides are.
import { describe, expect, it } from 'vitest';
import { CATALOGUE, guide, SHOP } from './desk.js';
import { baywright, type FakeWorld } from './fake-shell.js';

const folders = (old: Record<string, string>, now: Record<string, string>): Record<string, string> => ({
  ...Object.fromEntries(Object.entries(old).map(([path, text]) => [`old/${path}`, text])),
  ...Object.fromEntries(Object.entries(now).map(([path, text]) => [`new/${path}`, text])),
});
const compare = async (now: Record<string, string>, more = '') =>
  baywright(`compare old new ${more}`, { files: folders({ ...SHOP }, { ...SHOP, ...now }) });

/** A folder under git, with one revision of it. */
const gitWith = (
  revision: string,
  files: Readonly<Record<string, string>>,
): Pick<FakeWorld, 'git' | 'gitFiles'> => ({
  git: (_, args) =>
    args[0] === 'rev-parse' ? { text: '/shop\n' } : { text: `${Object.keys(files).join('\n')}\n` },
  gitFiles: Object.fromEntries(
    Object.entries(files).map(([path, text]) => [`${revision}:${path}`, new TextEncoder().encode(text)]),
  ),
});

describe('compare', () => {
  it('a torque in the catalogue is told with old and new figure, in every guide that uses it', async () => {
    const { code, out } = await compare({
      'catalogue/mirrors.bay': CATALOGUE.replace('torque 9 N·m', 'torque 10 N·m'),
    });
    expect(code).toBe(1);
    expect(out).toBe(`M-1 Door mirror, replace
  Mirror bolts: torque 9 N·m → 10 N·m
  revision ? on 2026-10-05: Mirror bolts: torque 9 N·m → 10 N·m.

M-2 Door mirror, paint
  Mirror bolts: torque 9 N·m → 10 N·m
  revision ? on 2026-10-05: Mirror bolts: torque 9 N·m → 10 N·m.

catalogue/mirrors.bay Mirrors
  Mirror bolts: torque 9 N·m → 10 N·m
`);
  });

  it('a catalogue under another name is the same one, and its figures are told', async () => {
    const renamed = (text: string): string => text.replace('mirrors.bay', 'mirrors-van.bay');
    const { 'catalogue/mirrors.bay': _, ...rest } = SHOP;
    const files = folders(SHOP, {
      ...Object.fromEntries(Object.entries(rest).map(([path, text]) => [path, renamed(text)])),
      'catalogue/mirrors-van.bay': CATALOGUE.replace('torque 9 N·m', 'torque 10 N·m'),
    });
    const { out } = await baywright('compare old new', { files });
    expect(out).toContain(`catalogue/mirrors-van.bay Mirrors
  Mirror bolts: torque 9 N·m → 10 N·m
`);
    expect(out).not.toMatch(/is (new|gone)/);
  });

  it('a part under another name is the same one, and its figures are told', async () => {
    const renamed = (text: string): string =>
      text.replaceAll('mirror-bolt', 'mirror-screw').replaceAll('door-mirror', 'bolt');
    const same = Object.fromEntries(Object.entries(SHOP).map(([path, text]) => [path, renamed(text)]));
    expect(await compare(same)).toMatchObject({ code: 0, out: 'No change from old to new.\n' });
    const raised = { ...same, 'catalogue/mirrors.bay': renamed(CATALOGUE).replace('9 N·m', '10 N·m') };
    const { out } = await compare({ ...raised, 'M-2.bay': renamed(guide('M-2', 'Door mirror, wash')) });
    expect(out).toContain('M-1 Door mirror, replace\n  Mirror bolts: torque 9 N·m → 10 N·m\n  revision');
    expect(out).toContain('title Door mirror, paint → Door mirror, wash\n  Mirror bolts: torque 9');
  });

  it('a thing of another title is another thing', async () => {
    const other = CATALOGUE.replaceAll('mirror-bolt', 'mirror-screw').replace(
      'Mirror bolts',
      'Mirror screws',
    );
    const { out } = await compare({ 'catalogue/mirrors.bay': other });
    expect(out).toContain('mirror-screw (fastener) Mirror screws is new');
    expect(out).toContain('mirror-bolt (fastener) Mirror bolts is gone');
  });

  it('a folder without a procedure or catalogue is no side', async () => {
    const files = { ...folders(SHOP, SHOP), 'empty/notes.txt': 'Nothing here.' };
    expect(await baywright('compare old empty', { files })).toMatchObject({
      code: 2,
      err: 'baywright: empty holds no procedure or catalogue\n',
    });
  });

  it.each([
    [
      'blank lines and comments',
      guide('M-1', 'Door mirror, replace').replace('removal', '\n# off it comes\n\nremoval'),
    ],
    ['another way to write a number', guide('M-1', 'Door mirror, replace').replace('20 min', '20min')],
    ['status and revision', guide('M-1', 'Door mirror, replace', 'status draft')],
  ])('%s are no change', async (_, text) => {
    expect(await compare({ 'M-1.bay': text })).toMatchObject({
      code: 0,
      out: 'No change from old to new.\n',
    });
  });

  it.each([
    [
      'a line that is new',
      '    torque mirror-bolt\n',
      '    torque mirror-bolt\n    clean door-mirror\n',
      'Fit the mirror: clean door-mirror is new',
    ],
    ['a line that is gone', '    torque mirror-bolt\n', '', 'Fit the mirror: torque mirror-bolt is gone'],
    [
      'a line that says something else',
      'torque mirror-bolt\n',
      'torque mirror-bolt: By hand first.\n',
      'Fit the mirror: torque mirror-bolt → torque mirror-bolt: By hand first.',
    ],
    ['labour', 'labour 20 min', 'labour 30 min', 'labour 20 min → 30 min'],
    [
      'an entry that is new',
      'removal\n',
      'tools\n  mirror-key: Mirror key\n\nremoval\n',
      'mirror-key (tool) Mirror key is new',
    ],
  ])('%s', async (_, old, now, said) => {
    const { out } = await compare({ 'M-1.bay': guide('M-1', 'Door mirror, replace').replace(old, now) });
    expect(out.split('\n')[1]?.trim()).toBe(said);
  });

  it('a library inside another keeps its place', async () => {
    const old = { 'M-1.bay': guide('M-1', 'One'), 'us/catalogue/mirrors.bay': CATALOGUE };
    const files = folders(old, { ...old, 'us/baywright.json': '{}' });
    expect((await baywright('compare old new', { files })).out).toBe('No change from old to new.\n');
  });

  it('a guide that is new or gone', async () => {
    const files = folders(
      { 'a.bay': guide('M-1', 'One'), 'b.bay': guide('M-2', 'Two') },
      { 'b.bay': guide('M-2', 'Two'), 'c.bay': guide('M-3', 'Three') },
    );
    const { out } = await baywright('compare old new', { files });
    expect(out).toBe('M-3 Three: is new\n\nM-1 One: is gone\n');
  });

  it('a procedure that moved to another file is the same by its number', async () => {
    const { 'M-1.bay': text = '', ...rest } = SHOP;
    const files = folders({ ...SHOP }, { ...rest, 'mirrors.bay': text });
    expect((await baywright('compare old new', { files })).code).toBe(0);
  });

  it('a revision of git', async () => {
    const old = guide('M-1', 'Door mirror, replace').replace('20 min', '15 min');
    const { out } = await baywright('compare v1:M-1.bay M-1.bay', {
      files: SHOP,
      ...gitWith('v1', { 'M-1.bay': old, 'catalogue/mirrors.bay': CATALOGUE, 'notes.txt': '' }),
    });
    expect(out).toContain('labour 15 min → 20 min');
  });

  it('pictures and translations count, in folders and in revisions of git', async () => {
    const drawing = (width: number): string => `<svg viewBox="0 0 4 4"><path d="M0 0h${width}v4z"/></svg>`;
    const po = (word: string): string => `msgid "Fit the mirror"\nmsgstr "${word}"\n`;
    const shown = guide('M-1', 'Door mirror, replace').replace(
      '    remove',
      '    picture "a.svg": Bolts.\n    remove',
    );
    const before = {
      'M-1.bay': shown,
      'catalogue/mirrors.bay': CATALOGUE,
      'a.svg': drawing(3),
      'M-1.de.po': po('Anbauen'),
    };
    const now = { ...before, 'a.svg': drawing(4), 'M-1.de.po': po('Spiegel anbauen') };
    const said = `M-1 Door mirror, replace
  Take the mirror off: picture "a.svg": Bolts. is new
  de “Fit the mirror”: Anbauen → Spiegel anbauen
`;
    const { out } = await baywright('compare old new', { files: folders(before, now) });
    expect(out).toContain(said);
    const git = await baywright('compare v1: .', { files: now, ...gitWith('v1', before) });
    expect(git.out).toContain(said);
    const same = await baywright('compare v1: .', { files: before, ...gitWith('v1', before) });
    expect(same).toMatchObject({ code: 0, out: 'No change from v1: to ..\n' });
  });

  it.each([
    ['compare gone.bay M-1.bay', 'there is no procedure gone.bay here'],
    ['compare M-1', 'there is no issue of M-1; nothing of it was issued'],
    ['compare M-1@3 M-1', 'there is no revision 3 of M-1; nothing of it was issued'],
    ['compare v1:M-1.bay M-1.bay', 'v1:M-1.bay is not known to git'],
    ['compare --upload-pack=x:y M-1.bay', 'unknown option'],
  ])('%s is refused with the reason', async (line, reason) => {
    const { code, err } = await baywright(line, { files: SHOP });
    expect(code).toBe(2);
    expect(err).toContain(reason);
  });

  it('as data', async () => {
    const { out } = await compare(
      { 'M-1.bay': guide('M-1', 'Door mirror, replace').replace('20 min', '25 min') },
      '--format json',
    );
    expect(JSON.parse(out).changed[0].changes[0]).toMatchObject({
      in: 'figure',
      what: 'labour',
      old: '20 min',
      new: '25 min',
      line: 5,
    });
  });
});
