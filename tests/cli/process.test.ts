// The bundled program as a process: exit codes, streams, a reader that leaves early, start-up without heavy parts.
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = new URL('../..', import.meta.url).pathname;
let folder = '';
let program = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'baywright-'));
  execFileSync('node', ['compiler/scripts/bundle.mjs', join(folder, 'dist')], { cwd: root });
  program = join(folder, 'dist/baywright.js');
});
afterAll(() => rmSync(folder, { recursive: true }));

const baywright = (...args: string[]) =>
  spawnSync('node', [program, ...args], { cwd: folder, encoding: 'utf8' });

describe('the program', () => {
  it('starts as an executable file', () => {
    expect(readFileSync(program, 'utf8').startsWith('#!/usr/bin/env node\n')).toBe(true);
    expect(execFileSync(program, ['convert', '85 in-lb', 'Nm'], { encoding: 'utf8' })).toBe('9.6 N·m\n');
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

  it('a reader that leaves early is no failure', () => {
    const run = spawnSync(
      'sh',
      ['-c', `node '${program}' explain | head -1; node '${program}' explain >/dev/full`],
      { encoding: 'utf8' },
    );
    expect(run.stdout.split('\n')).toHaveLength(2);
    expect(run.stderr).not.toMatch(/^\s+at /m);
  });
});
