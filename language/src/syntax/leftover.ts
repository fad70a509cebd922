// Says what is wrong with a token that fits nowhere, and offers what was probably meant.
import type { IToken } from 'chevrotain';
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { unexpected } from '../diagnostics/g203-unexpected.js';
import { quoteOpen } from '../diagnostics/g205-quote-open.js';
import { strayCharacter } from '../diagnostics/g206-stray-character.js';
import { limitHint } from '../diagnostics/n203-clause-not-for-verb.js';
import { type Span, span } from '../text/span.js';
import { ORDER_PATTERNS } from '../trade/order.js';
import { SAID_FOR } from '../verbs/said-for.js';
import { HEADS_SAID } from '../vocabulary/heads-said.js';
import { nearest } from '../vocabulary/near.js';
import type { LineSource } from './line-source.js';
import { appliesMeant, described, edit, nameAt, spokenFix } from './spoken.js';
import { STATES } from './states.js';
import { endOf, Junk, NumberToken, StringToken, Word } from './tokens.js';
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
  const applied = appliesMeant(token, before, source);
  if (applied) return applied;
  if (token.tokenType === NumberToken && /^step +$/i.test(ahead)) {
    const fix = edit('Take it out', file, base + ahead.trimEnd().length, at.end, '');
    const fixes: Fix[] = [{ ...fix, preferred: true }];
    return finding(
      unexpected,
      { file, span: at, fixes },
      { what: described(token), hint: 'steps need no number; the guide numbers them' },
    );
  }
  const [, levelOf] = /^(?:inspect|check) ([\p{L}\d-]+) $/u.exec(ahead) ?? [];
  if (levelOf !== undefined && token.image === 'level')
    return said(`check-level ${levelOf}`, base, at, token, file);
  const [, guard, option, number] = /^(.*\bwhen ([\p{L}-]+) )(\d[\p{L}\d.]*)$/u.exec(ahead) ?? [];
  if (guard !== undefined && option !== undefined && number !== undefined) {
    const value = /^[\p{L}\d.-]+/u.exec(source.code.slice(guard.length))?.[0] ?? number;
    const meant = `${option.charAt(0)}${value}`;
    const place = span(base + guard.length, base + guard.length + value.length);
    return finding(
      unexpected,
      { file, span: at, fixes: [edit(`Write \`${meant}\``, file, place.start, place.end, meant)] },
      {
        what: described(token),
        hint: `a value begins with a letter, here as in its option: \`${option} ${meant}\``,
      },
    );
  }
  const [particle, verbWord, behind] = /^(\p{Ll}+) (\p{Ll}+) $/u.exec(ahead) ?? [];
  const other = particle && SAID_FOR.get(`${verbWord}-${behind}`);
  if (other) {
    const name = nameAt(token, source);
    const meant = `${other} ${name.replaceAll(' ', '-')}`;
    const end = at.start + name.length;
    return finding(
      unexpected,
      { file, span: at, fixes: [edit(`Write \`${meant}\``, file, base, end, meant)] },
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
      fixes.push(edit('Join the words by a hyphen', file, base + endOf(before), at.start, '-'));
      fixes.push(edit('Put a comma between the names', file, base + endOf(before), at.start, ', '));
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
          : 'a name of two words is joined by a hyphen, and names are parted by commas; text goes after a colon'
        : 'text for the technician goes after a colon';
  return finding(unexpected, { file, span: at, fixes }, { what: described(token), hint });
}

/** The line up to the token said in other words. */
const said = (meant: string, base: number, at: Span, token: IToken, file: string): Finding =>
  finding(
    unexpected,
    { file, span: at, fixes: [edit(`Write \`${meant}\``, file, base, at.end, meant)] },
    { what: described(token), hint: `did you mean \`${meant}\`?` },
  );

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

/** A clause that begins with nearly this word; a word that is of the line, at another place, is no slip of another. */
function nearClause(word: string, phrases: readonly string[]): string | undefined {
  if (phrases.includes(word)) return undefined;
  const words = phrases.flatMap((phrase) => [phrase, phrase.split(' ')[0] ?? phrase]);
  // What joins two names is in no longer word: `hand` is no slip of `and`, nor `pin` of `in`.
  return nearest(
    word,
    words.filter((each) => (!JOINERS.has(each) && each.length > 2) || each.length === word.length),
  )[0];
}

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

/** What shops write behind a number that is for one side. */
const SIDES = new Set(['left', 'right']);

/** Tightening orders that are often written without `order`. */
const ORDERS: ReadonlySet<string> = new Set(ORDER_PATTERNS);

/** Whether a quotation mark is never closed. */
export function isOpenString(token: IToken): boolean {
  return token.tokenType === StringToken && (token.image.length === 1 || !token.image.endsWith('"'));
}
