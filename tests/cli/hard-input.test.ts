// Input that breaks programs: very deep, very long, odd line ends, links that go round, paths that lead out.
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { run } from '../../compiler/src/cli/main.js';
import { nodeShell } from '../../compiler/src/cli/node-shell.js';
import { guide, SHOP } from './desk.js';
import { baywright } from './fake-shell.js';

const deep = (line: (level: number) => string, levels = 5_000): string =>
  Array.from({ length: levels }, (_, level) => `${'  '.repeat(level)}${line(level)}`).join('\n');

/** Deeper files are larger than any that is read: each level stands two columns further in. */
const HARD: readonly (readonly [string, string])[] = [
  [
    '5,000 levels of if',
    `procedure A-1: A\n\nremoval\n  step: B\n${deep(() => 'if needed: It will not come off.').replace(/^/gm, '    ')}\n`,
  ],
  [
    '5,000 levels of when',
    `procedure A-1: A\n\nremoval\n${deep(() => 'when axle heavy').replace(/^/gm, '  ')}\n`,
  ],
  ['5,000 levels of words', deep((level) => `w${level}`)],
  [
    '10,000 entries behind each other',
    `procedure A-1: A\n\nparts\n${Array.from({ length: 10_000 }, (_, i) => `  p${i}: P\n    behind p${i + 1}`).join('\n')}\n`,
  ],
  ['a line of 10 MB of text', `procedure A-1: ${'long '.repeat(2_000_000)}\n`],
  [
    'a line of 10 MB of names',
    `procedure A-1: A\n\nremoval\n  step: B\n    remove ${'bolt, '.repeat(200_000)}bolt\n`,
  ],
  ['a line of 10 MB without a blank', `procedure A-1: A\n\nparts\n  ${'x'.repeat(10_000_000)}\n`],
  ['100,000 colons', `procedure A-1: A\n\nparts\n  ${':'.repeat(100_000)}\n`],
  ['100,000 quotes', `procedure A-1: A\n\nparts\n  a: A\n    number ${'"'.repeat(100_000)}\n`],
  ['100,000 braces', `procedure A-1: A\n\nremoval\n  step: B\n    do: ${'{'.repeat(100_000)}\n`],
  ['lone carriage returns', guide('M-1', 'Door mirror, replace').replaceAll('\n', '\r')],
];

describe('hard input ends in findings, not in a fall', () => {
  it.each(HARD)('%s', async (_name, text) => {
    const { code, err } = await baywright('check --limit 1', { files: { 'a.bay': text } });
    expect([0, 1]).toContain(code);
    expect(err).toBe('');
    expect((await baywright('format --check', { files: { 'a.bay': text } })).code).toBeLessThan(2);
  });

  it('CRLF, a mark at the start and lone CR say the same as LF', async () => {
    const said = async (change: (text: string) => string) => {
      const files = Object.fromEntries(
        Object.entries(SHOP).map(([path, text]) => [path, path.endsWith('.bay') ? change(text) : text]),
      );
      const broken = {
        ...files,
        'M-1.bay': change(guide('M-1', 'Door mirror, replace').replace('    torque mirror-bolt\n', '')),
      };
      const { out } = await baywright('check --format json', { files: broken });
      return JSON.parse(out).findings.map(
        ({ code, range }: { code: string; range: { start: { line: number } } }) =>
          `${code} ${range.start.line}`,
      );
    };
    const plain = await said((text) => text);
    expect(plain).toEqual(['S303 15']);
    expect(await said((text) => text.replaceAll('\n', '\r\n'))).toEqual(plain);
    expect(await said((text) => text.replaceAll('\n', '\r'))).toEqual(plain);
    expect(await said((text) => `\uFEFF${text}`)).toEqual(plain);
  });
});

describe('paths that lead out of the library are refused', () => {
  it.each([
    '../secret.bay',
    '/secret.bay',
    '../../shop/secret.bay',
    'C:\\\\secret.bay',
    'catalogue/../../secret.bay',
    'file:///secret.bay',
  ])('use "%s"', async (path) => {
    const files = {
      'lib/baywright.json': '{}',
      'lib/a.bay': guide('M-1', 'Door mirror, replace').replace('catalogue/mirrors.bay', path),
      'secret.bay': 'catalogue: Secret\n\nparts\n  secret-part: Secret\n',
    };
    const { code, out } = await baywright('check lib --format json', { files });
    expect(code).toBe(1);
    expect(JSON.parse(out).findings.some(({ code: one }: { code: string }) => one.startsWith('N30'))).toBe(
      true,
    );
    expect((await baywright('export lib', { files })).out).not.toContain('secret-part');
  });

  it('a picture outside is not printed', async () => {
    const files = {
      'lib/baywright.json': '{}',
      'lib/a.bay': `procedure P-1: Look\n\nplaces\n  mirror-glass: Glass\n\ninspection\n  step: Look\n    picture "../secret.svg": A picture.\n    clean mirror-glass\n`,
      'secret.svg':
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 7 7"><title>secret-drawing</title><path d="M0 0h7"/></svg>',
    };
    expect((await baywright('check lib', { files })).out).toContain('R102');
    const built = await baywright('build lib --format html', { files });
    const page = String(built.files.get('lib/out/a.html'));
    expect(page).toContain('Clean the ');
    expect(page).not.toContain('secret-drawing');
  });
});

describe('on a real drive', () => {
  const folder = mkdtempSync(join(tmpdir(), 'baywright-hard-'));
  afterAll(() => rmSync(folder, { recursive: true }));

  it('links that go round end the walk', async () => {
    mkdirSync(join(folder, 'a/b'), { recursive: true });
    writeFileSync(join(folder, 'a/b/ok.bay'), 'catalogue: A\n');
    symlinkSync(folder, join(folder, 'a/b/round'));
    symlinkSync('self.bay', join(folder, 'a/self.bay'));
    symlinkSync('gone.bay', join(folder, 'a/dead.bay'));
    let out = '';
    const to = {
      write: (text: string) => {
        out += text;
      },
      isTerminal: false,
      columns: 80,
    };
    const shell = {
      ...nodeShell(),
      folder,
      out: to,
      err: to,
      threads: 1,
      cacheFolders: () => [],
      resolve: (path: string) => join(folder, path),
    };
    expect(await run(['check', '.'], shell)).toBe(0);
    expect(out).toBe('1 file checked: no findings.\n');
    expect(await run(['check', 'a/self.bay'], shell)).toBe(2);
    expect(out).toContain('a/self.bay is a link that leads round in a circle');
  });
});
