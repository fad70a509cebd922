// Watching real folders: what editors do when they save, and what people do with folders.
import {
  appendFileSync,
  mkdirSync,
  mkdtempSync,
  realpathSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { type FolderWatch, watchFolder } from '../../compiler/src/cli/watch-folder.js';

let folder = '';
let watch: FolderWatch | undefined;
let seen: string[] = [];
let wake = (): void => {};

beforeEach(() => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'baywright-watch-')));
  mkdirSync(join(folder, 'sub'));
  writeFileSync(join(folder, 'sub/a.bay'), 'one');
  seen = [];
  watch = watchFolder(folder, (paths) => {
    seen.push(...paths.map((path) => path.slice(folder.length + 1)));
    wake();
  });
});
afterEach(() => {
  watch?.stop();
  rmSync(folder, { recursive: true, force: true });
});

/** Does something and waits until a path is told of; a test that waits in vain fails by its time. */
async function after(act: () => void, path: string): Promise<void> {
  seen = [];
  act();
  while (!seen.includes(path))
    await new Promise<void>((next) => {
      wake = next;
    });
}

/** As most editors save: another file takes the name. */
const replace = (name: string): void => {
  writeFileSync(join(folder, `${name}~`), 'more');
  renameSync(join(folder, `${name}~`), join(folder, name));
};

it('a file that is replaced again and again is seen each time', async () => {
  for (let i = 0; i < 3; i++) await after(() => replace('sub/a.bay'), 'sub/a.bay');
  await after(() => rmSync(join(folder, 'sub/a.bay')), 'sub/a.bay');
});

it('folders that come, move and go are followed', async () => {
  await after(() => mkdirSync(join(folder, 'new/deep'), { recursive: true }), 'new/');
  await after(() => writeFileSync(join(folder, 'new/deep/b.bay'), 'one'), 'new/deep/b.bay');
  await after(() => renameSync(join(folder, 'new'), join(folder, 'moved')), 'moved/');
  await after(() => appendFileSync(join(folder, 'moved/deep/b.bay'), 'two'), 'moved/deep/b.bay');
  await after(() => rmSync(join(folder, 'moved'), { recursive: true }), 'moved/');
});

it('says when the folder itself is gone', async () => {
  rmSync(folder, { recursive: true });
  await watch?.gone;
  expect(seen).not.toContain('');
});
