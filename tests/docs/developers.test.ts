// The pages at the root name files, scripts and commands that exist, and every invariant has its test.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { COMMANDS } from '../../compiler/src/cli/commands/index.js';
import { blocksIn, guidePages, ROOT } from './pages.js';

const read = (name: string): string => readFileSync(join(ROOT, name), 'utf8');
const developers = read('DEVELOPERS.md');

describe.each(['README.md', 'DEVELOPERS.md', 'CHANGELOG.md', 'server/README.md', 'samples/README.md'])(
  '%s',
  (name) => {
    const text = read(name);

    it('names paths that exist', () => {
      const named = [
        ...text.matchAll(/`((?:language|server|compiler|extension|samples|tests|\.ci)\/[\w./-]*)`/g),
      ]
        .map(([, path = '']) => path)
        // A name in capitals is for the reader to fill in; what `dist` holds is built.
        .filter((path) => !/[A-Z]{4,}/.test(path) && !path.includes('dist'));
      expect(named.filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
    });

    it('links to what exists', () => {
      const links = [...text.matchAll(/\]\(([^)#:]+)\)/g)].map(([, link = '']) => link);
      expect(links.filter((link) => !existsSync(join(ROOT, name, '..', link)))).toEqual([]);
    });

    it('names npm scripts that exist', () => {
      const scripts = [...text.matchAll(/npm (?:run )?([a-z]+)( -w (\w+))?/g)].filter(
        ([, script = '']) => !['ci', 'install', 'link'].includes(script),
      );
      const missing = scripts.filter(([, script = '', , workspace]) => {
        const manifest: unknown = JSON.parse(read(join(workspace ?? '.', 'package.json')));
        return !(manifest as { scripts: Record<string, string> }).scripts[script];
      });
      expect(missing.map(([line]) => line)).toEqual([]);
    });

    it('names commands that exist', () => {
      const words = [...text.matchAll(/(?:`|^)baywright ([a-z-]+)/gm)].map(([, word = '']) => word);
      expect(words.filter((word) => !COMMANDS.some((command) => command.name === word))).toEqual([]);
    });
  },
);

it.each(['language/src', 'compiler/src'])('every folder of %s has its row on the map', (parent) => {
  const map = developers.slice(developers.indexOf('## The map'), developers.indexOf('## The pipeline'));
  const places = [...map.matchAll(/^\| (.+?) \|/gm)].map(([, place = '']) => place).join();
  const folders = readdirSync(join(ROOT, parent), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => `\`${parent}/${entry.name}/\``);
  expect(folders.filter((folder) => !places.includes(folder))).toEqual([]);
});

it('the invariants are numbered without a gap, each with a test', () => {
  const section = developers.slice(developers.indexOf('## Invariants'), developers.indexOf('## Recipes'));
  const rows = [...section.matchAll(/^(\d+)\. (.+)$/gm)];
  expect(rows.map(([, number]) => Number(number))).toEqual(rows.map((_, i) => i + 1));
  expect(rows.filter(([, , text = '']) => !/`tests\/[\w./-]+\.test\.ts`/.test(text))).toEqual([]);
});

it.each(['README.md', 'CHANGELOG.md'])('what %s shows stands in the guide, where it is checked', (name) => {
  const shown = blocksIn(read(name)).filter((block) => block.info === '');
  const known = new Set(guidePages().flatMap((page) => page.text.split('\n').map((line) => line.trim())));
  const lines = shown.flatMap((block) => block.text.split('\n').map((line) => line.trim()));
  expect(shown.length).toBeGreaterThan(1);
  expect(lines.filter((line) => !known.has(line))).toEqual([]);
});
