// What a check keeps: a second run says the same without looking again, and a changed or damaged cache is never trusted.
import { readFileSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Checked, checkPaths } from '../../compiler/src/cli/check.js';
import { run } from '../../compiler/src/cli/main.js';
import { nodeShell } from '../../compiler/src/cli/node-shell.js';
import { CATALOGUE, guide } from './desk.js';
import { diskShop } from './disk-shop.js';

const { folder, write, shell } = diskShop();

/** Files looked at in a check: those whose analysis was made, seen by the steps of progress after the kept ones. */
async function check(world = shell(), fresh = false): Promise<{ said: string[]; made: number }> {
  let kept = -1;
  const checked = await checkPaths(world, [], {
    fresh,
    progress: (done) => {
      if (kept < 0) kept = done;
    },
  });
  return { said: said(checked), made: checked.files - kept };
}

const said = (checked: Checked): string[] =>
  checked.found.map(({ finding }) => `${finding.file} ${finding.code}`);
const CACHE = join(folder, '.cache/baywright/findings.json');

describe('kept findings', () => {
  it('a second run looks at nothing again', async () => {
    expect(await check()).toEqual({ said: [], made: 3 });
    expect(await check()).toEqual({ said: [], made: 0 });
  });

  it('a fresh check looks at everything, and keeps it for the next', async () => {
    expect(await check(shell(), true)).toEqual({ said: [], made: 3 });
    expect(await check()).toEqual({ said: [], made: 0 });
    expect(await check(shell(), true)).toEqual({ said: [], made: 3 });
  });

  it('a change is looked at with all it touches, and nothing more', async () => {
    await check();
    write({ 'M-1.bay': guide('M-1', 'Door mirror, replace').replace('    torque mirror-bolt\n', '') });
    expect(await check()).toEqual({ said: ['M-1.bay S303'], made: 1 });
    expect(await check()).toEqual({ said: ['M-1.bay S303'], made: 0 });
    write({ 'catalogue/mirrors.bay': CATALOGUE.replace('class 8.8', 'class 10.9') });
    expect((await check()).made).toBe(3);
  });

  it.each([
    ['a number that is taken twice', { 'a.bay': guide('M-1', 'Again') }, 'a.bay R101'],
    ['settings', { 'baywright.json': '{ "release": { "by": ["AB"] } }' }, 'M-1.bay R109'],
  ])('%s', async (_, files, expected) => {
    await check();
    write(files);
    expect((await check()).said).toContain(expected);
  });

  it('what did not change is not opened again, and every change shows, one that keeps size and time too', async () => {
    const opened: string[] = [];
    // In an hour all files here are long settled.
    const later = () =>
      shell({
        now: () => new Date(Date.now() + 3_600_000),
        read: (path) => {
          opened.push(path.slice(folder.length + 1));
          return nodeShell().read(path);
        },
      });
    const sources = () => opened.splice(0).filter((path) => path.endsWith('.bay'));
    expect(await check(later())).toEqual({ said: [], made: 3 });
    expect(sources()).toHaveLength(3);
    expect(await check(later())).toEqual({ said: [], made: 0 });
    expect(sources()).toEqual([]);
    const { atime, mtime } = statSync(join(folder, 'M-1.bay'));
    const text = readFileSync(join(folder, 'M-1.bay'), 'utf8');
    write({ 'M-1.bay': text.replace('    torque mirror-bolt\n', '    # orque mirror-bolt\n') });
    utimesSync(join(folder, 'M-1.bay'), atime, mtime);
    expect(await check(later())).toEqual({ said: ['M-1.bay S303'], made: 1 });
    write({ 'M-1.bay': text });
    await check(later());
    // Written again as it was: read once more, then known by its new mark.
    write({ 'M-1.bay': text });
    sources();
    expect(await check(later())).toEqual({ said: [], made: 0 });
    expect(sources()).toEqual(['M-1.bay']);
    await check(later());
    expect(sources()).toEqual([]);
  });

  it('a file that has just been written is opened: its clock may not have ticked since', async () => {
    const opened: string[] = [];
    const written = new Date();
    const now = () =>
      shell({
        now: () => written,
        read: (path) => {
          opened.push(path);
          return nodeShell().read(path);
        },
      });
    await check(now());
    opened.length = 0;
    await check(now());
    expect(opened.filter((path) => path.endsWith('.bay'))).toHaveLength(3);
  });

  it('a file that was missing and comes', async () => {
    write({ 'M-1.bay': guide('M-1', 'Door mirror, replace').replace('mirrors.bay"', 'gone.bay"') });
    expect((await check()).said).toContain('M-1.bay N301');
    write({ 'catalogue/gone.bay': CATALOGUE });
    expect((await check()).said).not.toContain('M-1.bay N301');
  });

  it('a picture that was there and goes', async () => {
    const pictured = guide('M-1', 'Door mirror, replace').replace(
      '    remove',
      '    picture "a.svg": The mirror.\n    remove',
    );
    write({ 'M-1.bay': pictured, 'a.svg': '<svg/>' });
    expect((await check()).said).toEqual([]);
    rmSync(join(folder, 'a.svg'));
    expect((await check()).said).toEqual(['M-1.bay R102']);
  });

  it('what is in a picture, and a translation, of a guide that was issued', async () => {
    const pictured = guide('M-1', 'Door mirror, replace').replace(
      '    remove',
      '    picture "a.svg": The mirror.\n    remove',
    );
    const drawing = (size: number): string =>
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path d="M0 0h${size}v9z"/></svg>`;
    const po = (word: string): string => `msgid "The mirror."\nmsgstr "${word}"\n`;
    write({
      'baywright.json': '{ "languages": ["en", "de"] }',
      'M-1.bay': pictured,
      'M-1.de.po': po('Der Spiegel.'),
      'a.svg': drawing(4),
    });
    expect(await run(['issue', 'M-1'], shell())).toBe(0);
    expect((await check()).said).toEqual([]);
    expect(await check()).toEqual({ said: [], made: 0 });
    write({ 'a.svg': drawing(5) });
    expect(await check()).toEqual({ said: ['M-1.bay R103'], made: 1 });
    write({ 'a.svg': drawing(4), 'M-1.de.po': po('Der Außenspiegel.') });
    expect(await check()).toEqual({ said: ['M-1.bay R103'], made: 1 });
    write({ 'M-1.de.po': po('Der Spiegel.') });
    expect((await check()).said).toEqual([]);
  });

  it('a day on which a review falls due', async () => {
    const reviewed = guide(
      'M-1',
      'Door mirror, replace',
      'status released by KM, TR on 2026-10-05\nreview 2027-01-01',
    );
    write({ 'M-1.bay': reviewed });
    const on = (day: string) => check(shell({ now: () => new Date(`${day}T12:00:00Z`) }));
    expect((await on('2026-12-31')).said).toEqual([]);
    expect((await on('2027-01-02')).said).toEqual(['M-1.bay R106']);
  });

  it.each([
    ['cut short', (text: string) => text.slice(0, -40)],
    ['changed by one letter', (text: string) => text.replace('"findings":[]', '"findings":{}')],
    ['made by another build', (text: string) => text.replace(/"key":"./, '"key":"x')],
    ['empty', () => ''],
    ['not what it seems', () => '{}\n[]\n'],
  ])('a cache that is %s is made anew', async (_, damage) => {
    write({ 'M-1.bay': guide('M-1', 'Door mirror, replace').replace('    torque mirror-bolt\n', '') });
    const before = await check();
    writeFileSync(CACHE, damage(readFileSync(CACHE, 'utf8')));
    expect(await check()).toEqual({ ...before, made: 3 });
    expect((await check()).made).toBe(0);
  });

  it('a library that cannot be written to is checked all the same', async () => {
    const world = shell({ cacheFolders: () => [join(folder, 'M-2.bay/cache')] });
    expect(await check(world)).toEqual({ said: [], made: 3 });
  });
});
