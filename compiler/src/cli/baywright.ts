// Starts the program. Half of a short run is the engine reading the program's text: what it makes of it is kept among
// the user's caches, as Node itself can do from version 22 on. A kept file that is damaged, of another build, of another
// engine or not the user's own is not used and made anew; where nothing can be written, nothing is kept.
import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Script } from 'node:vm';
import { isMainThread } from 'node:worker_threads';
import { settleEngine } from '@baywright/server/engine';
import { startTypesetter } from '../pdf/typesetter-process.js';

interface Program {
  readonly command: (typesetter: ReturnType<typeof startTypesetter> | undefined) => Promise<void>;
  readonly thread: () => Promise<void>;
}
type Body = (module: { exports: Program | undefined }, require: NodeJS.Require, file: string) => void;

/** SHA-256, in bytes. */
const SUM = 32;
/** Installations and builds whose code is kept at once, three for each. */
const MOST_KEPT = 9;
/**
 * A run keeps what it had compiled. Guides need half of the program that a check never comes to, so theirs is kept apart.
 * The command line is read later: this is a guess, and whichever it is, all of the program is there.
 */
const PART = process.argv[2] !== 'build' ? 'checks' : isForPagesAlone() ? 'pages' : 'prints';

// Of all threads at once.
if (isMainThread) settleEngine({ keepsCode: true, holdsMemory: PART === 'prints' });
// It is ready when the first guide is. If none is printed in the end, it goes with the program.
const typesetter = isMainThread && PART === 'prints' ? startTypesetter() : undefined;
const file = join(dirname(fileURLToPath(import.meta.url)), 'program.cjs');
const place = cachePlace();
const kept = place === undefined ? undefined : readKept(place);
// The bundler writes ASCII alone, which is read fastest as what it is.
const script = new Script(readFileSync(file, 'latin1'), {
  filename: file,
  ...(kept ? { cachedData: kept } : {}),
});
const program: { exports: Program | undefined } = { exports: undefined };
(script.runInThisContext() as Body)(program, createRequire(file), file);
if (isMainThread && place !== undefined && (kept === undefined || script.cachedDataRejected === true))
  // At the end it holds what this run had compiled as well.
  process.once('exit', () => keep(place, script.createCachedData()));
await (isMainThread ? program.exports?.command(typesetter) : program.exports?.thread());

function isForPagesAlone(): boolean {
  return process.argv.some((arg) => /^(?:--format=|-f)?html$|^-h$|^--help$/.test(arg));
}

/** Named after all that the kept code depends on; undefined where there is no folder for it. */
function cachePlace(): string | undefined {
  const { XDG_CACHE_HOME, LOCALAPPDATA, HOME } = process.env;
  const caches = XDG_CACHE_HOME || LOCALAPPDATA || (HOME ? join(HOME, '.cache') : undefined);
  if (caches === undefined) return undefined;
  const { size, mtimeMs } = statSync(file);
  const name = sum(
    Buffer.from([file, PART, size, mtimeMs, process.versions.v8, process.version, process.arch].join('\n')),
  ).toString('hex');
  return join(caches, 'baywright', `${name.slice(0, 16)}.code`);
}

/** Its sum, then the code. The engine does not look for damage, and trusts what it is given. */
function readKept(path: string): Buffer | undefined {
  try {
    const { uid, mode } = statSync(path);
    const isOwn = process.getuid === undefined || (uid === process.getuid() && (mode & 0o022) === 0);
    if (!isOwn) return undefined;
    const data = readFileSync(path);
    const code = data.subarray(SUM);
    return sum(code).equals(data.subarray(0, SUM)) ? code : undefined;
  } catch {
    return undefined;
  }
}

function keep(path: string, code: Buffer): void {
  const folder = dirname(path);
  let temporary: string | undefined;
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    temporary = `${path}.${process.pid}`;
    writeFileSync(temporary, Buffer.concat([sum(code), code]), { mode: 0o600 });
    renameSync(temporary, path);
    const others = readdirSync(folder)
      .filter((name) => name.endsWith('.code'))
      .map((name) => join(folder, name))
      .sort((a, b) => statSync(b).mtimeMs - statSync(a).mtimeMs);
    for (const old of others.slice(MOST_KEPT)) rmSync(old, { force: true });
  } catch {
    if (temporary !== undefined) rmSync(temporary, { force: true });
  }
}

function sum(data: Uint8Array): Buffer {
  return createHash('sha256').update(data).digest();
}
