// The shop of desk.ts on a disk, in a folder of its own for each file of tests, as new before every test.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeEach } from 'vitest';
import { nodeShell } from '../../compiler/src/cli/node-shell.js';
import type { Shell } from '../../compiler/src/cli/shell.js';
import { SHOP } from './desk.js';

export interface DiskShop {
  readonly folder: string;
  /** Texts by path in the folder. */
  readonly write: (files: Readonly<Record<string, string>>) => void;
  /** The machine as it is, but standing in the folder and with one thread. */
  readonly shell: (more?: Partial<Shell>) => Shell;
}

export function diskShop(): DiskShop {
  const folder = mkdtempSync(join(tmpdir(), 'baywright-shop-'));
  const write = (files: Readonly<Record<string, string>>): void => {
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
  };
  beforeEach(() => {
    rmSync(folder, { recursive: true });
    write(SHOP);
  });
  afterAll(() => rmSync(folder, { recursive: true }));
  const shell = (more: Partial<Shell> = {}): Shell => ({
    ...nodeShell(),
    folder,
    threads: 1,
    resolve: (path) => join(folder, path),
    ...more,
  });
  return { folder, write, shell };
}
