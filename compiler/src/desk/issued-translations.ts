// Translations of an issued guide: they are kept with its sources, and one that was put right is a change of the guide.
import type { Analysis, Change, IssuedEdition, Language, ShopFacts } from '@baywright/language';
import { join } from '../cli/paths.js';
import { readable } from '../cli/publish.js';
import type { Shell } from '../cli/shell.js';
import { translationPath } from '../translate/po.js';
import type { StoreLibrary } from './issue-store.js';

/** The files of translations that a procedure is printed from, as texts by library path. */
export function translationsOf(
  shell: Shell,
  { root, settings }: StoreLibrary,
  { path, dependencies }: Pick<Analysis, 'path' | 'dependencies'>,
): Map<string, string> {
  const names = settings.languages
    .slice(1)
    .flatMap((language) => [path, ...dependencies].map((source) => translationPath(source, language)));
  return new Map(
    names.flatMap((name) => {
      const reading = shell.read(join(root, name));
      return 'text' in reading ? [[name, reading.text] as const] : [];
    }),
  );
}

/** Texts that the guide still says and that read otherwise in another language. Older issues do not hold translations. */
export function translationChanges(
  shell: Shell,
  library: StoreLibrary,
  { files, shown }: IssuedEdition,
  now: ShopFacts,
  analysis: Pick<Analysis, 'path' | 'dependencies'>,
): Change[] {
  const current = translationsOf(shell, library, analysis);
  const said = [...now.facts.map(({ value }) => value), ...now.work.map(({ text }) => text)].join('\n');
  return library.settings.languages.slice(1).flatMap((language) => {
    const old = known(files, language);
    if (old.size === 0 && shown === undefined) return [];
    const today = known(current, language);
    return [...new Set([...old.keys(), ...today.keys()])]
      .filter((text) => old.get(text) !== today.get(text) && said.includes(text.replace(/\s+/g, ' ').trim()))
      .map((text) => ({
        in: 'figure' as const,
        subject: `${language} “${text}”`,
        what: '',
        old: old.get(text),
        new: today.get(text),
        file: translationPath(analysis.path, language),
        line: 0,
      }));
  });
}

/** All translations into a language in some files. */
function known(files: ReadonlyMap<string, string>, language: Language): Map<string, string> {
  const own = [...files].filter(([path]) => path.endsWith(`.${language}.po`));
  return new Map(own.flatMap(([path, text]) => [...readable(path, text)]));
}
