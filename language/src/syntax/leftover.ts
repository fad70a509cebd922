// Says what is wrong with a token that fits nowhere, and offers what was probably meant.
import type { IToken } from 'chevrotain';
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { didYouMean } from '../diagnostics/did-you-mean.js';
import { unexpected } from '../diagnostics/g203-unexpected.js';
import { quoteOpen } from '../diagnostics/g205-quote-open.js';
import { strayCharacter } from '../diagnostics/g206-stray-character.js';
import { limitHint } from '../diagnostics/n203-clause-not-for-verb.js';
import { span } from '../text/span.js';
import { ORDER_PATTERNS } from '../trade/order.js';
import { SAID_FOR } from '../verbs/said-for.js';
import { HEADS_SAID } from '../vocabulary/heads-said.js';
import { nearest } from '../vocabulary/near.js';
import type { LineSource } from './line-source.js';
import { STATES } from './states.js';
import { Comma, endOf, Junk, NumberToken, StringToken, Word, wordOf } from './tokens.js';
import type { Name } from './tree.js';

/** The finding for a token that no rule takes. `before` is the token in front of it, `verb` that of its statement. */
export function reportLeftover(
  token: IToken,
  before: IToken | undefined,
  source: LineSource,
  verb?: Name,
): Finding {
  const { file, base } = source;
  const at = span(base + token.startOffset, base + endOf(token));
  if (token.tokenType === Junk) {
    const fixes = [edit('Take it out', file, at.start, at.end, '')];
    return finding(strayCharacter, { file, span: at, fixes }, { character: token.image.slice(0, 1) });
  }
  if (isOpenString(token))
    return finding(quoteOpen, { file, span: at, fixes: [edit('Close it', file, at.end, at.end, '"')] }, {});
  const spoken = spokenFix(token, before, source);
  if (spoken) return spoken;
  const ahead = source.code.slice(0, token.startOffset);
  const applied = /^applies to\b/.test(ahead) ? APPLIED.exec(source.code.slice(token.startOffset)) : null;
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
  if (token.tokenType === NumberToken && /^step +$/i.test(ahead)) {
    const fix = edit('Take it out', file, base + ahead.trimEnd().length, at.end, '');
    const fixes: Fix[] = [{ ...fix, preferred: true }];
    return finding(
      unexpected,
      { file, span: at, fixes },
      { what: described(token), hint: 'steps need no number; the guide numbers them' },
    );
  }
  const [particle, verbWord, behind] = /^(\p{Ll}+) (\p{Ll}+) $/u.exec(ahead) ?? [];
  const other = particle && SAID_FOR.get(`${verbWord}-${behind}`);
  if (other) {
    const meant = `${other} ${token.image}`;
    return finding(
      unexpected,
      { file, span: at, fixes: [edit(`Write \`${meant}\``, file, base, at.end, meant)] },
      { what: described(token), hint: `did you mean \`${meant}\`?` },
    );
  }
  const bound = HEADS_SAID.get(token.image.toLowerCase());
  if (bound !== undefined && source.clauseWords.includes(bound) && /^ *[.\d][^,:]*$/.test(ahead)) {
    const meant = `${bound} ${ahead.trim()}`;
    return finding(
      unexpected,
      { file, span: at, fixes: [edit(`Write \`${meant}\``, file, base, at.end, meant)] },
      { what: described(token), hint: `did you mean \`${meant}\`?` },
    );
  }
  const limit = limitSaid(token, source);
  if (limit !== undefined)
    return finding(unexpected, { file, span: at }, { what: described(token), hint: limit });
  if (token.tokenType !== Word && !OF_SENTENCES.has(token.image))
    return finding(unexpected, { file, span: at }, { what: described(token), hint: undefined });
  if (before?.tokenType === StringToken && SIDES.has(token.image)) {
    const end = base + endOf(before);
    const guard = `, when side ${token.image}`;
    const fixes = [edit(`Write \`${guard}\``, file, end, at.end, guard)];
    return finding(
      unexpected,
      { file, span: at, fixes },
      { what: described(token), hint: `for one side only: \`${guard}\`` },
    );
  }
  if (verb && before && STATES.has(token.image)) {
    const meant = `set ${before.image} ${token.image}`;
    const fixes = [edit(`Write \`${meant}\``, file, verb.start, at.end, meant)];
    return finding(
      unexpected,
      { file, span: at, fixes },
      { what: described(token), hint: `a condition is set: \`${meant}\`` },
    );
  }
  const near =
    ORDERS.has(token.image) && source.clauseWords.includes('order')
      ? `order ${token.image}`
      : isUntilFigure(token, source)
        ? 'to'
        : nearClause(token.image, source.clauseWords);
  const isAfterName = before?.tokenType === Word;
  const fixes: Fix[] = [];
  if (near !== undefined) fixes.push(edit(`Write \`${near}\``, file, at.start, at.end, near));
  if (isAfterName && near === undefined) {
    if (!OF_SENTENCES.has(token.image)) {
      fixes.push(edit('Put a comma between the names', file, base + endOf(before), at.start, ', '));
      fixes.push(edit('Join the words by a hyphen', file, base + endOf(before), at.start, '-'));
    }
    if (verb) {
      const first = token.image.charAt(0);
      fixes.push(
        edit('Make the rest text', file, base + endOf(before), at.start + 1, `: ${first.toUpperCase()}`),
      );
    }
  }
  const hint =
    near !== undefined
      ? `did you mean \`${near}\`?`
      : isAfterName
        ? OF_SENTENCES.has(token.image)
          ? 'text for the technician goes after a colon'
          : 'names are parted by commas, and a name of two words is joined by a hyphen; text goes after a colon'
        : 'text for the technician goes after a colon';
  return finding(unexpected, { file, span: at, fixes }, { what: described(token), hint });
}

/** `measure runout 0.010 in max`: the values of a limit stand in its entry, for all lines that measure it. */
function limitSaid(token: IToken, { code }: LineSource): string | undefined {
  const bound = HEADS_SAID.get(token.image.toLowerCase());
  const [, name, before = ''] =
    /^measure ([\p{L}\d-]+),? (.*)$/u.exec(code.slice(0, token.startOffset)) ?? [];
  const figure = (before || code.slice(endOf(token))).replace(/[:,].*$/s, '').trim();
  if (name === undefined || (bound !== 'at least' && bound !== 'at most') || !/^[.\d]/.test(figure))
    return undefined;
  return limitHint(name, `${bound} ${figure}`);
}

/** The years, or an option and its value, behind the vehicle that a procedure applies to. */
const APPLIED = /^(?:(\d{4})(?: *(?:-|–|—|to|through|thru) *(\d{4}))?|([\p{L}-]+ [\p{L}-]+))(?= *(?:,|$))/u;

/** Words and signs of speech that code does without: `lower the vehicle`, `torque nut and bolt`, `4 x M8`. */
function spokenFix(
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

/** A clause that begins with nearly this word; a word that is of the line, at another place, is no slip of another. */
function nearClause(word: string, phrases: readonly string[]): string | undefined {
  if (phrases.includes(word)) return undefined;
  const words = phrases.flatMap((phrase) => [phrase, phrase.split(' ')[0] ?? phrase]);
  // What joins two names is in no longer word: `hand` is no slip of `and`.
  return nearest(
    word,
    words.filter((each) => !JOINERS.has(each) || each.length === word.length),
  )[0];
}

/** How shops say that a fastener is not tightened yet. Common practice, no source. */
const BY_HAND = /^ +(?:(?:hand|finger)[- ]tight|by hand|loosely|loose)$/;

/** The size of a head in front of the word for it, `9/16 in head`, and a length as it is said. */
export const SIZE_AHEAD = /(?<=, *)\d[\d ./-]*(?:mm|in|["”])?(?= *$)/;
const SIZE_FIRST = /(?<=, *)(\d[\d ./-]*(?:mm|in|["”])?) *(head|socket|wrench|spanner|AF|long)$/;

const JOINERS = new Set(['and', 'or']);

/** `run engine until 80 °C` is said with `to`. */
function isUntilFigure(token: IToken, { code, clauseWords }: LineSource): boolean {
  return token.image === 'until' && clauseWords.includes('to') && /^\s+[-−\d]/.test(code.slice(endOf(token)));
}

/** Words that go on with a sentence: no name begins with them. */
const OF_SENTENCES = new Set([
  'until',
  'before',
  'while',
  'because',
  'so',
  'then',
  'once',
  'but',
  'not',
  'without',
]);

const SPOKEN = new Set(['the', 'a', 'an', 'all', 'both', 'new', 'old']);

const SPOKEN_HINTS: ReadonlyMap<string, string> = new Map([
  ['all', 'without a number all are meant'],
  ['new', 'what goes on new says `renew` in its entry'],
]);

/** What shops write behind a number that is for one side. */
const SIDES = new Set(['left', 'right']);

/** Tightening orders that are often written without `order`. */
const ORDERS: ReadonlySet<string> = new Set(ORDER_PATTERNS);

/** Whether a quotation mark is never closed. */
export function isOpenString(token: IToken): boolean {
  return token.tokenType === StringToken && (token.image.length === 1 || !token.image.endsWith('"'));
}

function described(token: IToken): string {
  if (token.tokenType === Comma) return 'this comma';
  return `\`${wordOf(token)}\``;
}

function edit(title: string, file: string, start: number, end: number, text: string): Fix {
  return { title, edits: [{ file, span: span(start, end), text }] };
}
