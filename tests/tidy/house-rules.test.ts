// The rules of this house for its own code, held by reading it. The reasons stand in DEVELOPERS.md.
import { readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { allFiles, circles, importsOf, packageOf, ROOT, type Source, sources } from './sources.js';

it('sees what it looks for', () => {
  expect(
    ['let a: any;', 'b as any', 'c<any>()', 'd: string | any', 'e: any[]'].every((line) => ANY.test(line)),
  ).toBe(true);
  expect(['f.g!.h', 'i()!;', 'j[0]!)'].every((line) => TRUSTED.test(line))).toBe(true);
  expect(['k !== l', '!m', 'n(any)', '/(?:any )/'].some((line) => ANY.test(line) || TRUSTED.test(line))).toBe(
    false,
  );
  const step = (from: string, to: string) => ({ from, to, isType: false });
  expect(circles([step('a', 'b'), step('b', 'c'), step('c', 'a'), step('c', 'd')])).toEqual(['a → b → c']);
  const text = "// One.\nimport { a } from './b.js';\nimport type { C } from '@baywright/language';\n";
  expect(importsOf({ path: 'server/src/x.ts', text, code: text })).toEqual([
    { from: 'server/src/x.ts', to: 'server/src/b.js', isType: false },
    { from: 'server/src/x.ts', to: 'language/src/index.ts', isType: true },
  ]);
});

const files = allFiles();
const all = sources(files);
/** This test's own patterns would be found too. */
const others = all.filter(({ path }) => !path.startsWith('tests/tidy/'));
const language = all.filter(({ path }) => path.startsWith('language/src/'));
const imports = all.flatMap(importsOf);

/** `path:line  the line` of every match, so that a failure can be clicked. */
function matches(where: readonly Source[], pattern: RegExp, part: 'text' | 'code' = 'code'): string[] {
  return where.flatMap((source) =>
    source[part]
      .split('\n')
      .flatMap((line, i) => (pattern.test(line) ? [`${source.path}:${i + 1}  ${line.trim()}`] : [])),
  );
}

describe('every source file', () => {
  it('says in its first line what it is for', () => {
    const silent = all.filter(({ text }) => !/^(?:#![^\n]*\n)?(?:\/\/ |\/\*\*?\s)/.test(text));
    expect(silent.map(({ path }) => path)).toEqual([]);
  });

  it('has at most 400 lines of code', () => {
    const long = all
      .map(({ path, code }) => `${code.split('\n').filter((line) => line.trim() !== '').length} ${path}`)
      .filter((row) => Number.parseInt(row, 10) > 400);
    expect(long).toEqual([]);
  });

  it('is named in small letters with hyphens', () => {
    const names = all.map(({ path }) =>
      basename(path).replace(/(?:\.test|\.e2e|\.config|\.d)?\.m?[jt]s$/, ''),
    );
    expect(names.filter((name) => !/^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(name))).toEqual([]);
  });

  it('takes no type on trust', () => {
    expect(matches(others, ANY)).toEqual([]);
    expect(matches(others, TRUSTED)).toEqual([]);
    expect(matches(others, /@ts-(?:ignore|nocheck|expect-error)/, 'text')).toEqual([]);
  });

  it('is finished', () => {
    const unfinished = new RegExp(`\\b(?:TO${'DO'}|FIX${'ME'}|X${'XX'}|HA${'CK'})\\b`);
    const written = files.filter((path) => /\.(?:ts|mts|mjs|md|json|bay|typ|css|lua|el)$/.test(path));
    const found = written.filter((path) => unfinished.test(readFileSync(join(ROOT, path), 'utf8')));
    expect(found).toEqual([]);
  });
});

const ANY = /(?::|\bas|\|)\s+any\b|<any\b|\bany\[\]/;
/** A value said to be there without a look: `found!.name`. */
const TRUSTED = /[\w)\]]!(?:[.,;)\]}[]|\s*$)/;

describe('tests', () => {
  const tests = all.filter(({ path }) => path.startsWith('tests/'));

  it('are never left out', () => {
    expect(
      matches(tests, /\b(?:it|test|describe)\.(?:skip|only|todo|skipIf|runIf|fails)\b|\bx(?:it|describe)\(/),
    ).toEqual([]);
  });

  it('read every golden file', () => {
    const named = tests.flatMap(({ path, text }) =>
      [...text.matchAll(/['`]([^'`\n]*\.golden\.\w+)['`]/g)].map(([, name = '']) => {
        const pattern = join(dirname(path), name)
          .replaceAll('\\', '/')
          .split(/\$\{[^}]*\}/)
          .map((each) => each.replace(/[.*+?^()|[\]\\]/g, '\\$&'));
        return new RegExp(`^${pattern.join('[^/]+')}$`);
      }),
    );
    const goldens = files.filter((path) => basename(path).includes('.golden.'));
    expect(goldens.length).toBeGreaterThan(0);
    expect(goldens.filter((path) => !named.some((pattern) => pattern.test(path)))).toEqual([]);
  });
});

describe('the language', () => {
  it('is pure: the same text gives the same bytes on every machine', () => {
    const impure =
      /\bDate\.now\b|\bnew Date\b|\bMath\.random\b|\bprocess\.|\bperformance\.|\bconsole\.|\.toLocale\w+\(|\bIntl\.|\bcrypto\./;
    expect(matches(language, impure)).toEqual([]);
  });

  it('compares text by a named locale or by code units', () => {
    expect(matches(language, /\.localeCompare\([^,()]*\)/)).toEqual([]);
  });

  it('needs no Node', () => {
    expect(
      imports.filter(({ from, to }) => from.startsWith('language/src/') && to.startsWith('node:')),
    ).toEqual([]);
  });

  it('is entered by its one door', () => {
    const inside = imports.filter(
      ({ from, to }) =>
        packageOf(from) !== 'language' &&
        to.startsWith('language/src/') &&
        to !== 'language/src/index.ts' &&
        !from.startsWith('tests/') &&
        !from.startsWith('extension/generate/'),
    );
    expect(inside).toEqual([]);
  });
});

it('guides are drawn without Node: what makes them runs in a browser too', () => {
  // `html/assets.ts` lends the drawing what lies in files; only the command's side takes it in.
  const pure = /^compiler\/(?:src\/(?:document|html(?!\/assets))|page)\//;
  const found = imports.filter(({ from, to }) => pure.test(from) && to.startsWith('node:'));
  expect(found.map(({ from, to }) => `${from} imports ${to}`)).toEqual([]);
});

describe('imports', () => {
  /** What each package may take from. */
  const MAY: Readonly<Record<string, readonly string[]>> = {
    language: [],
    server: ['language'],
    compiler: ['language', 'server'],
    extension: ['language', 'server'],
    tests: ['language', 'server', 'compiler', 'extension'],
  };

  it('run one way between packages', () => {
    const wrong = imports.filter(({ from, to }) => {
      const [own, other] = [packageOf(from), packageOf(to)];
      return own !== undefined && other !== undefined && own !== other && !MAY[own]?.includes(other);
    });
    expect(wrong.map(({ from, to }) => `${from} imports ${to}`)).toEqual([]);
  });

  it('of the extension take of the server what the two say to each other, and no more', () => {
    const found = imports.filter(
      ({ from, to }) => packageOf(from) === 'extension' && packageOf(to) === 'server',
    );
    expect([...new Set(found.map(({ to }) => to))]).toEqual(['server/src/protocol.ts']);
  });

  it('make no circle of files, types apart', () => {
    expect(circles(imports.filter((each) => !each.isType))).toEqual([]);
  });
});
