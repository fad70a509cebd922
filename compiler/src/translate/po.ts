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
  for (const entry of entriesOf(parse(text).translations[PLAIN])) {
    const translation = entry.msgstr[0] ?? '';
    if (translation !== '' && !isDoubtful(entry)) found.set(entry.msgid, translation);
  }
  return found;
}

export interface Merged {
  readonly po: string;
  readonly all: number;
  readonly missing: readonly string[];
}

/**
 * The file with every text that is printed, in the order of the source. What was translated stays. What the source no
 * longer says is put away at the end (`#~`), and comes back as it was when the source says it again. A text without a
 * translation that reads nearly like one that went is offered its translation, marked as doubtful, with the text it was of.
 */
export function mergeTranslations(
  source: string,
  file: string,
  texts: Iterable<string>,
  language: Language,
  before?: string,
): Merged {
  const old = before === undefined ? undefined : parse(before);
  const live = new Map(entriesOf(old?.translations[PLAIN]).map((entry) => [entry.msgid, entry]));
  const away = new Map(entriesOf(old?.obsolete?.[PLAIN]).map((entry) => [entry.msgid, entry]));
  const said = source.replace(/\s+/g, ' ');
  const place = (text: string): number => said.indexOf(text.replace(/\s+/g, ' '));
  const used = new Set([...texts, ...[...live.keys()].filter((text) => place(text) >= 0)]);
  const ordered = [...used].sort((a, b) => place(a) - place(b) || (a < b ? -1 : 1));
  const left = [...live.values()].filter((entry) => !used.has(entry.msgid) && isTranslated(entry));
  const rows = ordered.map((text): Entry => {
    const kept = live.get(text);
    if (kept && isTranslated(kept)) return kept;
    return away.get(text) ?? offered(text, left, kept) ?? kept ?? { msgid: text, msgstr: [''] };
  });
  const top = old?.translations[PLAIN]?.[''];
  const translations = {
    // Entries with a context are another program's or the translator's own: they stay as they are.
    ...old?.translations,
    [PLAIN]: Object.fromEntries([
      ['', { msgid: '', msgstr: [''], ...(top?.comments ? { comments: top.comments } : {}) }],
      ...rows.map((entry) => [entry.msgid, entry] as const),
    ]),
  };
  const obsolete = {
    ...old?.obsolete,
    [PLAIN]: Object.fromEntries(
      [...away.values(), ...left]
        .filter(({ msgid }) => !used.has(msgid))
        .map((entry) => [entry.msgid, entry]),
    ),
  };
  const headers = {
    ...old?.headers,
    'Content-Type': 'text/plain; charset=utf-8',
    Language: language,
    'X-Source': file,
  };
  const compiled = po
    .compile({ charset: 'utf-8', headers, translations, obsolete }, { foldLength: 100 })
    .toString('utf8');
  const missing = rows.filter((entry) => !isTranslated(entry) || isDoubtful(entry));
  return { po: `${compiled.trimEnd()}\n`, all: rows.length, missing: missing.map(({ msgid }) => msgid) };
}

/** An entry as the library reads and writes it: with its plural forms and all remarks on it. */
type Entry = ReturnType<typeof po.parse>['translations'][string][string];

/** Where the library keeps entries without a context (`msgctxt`). */
const PLAIN = '';
const DOUBTFUL = 'fuzzy';

const parse = (text: string): ReturnType<typeof po.parse> => po.parse(text, { defaultCharset: 'utf-8' });

const entriesOf = (section: Readonly<Record<string, Entry>> | undefined): Entry[] =>
  Object.values(section ?? {}).filter(({ msgid }) => msgid !== '');

const isTranslated = ({ msgstr }: Entry): boolean => msgstr.some((text) => text !== '');

const flagsOf = ({ comments }: Entry): string[] => (comments?.flag ?? '').split(/[\s,]+/).filter(Boolean);

const isDoubtful = (entry: Entry): boolean => flagsOf(entry).includes(DOUBTFUL);

/** A doubtful entry for a text, from the one that went and reads most like it. */
function offered(text: string, left: readonly Entry[], kept: Entry | undefined): Entry | undefined {
  const [best] = left
    .filter((entry) => !isDoubtful(entry))
    .map((entry) => ({ entry, likeness: likeness(text, entry.msgid) }))
    .filter((one) => one.likeness >= LIKE)
    .sort((a, b) => b.likeness - a.likeness);
  if (!best) return undefined;
  const was = best.entry.msgid.replace(/[\\"]/g, '\\$&').replace(/\n/g, '\\n').replace(/\t/g, '\\t');
  return {
    msgid: text,
    msgstr: best.entry.msgstr,
    comments: {
      ...kept?.comments,
      flag: [DOUBTFUL, ...(kept ? flagsOf(kept) : [])].join(', '),
      previous: `msgid "${was}"`,
    },
  };
}

/** How much of the words two texts share, from 0 to 1 (Dice's coefficient); where an offer is of use is a judgement. */
const LIKE = 0.6;

function likeness(a: string, b: string): number {
  const words = (text: string): Set<string> => new Set(text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []);
  const [one, other] = [words(a), words(b)];
  const shared = [...one].filter((word) => other.has(word)).length;
  return (2 * shared) / Math.max(1, one.size + other.size);
}
