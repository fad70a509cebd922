// The real world: Node's file system, streams and clock.
import {
  type Dirent,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  watch as watchFolder,
  writeFileSync,
} from 'node:fs';
import { createRequire } from 'node:module';
import { availableParallelism } from 'node:os';
import { basename, dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { threadId } from 'node:worker_threads';
import type { ThreadSaid } from './sharing.js';
import {
  CannotRun,
  decodeText,
  type Entry,
  LARGEST_FILE,
  type OtherThread,
  type Reading,
  type Shell,
  type Stream,
  tooLarge,
} from './shell.js';
import { VERSION } from './version.js';

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
    readStdin,
    list,
    write,
    writeFolder,
    hash,
    cacheFolders,
    stamp: stamp(),
    git,
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
  return { write: (text) => void to.write(text), isTerminal: to.isTTY === true, columns: to.columns ?? 80 };
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
    const { size } = statSync(path);
    return size > LARGEST_FILE ? tooLarge(size) : decodeText(readFileSync(path));
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

/**
 * Written under a hidden name beside its place, to the end and down to the drive, then moved there. By hand, because the
 * usual package for it takes a write cut short by a full drive for a whole one.
 */
function write(path: string, data: string | Uint8Array, canBeMadeAgain = false): void {
  let temporary: string | undefined;
  try {
    mkdirSync(dirname(path), { recursive: true });
    const old = statSync(path, { throwIfNoEntry: false });
    // A link stays a link: what it leads to is replaced.
    const target = old === undefined ? path : realpathSync(path);
    temporary = join(dirname(target), `.${basename(target)}.${process.pid}.${threadId}`);
    writeFileSync(temporary, data, {
      flush: !canBeMadeAgain,
      ...(old === undefined ? {} : { mode: old.mode }),
    });
    renameSync(temporary, target);
  } catch (error) {
    if (temporary !== undefined) rmSync(temporary, { force: true });
    throw new CannotRun(`${path} ${reason(error)}; nothing was changed`);
  }
}

/** Filled under a hidden name beside its place, then moved there: a killed run leaves a hidden folder and no torn one. */
function writeFolder(path: string, files: ReadonlyMap<string, string | Uint8Array>): void {
  let temporary: string | undefined;
  try {
    if (existsSync(path)) throw new CannotRun(`${path} is there already; nothing was changed`);
    mkdirSync(dirname(path), { recursive: true });
    temporary = mkdtempSync(join(dirname(path), `.${basename(path)}-`));
    for (const [name, data] of files) {
      const file = join(temporary, name);
      mkdirSync(dirname(file), { recursive: true });
      writeFileSync(file, data, { flush: true });
    }
    renameSync(temporary, path);
  } catch (error) {
    if (temporary !== undefined) rmSync(temporary, { recursive: true, force: true });
    if (error instanceof CannotRun) throw error;
    throw new CannotRun(`${path} ${reason(error)}; nothing was changed`);
  }
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

function git(folder: string, args: readonly string[]): Reading {
  const { spawnSync } = load('node:child_process') as typeof import('node:child_process');
  const run = spawnSync('git', ['-C', folder, ...args], { maxBuffer: LARGEST_FILE, windowsHide: true });
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

/** Changes come in bursts when an editor saves; they are handed on together. */
const BURST_MS = 60;

function watch(folder: string, changed: (paths: readonly string[]) => void): { stop(): void } {
  let waiting = new Set<string>();
  let timer: NodeJS.Timeout | undefined;
  const watcher = watchFolder(folder, { recursive: true }, (_event, name) => {
    if (name === null) return;
    waiting.add(slashes(join(folder, name)));
    clearTimeout(timer);
    timer = setTimeout(() => {
      const paths = [...waiting].sort();
      waiting = new Set();
      changed(paths);
    }, BURST_MS);
  });
  // A folder that goes away ends the watch; what it held is reported by the next check.
  watcher.on('error', () => watcher.close());
  return {
    stop: () => {
      clearTimeout(timer);
      watcher.close();
    },
  };
}

const slashes = (path: string): string => path.replaceAll('\\', '/');

/** Why the system refused, in words that follow the file's name. */
export function reason(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return REASONS[code] ?? `cannot be used (${error instanceof Error ? error.message : String(error)})`;
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'does not exist',
  EACCES: 'may not be opened: permission is missing',
  EPERM: 'may not be changed: permission is missing',
  EISDIR: 'is a folder',
  ENOTDIR: 'lies under something that is not a folder',
  ELOOP: 'is a link that leads round in a circle',
  EFBIG: 'does not fit: files here may not be that large',
  ENOSPC: 'does not fit: the drive is full',
  EROFS: 'lies on a drive that cannot be written to',
  ENAMETOOLONG: 'has too long a name',
  EMFILE: 'cannot be opened: too many files are open',
  EBUSY: 'is in use by another program',
  ENOTEMPTY: 'is there already',
  EEXIST: 'is there already',
};
