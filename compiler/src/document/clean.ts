// Makes every text of a document safe to set: no controls that turn the direction of writing, no invisible or
// broken characters, and, for the print, no character that the shipped type does not have. What is changed is
// reported at the line it was written on.
import type { GuideDocument, OutputFinding } from './document.js';
import type { SourceRef } from './inline.js';
import type { Picture } from './picture.js';

export interface Cleaned {
  readonly document: GuideDocument;
  readonly findings: readonly OutputFinding[];
}

export interface CleanOptions {
  /** Tells whether the output's type has a character; without it every character passes. */
  readonly has?: (codePoint: number) => boolean;
  /** What stands in for characters the type lacks, before they count as missing. */
  readonly equivalents?: Readonly<Record<string, string>>;
  /** Longest run of characters without a place to break a line; longer ones get invisible break places. */
  readonly longestWord?: number;
}

/** What stands in for a character that cannot be printed. */
export const SUBSTITUTE = '\u25CA';

export function cleanDocument(document: GuideDocument, options: CleanOptions): Cleaned {
  const noted = new Map<string, Noted>();
  const walk = (value: unknown, source: SourceRef | undefined, key: string): unknown => {
    if (typeof value === 'string') return NAMES.has(key) ? value : clean(value, source);
    if (value === null || typeof value !== 'object' || value instanceof Uint8Array) return value;
    return walkInside(value, isLocated(value) ? value.source : source, key);
  };
  // Most texts are as they should be, so what holds them is copied only when something in it changes.
  const walkInside = (value: object, source: SourceRef | undefined, key: string): unknown => {
    if (Array.isArray(value)) {
      let items: unknown[] | undefined;
      for (let i = 0; i < value.length; i++) {
        const cleaned = walk(value[i], source, key);
        if (cleaned === value[i]) continue;
        items ??= [...value];
        items[i] = cleaned;
      }
      return items ?? value;
    }
    const drawing = isDrawing(value) ? withWords(value, (words) => clean(words, source, false)) : undefined;
    const fields = (drawing ?? value) as Readonly<Record<string, unknown>>;
    let copy: Record<string, unknown> | undefined;
    for (const name in fields) {
      const cleaned = walk(fields[name], source, name);
      if (cleaned === fields[name]) continue;
      copy ??= { ...fields };
      copy[name] = cleaned;
    }
    return copy ?? drawing ?? value;
  };
  const report = (kind: keyof typeof SAID, what: string, source: SourceRef | undefined) => {
    const mark = `${source?.file}:${source?.line}:${kind}`;
    const known = noted.get(mark) ?? { kind, source, what: new Set() };
    known.what.add(what);
    noted.set(mark, known);
  };
  const clean = (value: string, source: SourceRef | undefined, breaks = true): string => {
    if (value.length < HARMLESS_LENGTH && HARMLESS.test(value)) return value;
    const safe = value.normalize('NFC').replace(UNSAFE, (found) => {
      report('invisible', codeName(found), source);
      return '';
    });
    const sparse = safe.replace(HEAPED, (marks, few: string) => {
      report('marks', String([...marks].length), source);
      return few;
    });
    const known = options.has
      ? substitute(sparse, options, (lacking) => report('lacking', lacking, source))
      : sparse;
    return options.longestWord === undefined || !breaks ? known : breakLongWords(known, options.longestWord);
  };
  // The copy has the shape of what it copies: only texts change.
  const cleaned = walk(document, undefined, '') as GuideDocument;
  return { document: cleaned, findings: [...noted.values()].map(told) };
}

/** What was changed at one line, in one way. */
interface Noted {
  readonly kind: keyof typeof SAID;
  readonly source: SourceRef | undefined;
  readonly what: Set<string>;
}

/** One finding for a line: a text in another script would else give as many as it has letters. */
function told({ kind, source, what }: Noted): OutputFinding {
  const [one, many] = SAID[kind];
  const message = (what.size === 1 ? one : many)([...what].join(', '));
  return source ? { message, file: source.file, line: source.line } : { message };
}

type Said = (what: string) => string;
const SAID = {
  invisible: [
    (what) => `The invisible character ${what} was left out`,
    (what) => `The invisible characters ${what} were left out`,
  ],
  lacking: [
    (what) => `The print cannot show the character ${what}; it prints as ${SUBSTITUTE}`,
    (what) => `The print cannot show the characters ${what}; each prints as ${SUBSTITUTE}`,
  ],
  marks: [
    (what) => `Of ${what} marks on one letter four were kept`,
    (what) => `Of ${what} marks on one letter four were kept`,
  ],
} as const satisfies Readonly<Record<string, readonly [one: Said, many: Said]>>;

/** Names and addresses: not shown, and they must stay equal where they are the same. */
const NAMES = new Set([
  'id',
  'row',
  'ban',
  'thing',
  'things',
  'href',
  'key',
  'reading',
  'kind',
  'file',
  'fromRow',
  'untilRow',
  'print',
  'date',
]);

/** Short texts of these characters need no cleaning in any output: every type has them, none can be split up. */
const HARMLESS = /^[\x20-\x7E\u00B0\u00B7\u00D7\u2013\u2019]*$/;
const HARMLESS_LENGTH = 28;

/** Directional controls (Unicode UAX #9), C0 and C1 controls but line feed and tab, zero-width marks, lone surrogates. */
const UNSAFE =
  /[\u0000-\u0008\u000B-\u001F\u007F-\u009F\u061C\u200B-\u200F\u2028-\u202E\u2060-\u206F\uFEFF\uFFF9-\uFFFB\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;

/** Marks heaped on one letter reach into the lines around it; no writing has more than four. */
const HEAPED = /(\p{M}{4})\p{M}+/gu;

function substitute(
  value: string,
  { has, equivalents }: CleanOptions,
  report: (lacking: string) => void,
): string {
  let out = '';
  for (const character of value) {
    const codePoint = character.codePointAt(0) ?? 0;
    const equivalent = equivalents?.[character];
    if (codePoint === 0x0a || codePoint === 0x09 || has?.(codePoint)) out += character;
    else if (equivalent !== undefined) out += equivalent;
    // A variation selector belongs to the character before it and goes with it.
    else if (codePoint < 0xfe00 || codePoint > 0xfe0f) {
      report(codeName(character));
      out += SUBSTITUTE;
    }
  }
  return out;
}

function breakLongWords(value: string, longest: number): string {
  if (value.length <= longest) return value;
  return value.replace(new RegExp(`[^\\s\\u200B]{${longest}}(?=\\S)`, 'gu'), (run) => `${run}\u200B`);
}

function codeName(character: string): string {
  const code = (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
  return /^[\p{L}\p{N}\p{P}\p{S}]/u.test(character) ? `${character} (U+${code})` : `U+${code}`;
}

const isDrawing = (value: object): value is Picture =>
  'type' in value && value.type === 'svg' && 'data' in value && value.data instanceof Uint8Array;

/** A drawing with its words cleaned: what stands between its tags. */
function withWords(picture: Picture, clean: (words: string) => string): Picture {
  // Nearly all drawings have letters of ASCII alone.
  if (picture.data.every((byte) => byte < 0x80)) return picture;
  const before = new TextDecoder().decode(picture.data);
  const after = before.replace(/(?<=>)[^<]+/g, clean);
  return after === before ? picture : { ...picture, data: new TextEncoder().encode(after) };
}

function isLocated(value: object): value is { source: SourceRef } {
  return (
    'source' in value && typeof value.source === 'object' && value.source !== null && 'line' in value.source
  );
}
