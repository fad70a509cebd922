// A world in memory for commands: files by absolute path, captured output, a clock that stands still.
import { createHash } from 'node:crypto';
import { posix } from 'node:path';
import { run } from '../../compiler/src/cli/main.js';
import { CannotRun, decodeText, type Entry, type Shell } from '../../compiler/src/cli/shell.js';

export interface FakeWorld {
  /** Files by path counted from /shop, the current folder; bytes for what is no text. */
  readonly files?: Readonly<Record<string, string | Uint8Array>>;
  /** Paths that the system refuses, with its reason. */
  readonly refused?: Readonly<Record<string, string>>;
  readonly stdin?: string;
  readonly env?: Readonly<Record<string, string>>;
  readonly isTerminal?: boolean;
  readonly git?: Shell['git'];
  /** What git has of files, by `REVISION:path`. */
  readonly gitFiles?: Readonly<Record<string, Uint8Array>>;
}

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  /** The files afterwards, by path counted from /shop. */
  readonly files: ReadonlyMap<string, string | Uint8Array>;
}

const HOME = '/shop';

/** Runs one command line, written as in a shell: words parted by spaces, double quotes around words with spaces. */
export async function baywright(line: string, world: FakeWorld = {}): Promise<Ran> {
  const files = new Map(
    Object.entries(world.files ?? {}).map(([path, data]) => [posix.resolve(HOME, path), data]),
  );
  const said = { out: '', err: '' };
  const shell = fakeShell(files, world, said);
  const words = [...line.matchAll(/"([^"]*)"|(\S+)/g)].map((match) => match[1] ?? match[2] ?? '');
  const code = await run(words, shell);
  const after = new Map([...files].map(([path, data]) => [posix.relative(HOME, path), data]));
  return { code, ...said, files: after };
}

function fakeShell(
  files: Map<string, string | Uint8Array>,
  world: FakeWorld,
  said: { out: string; err: string },
): Shell {
  const stream = (to: 'out' | 'err') => ({
    write: (text: string) => {
      said[to] += text;
    },
    isTerminal: world.isTerminal ?? false,
    columns: 100,
  });
  const refusal = (path: string) => world.refused?.[posix.relative(HOME, path)];
  const isFolder = (path: string) =>
    path === HOME || [...files.keys()].some((file) => file.startsWith(`${path}/`));
  return {
    folder: HOME,
    env: world.env ?? {},
    out: stream('out'),
    err: stream('err'),
    now: () => new Date('2026-10-05T08:00:00Z'),
    resolve: (path) => posix.resolve(HOME, path),
    kind: (path) =>
      files.has(path) ? 'file' : isFolder(path) || refusal(path) !== undefined ? 'folder' : undefined,
    read(path) {
      const data = files.get(path);
      const problem = refusal(path) ?? (data === undefined ? 'does not exist' : undefined);
      if (problem !== undefined || data === undefined) return { problem: problem ?? 'does not exist' };
      return decodeText(typeof data === 'string' ? new TextEncoder().encode(data) : data);
    },
    bytes(path) {
      const data = refusal(path) === undefined ? files.get(path) : undefined;
      return typeof data === 'string' ? new TextEncoder().encode(data) : data;
    },
    readStdin: async () => ({ text: world.stdin ?? '' }),
    list(folder) {
      const problem = refusal(folder);
      if (problem !== undefined) return { problem };
      const inside = [
        ...files.keys(),
        ...Object.keys(world.refused ?? {}).map((path) => posix.resolve(HOME, path)),
      ]
        .filter((path) => path.startsWith(folder === '/' ? '/' : `${folder}/`))
        .map((path) => path.slice(folder === '/' ? 1 : folder.length + 1));
      const entries = new Map<string, Entry>();
      for (const path of inside) {
        const name = path.split('/')[0] ?? '';
        const kind = path.includes('/') || !files.has(posix.join(folder, path)) ? 'folder' : 'file';
        entries.set(name, { name, kind });
      }
      return [...entries.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
    },
    threads: 1,
    stamp: 'test',
    write: (path, data) => void files.set(path, data),
    remove: (path) => void files.delete(path),
    writeFolder(path, inside) {
      if (isFolder(path)) throw new CannotRun(`${path} is there already; nothing was changed`);
      for (const [name, data] of inside) files.set(posix.join(path, name), data);
    },
    hash: (data) => createHash('sha256').update(data).digest('hex'),
    gitFile: (_, at) => world.gitFiles?.[at],
    git: (folder, args) => world.git?.(folder, args) ?? { problem: 'is not known to git' },
  };
}
