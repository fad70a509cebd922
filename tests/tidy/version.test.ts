// All packages are released together: one version, wherever it is written.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { VERSION } from '../../language/src/index.js';

const PACKAGES = ['', 'language/', 'server/', 'compiler/', 'extension/', 'tests/'];

const read = (path: string): string =>
  readFileSync(fileURLToPath(new URL(`../../${path}`, import.meta.url)), 'utf8');

interface Manifest {
  readonly version: string;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
}

/** The version that a manifest has, and those it asks of the packages beside it. */
function versions({ version, dependencies, devDependencies }: Manifest): readonly string[] {
  const asked = Object.entries({ ...dependencies, ...devDependencies });
  return [version, ...asked.filter(([name]) => name.startsWith('@baywright/')).map(([, range]) => range)];
}

describe('one version', () => {
  it.each(PACKAGES)('of %spackage.json and what it asks of its neighbours', (folder) => {
    const own: Manifest = JSON.parse(read(`${folder}package.json`));
    expect(new Set(versions(own))).toEqual(new Set([VERSION]));
  });

  it('in the lock file', () => {
    const lock: { packages: Record<string, Manifest> } = JSON.parse(read('package-lock.json'));
    const said = PACKAGES.flatMap((folder) => {
      const locked = lock.packages[folder.replace(/\/$/, '')];
      return locked ? versions(locked) : ['missing'];
    });
    expect(new Set(said)).toEqual(new Set([VERSION]));
  });

  it('in the name of the packed command that the README tells', () => {
    expect(read('README.md')).toContain(`baywright-compiler-${VERSION}.tgz`);
  });

  it('with its entry in the changelog', () => {
    expect(read('CHANGELOG.md')).toMatch(new RegExp(`^## ${VERSION.replaceAll('.', '\\.')}\\b`, 'm'));
  });
});
