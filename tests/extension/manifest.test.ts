// The manifest says what is there: every command has code, every text a translation, every word list its table.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { l10nStrings } from '../../extension/scripts/l10n-strings.mjs';
import { editorSettings } from '../../extension/src/settings/schema.js';
import { SECTIONS } from '../../language/src/vocabulary/sections.js';
import { METHODS, TOKEN_MODIFIERS, TOKEN_TYPES } from '../../server/src/protocol.js';

const EXTENSION = new URL('../../extension/', import.meta.url);
const read = (name: string): string => readFileSync(new URL(name, EXTENSION), 'utf8');
const json = (name: string): Record<string, unknown> => JSON.parse(read(name)) as Record<string, unknown>;
const LANGUAGES = ['es', 'fr', 'de'];

interface Manifest {
  readonly contributes: {
    readonly commands: readonly { readonly command: string }[];
    readonly menus: Readonly<Record<string, readonly { readonly command: string }[]>>;
    readonly views: Readonly<Record<string, readonly { readonly id: string }[]>>;
    readonly walkthroughs: readonly {
      readonly steps: readonly { readonly media: Readonly<Record<string, string>> }[];
    }[];
    readonly configuration: {
      readonly properties: Readonly<
        Record<string, { readonly default: unknown; readonly description: string }>
      >;
    };
  };
}
const manifest = json('package.json') as unknown as Manifest;
const sources = readdirSync(new URL('src/', EXTENSION), { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => read(`src/${name}`))
  .join('\n');

describe('commands and views', () => {
  test('each command of the manifest has code, and each command in code is in the manifest', () => {
    const declared = manifest.contributes.commands.map(({ command }) => command).sort();
    const inCode = [...sources.matchAll(/(?:registerCommand|command)\(\s*'(baywright\.\w+)'/g)].map(
      ([, name]) => name,
    );
    expect([...new Set(inCode)].sort()).toEqual(declared);
  });
  test('menus name declared commands', () => {
    const declared = new Set(manifest.contributes.commands.map(({ command }) => command));
    const inMenus = Object.values(manifest.contributes.menus).flatMap((menu) =>
      menu.map(({ command }) => command),
    );
    expect(inMenus.filter((command) => !declared.has(command))).toEqual([]);
  });
  test('each view has a tree', () => {
    const declared = Object.values(manifest.contributes.views)
      .flatMap((views) => views.map(({ id }) => id))
      .sort();
    const inCode = [...sources.matchAll(/createTreeView<\w+>\('([\w.]+)'/g)].map(([, id]) => id).sort();
    expect(inCode).toEqual(declared);
  });
});

describe('texts', () => {
  test('each key of the manifest has a text, and each text a key', () => {
    const used = [...read('package.json').matchAll(/"%([\w.]+)%"/g)].map(([, key]) => key);
    expect(Object.keys(json('package.nls.json')).sort()).toEqual([...new Set(used)].sort());
  });
  test.each(LANGUAGES)('the manifest is whole in %s', (language) => {
    expect(Object.keys(json(`package.nls.${language}.json`)).sort()).toEqual(
      Object.keys(json('package.nls.json')).sort(),
    );
  });
  test.each(LANGUAGES)('the sentences of the client are whole in %s, slots included', (language) => {
    const bundle = json(`l10n/bundle.l10n.${language}.json`) as Record<string, string>;
    expect(Object.keys(bundle).sort()).toEqual(l10nStrings());
    const slots = (text: string): string[] => (text.match(/\{\d\}/g) ?? []).sort();
    for (const [english, translated] of Object.entries(bundle))
      expect(slots(translated), english).toEqual(slots(english));
  });
});

describe('settings', () => {
  test('each setting of the schema is in the manifest with its default', () => {
    const defaults = Object.fromEntries(
      Object.entries(manifest.contributes.configuration.properties).map(([name, { default: value }]) => [
        name.replace('baywright.', ''),
        value,
      ]),
    );
    expect(defaults).toEqual(editorSettings.parse({}));
  });
});

describe('the walkthrough', () => {
  test('shows pictures and pages that exist, pictures with words that stand in for them', () => {
    for (const { media } of manifest.contributes.walkthroughs.flatMap(({ steps }) => steps)) {
      const file = media.svg ?? media.markdown ?? '';
      expect(read(file)).not.toBe('');
      if (media.svg !== undefined) expect(media.altText).toMatch(/^%.+%$/);
    }
  });
});

describe('the protocol', () => {
  test('names each method once, under its own prefix', () => {
    const names = Object.values(METHODS);
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(name).toMatch(/^baywright\/\w+$/);
  });
  test('names each token type and modifier once', () => {
    for (const list of [TOKEN_TYPES, TOKEN_MODIFIERS]) expect(new Set<string>(list).size).toBe(list.length);
  });
});

describe('language configuration', () => {
  const configuration = json('language-configuration.json') as unknown as {
    wordPattern: { pattern: string; flags: string };
    indentationRules: { increaseIndentPattern: string; decreaseIndentPattern: string };
    onEnterRules: readonly { beforeText: { pattern: string } }[];
  };
  const word = new RegExp(configuration.wordPattern.pattern, `${configuration.wordPattern.flags}g`);
  const increase = new RegExp(configuration.indentationRules.increaseIndentPattern);
  const entry = new RegExp(configuration.onEnterRules[0]?.beforeText.pattern ?? '$^');

  test('a word is a hyphened name, a code, a number', () => {
    expect('remove 8 of hub-bolt, écrou-de-roue: M12x1.5, R-1234yf, 1.5'.match(word)).toEqual([
      'remove',
      '8',
      'of',
      'hub-bolt',
      'écrou-de-roue',
      'M12x1.5',
      'R-1234yf',
      '1.5',
    ]);
  });
  test('every section word indents the next line', () => {
    for (const { word: section } of SECTIONS) expect(increase.test(section), section).toBe(true);
  });
  test.each([
    ['  step: Take it off', true],
    ['  when axle heavy', true],
    ['    if below limit', true],
    ['    caution:', true],
    ['    bleed clutch-circuit at bleed-screw:', true],
    ['    remove wheel-nut, wheel', false],
    ['    remove disc: Mind your feet.', false],
    ['    hex 18 mm', false],
  ])('`%s` indents the next line: %s', (line, expected) => {
    expect(increase.test(line)).toBe(expected);
  });
  test.each([
    ['  hub-bolt: Hub bolts', true],
    ['  item: Axle is warm.', false],
    ['    remove disc: Both.', false],
  ])('`%s` starts an entry: %s', (line, expected) => {
    expect(entry.test(line)).toBe(expected);
  });
});
