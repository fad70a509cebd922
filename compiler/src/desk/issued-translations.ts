// Translations of an issued guide: they are kept with its sources, and one that was put right is a change of the guide.
import type { Change, IssuedEdition, Job, Language, ShopFacts } from '@baywright/language';
import { join } from '../cli/paths.js';
import type { Shell } from '../cli/shell.js';
import { translationPath } from '../translate/po.js';
import type { StoreLibrary } from './issue-store.js';
import { readable } from './readable.js';

/** The files of translations that a procedure is printed from, as texts by library path. */
export function translationsOf(
  shell: Shell,
  { root, settings }: StoreLibrary,
  job: Job,
): Map<string, string> {
  return new Map(
    translationPaths(settings.languages, job).flatMap((name) => {
      const reading = shell.read(join(root, name));
      return 'text' in reading ? [[name, reading.text] as const] : [];
    }),
  );
}

/** Where the translations of a procedure, and of all it uses, lie. The first language is the one it is written in. */
export const translationPaths = (languages: readonly Language[], { scopes }: Job): string[] => {
  const sources = new Set(scopes.flatMap(({ files }) => files.map(({ path }) => path)));
  return languages
    .slice(1)
    .flatMap((language) => [...sources].map((source) => translationPath(source, language)));
};

/** Whether all translations are letter for letter those that were issued. */
export function isTranslatedAs(
  shell: Shell,
  library: StoreLibrary,
  { files }: IssuedEdition,
  job: Job,
): boolean {
  return translationPaths(library.settings.languages, job).every((name) => {
    const reading = shell.read(join(library.root, name));
    return files.get(name) === ('text' in reading ? reading.text : undefined);
  });
}

/** Texts that the guide still says and that read otherwise in another language. Older issues do not hold translations. */
export function translationChanges(
  shell: Shell,
  library: StoreLibrary,
  { files, shown }: IssuedEdition,
  now: ShopFacts,
  job: Job,
): Change[] {
  const current = translationsOf(shell, library, job);
  return library.settings.languages
    .slice(1)
    .filter((language) => shown !== undefined || intoLanguage(files, language).size > 0)
    .flatMap((language) => wordsChanged(language, files, current, now));
}

/** What a guide says otherwise in one language, from files of translations by library path. */
export function wordsChanged(
  language: Language,
  old: ReadonlyMap<string, string>,
  current: ReadonlyMap<string, string>,
  { path, facts, work }: ShopFacts,
): Change[] {
  const said = [...facts.map(({ value }) => value), ...work.map(({ text }) => text)].join('\n');
  const [was, today] = [intoLanguage(old, language), intoLanguage(current, language)];
  return [...new Set([...was.keys(), ...today.keys()])]
    .filter((text) => was.get(text) !== today.get(text) && said.includes(text.replace(/\s+/g, ' ').trim()))
    .map((text) => ({
      in: 'figure' as const,
      subject: `${language} “${text}”`,
      what: '',
      old: was.get(text),
      new: today.get(text),
      file: translationPath(path, language),
      line: 0,
    }));
}

/** All translations into a language in some files. */
function intoLanguage(files: ReadonlyMap<string, string>, language: Language): Map<string, string> {
  const own = [...files].filter(([path]) => path.endsWith(`.${language}.po`));
  return new Map(own.flatMap(([path, text]) => [...readable(path, text)]));
}
