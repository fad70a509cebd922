// Completion scripts: bash's is run, the others are held to the table of commands.
import { execFileSync } from 'node:child_process';
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
  ])('bash completes `%s` to %s', async (line, expected) => {
    const { out } = await baywright('completions bash');
    const script = `${out}\nCOMP_WORDS=(${line})\nCOMP_CWORD=$((\${#COMP_WORDS[@]} - 1))\n_baywright\necho "\${COMPREPLY[@]}"`;
    expect(execFileSync('bash', ['-c', script], { encoding: 'utf8' }).trim()).toBe(expected);
  });

  it('a shell that is not known is refused with those that are', async () => {
    expect(await baywright('completions cmd')).toMatchObject({
      code: 2,
      err: 'baywright: there is no script for “cmd”; there is one for bash, zsh, fish, powershell\n',
    });
  });
});
