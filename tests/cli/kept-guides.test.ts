// What a build keeps: a second run makes nothing again, and every change of what guides are made from shows in them.
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { run } from '../../compiler/src/cli/main.js';
import type { Shell } from '../../compiler/src/cli/shell.js';
import { CATALOGUE, guide, SHOP } from './desk.js';
import { diskShop } from './disk-shop.js';

const { folder, write, shell } = diskShop();

const PICTURED = guide('M-1', 'Door mirror, replace').replace(
  '    remove',
  '    picture "a.svg": The mirror.\n    remove',
);
const svg = (words: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20"><text x="2" y="12">${words}</text></svg>`;

const pages = (at: string): Record<string, string> =>
  Object.fromEntries(
    readdirSync(join(folder, at)).map((name) => [name, readFileSync(join(folder, at, name), 'utf8')]),
  );
const page = (name: string): string => readFileSync(join(folder, `out/${name}.html`), 'utf8');

/** The numbers of the procedures whose guides a build made, and what it said last. */
async function build(
  args = '',
  more: Partial<Shell> = {},
): Promise<{ made: string[]; code: number; out: string }> {
  let out = '';
  const write = (text: string): void => {
    out += text;
  };
  const stream = { write, isTerminal: false, columns: 100 };
  const words = `build --format html --side left ${args}`.trim().split(' ');
  const code = await run(words, shell({ out: stream, err: stream, ...more }));
  const heads = [...out.matchAll(/^(M-\d) .*: (.*)$/gmu)];
  const made = heads.flatMap(([, number = '', said = '']) => (said.includes('nothing new') ? [] : [number]));
  return { made, code, out };
}

it('a second run makes nothing again, and says so', async () => {
  expect((await build()).made).toEqual(['M-1', 'M-2']);
  const before = page('M-1');
  const second = await build();
  expect(second).toMatchObject({ made: [], code: 0 });
  expect(second.out).toContain('2 procedures: 0 written (0 files), 2 with nothing new, 0 refused.');
  expect(page('M-1')).toBe(before);
  // The list of all guides has the kept ones too.
  expect(page('index')).toContain('M-2');
});

it('a changed procedure alone is made again; with a changed catalogue all that use it', async () => {
  await build();
  write({ 'M-1.bay': guide('M-1', 'Door mirror, renew') });
  expect((await build()).made).toEqual(['M-1']);
  expect(page('M-1')).toContain('Door mirror, renew');
  write({ 'catalogue/mirrors.bay': CATALOGUE.replace('torque 9 N·m', 'torque 8 N·m') });
  expect(CATALOGUE).toContain('torque 9 N·m');
  expect((await build()).made).toEqual(['M-1', 'M-2']);
});

it('a picture that is drawn anew, goes and comes', async () => {
  write({ 'M-1.bay': PICTURED, 'a.svg': svg('left mirror') });
  await build();
  write({ 'a.svg': svg('the mirror') });
  expect((await build()).made).toEqual(['M-1']);
  expect(page('M-1')).toContain('the mirror');
  rmSync(join(folder, 'a.svg'));
  expect((await build()).made).toEqual(['M-1']);
});

it('a translation that comes', async () => {
  await build('--language es');
  const words = 'msgid ""\nmsgstr "Content-Type: text/plain; charset=UTF-8\\n"\n\n';
  write({ 'M-1.es.po': `${words}msgid "Door mirror, replace"\nmsgstr "Retrovisor"\n` });
  expect((await build('--language es')).made).toEqual(['M-1']);
});

it('settings, other wishes, and a guide that was lost or written over', async () => {
  await build();
  expect((await build('--print training')).made).toEqual(['M-1', 'M-2']);
  // Both orders are known now.
  expect((await build()).made).toEqual([]);
  expect((await build('--print training')).made).toEqual([]);
  rmSync(join(folder, 'out/M-1.html'));
  expect((await build()).made).toEqual(['M-1']);
  writeFileSync(join(folder, 'out/M-2.html'), 'scribble');
  expect((await build()).made).toEqual(['M-2']);
  write({ 'baywright.json': '{ "shop": { "name": "Another depot" } }' });
  expect((await build()).made).toEqual(['M-1', 'M-2']);
  expect((await build('--fresh')).made).toEqual(['M-1', 'M-2']);
});

it('a fresh build makes everything, and keeps it for the next', async () => {
  await build();
  expect((await build('--fresh')).made).toEqual(['M-1', 'M-2']);
  expect((await build()).made).toEqual([]);
  // Of one procedure: what is known of the others stays.
  expect((await build('M-1.bay --fresh')).made).toEqual(['M-1']);
  expect((await build()).made).toEqual([]);
});

it('a guide that fails says why in one line, and is made again by the next build', async () => {
  const world = shell();
  const broken: Shell['write'] = (path, ...more) => {
    if (path.endsWith('.html')) throw new RangeError('');
    world.write(path, ...more);
  };
  const failed = await build('', { write: broken });
  expect(failed.code).toBe(2);
  expect(failed.out).toContain('M-1 Door mirror, replace: failed\n  could not be made: RangeError');
  expect(failed.out).toContain('2 procedures: 0 written (0 files), 0 refused, 2 failed.');
  expect((await build()).made).toEqual(['M-1', 'M-2']);
});

it('what was refused is refused again, and its reasons are told again', async () => {
  write({ 'M-1.bay': guide('M-1', 'Door mirror, replace').replace('    torque mirror-bolt\n', '') });
  const first = await build();
  expect(first.code).toBe(1);
  const second = await build();
  expect(second).toMatchObject({ made: ['M-1'], code: 1 });
  expect(second.out).toContain('S303');
  expect(existsSync(join(folder, 'out/M-1.html'))).toBe(false);
});

it('a build of one procedure leaves what is known of the others', async () => {
  await build();
  write({ 'M-1.bay': guide('M-1', 'Door mirror, renew') });
  expect((await build('M-1.bay')).made).toEqual(['M-1']);
  expect((await build()).made).toEqual([]);
});

it('after any changes, what lies there is what would be made anew', async () => {
  const changes: Readonly<Record<string, string>>[] = [
    { 'M-1.bay': PICTURED, 'a.svg': svg('one') },
    { 'a.svg': svg('two') },
    { 'catalogue/mirrors.bay': CATALOGUE.replace('DM-114', 'DM-115') },
    { 'M-3.bay': guide('M-3', 'Door mirror, look at') },
    { 'M-2.bay': guide('M-2', 'Door mirror, clean') },
    { 'baywright.json': '{ "units": "US first", "release": { "by": ["TR"], "provedBy": ["KM", "TR"] } }' },
    { 'catalogue/mirrors.bay': CATALOGUE, 'M-3.bay': guide('M-3', 'Door mirror, paint') },
  ];
  for (const change of changes) {
    write(change);
    await build();
    const lies = pages('out');
    await build('--fresh --out anew');
    expect(lies).toEqual(pages('anew'));
  }
});

it('a number that another procedure takes as well', async () => {
  await build();
  write({ 'a.bay': guide('M-1', 'Again') });
  expect((await build()).out).toContain('R101');
});

it('names guides whose procedure was renamed or deleted, and deletes them when told to', async () => {
  await build();
  const { 'M-2.bay': text = '' } = SHOP;
  rmSync(join(folder, 'M-2.bay'));
  write({ 'mirror.bay': text });
  const said = `1 older guide in the output folder: do not work by it; --tidy deletes it.
  out/M-2.html (M-2.bay is gone)
`;
  expect((await build()).out).toContain(said);
  // Until somebody does something about it.
  expect((await build()).out).toContain(said);
  const tidied = await build('--tidy');
  expect(tidied.out).toContain('Deleted 1 older guide:\n  out/M-2.html (M-2.bay is gone)\n');
  expect(Object.keys(pages('out'))).toEqual(['M-1.html', 'index.html', 'mirror.html']);
  expect((await build()).out).not.toContain('older guide');
});

it('names what a procedure prints no more', async () => {
  write({ 'baywright.json': '{ "languages": ["en", "de"] }' });
  await build();
  write({ 'baywright.json': '{ "languages": ["en"] }' });
  const { out } = await build();
  expect(out).toContain('  out/M-1.de.html (M-1.bay prints it no more)\n');
  // Another order prints other files beside them.
  await build('--only torque-card');
  expect((await build('--tidy')).out).toContain('Deleted 2 older guides');
  expect(Object.keys(pages('out'))).toContain('M-1.torque-card.html');
});

it('names and deletes nothing of another folder, or of the library that this one is a copy of', async () => {
  await build('--out elsewhere');
  await build();
  const copy = mkdtempSync(join(tmpdir(), 'baywright-copy-'));
  cpSync(folder, copy, { recursive: true, preserveTimestamps: true });
  rmSync(join(copy, 'M-2.bay'));
  const inCopy = { folder: copy, resolve: (path: string) => join(copy, path) };
  expect((await build('--tidy', inCopy)).out).not.toContain('older guide');
  expect(Object.keys(pages('out'))).toContain('M-2.html');
  rmSync(copy, { recursive: true });
  rmSync(join(folder, 'M-2.bay'));
  expect((await build('--tidy')).out).toContain('Deleted 1 older guide:\n  out/M-2.html');
  expect(Object.keys(pages('elsewhere'))).toContain('M-2.html');
});

it('never deletes what somebody changed or put there', async () => {
  await build();
  writeFileSync(join(folder, 'out/M-2.html'), 'notes of the shop');
  writeFileSync(join(folder, 'out/old.html'), 'of another program');
  rmSync(join(folder, 'M-2.bay'));
  const { out } = await build('--tidy');
  expect(out).not.toContain('older guide');
  expect(Object.keys(pages('out'))).toEqual(['M-1.html', 'M-2.html', 'index.html', 'old.html']);
});
