// Puts the peers into .cache/bench, where nothing of the product can reach them.   node tests/bench/install.mjs
import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const WANTED = fileURLToPath(new URL('./peers/package.json', import.meta.url));
export const PEERS = fileURLToPath(new URL('../../.cache/bench', import.meta.url));

/** Installs the peers unless the very same list is installed already. */
export function installPeers() {
  const list = join(PEERS, 'package.json');
  const isThere = existsSync(join(PEERS, 'node_modules/.package-lock.json'));
  if (isThere && existsSync(list) && readFileSync(list, 'utf8') === readFileSync(WANTED, 'utf8')) return;
  mkdirSync(PEERS, { recursive: true });
  copyFileSync(WANTED, list);
  // A module is found from the place of the file that asks for it.
  writeFileSync(join(PEERS, 'load.mjs'), 'export const load = (name) => import(name);\n');
  console.log('Installing the peers into .cache/bench …');
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  const { status } = spawnSync(npm, ['install', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: PEERS,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (status !== 0) throw new Error('the peers could not be installed; is there a network?');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) installPeers();
