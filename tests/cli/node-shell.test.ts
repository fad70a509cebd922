// The real file system through the shell: what is odd comes back as words, never as an exception.
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { nodeShell } from '../../compiler/src/cli/node-shell.js';
import { CannotRun, forTerminal, LARGEST_FILE } from '../../compiler/src/cli/shell.js';

const shell = nodeShell();
let folder = '';

beforeAll(() => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'baywright-')));
  mkdirSync(join(folder, 'sub'));
  writeFileSync(join(folder, 'plain.bay'), '\uFEFFtext\n');
  writeFileSync(join(folder, 'zero.bay'), Buffer.from([0x70, 0, 0x71]));
  writeFileSync(join(folder, 'latin.bay'), Buffer.from([0x63, 0x61, 0x66, 0xe9]));
  writeFileSync(join(folder, 'wide.bay'), Buffer.from('\uFEFFtext', 'utf16le'));
  writeFileSync(join(folder, 'big.bay'), Buffer.alloc(LARGEST_FILE + 1, 0x61));
  symlinkSync('plain.bay', join(folder, 'linked.bay'));
  symlinkSync('..', join(folder, 'sub', 'round'));
  symlinkSync('self', join(folder, 'self'));
  symlinkSync('gone', join(folder, 'dangling'));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('reading', () => {
  it.each([
    ['plain.bay', { text: 'text\n' }],
    ['zero.bay', { problem: 'is not a text file (it holds zero bytes)' }],
    ['latin.bay', { problem: 'is not UTF-8 text; save it as UTF-8' }],
    ['wide.bay', { problem: 'is UTF-16 text; save it as UTF-8' }],
    ['big.bay', { problem: 'holds 32 MB; nothing over 32 MB is read' }],
    ['sub', { problem: 'is a folder' }],
    ['gone', { problem: 'does not exist' }],
    ['self', { problem: 'is a link that leads round in a circle' }],
    ['plain.bay/x', { problem: 'lies under something that is not a folder' }],
    ['/dev/zero', { problem: 'is a device, not a file' }],
  ])('%s', (name, expected) => {
    expect(shell.read(resolve(folder, name))).toEqual(expected);
  });
});

describe('listing', () => {
  it('links to files are files; links to folders are not followed', () => {
    const entries = shell.list(folder);
    expect(entries).toContainEqual({ name: 'linked.bay', kind: 'file' });
    expect(entries).toContainEqual({ name: 'self', kind: 'other' });
    expect(entries).toContainEqual({ name: 'dangling', kind: 'other' });
    expect(shell.list(join(folder, 'sub'))).toEqual([{ name: 'round', kind: 'other' }]);
  });

  it('what is no folder says so', () => {
    expect(shell.list(join(folder, 'gone'))).toEqual({ problem: 'does not exist' });
  });

  it('tells files, folders and nothing apart; what cannot be looked at is left to reading', () => {
    expect(
      ['plain.bay', 'sub', 'gone', 'self', 'plain.bay/x'].map((name) => shell.kind(join(folder, name))),
    ).toEqual(['file', 'folder', undefined, 'file', 'file']);
  });
});

describe('a terminal', () => {
  it('is not steered by what stands in a file, and keeps the colours of the program', () => {
    expect(
      forTerminal('\u001b[31merror\u001b[39m a\u001b]0;title\u0007 \u202etni\u202c \u009b2J\r\u001b[K'),
    ).toBe('\u001b[31merror\u001b[39m a\uFFFD]0;title\uFFFD \uFFFDtni\uFFFD \uFFFD2J\r\u001b[K');
    expect(forTerminal('M12×1,5 – ✓ 刹车\n\tnext')).toBe('M12×1,5 – ✓ 刹车\n\tnext');
  });
});

describe('writing', () => {
  it('makes folders and leaves no temporary file behind', () => {
    shell.write(join(folder, 'new/deep/a.html'), 'page');
    shell.write(join(folder, 'new/deep/a.html'), new Uint8Array([0x62]));
    expect(readdirSync(join(folder, 'new/deep'))).toEqual(['a.html']);
    expect(readFileSync(join(folder, 'new/deep/a.html'), 'utf8')).toBe('b');
  });

  it('clears away what killed runs left a day ago, and nothing else', () => {
    const place = join(folder, 'left');
    mkdirSync(join(place, '.baywright-Ab3xYz'), { recursive: true });
    const long = new Date(Date.now() - 25 * 60 * 60 * 1000);
    for (const name of ['.baywright-4711-0', '.baywright-4712-0', '.baywright.notes', 'a.bay'])
      writeFileSync(join(place, name), 'text');
    for (const name of ['.baywright-4711-0', '.baywright-Ab3xYz', '.baywright.notes', 'a.bay'])
      utimesSync(join(place, name), long, long);
    shell.write(join(place, 'b.html'), 'page');
    expect(readdirSync(place).sort()).toEqual(['.baywright-4712-0', '.baywright.notes', 'a.bay', 'b.html']);
  });

  it('what cannot be written is said, and the old file is whole', () => {
    const write = () => shell.write(join(folder, 'plain.bay/under.html'), 'page');
    expect(write).toThrow(CannotRun);
    expect(write).toThrow(/lies under something that is not a folder; nothing was changed$/);
    expect(readFileSync(join(folder, 'plain.bay'), 'utf8')).toContain('text');
  });
});
