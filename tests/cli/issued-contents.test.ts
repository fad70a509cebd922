// Pictures and translations of an issued guide: what is in them counts, where they lie does not.
import { describe, expect, it } from 'vitest';
import { CATALOGUE, guide, SHOP } from './desk.js';
import { baywright, type FakeWorld, type Ran } from './fake-shell.js';

const drawing = (width: number): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 40"><path d="M0 0h40" stroke="#000" stroke-width="${width}"/></svg>`;

const shown = (path: string): string =>
  guide('M-1', 'Door mirror, replace').replace(
    '    remove mirror-bolt',
    `    picture "${path}": A is the upper bolt.\n    remove mirror-bolt`,
  );

const FILES = { ...SHOP, 'M-1.bay': shown('pictures/bolts.svg'), 'pictures/bolts.svg': drawing(1) };

const then = (ran: Ran, changes: Record<string, string>, gone: readonly string[] = []): FakeWorld => ({
  files: Object.fromEntries(
    [...ran.files, ...Object.entries(changes)].filter(([path]) => !gone.includes(path)),
  ),
});

describe('pictures of an issued guide', () => {
  it('another picture under the same name is a change of the guide', async () => {
    const first = await baywright('issue --copy "bay 1"', { files: FILES });
    const same = await baywright('reissue', then(first, {}));
    expect(same.out).toBe('Every guide in the workshop says what the library says.\n');
    const exchanged = then(first, { 'pictures/bolts.svg': drawing(4) });
    const { code, out } = await baywright('reissue', exchanged);
    expect(code).toBe(1);
    expect(out).toContain(`M-1 Door mirror, replace: revision 1 → 2; pull bay 1
  Take the mirror off: picture "bolts.svg": A is the upper bolt. is new
`);
    expect(out).not.toContain('M-2');
    const list = await baywright('master-list', exchanged);
    expect(list.out).toContain('M-1  Door mirror, replace: revision 1 of 2026-10-05, changed');
    expect((await baywright('compare M-1', exchanged)).code).toBe(1);
    expect((await baywright('check', exchanged)).out).toContain(
      'R103 changed since revision 1 was issued: Take the mirror off: picture "bolts.svg": A is the upper bolt. is new',
    );
    const again = await baywright('issue M-1', exchanged);
    expect(again.code).toBe(1);
    expect(again.out).toContain('revision 1 is in the workshop already');
  });

  it('a file that moves into a folder says what it said', async () => {
    const first = await baywright('issue', { files: FILES });
    const moved = then(
      first,
      {
        'front/M-1.bay': shown('../pictures/bolts.svg').replace('"catalogue/', '"../catalogue/'),
      },
      ['M-1.bay'],
    );
    const reissue = await baywright('reissue', moved);
    expect(reissue.out).toBe('Every guide in the workshop says what the library says.\n');
    expect((await baywright('check --strict', moved)).out).toContain('no findings');
  });

  it('an issue that does not say what was in its pictures is compared by its text', async () => {
    const first = await baywright('issue', { files: FILES });
    const path = 'issued/M-1/1/issue.json';
    const { shown: _, ...older } = JSON.parse(String(first.files.get(path)));
    const before = then(first, { [path]: JSON.stringify(older), 'pictures/bolts.svg': drawing(4) });
    expect((await baywright('compare M-1', before)).code).toBe(0);
  });
});

describe('wrenches of the house list in an issued guide', () => {
  const catalogue = (range: string): Record<string, string> => ({
    'catalogue/mirrors.bay': `${CATALOGUE}\ntools\n  small-wrench: Small torque wrench\n    torque ${range}\n  large-wrench: Large torque wrench\n    torque 60 to 300 N·m\n`,
  });

  it('another range of the one that is picked is a change, found by check too; of another one it is none', async () => {
    const first = await baywright('issue', { files: { ...SHOP, ...catalogue('2 to 20 N·m') } });
    expect(String(first.files.get('issued/M-1/1/guide.html'))).toContain('Small torque wrench');
    const other = then(first, catalogue('4 to 25 N·m'));
    const { out } = await baywright('reissue', other);
    expect(out).toContain('  Small torque wrench: torque 2 to 20 N·m → 4 to 25 N·m\n');
    expect((await baywright('check', other)).out).toContain('R103');
    const large = String(catalogue('2 to 20 N·m')['catalogue/mirrors.bay']).replace('60 to 300', '80 to 400');
    const reissue = await baywright('reissue', then(first, { 'catalogue/mirrors.bay': large }));
    expect(reissue.out).toBe('Every guide in the workshop says what the library says.\n');
  });

  it('one that is picked instead of another is a change', async () => {
    const first = await baywright('issue', { files: { ...SHOP, ...catalogue('2 to 20 N·m') } });
    const reissue = await baywright('reissue', then(first, catalogue('20 to 50 N·m')));
    expect(reissue.out).toContain('small-wrench (tool) Small torque wrench is gone');
  });
});

describe('translations of an issued guide', () => {
  const po = (...texts: readonly (readonly [string, string])[]): string =>
    `msgid ""\nmsgstr "Content-Type: text/plain; charset=utf-8\\n"\n\n${texts
      .map(([text, said]) => `msgid "${text}"\nmsgstr "${said}"\n`)
      .join('\n')}`;
  const GERMAN = {
    ...SHOP,
    'baywright.json': '{ "languages": ["en", "de"] }',
    'M-1.de.po': po(['Take the mirror off', 'Spiegel anbauen'], ['Not said here', 'Egal']),
  };

  it('a word that is put right is a change of the guide that says it, with the old and the new one', async () => {
    const first = await baywright('issue --copy "bay 1"', { files: GERMAN });
    expect((await baywright('reissue', then(first, {}))).code).toBe(0);
    const right = then(first, {
      'M-1.de.po': po(['Not said here', 'Ganz egal'], ['Take the mirror off', 'Spiegel abbauen']),
    });
    const { code, out } = await baywright('reissue', right);
    expect(code).toBe(1);
    expect((await baywright('check', right)).out).toContain(
      'R103 changed since revision 1 was issued: de “Take the mirror off”: Spiegel anbauen → Spiegel abbauen',
    );
    expect((await baywright('check', then(first, {}))).out).not.toContain('R103');
    expect(out).toBe(`M-1 Door mirror, replace: revision 1 → 2; pull bay 1
  de “Take the mirror off”: Spiegel anbauen → Spiegel abbauen

Revision line for it: de “Take the mirror off”: Spiegel anbauen → Spiegel abbauen.
`);
  });

  it('a text that is translated now was none before; gathering texts changes nothing', async () => {
    const { 'M-1.de.po': _, ...none } = GERMAN;
    const first = await baywright('issue', { files: none });
    const gathered = await baywright('translate', then(first, {}));
    expect((await baywright('reissue', then(gathered, {}))).code).toBe(0);
    const said = then(first, { 'M-1.de.po': po(['Take the mirror off', 'Spiegel abbauen']) });
    expect((await baywright('reissue', said)).out).toContain(
      '  de “Take the mirror off”: Spiegel abbauen is new\n',
    );
  });

  it('a file of translations that cannot be read is told in words', async () => {
    const first = await baywright('issue', { files: GERMAN });
    const broken = await baywright('reissue', then(first, { 'M-1.de.po': 'msgid "never closed' }));
    expect(broken).toMatchObject({ code: 2 });
    expect(broken.err).toContain('M-1.de.po is no gettext file');
  });
});
