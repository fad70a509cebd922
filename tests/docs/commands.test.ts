// The commands of the guide do what its pages say, for a new user: page by page in an empty folder, with the program as
// it is delivered. What a page shows below its commands is what they print.
import { execFileSync, spawnSync } from 'node:child_process';
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { withoutMarks } from '../suite-helper.js';
import { type Block, guidePages, ROOT } from './pages.js';

let home = '';
beforeAll(() => {
  // Inside the repository, where the program finds its PDF engine as an installed one does.
  mkdirSync(join(ROOT, 'tests/.cache'), { recursive: true });
  home = mkdtempSync(join(ROOT, 'tests/.cache/guide-'));
  execFileSync('node', [join(ROOT, 'compiler/scripts/bundle.mjs'), join(home, 'program/dist')], {
    cwd: ROOT,
  });
  for (const folder of ['fonts', 'templates', 'schemas', 'package.json'])
    symlinkSync(join(ROOT, 'compiler', folder), join(home, 'program', folder));
  mkdirSync(join(home, 'bin'));
  symlinkSync(join(home, 'program/dist/baywright.js'), join(home, 'bin/baywright'));
});
afterAll(() => rmSync(home, { recursive: true, force: true }));

/** Runs the commands of a block as a shell does, stopping at the first that fails; gives back all they printed. */
function runBlock(block: Block, cwd: string): { status: number | null; output: string } {
  const { status, stdout } = spawnSync('bash', ['-c', `set -e\nexec 2>&1\n${block.text}`], {
    cwd,
    encoding: 'utf8',
    env: {
      PATH: `${join(home, 'bin')}:${process.env.PATH ?? ''}`,
      HOME: cwd,
      GIT_AUTHOR_NAME: 'RB',
      GIT_AUTHOR_EMAIL: 'rb@depot.example',
      GIT_COMMITTER_NAME: 'RB',
      GIT_COMMITTER_EMAIL: 'rb@depot.example',
    },
  });
  return { status, output: stdout };
}

const withCommands = guidePages().filter((page) => page.blocks.some((block) => block.info.startsWith('sh')));

describe.each(withCommands.map((page) => [page.name, page] as const))('%s', (name, page) => {
  it('does what it says', () => {
    const cwd = mkdtempSync(join(tmpdir(), 'depot-'));
    try {
      for (const [i, block] of page.blocks.entries()) {
        const file = /\bin (\S+\.bay)$/.exec(block.info)?.[1];
        if (file !== undefined) writeFileSync(join(cwd, file), withoutMarks(block.text));
        if (!block.info.startsWith('sh')) continue;
        const { status, output } = runBlock(block, cwd);
        expect(status, `${name}:${block.line}\n${block.text}${output}`).toBe(
          Number(/exits (\d)/.exec(block.info)?.[1] ?? 0),
        );
        const shown = page.blocks[i + 1];
        if (shown?.info === 'text') expect(output, `${name}:${shown.line}`).toContain(shown.text.trimEnd());
      }
      if (name === 'first-guide.md') expectPrinted(join(cwd, 'out'));
    } finally {
      rmSync(cwd, { recursive: true, force: true });
    }
  });
});

/** A page and a printed guide that holds what was typed. */
function expectPrinted(folder: string): void {
  const made = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  const pdf = made.find((name) => name.endsWith('.pdf'));
  expect(pdf, made.join(', ')).toBeDefined();
  expect(made.some((name) => name.endsWith('.html'))).toBe(true);
  const path = join(folder, pdf ?? '');
  expect(readFileSync(path).subarray(0, 5).toString('latin1')).toBe('%PDF-');
  const text = execFileSync('pdftotext', [path, '-'], { encoding: 'utf8' }).normalize('NFKC').toLowerCase();
  for (const words of ['door mirror, replace', 'mirror plug', '9 n·m', '10 mm'])
    expect(text).toContain(words);
}
