// `baywright translate`: what is printed and not yet translated, gathered into files for a translator.
import type { Language } from '@baywright/language';
import { mergeTranslations, translationPath } from '../../translate/po.js';
import { type Context, defineCommand, flag, list } from '../command.js';
import { readLanguage } from '../given.js';
import { collect, type Shelf } from '../libraries.js';
import { join, relativeTo } from '../paths.js';
import { guideShelf } from '../publish.js';
import { plural } from '../report/text.js';
import { CannotRun } from '../shell.js';

export default defineCommand({
  name: 'translate',
  summary: 'gather texts for a translator',
  docs: `The sentences of verbs come out in English, Spanish, French and German by themselves. What people wrote (titles, remarks, messages) is gathered here: for each source file, a gettext file (.po) is written beside it, which any translation editor opens. What was translated before is kept.

A guide prints a text without a translation as it is written, with a mark. With --list nothing is written and the missing texts are listed; the exit code is then 1 where there are any.`,
  takes: [
    {
      name: 'paths',
      docs: 'procedures and folders; the current folder where none is given',
      optional: true,
      many: true,
    },
  ],
  options: {
    language: list(
      '--language <code>',
      'es, fr, de or en; the further languages of baywright.json where not given',
    ),
    list: flag('--list', 'list what is missing and write nothing'),
  },
  examples: [
    ['baywright translate --language es', 'what a Spanish print of the whole library needs'],
    ['baywright translate procedures/FH-12-front-hub.bay --language de --list', 'what is missing for one'],
  ],
  async run(context, args, options) {
    const { shell, paintErr } = context;
    const { shelves, troubles } = collect(shell, args);
    let missing = 0;
    for (const shelf of shelves) {
      const asked =
        options.language.length > 0 ? options.language.map(readLanguage) : shelf.settings.languages.slice(1);
      if (asked.length === 0)
        throw new CannotRun('no language is named: give --language es, or name languages in baywright.json');
      for (const language of asked) missing += await translateShelf(context, shelf, language, options.list);
    }
    for (const { path, problem } of troubles)
      shell.err.write(`${paintErr.red('baywright:')} ${path} ${problem}\n`);
    if (troubles.length > 0) return 2;
    return options.list && missing > 0 ? 1 : 0;
  },
});

/** Handles one library and language; gives how many texts are missing. */
async function translateShelf(
  { shell, paint }: Context,
  shelf: Shelf,
  language: Language,
  isList: boolean,
): Promise<number> {
  const { lowerGuide } = await import('../../document/lower/index.js');
  const texts = new Map<string, Set<string>>();
  for (const path of shelf.files) {
    const analysis = shelf.library.analyse(path);
    if (analysis?.model.kind !== 'procedure') continue;
    const choice = { sheet: 'guide', option: {}, units: shelf.settings.units, language } as const;
    // Every text counts as missing here: the files that are there are merged below.
    const { untranslated } = lowerGuide(analysis, choice, {
      settings: shelf.settings,
      bytes: guideShelf(shell, shelf).bytes,
    });
    for (const [file, own] of untranslated) texts.set(file, new Set([...(texts.get(file) ?? []), ...own]));
  }
  let missing = 0;
  for (const [file, own] of [...texts].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const source = shelf.library.tree(file)?.text ?? '';
    const path = join(shelf.root, translationPath(file, language));
    const before = shell.kind(path) === undefined ? undefined : shell.read(path);
    if (before && 'problem' in before)
      throw new CannotRun(`${relativeTo(shell.folder, path)} ${before.problem}`);
    const merged = mergeTranslations(source, file, own, language, before?.text);
    missing += merged.missing.length;
    const shown = relativeTo(shell.folder, path);
    if (!isList) shell.write(path, merged.po);
    const rest =
      merged.missing.length === 0
        ? 'all translated'
        : paint.yellow(`${merged.missing.length} not translated`);
    shell.out.write(`${shown}: ${plural(merged.all, 'text')}, ${rest}\n`);
    if (isList) for (const text of merged.missing) shell.out.write(`  ${text}\n`);
  }
  return missing;
}
