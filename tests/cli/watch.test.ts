// `--watch`: rounds of a check or a build, on real files and with changes that the test tells of.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { run } from '../../compiler/src/cli/main.js';
import { nodeShell } from '../../compiler/src/cli/node-shell.js';
import { CannotRun, type Shell } from '../../compiler/src/cli/shell.js';
import { watchPaths } from '../../compiler/src/cli/watch.js';

const JOB = `procedure A-1: Cover, look at

labour 5 min
status draft

parts
  cover: Cover

inspection
  step: Look
    inspect cover
      reject: cracks
      if rejected
        stop: Tag the van.
`;

let folder = '';
let leave = (): void => {};
let changed = (_paths: readonly string[]): void => {};
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'baywright-rounds-'));
  writeFileSync(join(folder, 'a.bay'), JOB);
});
afterEach(() => rmSync(folder, { recursive: true }));

/** The real world with its folder, and a watch that tells what the test says. */
function world(more: Partial<Shell> = {}): Shell {
  const gone = new Promise<void>((resolve) => {
    leave = resolve;
  });
  const watch: NonNullable<Shell['watch']> = (_folder, call) => {
    changed = call;
    return { stop: () => {}, gone };
  };
  return { ...nodeShell(), folder, threads: 1, resolve: (path) => join(folder, path), watch, ...more };
}

describe('rounds', () => {
  it('begin anew when a file of the library changes, and not for others', async () => {
    let rounds = 0;
    let wake = (): void => {};
    const round = async (): Promise<void> => {
      rounds += 1;
      wake();
    };
    const until = (count: number): Promise<void> =>
      new Promise((resolve) => {
        wake = () => rounds === count && resolve();
      });
    const first = until(1);
    const done = watchPaths(world(), [], round);
    await first;
    const second = until(2);
    changed([join(folder, 'notes.txt'), join(folder, 'out/a.html')]);
    changed([join(folder, 'a.bay')]);
    changed([join(folder, 'b.bay')]);
    await second;
    const third = until(3);
    changed([join(folder, 'sub/')]);
    await third;
    leave();
    await expect(done).rejects.toThrow(`${folder} is gone: there is nothing left to watch`);
    expect(rounds).toBe(3);
  });

  it('end in words when one cannot be run', async () => {
    const full = async (): Promise<void> => {
      throw new CannotRun('the drive is full');
    };
    await expect(watchPaths(world(), [], full)).rejects.toThrow('the drive is full');
  });
});

/** Runs a command and changes the file after each round, as often as there are texts. */
async function watched(line: string, texts: readonly string[]): Promise<{ out: string; code: number }> {
  let out = '';
  let at = 0;
  const say = (text: string): void => {
    out += text;
    if (!text.includes('Waiting for changes.')) return;
    const next = texts[at++];
    if (next === undefined) leave();
    else {
      writeFileSync(join(folder, 'a.bay'), next);
      changed([join(folder, 'a.bay')]);
    }
  };
  const stream = { write: say, isTerminal: false, columns: 100 };
  const code = await run(line.split(' '), world({ out: stream, err: stream }));
  return { out: out.replace(/\d\d:\d\d:\d\d/g, 'AT'), code };
}

const WRONG = JOB.replace('inspect cover', 'inspect cover twice');

it('check looks again', async () => {
  const { out, code } = await watched('check --watch', [WRONG, JOB]);
  expect(out.match(/G203|no findings|Waiting/g)).toEqual([
    'no findings',
    'Waiting',
    'G203',
    'Waiting',
    'no findings',
    'Waiting',
  ]);
  expect(code).toBe(2);
});

it('build makes the guide again', async () => {
  const { out } = await watched('build --watch --format html', [
    WRONG,
    JOB.replace('Cover, look', 'Lid, look'),
  ]);
  expect(out).toContain('refused, 1 error');
  expect(out).toContain('A-1 Lid, look at: draft\n  out/a.html\n');
  expect(readFileSync(join(folder, 'out/a.html'), 'utf8')).toContain('Lid, look at');
});
