// Clocks, folders and programs for the parts of the benchmark.
import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { PEERS } from './install.mjs';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));
export const COMMAND = join(ROOT, 'compiler/dist/baywright.js');
export const SERVER = join(ROOT, 'server/dist/node.js');

export const median = (times) => at(times, 0.5);
export const p95 = (times) => at(times, 0.95);

function at(times, share) {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

/** A module of the peers, by its name there. */
export async function peer(name) {
  const { load } = await import(pathToFileURL(join(PEERS, 'load.mjs')).href);
  return load(name);
}

/** A folder with these files, for as long as the work takes. */
export async function inFolder(files, work) {
  const folder = mkdtempSync(join(tmpdir(), 'baywright-bench-'));
  try {
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Runs Node on a program and gives the milliseconds of the whole process. Exit codes 0 and 1 are answers, others are not. */
export function program(args, options = {}) {
  const begin = performance.now();
  const { status, stderr } = spawnSync(process.execPath, args, {
    stdio: ['ignore', 'ignore', 'pipe'],
    encoding: 'utf8',
    ...options,
  });
  if (status !== 0 && status !== 1)
    throw new Error(`${args.join(' ')} ended with ${status}\n${String(stderr).slice(0, 2000)}`);
  return performance.now() - begin;
}

/** The same, several times, the median. */
export function programMedian(times, args, options) {
  return median(Array.from({ length: times }, () => program(args, options)));
}

/** Resident memory of a process in megabytes; not known outside Linux. */
export function residentOf(pid) {
  try {
    return Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]) / 1024;
  } catch {
    return Number.NaN;
  }
}

/** Runs Node on a program and gives its milliseconds and the most memory that it and its children held, in megabytes. */
export async function watched(args, options = {}) {
  const begin = performance.now();
  const child = spawn(process.execPath, args, { stdio: ['ignore', 'ignore', 'inherit'], ...options });
  let most = 0;
  const timer = setInterval(() => {
    // A process that ends while it is asked has no size.
    most = Math.max(most, familyOf(child.pid) || 0);
  }, 100);
  const code = await new Promise((done) => child.once('exit', done));
  clearInterval(timer);
  if (code !== 0 && code !== 1) throw new Error(`${args.join(' ')} ended with ${code}`);
  return { ms: performance.now() - begin, megabytes: most };
}

function familyOf(pid) {
  try {
    const children = readFileSync(`/proc/${pid}/task/${pid}/children`, 'utf8').trim().split(' ');
    return children.filter(Boolean).reduce((sum, child) => sum + familyOf(Number(child)), residentOf(pid));
  } catch {
    return 0;
  }
}

/** Milliseconds of one piece of work in this process. */
export async function clock(work) {
  const begin = performance.now();
  await work();
  return performance.now() - begin;
}
