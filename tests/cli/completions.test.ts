// Completion scripts: bash's is run, the others are held to the table of commands.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { COMMANDS } from '../../compiler/src/cli/commands/index.js';
import { SHELLS } from '../../compiler/src/cli/completions.js';
import { baywright } from './fake-shell.js';

describe('completions', () => {
  it.each(SHELLS)('%s names every command and option', async (shell) => {
    const { code, out } = await baywright(`completions ${shell}`);
    expect(code).toBe(0);
    for (const { name, options } of COMMANDS) {
      expect(out).toContain(name);
      for (const { flags } of Object.values(options)) expect(out).toContain(/--([a-z-]+)/.exec(flags)?.[1]);
    }
  });

  it.each([
    ['baywright ch', 'check'],
    ['baywright check --fo', '--format'],
    ['baywright check --format s', 'sarif'],
    ['baywright new --kind r', 'rules'],
    ['baywright convert --ex', '--exact'],
    ['baywright sign FH-12 rel', 'released'],
    ['baywright completions zs', 'zsh'],
    ['baywright sign FH-12 proved --b', '--by'],
  ])('bash completes `%s` to %s', async (line, expected) => {
    const { out } = await baywright('completions bash');
    const script = `${out}\nCOMP_WORDS=(${line})\nCOMP_CWORD=$((\${#COMP_WORDS[@]} - 1))\n_baywright\necho "\${COMPREPLY[@]}"`;
    expect(execFileSync('bash', ['-c', script], { encoding: 'utf8' }).trim()).toBe(expected);
  });

  it('bash completes names of files with blanks in them', async () => {
    const { out } = await baywright('completions bash');
    const folder = mkdtempSync(join(tmpdir(), 'baywright-words-'));
    writeFileSync(join(folder, 'my file.bay'), '');
    const script = `${out}\ncd '${folder}'\nCOMP_WORDS=(baywright check my)\nCOMP_CWORD=2\n_baywright\necho "\${#COMPREPLY[@]} \${COMPREPLY[0]}"`;
    expect(execFileSync('bash', ['-c', script], { encoding: 'utf8' })).toBe('1 my file.bay\n');
    rmSync(folder, { recursive: true });
  });

  it('a shell that is not known is refused with those that are', async () => {
    expect(await baywright('completions cmd')).toMatchObject({
      code: 2,
      err: 'baywright: there is no script for “cmd”; there is one for bash, zsh, fish, powershell\n',
    });
  });
});
