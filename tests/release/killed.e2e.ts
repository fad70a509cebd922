// Runs that are killed while they write, and drives that are full: what is there is always a whole file, the old one or
// the new one. KILLS says how often (40).
import { execFileSync, spawn, spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const KILLS = Number(process.env.KILLS ?? 40);
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

/**
 * Starts a run and ends it with SIGKILL while it writes: a number of milliseconds after the first file with a name for
 * the time being appears in a folder. True when it was killed in time.
 */
async function killed(cwd: string, place: string, after: number, ...args: string[]): Promise<boolean> {
  const child = spawn('node', [program, ...args], { cwd, env: ENV, stdio: 'ignore' });
  let timer: NodeJS.Timeout | undefined;
  const old = hidden(place);
  const poll = setInterval(() => {
    if (timer === undefined && hidden(place).some((name) => !old.includes(name)))
      timer = setTimeout(() => child.kill('SIGKILL'), after);
  }, 1);
  const signal = await new Promise<NodeJS.Signals | null>((done) =>
    child.once('exit', (_code, by) => done(by)),
  );
  clearInterval(poll);
  clearTimeout(timer);
  return signal === 'SIGKILL';
}

const hidden = (place: string): string[] =>
  existsSync(place) ? readdirSync(place).filter((name) => name.startsWith('.')) : [];

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

/** Moments spread over the time that writing takes, most of them early. */
const moments = (longest: number): number[] =>
  Array.from({ length: KILLS }, (_, i) => longest * ((i + 0.5) / KILLS) ** 2);

describe('killed while writing', () => {
  it(`build leaves no torn guide, ${KILLS} times`, async () => {
    const shop = library('build');
    // Anew each time: what is kept would leave nothing to write.
    const guides = ['build', '--fresh', 'procedures/FH-12-front-hub.bay', 'procedures/WH-01-road-wheel.bay'];
    expect(run(shop, ...guides).status).toBe(0);
    const out = join(shop, 'out');
    const wanted = finished(out);
    expect(wanted.size).toBeGreaterThan(4);
    let kills = 0;
    let kept = 0;
    for (const [i, after] of moments(1500).entries()) {
      // Every other run starts without guides, so that both a new file and one written over are caught.
      if (i % 2 === 0) rmSync(out, { recursive: true, force: true });
      if (await killed(shop, out, after, ...guides)) kills++;
      const files = finished(out);
      kept += files.size;
      expect(different(files, wanted)).toEqual([]);
    }
    process.stdout.write(`build: ${kills} of ${KILLS} runs killed, ${kept} guides looked at, none torn\n`);
    expect(kills).toBeGreaterThan(KILLS / 4);
  });

  it(`what a killed build keeps never stands for a guide that is not there, ${KILLS} times`, async () => {
    const shop = library('kept');
    const wheel = 'procedures/WH-01-road-wheel.bay';
    const source = readFileSync(join(shop, wheel), 'utf8');
    const guides = ['build', wheel, '--format', 'html'];
    let kills = 0;
    for (const [i, after] of moments(20).entries()) {
      writeFileSync(join(shop, wheel), source.replace(/^labour .*$/m, `labour ${40 + i} min`));
      if (await killed(shop, join(shop, i % 2 === 0 ? 'out' : '.cache/baywright'), after, ...guides)) kills++;
      expect(run(shop, ...guides).status).toBe(0);
      expect(run(shop, ...guides, '--fresh', '--out', 'anew').status).toBe(0);
      expect(different(finished(join(shop, 'anew')), finished(join(shop, 'out')))).toEqual([]);
    }
    process.stdout.write(`build: ${kills} of ${KILLS} runs killed, every guide as made anew\n`);
  });

  it(`issue leaves a whole issue or none, ${KILLS} times`, async () => {
    const shop = library('issue');
    expect(run(shop, 'issue', 'WH-01').status).toBe(0);
    const issued = join(shop, 'issued');
    const wanted = [...finished(issued).keys()].sort();
    let kills = 0;
    let whole = 0;
    for (const after of moments(60)) {
      rmSync(issued, { recursive: true, force: true });
      if (await killed(shop, join(issued, 'WH-01'), after, 'issue', 'WH-01')) kills++;
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
  });

  it(`format leaves every source whole, ${KILLS} times`, async () => {
    const shop = library('format');
    const path = join(shop, 'procedures/FH-12-front-hub.bay');
    const untidy = readFileSync(path, 'utf8').replaceAll(', ', ',  ');
    writeFileSync(path, untidy);
    expect(run(shop, 'format', path).status).toBe(0);
    const tidy = readFileSync(path, 'utf8');
    expect(tidy).not.toBe(untidy);
    let kills = 0;
    for (const after of moments(10)) {
      writeFileSync(path, untidy);
      if (await killed(shop, join(shop, 'procedures'), after, 'format', path)) kills++;
      expect([untidy, tidy]).toContain(readFileSync(path, 'utf8'));
    }
    process.stdout.write(`format: ${kills} of ${KILLS} runs killed, every source whole\n`);
  });

  it(`a cache that a killed check leaves is never trusted when torn, ${KILLS} times`, async () => {
    const shop = library('check');
    const wanted = run(shop, 'check', '--format', 'json').stdout;
    const cache = join(shop, '.cache/baywright');
    let kills = 0;
    for (const after of moments(10)) {
      rmSync(cache, { recursive: true, force: true });
      if (await killed(shop, cache, after, 'check')) kills++;
      expect(run(shop, 'check', '--format', 'json').stdout).toBe(wanted);
    }
    process.stdout.write(`check: ${kills} of ${KILLS} runs killed, every answer the same\n`);
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
