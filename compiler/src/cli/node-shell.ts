// The real world: Node's file system, streams and clock.
import { type Dirent, existsSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import { availableParallelism } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { VERSION } from '@baywright/language';
import { reason } from './reasons.js';
import type { ThreadSaid } from './sharing.js';
import {
  CannotRun,
  decodeText,
  type Entry,
  forTerminal,
  LARGEST_FILE,
  type OtherThread,
  type Reading,
  type Seen,
  type Shell,
  type Stream,
  tooLarge,
} from './shell.js';
import { watchFolder } from './watch-folder.js';
import { writeFile, writeFolder } from './whole-files.js';

export function nodeShell(): Shell {
  return {
    folder: slashes(process.cwd()),
    env: process.env,
    out: stream(process.stdout),
    err: stream(process.stderr),
    now: () => new Date(),
    resolve: (path) => slashes(resolve(path)),
    kind,
    read,
    bytes,
    seen,
    readStdin,
    list,
    write: writeFile,
    remove,
    writeFolder,
    hash,
    cacheFolders,
    stamp: stamp(),
    git,
    gitFile,
    watch,
    // The universal package of the editor carries the command alone.
    ...(existsSync(PROGRAM) ? { startThread } : {}),
    threads: availableParallelism(),
  };
}

/** Only the bundled program can start itself again. */
const PROGRAM = new URL('./program.cjs', import.meta.url);
const START = new URL('./baywright.js', import.meta.url);

function stream(to: NodeJS.WriteStream): Stream {
  const isTerminal = to.isTTY === true;
  return {
    write: (text) => void to.write(isTerminal ? forTerminal(text) : text),
    isTerminal,
    columns: to.columns ?? 80,
  };
}

/** What exists but cannot be looked at counts as a file, so that reading it says why. */
function kind(path: string): 'file' | 'folder' | undefined {
  try {
    const stat = statSync(path, { throwIfNoEntry: false });
    return stat === undefined ? undefined : stat.isDirectory() ? 'folder' : 'file';
  } catch {
    return 'file';
  }
}

function read(path: string): Reading {
  try {
    const stat = statSync(path);
    // A device such as /dev/zero has no end.
    if (stat.isCharacterDevice() || stat.isBlockDevice()) return { problem: 'is a device, not a file' };
    return stat.size > LARGEST_FILE ? tooLarge(stat.size) : decodeText(readFileSync(path));
  } catch (error) {
    return { problem: reason(error) };
  }
}

function bytes(path: string): Uint8Array | undefined {
  try {
    return statSync(path).size > LARGEST_FILE ? undefined : readFileSync(path);
  } catch {
    return undefined;
  }
}

function seen(path: string): Seen | undefined {
  try {
    const { size, mtimeMs, ctimeMs, ino, dev } = statSync(path);
    return { mark: [size, mtimeMs, ctimeMs, ino, dev].join(' '), changed: Math.max(mtimeMs, ctimeMs) };
  } catch {
    return undefined;
  }
}

function remove(path: string): void {
  try {
    rmSync(path);
  } catch (error) {
    throw new CannotRun(`${path} cannot be deleted: ${reason(error)}`);
  }
}

async function readStdin(): Promise<Reading> {
  const pieces: Buffer[] = [];
  for await (const piece of process.stdin) pieces.push(piece as Buffer);
  return decodeText(Buffer.concat(pieces));
}

function list(folder: string): readonly Entry[] | { readonly problem: string } {
  try {
    return readdirSync(folder, { withFileTypes: true })
      .map((entry) => ({ name: entry.name, kind: entryKind(folder, entry) }))
      .sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
  } catch (error) {
    return { problem: reason(error) };
  }
}

function entryKind(folder: string, entry: Dirent): Entry['kind'] {
  if (entry.isDirectory()) return 'folder';
  if (entry.isFile()) return 'file';
  if (!entry.isSymbolicLink()) return 'other';
  try {
    return statSync(`${folder}/${entry.name}`).isFile() ? 'file' : 'other';
  } catch {
    return 'other';
  }
}

function startThread(work: unknown): OtherThread {
  const { Worker } = load('node:worker_threads') as typeof import('node:worker_threads');
  const worker = new Worker(START, { workerData: work });
  const said: Promise<unknown>[] = [];
  let wake = (): void => {};
  const take = (one: Promise<unknown>): void => {
    // A failure that nobody asks about any more is none.
    one.catch(() => {});
    said.push(one);
    wake();
  };
  worker.on('message', (one: ThreadSaid) =>
    take('said' in one ? Promise.resolve(one.said) : Promise.reject(new CannotRun(one.cannotRun))),
  );
  worker.on('error', (error) => take(Promise.reject(error)));
  return {
    say: (message) => worker.postMessage(message),
    heard: async () => {
      while (said.length === 0)
        await new Promise<void>((next) => {
          wake = next;
        });
      return said.shift();
    },
    end: () => void worker.terminate(),
  };
}

/** Modules that most runs do without: each takes longer to load than a small file takes to check. */
const load = createRequire(import.meta.url);

/** In the library, where it has a root of its own; else, and where that cannot be written to, among the user's caches. */
function cacheFolders(root: string, hasSettings: boolean): readonly string[] {
  const { env } = process;
  const own = env.XDG_CACHE_HOME || env.LOCALAPPDATA || (env.HOME ? join(env.HOME, '.cache') : undefined);
  return [
    ...(hasSettings ? [`${root}/.cache/baywright`] : []),
    ...(own === undefined ? [] : [slashes(join(own, 'baywright', hash(root).slice(0, 16)))]),
  ];
}

/** The program file's size and time: two builds of one version must not share a cache. */
function stamp(): string {
  const { size, mtimeMs } = statSync(fileURLToPath(import.meta.url));
  return `${VERSION} ${size} ${mtimeMs}`;
}

function hash(data: string | Uint8Array): string {
  const { createHash } = load('node:crypto') as typeof import('node:crypto');
  return createHash('sha256').update(data).digest('hex');
}

function askGit(
  folder: string,
  args: readonly string[],
): import('node:child_process').SpawnSyncReturns<Buffer> {
  const { spawnSync } = load('node:child_process') as typeof import('node:child_process');
  return spawnSync('git', ['-C', folder, ...args], { maxBuffer: LARGEST_FILE, windowsHide: true });
}

function gitFile(folder: string, at: string): Uint8Array | undefined {
  const { status, error, stdout } = askGit(folder, ['cat-file', 'blob', at]);
  return error || status !== 0 ? undefined : stdout;
}

function git(folder: string, args: readonly string[]): Reading {
  const run = askGit(folder, args);
  if (run.error) return { problem: 'cannot be asked for: git is not installed here' };
  if (run.status !== 0) {
    const said =
      run.stderr
        .toString('utf8')
        .trim()
        .split('\n')[0]
        ?.replace(/^fatal: /, '') ?? '';
    return { problem: `is not known to git (${said})` };
  }
  return decodeText(run.stdout);
}

const watch: NonNullable<Shell['watch']> = (folder, changed) =>
  watchFolder(folder, (paths) => changed(paths.map(slashes)));

const slashes = (path: string): string => path.replaceAll('\\', '/');
