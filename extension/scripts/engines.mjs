// The native PDF engine of each platform: from node_modules when npm installed it there, else fetched once into .cache.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const PACKAGE = '@myriaddreamin/typst-ts-node-compiler';

/** The engine's package suffix, by the editor's name of the platform. */
export const ENGINES = {
  'linux-x64': 'linux-x64-gnu',
  'linux-arm64': 'linux-arm64-gnu',
  'linux-armhf': 'linux-arm-gnueabihf',
  'alpine-x64': 'linux-x64-musl',
  'alpine-arm64': 'linux-arm64-musl',
  'darwin-x64': 'darwin-x64',
  'darwin-arm64': 'darwin-arm64',
  'win32-x64': 'win32-x64-msvc',
  'win32-arm64': 'win32-arm64-msvc',
};

/** The folders of the engine for a platform: its JavaScript face and its native code. Undefined when it cannot be had. */
export function fetchEngine(target) {
  const suffix = ENGINES[target];
  if (suffix === undefined)
    throw new Error(`no PDF engine is known for ${target}; known: ${Object.keys(ENGINES).join(', ')}`);
  const face = `${ROOT}node_modules/${PACKAGE}`;
  const installed = `${face}-${suffix}`;
  if (existsSync(installed)) return { face, native: installed, suffix };
  const { version } = JSON.parse(readFileSync(`${face}/package.json`, 'utf8'));
  const cached = `${ROOT}.cache/engines/${version}/${suffix}`;
  if (!existsSync(cached) && !download(`${PACKAGE}-${suffix}@${version}`, cached)) return undefined;
  return { face, native: cached, suffix };
}

function download(name, to) {
  const work = `${to}.part`;
  rmSync(work, { recursive: true, force: true });
  mkdirSync(work, { recursive: true });
  try {
    execFileSync('npm', ['pack', '--silent', name], {
      cwd: work,
      stdio: ['ignore', 'ignore', 'inherit'],
      shell: process.platform === 'win32',
    });
    const [archive] = readdirSync(work).filter((file) => file.endsWith('.tgz'));
    execFileSync('tar', ['-xzf', archive], { cwd: work });
    renameSync(`${work}/package`, to);
    return true;
  } catch {
    return false;
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
}
