// The bundled program as a process: exit codes, streams, a reader that leaves early, start-up without heavy parts.
import { execFileSync, spawnSync } from 'node:child_process';
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { STARTERS } from '../../compiler/src/cli/starters.js';

const root = new URL('../..', import.meta.url).pathname;
let folder = '';
let program = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'baywright-'));
  execFileSync('node', ['compiler/scripts/bundle.mjs', join(folder, 'dist')], { cwd: root });
  // What guides are set with lies beside the program.
  for (const part of ['templates', 'fonts']) symlinkSync(join(root, 'compiler', part), join(folder, part));
  program = join(folder, 'dist/baywright.js');
});
afterAll(() => rmSync(folder, { recursive: true }));

/** What the engine made of the program is kept here, as is what was found in a folder without settings. */
const env = () => ({ ...process.env, XDG_CACHE_HOME: join(folder, 'caches') });
const baywright = (...args: string[]) =>
  spawnSync('node', [program, ...args], { cwd: folder, encoding: 'utf8', env: env() });

describe('the program', () => {
  it('starts as an executable file', () => {
    expect(readFileSync(program, 'utf8').startsWith('#!/usr/bin/env node\n')).toBe(true);
    expect(execFileSync(program, ['convert', '85 in-lb', 'Nm'], { encoding: 'utf8' })).toBe('9.6 N·m\n');
  });

  it('knows the letters that are not ASCII, in patterns as well', () => {
    // It is read as what has no other letters, which is quickest.
    expect(readFileSync(join(folder, 'dist/program.cjs')).every((byte) => byte < 0x80)).toBe(true);
    const said = ['M12x1.5', 'M12×1.5'].map((thread) => baywright('torque', `${thread} 10.9`).stdout);
    expect(said[0]).toMatch(/N·m/);
    expect(said[1]).toBe(said[0]);
  });

  it('starts whatever became of its kept code', () => {
    const caches = join(folder, 'caches/baywright');
    const kept = () => readdirSync(caches).filter((name) => name.endsWith('.code'));
    const convert = () => baywright('convert', '85 in-lb', 'Nm');
    const wanted = { status: 0, stdout: '9.6 N·m\n', stderr: '' };
    expect(convert()).toMatchObject(wanted);
    const [name = ''] = kept();
    const good = readFileSync(join(caches, name));
    const damaged = Buffer.from(good);
    damaged.fill(7, damaged.length / 2, damaged.length / 2 + 64);
    for (const bytes of [damaged, good.subarray(0, 1000), Buffer.from('')]) {
      writeFileSync(join(caches, name), bytes);
      expect(convert()).toMatchObject(wanted);
      // It was made anew, whole.
      expect(readFileSync(join(caches, name)).length).toBeGreaterThan(100_000);
    }
    // Code that others may have written is not run.
    chmodSync(join(caches, name), 0o666);
    expect(convert()).toMatchObject(wanted);
    expect(statSync(join(caches, name)).mode & 0o777).toBe(0o600);
    writeFileSync(join(folder, 'file'), '');
    const nowhere = { ...env(), XDG_CACHE_HOME: join(folder, 'file') };
    const run = spawnSync('node', [program, 'convert', '85 in-lb', 'Nm'], { encoding: 'utf8', env: nowhere });
    expect(run).toMatchObject(wanted);
  });

  it.each([
    [['--socket', 'abc'], '“abc” is no port'],
    [['--socket', '1'], 'no editor listens on port 1'],
    [['--pipe', '/nowhere/x'], 'no editor listens on /nowhere/x'],
  ])('the server with nobody at the other end of %s says so', (channel, said) => {
    expect(baywright('server', ...channel)).toMatchObject({
      status: 2,
      stdout: '',
      stderr: expect.stringContaining(said),
    });
  });

  it('exits with 0, 1 and 2', () => {
    expect(baywright('new', 'A-1', 'Job').status).toBe(0);
    expect(baywright('check', '--strict', 'A-1-job.bay')).toMatchObject({ status: 0, stderr: '' });
    writeFileSync(
      join(folder, 'bad.bay'),
      readFileSync(join(folder, 'A-1-job.bay'), 'utf8').replace('    torque cover-bolt\n', ''),
    );
    expect(baywright('check', 'bad.bay')).toMatchObject({ status: 1, stderr: '' });
    expect(baywright('check', 'gone.bay')).toMatchObject({
      status: 2,
      stdout: '',
      stderr: 'baywright: gone.bay does not exist\n',
    });
  });

  it('many files are checked on several threads with the same answer', () => {
    const good = STARTERS.procedure.text({ number: 'B-0', title: 'Job', day: '2026-10-05' });
    const many = join(folder, 'many');
    mkdirSync(many);
    for (let n = 100; n < 250; n++) {
      const text = good.replace('B-0', `B-${n}`);
      writeFileSync(join(many, `${n}.bay`), n % 7 === 0 ? text.replace('    torque cover-bolt\n', '') : text);
    }
    const all = JSON.parse(baywright('check', 'many', '--jobs', '3', '--format', 'json').stdout);
    expect(all.summary).toMatchObject({ files: 150, errors: 21 });
    const oneByOne = ['many/105.bay', 'many/112.bay', 'many/119.bay'].map((file) =>
      JSON.parse(baywright('check', file, '--format', 'json').stdout),
    );
    expect(all.findings.slice(0, 3)).toEqual(oneByOne.flatMap((report) => report.findings));
  });

  it('guides are made on several threads with the same bytes', () => {
    const good = STARTERS.procedure.text({ number: 'C-0', title: 'Job', day: '2026-10-05' });
    const shop = join(folder, 'shop');
    mkdirSync(shop);
    writeFileSync(join(shop, 'baywright.json'), '{}');
    for (let n = 100; n < 230; n++) {
      const text = good.replace('C-0', `C-${n}`);
      writeFileSync(join(shop, `${n}.bay`), n % 7 === 0 ? text.replace('    torque cover-bolt\n', '') : text);
    }
    const all = baywright('build', 'shop', '--format', 'html');
    expect(all).toMatchObject({ status: 1, stderr: '' });
    expect(all.stdout).toContain('130 procedures: 112 written (112 files), 18 refused.');
    const numbers = [...all.stdout.matchAll(/^C-(\d+) /gm)].map(([, number]) => number);
    expect(numbers).toEqual([...numbers].sort());
    expect(all.stdout.match(/ error S\d+ /g)).toHaveLength(18);
    // The last are read twice: so many are not held.
    for (const n of [101, 102, 228, 229]) {
      baywright('build', `shop/${n}.bay`, '--format', 'html', '--out', 'alone');
      expect(readFileSync(join(shop, `out/${n}.html`), 'utf8')).toBe(
        readFileSync(join(folder, `alone/${n}.html`), 'utf8'),
      );
    }
  });

  it('what stops a guide stops the other threads', () => {
    const run = baywright('build', 'shop', '--format', 'html', '--option', 'heavy');
    expect(run.status).toBe(2);
    expect(run.stderr).toContain('“heavy” is no option of a vehicle');
  });

  it('a full drive is said in one line', () => {
    const run = spawnSync('sh', ['-c', `node '${program}' explain > /dev/full`], { encoding: 'utf8' });
    expect(run).toMatchObject({
      status: 2,
      stderr: 'baywright: the output does not fit: the drive is full\n',
    });
  });

  it('a drive that fills while a file is written leaves the old file', () => {
    const path = join(folder, 'long.bay');
    const text = `procedure L-1:  Long\n\n${'# A note that goes on.\n'.repeat(2000)}`;
    writeFileSync(path, text);
    // No file may grow beyond 8 KiB: the write is cut short, as it is by a full drive.
    const run = spawnSync('sh', ['-c', `ulimit -f 16; node '${program}' format '${path}'`], {
      encoding: 'utf8',
    });
    expect(run.status).toBe(2);
    expect(run.stderr).toContain('does not fit');
    expect(readFileSync(path, 'utf8')).toBe(text);
  });

  it('a reader that leaves early is no failure', () => {
    const run = spawnSync('sh', ['-c', `node '${program}' explain | head -1`], { encoding: 'utf8' });
    expect(run.stdout.split('\n')).toHaveLength(2);
    expect(run.stderr).toBe('');
  });
});
