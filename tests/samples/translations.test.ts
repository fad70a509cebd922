// The translated samples are translated whole: a text that changes without its translation would print in two languages.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { lowerGuide } from '../../compiler/src/document/lower/index.js';
import { readTranslations, translationPath } from '../../compiler/src/translate/po.js';
import { LANGUAGES, type Language } from '../../language/src/index.js';
import { SAMPLES, sampleLibrary } from './sample-library.js';

const { library } = sampleLibrary(SAMPLES);

const translated = readdirSync(join(SAMPLES, 'procedures')).flatMap((name) => {
  const [, number = '', code] = /^(.+)\.([a-z]{2})\.po$/.exec(name) ?? [];
  const language = LANGUAGES.find((known) => known === code);
  return language ? [[`procedures/${number}.bay`, language] as const] : [];
});

it('has a translated procedure in two languages', () => {
  expect(new Set(translated.map(([, language]) => language)).size).toBeGreaterThanOrEqual(2);
});

it.each(translated)('%s in %s', (path, language) => {
  const analysis = library.analyse(path);
  if (!analysis) throw new Error(`${path} is not there`);
  const { untranslated } = lowerGuide(
    analysis,
    { sheet: 'guide', option: {}, units: library.settings.units, language },
    { settings: library.settings, bytes: () => undefined, translations: translationsOf },
  );
  expect([...untranslated].map(([file, texts]) => [file, [...texts]])).toEqual([]);
});

function translationsOf(path: string, language: Language): ReadonlyMap<string, string> | undefined {
  const file = join(SAMPLES, translationPath(path, language));
  return existsSync(file) ? readTranslations(readFileSync(file, 'utf8')) : undefined;
}
