// The packed command as a user gets it: one file, installed on a clean folder, with what it needs from the registry.
import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { VERSION } from '../../language/src/index.js';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
let folder = '';
let shop = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'baywright-packed-'));
  shop = join(folder, 'shop');
  mkdirSync(shop);
  const packed = execFileSync('node', ['compiler/scripts/pack.mjs', folder], {
    cwd: ROOT,
    encoding: 'utf8',
  }).trim();
  writeFileSync(join(folder, 'package.json'), '{ "private": true }\n');
  execFileSync('npm', ['install', '--no-audit', '--no-fund', '--ignore-scripts', packed], { cwd: folder });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const baywright = (...args: string[]) =>
  spawnSync(join(folder, 'node_modules/.bin/baywright'), args, { cwd: shop, encoding: 'utf8' });
const packagePath = (path: string): string => join(folder, 'node_modules/@baywright/compiler', path);

describe('the packed command', () => {
  it('says its version and its manual page is there', () => {
    expect(baywright('--version').stdout).toBe(`${VERSION}\n`);
    expect(readFileSync(packagePath('man/baywright.1'), 'utf8')).toContain(`Baywright ${VERSION}`);
    expect(readFileSync(packagePath('THIRD-PARTY.md'), 'utf8')).toContain('OFL-1.1');
    for (const name of ['LICENSE', 'fonts/OFL.txt', 'schemas/export.schema.json'])
      expect(existsSync(packagePath(name))).toBe(true);
  });

  it('starts, checks, formats and prints a procedure', () => {
    expect(baywright('new', 'A-1', 'Cover').status).toBe(0);
    expect(baywright('check', '--strict')).toMatchObject({ status: 0, stderr: '' });
    expect(baywright('format', '--check').status).toBe(0);
    const built = baywright('build');
    expect(built).toMatchObject({ status: 0 });
    const pdf = readFileSync(join(shop, 'out/A-1-cover.pdf'));
    expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
    expect(readFileSync(join(shop, 'out/A-1-cover.html'), 'utf8').trimEnd().endsWith('</html>')).toBe(true);
  });

  it('gives programs its modules with types', () => {
    const script =
      "import { renderHtml, run } from '@baywright/compiler'; console.log(typeof renderHtml, typeof run);";
    expect(
      execFileSync('node', ['--input-type=module', '-e', script], { cwd: folder, encoding: 'utf8' }),
    ).toBe('function function\n');
    expect(existsSync(packagePath('dist/index.d.ts'))).toBe(true);
  });

  it('runs no script of ours on installing', () => {
    const manifests = [
      '@baywright/compiler',
      '@baywright/compiler/node_modules/@baywright/language',
      '@baywright/compiler/node_modules/@baywright/server',
    ];
    for (const name of manifests) {
      const path = join(folder, 'node_modules', name, 'package.json');
      expect(Object.keys(JSON.parse(readFileSync(path, 'utf8')).scripts ?? {})).toEqual([]);
    }
  });
});
