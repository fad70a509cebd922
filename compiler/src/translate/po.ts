// Translations of a source file's prose, in the gettext format beside it: `FH-12-front-hub.es.po`. The text as it is
// written is the key, so that a changed sentence asks for a new translation and an unchanged one never does.
import type { Language } from '@baywright/language';
import { po } from 'gettext-parser';

/** The path of a file's translations: `procedures/FH-12.bay` has those into Spanish in `procedures/FH-12.es.po`. */
export function translationPath(source: string, language: Language): string {
  return source.replace(/(?:\.bay)?$/, `.${language}.po`);
}

/** Translations by source text; doubtful ones (`fuzzy`) and empty ones are left out. Throws on a file that is no PO file. */
export function readTranslations(text: string): Map<string, string> {
  const found = new Map<string, string>();
  for (const entry of entriesOf(text)) {
    if (entry.text !== '' && entry.translation !== '' && !entry.isDoubtful)
      found.set(entry.text, entry.translation);
  }
  return found;
}

interface Entry {
  readonly text: string;
  readonly translation: string;
  readonly isDoubtful: boolean;
  /** Marks of a translation editor, other than for a doubtful text. */
  readonly flags: readonly string[];
  /** Notes of the translator. */
  readonly note: string | undefined;
}

function entriesOf(text: string): Entry[] {
  const parsed = po.parse(text, { defaultCharset: 'utf-8' });
  return Object.values(parsed.translations[''] ?? {})
    .filter(({ msgid }) => msgid !== '')
    .map(({ msgid, msgstr, comments }) => {
      const flags = comments?.flag?.split(/\s*,\s*/) ?? [];
      return {
        text: msgid,
        translation: msgstr[0] ?? '',
        isDoubtful: flags.includes(DOUBTFUL),
        flags: flags.filter((flag) => flag !== DOUBTFUL && flag !== ''),
        note: comments?.translator,
      };
    });
}

const DOUBTFUL = 'fuzzy';

/**
 * What a file holds beside its texts: the remark at its top, who translated it and when, and what a translation editor
 * has put away (`#~`).
 */
function besideTexts(text: string): {
  note: string | undefined;
  headers: Readonly<Record<string, string>>;
  obsolete: ReturnType<typeof po.parse>['obsolete'];
} {
  const { translations, headers, obsolete } = po.parse(text, { defaultCharset: 'utf-8' });
  return { note: translations['']?.['']?.comments?.translator, headers, obsolete };
}

export interface Merged {
  readonly po: string;
  readonly all: number;
  readonly missing: readonly string[];
}

/**
 * The file with every text that is printed, in the order of the source. What was translated stays; what the source no
 * longer says goes, unless it was translated: then it is kept at the end, marked as doubtful, for whoever reworded it.
 */
export function mergeTranslations(
  source: string,
  file: string,
  texts: Iterable<string>,
  language: Language,
  before?: string,
): Merged {
  const old = before === undefined ? [] : entriesOf(before);
  const known = new Map(old.map((entry) => [entry.text, entry]));
  const said = source.replace(/\s+/g, ' ');
  const place = (text: string): number => said.indexOf(text.replace(/\s+/g, ' '));
  const used = new Set([...texts, ...old.map(({ text }) => text).filter((text) => place(text) >= 0)]);
  const ordered = [...used].sort((a, b) => place(a) - place(b) || (a < b ? -1 : 1));
  const left = old.filter(({ text, translation }) => !used.has(text) && translation !== '');
  const row = (text: string, entry: Entry | undefined, isDoubtful: boolean) => {
    const flags = [...(isDoubtful ? [DOUBTFUL] : []), ...(entry?.flags ?? [])];
    return {
      msgid: text,
      msgstr: [entry?.translation ?? ''],
      comments: {
        ...(entry?.note === undefined ? {} : { translator: entry.note }),
        ...(flags.length > 0 ? { flag: flags.join(', ') } : {}),
      },
    };
  };
  const beside = before === undefined ? undefined : besideTexts(before);
  const note = beside?.note;
  const top = { msgid: '', msgstr: [''], ...(note === undefined ? {} : { comments: { translator: note } }) };
  const rows = [
    ...ordered.map((text) => row(text, known.get(text), known.get(text)?.isDoubtful ?? false)),
    ...left.map((entry) => row(entry.text, entry, true)),
  ];
  const headers = {
    ...beside?.headers,
    'Content-Type': 'text/plain; charset=utf-8',
    Language: language,
    'X-Source': file,
  };
  const obsolete = beside?.obsolete;
  const translations = {
    '': Object.fromEntries([['', top], ...rows.map((one) => [one.msgid, one])]),
  };
  const compiled = po
    .compile(
      { charset: 'utf-8', headers, translations, ...(obsolete ? { obsolete } : {}) },
      { foldLength: 100 },
    )
    .toString('utf8');
  const isMissing = (text: string): boolean =>
    (known.get(text)?.translation ?? '') === '' || known.get(text)?.isDoubtful === true;
  return { po: `${compiled.trimEnd()}\n`, all: ordered.length, missing: ordered.filter(isMissing) };
}
