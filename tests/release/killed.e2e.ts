// Runs that are killed while they write, and drives that are full: what is there is always a whole file, the old one or
// the new one. KILLS says how often (40).
import { execFileSync, spawn, spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  watch,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const KILLS = Number(process.env.KILLS ?? 40);
const NEVER = Number.POSITIVE_INFINITY;
const ENV = { ...process.env, SOURCE_DATE_EPOCH: '1759622400' };
let folder = '';
let program = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'baywright-killed-'));
  execFileSync('node', ['compiler/scripts/bundle.mjs', join(folder, 'program/dist')], { cwd: ROOT });
  for (const part of ['templates', 'fonts', 'schemas'])
    cpSync(join(ROOT, 'compiler', part), join(folder, 'program', part), { recursive: true });
  execFileSync('ln', ['-s', join(ROOT, 'node_modules'), join(folder, 'program/node_modules')]);
  program = join(folder, 'program/dist/baywright.js');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A library of its own for each test, without the other libraries of the samples. */
function library(name: string): string {
  const to = join(folder, name);
  cpSync(join(ROOT, 'samples'), to, {
    recursive: true,
    filter: (path) => !/\/(?:faulty|us|out|issued|\.cache)$/.test(path),
  });
  return to;
}

const run = (cwd: string, ...args: string[]) =>
  spawnSync('node', [program, ...args], { cwd, env: ENV, encoding: 'utf8' });

/** How a run that was to be killed ended: killed or not, and the milliseconds from its first write to its end. */
interface Ending {
  readonly killed: boolean;
  readonly wrote: number;
}

/**
 * Starts a run and ends it with SIGKILL a number of milliseconds after anything first changes in the folder it writes
 * to. The system tells of the change: what is there for less than a millisecond would be missed by looking.
 */
async function runAndKill(cwd: string, place: string, after: number, ...args: string[]): Promise<Ending> {
  mkdirSync(place, { recursive: true });
  const changes = watch(place);
  const child = spawn('node', [program, ...args], { cwd, env: ENV, stdio: 'ignore' });
  let first: number | undefined;
  let timer: NodeJS.Timeout | undefined;
  changes.on('change', () => {
    if (first !== undefined) return;
    first = performance.now();
    const kill = () => child.kill('SIGKILL');
    if (after === 0) kill();
    else if (after < NEVER) timer = setTimeout(kill, after);
  });
  const signal = await new Promise<NodeJS.Signals | null>((done) =>
    child.once('exit', (_code, by) => done(by)),
  );
  const wrote = first === undefined ? 0 : performance.now() - first;
  changes.close();
  clearTimeout(timer);
  return { killed: signal === 'SIGKILL', wrote };
}

/** Every file that has its final name. What a killed run was still writing has a name of its own beside it. */
function finished(root: string): Map<string, Buffer> {
  const entries = existsSync(root) ? readdirSync(root, { recursive: true, withFileTypes: true }) : [];
  const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  const own = files.filter(
    (path) =>
      /\.(?:html|pdf|json|bay)$/.test(path) &&
      !relative(root, path)
        .split('/')
        .some((part) => part.startsWith('.')),
  );
  return new Map(own.map((path) => [relative(root, path), readFileSync(path)]));
}

const different = (files: ReadonlyMap<string, Buffer>, wanted: ReadonlyMap<string, Buffer>): string[] =>
  [...files].filter(([name, data]) => wanted.get(name)?.equals(data) !== true).map(([name]) => name);

/**
 * Moments spread over the milliseconds that a run writes on this machine, most of them early and none at its very end:
 * the first half of them leave a run that is twice as quick no time to finish.
 */
const moments = (wrote: number): number[] =>
  Array.from({ length: KILLS }, (_, i) => 0.9 * wrote * (i / KILLS) ** 2);

describe('killed while writing', () => {
  it(`build leaves no torn guide, ${KILLS} times`, async () => {
    const shop = library('build');
    // Anew each time: what is kept would leave nothing to write.
    const guides = ['build', '--fresh', 'procedures/FH-12-front-hub.bay', 'procedures/WH-01-road-wheel.bay'];
    const out = join(shop, 'out');
    const { wrote } = await runAndKill(shop, out, NEVER, ...guides);
    const wanted = finished(out);
    expect(wanted.size).toBeGreaterThan(4);
    let kills = 0;
    let kept = 0;
    for (const [i, after] of moments(wrote).entries()) {
      // Every other run starts without guides, so that both a new file and one written over are caught.
      if (i % 2 === 0) rmSync(out, { recursive: true, force: true });
      if ((await runAndKill(shop, out, after, ...guides)).killed) kills++;
      const files = finished(out);
      kept += files.size;
      expect(different(files, wanted)).toEqual([]);
    }
    process.stdout.write(`build: ${kills} of ${KILLS} runs killed, ${kept} guides looked at, none torn\n`);
    expect(kills).toBeGreaterThan(0);
  });

  it(`what a killed build keeps never stands for a guide that is not there, ${KILLS} times`, async () => {
    const shop = library('kept');
    const wheel = 'procedures/WH-01-road-wheel.bay';
    const source = readFileSync(join(shop, wheel), 'utf8');
    const guides = ['build', wheel, '--format', 'html'];
    const { wrote } = await runAndKill(shop, join(shop, 'out'), NEVER, ...guides);
    let kills = 0;
    for (const [i, after] of moments(wrote).entries()) {
      writeFileSync(join(shop, wheel), source.replace(/^labour .*$/m, `labour ${40 + i} min`));
      const place = join(shop, i % 2 === 0 ? 'out' : '.cache/baywright');
      if ((await runAndKill(shop, place, after, ...guides)).killed) kills++;
      expect(run(shop, ...guides).status).toBe(0);
      expect(run(shop, ...guides, '--fresh', '--out', 'anew').status).toBe(0);
      expect(different(finished(join(shop, 'anew')), finished(join(shop, 'out')))).toEqual([]);
    }
    process.stdout.write(`build: ${kills} of ${KILLS} runs killed, every guide as made anew\n`);
    expect(kills).toBeGreaterThan(0);
  });

  it(`issue leaves a whole issue or none, ${KILLS} times`, async () => {
    const shop = library('issue');
    const issued = join(shop, 'issued');
    const { wrote } = await runAndKill(shop, join(issued, 'WH-01'), NEVER, 'issue', 'WH-01');
    const wanted = [...finished(issued).keys()].sort();
    let kills = 0;
    let whole = 0;
    for (const after of moments(wrote)) {
      rmSync(issued, { recursive: true, force: true });
      if ((await runAndKill(shop, join(issued, 'WH-01'), after, 'issue', 'WH-01')).killed) kills++;
      const there = [...finished(issued).keys()];
      if (there.some((name) => name.startsWith('WH-01/'))) {
        whole++;
        expect(wanted.filter((name) => name !== 'register.json' && !there.includes(name))).toEqual([]);
      }
      expect(run(shop, 'issue', '--verify')).toMatchObject({ status: 0 });
      expect(run(shop, 'issue', 'WH-01').status).toBe(0);
      expect([...finished(issued).keys()].filter((name) => name !== 'register.json')).toHaveLength(
        wanted.length - 1,
      );
    }
    process.stdout.write(`issue: ${kills} of ${KILLS} runs killed, ${whole} whole issues, no torn one\n`);
    expect(kills).toBeGreaterThan(0);
  });

  it(`format leaves every source whole, ${KILLS} times`, async () => {
    const shop = library('format');
    const path = join(shop, 'procedures/FH-12-front-hub.bay');
    const untidy = readFileSync(path, 'utf8').replaceAll(', ', ',  ');
    writeFileSync(path, untidy);
    const { wrote } = await runAndKill(shop, join(shop, 'procedures'), NEVER, 'format', path);
    const tidy = readFileSync(path, 'utf8');
    expect(tidy).not.toBe(untidy);
    let kills = 0;
    for (const after of moments(wrote)) {
      writeFileSync(path, untidy);
      if ((await runAndKill(shop, join(shop, 'procedures'), after, 'format', path)).killed) kills++;
      expect([untidy, tidy]).toContain(readFileSync(path, 'utf8'));
    }
    process.stdout.write(`format: ${kills} of ${KILLS} runs killed, every source whole\n`);
    expect(kills).toBeGreaterThan(0);
  });

  it(`a cache that a killed check leaves is never trusted when torn, ${KILLS} times`, async () => {
    const shop = library('check');
    const cache = join(shop, '.cache/baywright');
    const { wrote } = await runAndKill(shop, cache, NEVER, 'check');
    const wanted = run(shop, 'check', '--format', 'json').stdout;
    let kills = 0;
    for (const after of moments(wrote)) {
      rmSync(cache, { recursive: true, force: true });
      if ((await runAndKill(shop, cache, after, 'check')).killed) kills++;
      expect(run(shop, 'check', '--format', 'json').stdout).toBe(wanted);
    }
    process.stdout.write(`check: ${kills} of ${KILLS} runs killed, every answer the same\n`);
    expect(kills).toBeGreaterThan(0);
  });
});

describe('a drive that is full', () => {
  it.each([
    ['build', ['build', 'procedures/WH-01-road-wheel.bay'], 'out'],
    ['issue', ['issue', 'WH-01'], 'issued'],
  ] as const)('%s leaves what was there', (name, args, place) => {
    const shop = library(`full-${name}`);
    expect(run(shop, 'build', 'procedures/WH-01-road-wheel.bay').status).toBe(0);
    const before = finished(join(shop, place));
    const source = join(shop, 'procedures/WH-01-road-wheel.bay');
    writeFileSync(source, readFileSync(source, 'utf8').replace(/^labour .*$/m, 'labour 55 min'));
    // No file may grow beyond 8 KiB: the system then refuses to write on, as a full drive does.
    const line = `ulimit -f 16; exec node '${program}' ${args.join(' ')}`;
    const full = spawnSync('sh', ['-c', line], { cwd: shop, env: ENV, encoding: 'utf8' });
    expect(full.status).not.toBe(0);
    const after = finished(join(shop, place));
    expect(different(after, before)).toEqual([]);
    expect(after.size).toBe(before.size);
  });
});
