// Words of speech in a line of code: what a technician would say to another, and what is written for it.
import type { IToken } from 'chevrotain';
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { didYouMean } from '../diagnostics/did-you-mean.js';
import { unexpected } from '../diagnostics/g203-unexpected.js';
import { span } from '../text/span.js';
import { VERB_BY_WORD } from '../verbs/index.js';
import { STEP_CLAUSE_BY_WORD } from '../vocabulary/clauses.js';
import type { LineSource } from './line-source.js';
import { Comma, endOf, Word, wordOf } from './tokens.js';

/** Words and signs that code does without: `lower the vehicle`, `torque nut and bolt`, `4 x M8`. */
export function spokenFix(
  token: IToken,
  before: IToken | undefined,
  { file, base, code, clauseWords }: LineSource,
): Finding | undefined {
  if (before === undefined) return undefined;
  const say = (at: IToken, title: string, start: number, end: number, text: string, hint: string): Finding =>
    finding(
      unexpected,
      {
        file,
        span: span(base + at.startOffset, base + endOf(at)),
        fixes: [edit(title, file, base + start, base + end, text)],
      },
      { what: described(at), hint },
    );
  if (
    token.image === 'then' &&
    before.tokenType === Comma &&
    /\d\s*\S*\s*$/.test(code.slice(0, before.startOffset))
  ) {
    const hint = 'stages follow each other without a comma: `25 N·m then 45°`';
    return say(token, 'Take the comma out', before.startOffset, endOf(before), '', hint);
  }
  if (token.image === 'and')
    return say(token, 'Write a comma', endOf(before), endOf(token), ',', 'names are parted by commas');
  if (before.tokenType === Word && SPOKEN.has(before.image.toLowerCase())) {
    const [opener = '', verb, word = ''] =
      /^([a-z-]+) .*?(?<= )([a-z]+) $/.exec(code.slice(0, before.startOffset)) ?? [];
    const isOther =
      VERB_BY_WORD.get(verb ?? '')?.clauses[word] === undefined && STEP_CLAUSE_BY_WORD.has(word);
    // `chock wheels on the other side`: the verb takes no such clause, it is told to the technician.
    if (isOther && verb !== undefined) {
      const text = `: ${word.charAt(0).toUpperCase()}`;
      const hint = `\`${verb}\` takes no \`${word}\`; text for the technician goes after a colon`;
      const start = opener.length - word.length - 2;
      return say(before, 'Make the rest text', start, start + 2, text, hint);
    }
    const title = `Take \`${before.image}\` out`;
    const hint = SPOKEN_HINTS.get(before.image.toLowerCase()) ?? 'a name stands alone';
    return say(before, title, before.startOffset, token.startOffset, '', hint);
  }
  const byHand = BY_HAND.exec(code.slice(endOf(before)));
  if (byHand && /^ *install\b/.test(code)) {
    const end = endOf(before) + byHand[0].length;
    const hint = 'it goes in by hand until a line says `snug`, `tighten` or `torque`';
    return say(token, `Take \`${byHand[0].trim()}\` out`, endOf(before), end, '', hint);
  }
  const sizeFirst = SIZE_FIRST.exec(code.slice(0, endOf(token)));
  if (sizeFirst && clauseWords.includes('hex')) {
    const [all, size = '', said] = sizeFirst;
    const meant = `${said === 'long' ? 'length' : 'hex'} ${size.trim()}`;
    return say(
      token,
      `Write \`${meant}\``,
      endOf(token) - all.length,
      endOf(token),
      meant,
      `did you mean \`${meant}\`?`,
    );
  }
  if (!/^[x×]$/i.test(before.image)) return undefined;
  const of = /\s/.test(code.charAt(before.startOffset - 1)) ? 'of' : ' of';
  const hint = 'a set says how many `of` what';
  return say(before, 'Write `of`', before.startOffset, endOf(before), of, hint);
}

/** How shops say that a fastener is not tightened yet. Common practice, no source. */
const BY_HAND = /^ +(?:(?:hand|finger)[- ]tight|by hand|loosely|loose)$/;

/** The size of a head in front of the word for it, `9/16 in head`, and a length as it is said. */
export const SIZE_AHEAD = /(?<=, *)\d[\d ./-]*(?:mm|in|["”])?(?= *$)/;
const SIZE_FIRST = /(?<=, *)(\d[\d ./-]*(?:mm|in|["”])?) *(head|socket|wrench|spanner|AF|long)$/;

const SPOKEN = new Set(['the', 'a', 'an', 'all', 'both', 'new', 'old']);

const SPOKEN_HINTS: ReadonlyMap<string, string> = new Map([
  ['all', 'without a number all are meant'],
  ['new', 'what goes on new says `renew` in its entry'],
]);

/** A vehicle by the name that its maker gave it, or its years and options as they are said. */
export function appliesMeant(
  token: IToken,
  before: IToken | undefined,
  source: LineSource,
): Finding | undefined {
  const { file, base } = source;
  const at = span(base + token.startOffset, base + endOf(token));
  const ahead = source.code.slice(0, token.startOffset);
  if (!/^applies to\b/.test(ahead)) return undefined;
  const applied = APPLIED.exec(source.code.slice(token.startOffset));
  if (applied) {
    const [all, first, last, option] = applied;
    const meant =
      first === undefined
        ? [`when ${option}`]
        : last === undefined
          ? [`from ${first} to ${first}`, `from ${first}`]
          : [`from ${first} to ${last}`];
    const end = at.start + all.length;
    const fixes = meant.map((text) => edit(`Write \`${text}\``, file, at.start, end, text));
    return finding(
      unexpected,
      { file, span: at, fixes },
      { what: described(token), hint: didYouMean(meant) },
    );
  }
  const called = /^applies to +(\S.*)$/.exec(ahead.trimEnd());
  if (called && before && /^[\p{L}\d]/u.test(token.image)) {
    const name = `${called[1]} ${nameAt(token, source)}`;
    const meant = `applies to ${name.toLowerCase().replace(/ +/g, '-')}`;
    const end = base + ahead.trimEnd().length - (called[1]?.length ?? 0) + name.length;
    const fix = edit(`Write \`${meant}\``, file, base, end, meant);
    return finding(
      unexpected,
      { file, span: at, fixes: [{ ...fix, preferred: true }] },
      { what: described(token), hint: `did you mean \`${meant}\`?` },
    );
  }
  return undefined;
}

/** The years, or an option and its value, behind the vehicle that a procedure applies to. */
const APPLIED = /^(?:(\d{4})(?: *(?:-|–|—|to|through|thru) *(\d{4}))?|([\p{L}-]+ [\p{L}-]+))(?= *(?:,|$))/u;

/** The words of a name that stand at a token, up to what belongs to the line otherwise: `dust cap` of `dust cap with lever`. */
export function nameAt(token: IToken, { code, clauseWords }: LineSource): string {
  const [first = token.image, ...more] =
    /^[\p{L}\d-]+(?: [\p{Ll}\d-]+)*/u.exec(code.slice(token.startOffset))?.[0].split(' ') ?? [];
  const openers = new Set(clauseWords.map((clause) => clause.split(' ')[0]));
  const own = more.findIndex((word) => openers.has(word));
  return [first, ...(own < 0 ? more : more.slice(0, own))].join(' ');
}

export function described(token: IToken): string {
  if (token.tokenType === Comma) return 'this comma';
  return `\`${wordOf(token)}\``;
}

export function edit(title: string, file: string, start: number, end: number, text: string): Fix {
  return { title, edits: [{ file, span: span(start, end), text }] };
}
