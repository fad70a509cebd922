// Writes files and folders whole or not at all, and clears away what runs left that were killed while they wrote.
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { threadId } from 'node:worker_threads';
import { reasonToWrite } from './reasons.js';
import { CannotRun } from './shell.js';

/** How the names begin of what is not whole yet. The end tells of one writer alone. */
const HIDDEN = '.baywright-';
/** `.baywright-4711-0` for a file, `.baywright-Ab3xYz` for a folder. */
const LEFT = /^\.baywright-(?:\d+-\d+|[A-Za-z0-9]{6})$/;
const DAY_MS = 24 * 60 * 60 * 1000;
const cleared = new Set<string>();

/**
 * Written under a hidden name beside its place, to the end and down to the drive, then moved there. By hand, because the
 * usual package for it takes a write cut short by a full drive for a whole one.
 */
export function writeFile(path: string, data: string | Uint8Array, canBeMadeAgain = false): void {
  let temporary: string | undefined;
  try {
    makeFolder(dirname(path));
    const old = statSync(path, { throwIfNoEntry: false });
    // A link stays a link: what it leads to is replaced.
    const target = old === undefined ? path : realpathSync(path);
    const folder = dirname(target);
    clearOld(folder);
    temporary = join(folder, `${HIDDEN}${process.pid}-${threadId}`);
    writeFileSync(temporary, data, {
      // Unless it is told the encoding, Node copies a text before it writes it.
      encoding: 'utf8',
      flush: !canBeMadeAgain,
      ...(old === undefined ? {} : { mode: old.mode }),
    });
    renameSync(temporary, target);
  } catch (error) {
    if (temporary !== undefined) rmSync(temporary, { force: true });
    throw new CannotRun(`${path} ${reasonToWrite(error)}; nothing was changed`);
  }
}

/** A file in the place of a folder is told of as such: the system says that something is there already. */
function makeFolder(path: string): void {
  try {
    mkdirSync(path, { recursive: true });
  } catch (error) {
    throw error instanceof Error && 'code' in error && error.code === 'EEXIST'
      ? Object.assign(new Error(error.message), { code: 'ENOTDIR' })
      : error;
  }
}

/** Filled under a hidden name beside its place, then moved there: a killed run leaves a hidden folder and no torn one. */
export function writeFolder(path: string, files: ReadonlyMap<string, string | Uint8Array>): void {
  let temporary: string | undefined;
  try {
    if (existsSync(path)) throw new CannotRun(`${path} is there already; nothing was changed`);
    const folder = dirname(path);
    makeFolder(folder);
    clearOld(folder);
    temporary = mkdtempSync(join(folder, HIDDEN));
    for (const [name, data] of files) {
      const file = join(temporary, name);
      mkdirSync(dirname(file), { recursive: true });
      writeFileSync(file, data, { flush: true });
    }
    renameSync(temporary, path);
  } catch (error) {
    if (temporary !== undefined) rmSync(temporary, { recursive: true, force: true });
    if (error instanceof CannotRun) throw error;
    throw new CannotRun(`${path} ${reasonToWrite(error)}; nothing was changed`);
  }
}

/** Once in each folder. What is younger than a day may still be written; what cannot be cleared away is left. */
function clearOld(folder: string): void {
  if (cleared.has(folder)) return;
  cleared.add(folder);
  try {
    for (const name of readdirSync(folder)) {
      const path = join(folder, name);
      if (LEFT.test(name) && Date.now() - statSync(path).mtimeMs > DAY_MS)
        rmSync(path, { recursive: true, force: true });
    }
  } catch {
    // The file itself can be written all the same.
  }
}
