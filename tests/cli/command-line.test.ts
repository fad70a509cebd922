// The command line itself: help, mistakes, colour, exit codes.
import { describe, expect, it } from 'vitest';
import { COMMANDS } from '../../compiler/src/cli/commands/index.js';
import { VERSION } from '../../language/src/index.js';
import { baywright } from './fake-shell.js';

describe('help', () => {
  it('names every command', async () => {
    const { code, out } = await baywright('--help');
    expect(code).toBe(0);
    for (const { name, summary } of COMMANDS) expect(out).toMatch(new RegExp(`^  ${name} .*${summary}`, 'm'));
    expect(out).toContain('Exit codes: 0 in order, 1 findings, 2 could not run.');
  });

  it.each(COMMANDS.map((def) => [def.name, def] as const))(
    '%s --help tells arguments, options and examples',
    async (name, def) => {
      const { code, out, err } = await baywright(`${name} --help`);
      expect({ code, err }).toEqual({ code: 0, err: '' });
      expect(out).toMatch(new RegExp(`^Usage: baywright ${name} `));
      for (const argument of def.takes) expect(out).toContain(argument.docs.slice(0, 20));
      for (const option of Object.values(def.options)) expect(out).toContain(option.flags);
      expect(out).not.toContain('default: []');
      for (const [line] of def.examples) expect(out).toContain(line);
      expect(def.examples.every(([line]) => line.startsWith(`baywright ${name}`))).toBe(true);
    },
  );

  it('`help` does the same', async () => {
    expect(await baywright('help check')).toEqual(await baywright('check --help'));
    expect(await baywright('help')).toEqual(await baywright('--help'));
  });

  it('no command at all prints help as a mistake', async () => {
    const { code, out, err } = await baywright('');
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('Usage: baywright COMMAND');
  });
});

describe('mistakes', () => {
  it.each([
    ['chek', "unknown command 'chek'\n(Did you mean check?)"],
    ['check --fixx', "unknown option '--fixx'\n(Did you mean --fix?)"],
    ['check --format xml', "argument 'xml' is invalid. Allowed choices are text, json, github, sarif."],
    ['check --limit some', 'A whole number is expected.'],
    ['convert', "missing required argument 'quantity'"],
    ['convert 1 2 3', 'too many arguments'],
  ])('%s', async (line, message) => {
    const { code, out, err } = await baywright(line);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(message);
    expect(err).toMatch(/^baywright: /);
    expect(err).toMatch(/\n`baywright .*--help` (?:lists|tells) what .*\.\n$/);
  });
});

describe('colour', () => {
  const isColoured = async (line: string, env: Record<string, string>, isTerminal: boolean) =>
    (await baywright(line, { env, isTerminal })).out.includes('\u001b[');

  it.each<[string, Record<string, string>, boolean, boolean]>([
    ['', {}, true, true],
    ['', {}, false, false],
    ['', { NO_COLOR: '1' }, true, false],
    ['', { TERM: 'dumb' }, true, false],
    ['--color always', { NO_COLOR: '1' }, false, true],
    ['--color=always', {}, false, true],
    ['--color never', {}, true, false],
  ])('%s with %o, terminal %s: %s', async (option, env, isTerminal, expected) => {
    expect(await isColoured(`explain R801 ${option}`, env, isTerminal)).toBe(expected);
  });
});

it('--version prints the version alone', async () => {
  expect((await baywright('--version')).out).toBe(`${VERSION}\n`);
});
