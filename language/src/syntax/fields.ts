// Hands a line to the grammar rule of its kind and gives back the fields of its node.
import type { IToken } from 'chevrotain';
import { type Finding, finding } from '../diagnostics/define.js';
import { operandMissing } from '../diagnostics/g204-operand-missing.js';
import { type Span, span } from '../text/span.js';
import type { HeadClass, HeadDef } from '../vocabulary/heads.js';
import { SIGNALS } from '../vocabulary/signals.js';
import type { BlockPlace, Classified } from './classify.js';
import { KEYWORDS, type Keywords, markKeywords, phrasesOf } from './keywords.js';
import { LineParser } from './line-parser.js';
import type { LineSource } from './line-source.js';
import type { ClauseSet } from './parser-clauses.js';
import { TESTS, testSaid } from './tests-said.js';
import { endOf, Word, wordOf } from './tokens.js';
import { type Fields, type Name, TEXT_HEADS } from './tree.js';
import { withUnitsMeant } from './units-meant.js';

export interface ReadFields {
  readonly fields: Fields;
  readonly head: Name;
  readonly finding: Finding | undefined;
  /** Text on the code side of a line that lacks its colon. */
  readonly textInCode: Span | undefined;
}

/** The line as far as its fields go. */
export interface FieldSource {
  readonly file: string;
  readonly joined: string;
  readonly code: Span;
  readonly colon: number | undefined;
}

/**
 * Reads the fields of a line that is known. `operands`: how many tokens of a titled line are code when its colon is
 * missing; what follows them is its text.
 */
export function readFields(
  classified: Exclude<Classified, { is: 'unknown' }>,
  place: BlockPlace,
  tokens: IToken[],
  line: FieldSource,
  operands: number,
  cls: HeadClass,
): ReadFields {
  const length = headLength(classified);
  const head = headName(classified, tokens, length, line);
  const isBare =
    classified.is === 'head' &&
    (classified.head.bare === true || classified.head.kind === 'message') &&
    cls === 'prose';
  let rest = tokens.slice(length);
  let textInCode: Span | undefined;
  if (line.colon === undefined && (cls === 'titled' || isBare)) {
    const split = takenAsCode(classified, rest, operands);
    const [first] = rest.slice(split);
    if (first !== undefined) textInCode = span(line.code.start + first.startOffset, line.code.end);
    rest = rest.slice(0, split);
  }
  const read = (
    keywords: Keywords,
    rule: (parser: LineParser) => Fields,
    from: IToken[] = rest,
    set: ClauseSet = 'entry',
  ) => run(line, keywords, from, set, rule);
  const result = fieldsFor(classified, place, head, tokens, read);
  const isUntested = result.fields.kind === 'if' && result.fields.test === undefined;
  const finding_ =
    (isUntested ? testSaid(line.file, head, line.joined, line.code) : undefined) ??
    result.finding ??
    reportMissing(result.fields, head, line.file);
  return { fields: withUnitsMeant(result.fields, place, head), head, finding: finding_, textInCode };
}

type Read = (
  keywords: Keywords,
  rule: (parser: LineParser) => Fields,
  from?: IToken[],
  set?: ClauseSet,
) => Result;

interface Result {
  readonly fields: Fields;
  readonly finding: Finding | undefined;
}

function fieldsFor(
  classified: Exclude<Classified, { is: 'unknown' }>,
  place: BlockPlace,
  head: Name,
  tokens: IToken[],
  read: Read,
): Result {
  switch (classified.is) {
    case 'section':
      return read(KEYWORDS.plain, (p) => ({
        ...p.nothing(),
        kind: 'section',
        word: classified.section.word,
      }));
    case 'entry':
      return read(KEYWORDS.plain, (p) => ({ ...p.nothing(), kind: 'entry', name: head }));
    case 'verb':
      return read(KEYWORDS.step, (p) => ({ kind: 'statement', ...p.statement(head) }), undefined, 'step');
    case 'prerequisite':
      return read(KEYWORDS.entry, (p) => ({ kind: 'prerequisite', ...p.prerequisite() }), tokens);
    case 'values':
      return read(KEYWORDS.plain, (p) => ({ kind: 'values', ...p.values() }), tokens);
    case 'rule':
      return read(KEYWORDS.rule, (p) => ({ kind: 'rule', ...p.ruleLine() }), tokens);
    case 'clauses': {
      const set: ClauseSet = place.context === 'entry' ? 'entry' : 'step';
      return read(KEYWORDS[set], (p) => ({ kind: 'clauses', ...p.clauseTail() }), tokens, set);
    }
    case 'head':
      return headFields(classified.head, read);
  }
}

function headFields({ kind, word }: HeadDef, read: Read): Result {
  switch (kind) {
    case 'procedure':
      return read(KEYWORDS.plain, (p) => ({ kind, ...p.procedure() }));
    case 'catalogue':
    case 'step':
    case 'otherwise':
      return read(KEYWORDS.plain, (p) => ({ ...p.nothing(), kind }));
    case 'use':
      return read(KEYWORDS.plain, (p) => ({ kind, ...p.use() }));
    case 'applies':
      return read(KEYWORDS.guard, (p) => ({ kind, ...p.applies() }));
    case 'sides':
      return read(KEYWORDS.plain, (p) => ({ kind, ...p.sides() }));
    case 'labour':
      return read(KEYWORDS.guard, (p) => ({ kind, ...p.labour() }));
    case 'crew':
      return read(KEYWORDS.plain, (p) => ({ kind, ...p.crew() }));
    case 'revision':
      return read(KEYWORDS.status, (p) => ({ kind, ...p.revision() }));
    case 'status':
      return read(KEYWORDS.status, (p) => ({ kind, ...p.status() }));
    case 'review':
      return read(KEYWORDS.plain, (p) => ({ kind, ...p.review() }));
    case 'accept':
      return read(KEYWORDS.plain, (p) => ({ kind, ...p.accept() }));
    case 'operation':
      return read(KEYWORDS.plain, (p) => ({ kind, ...p.named() }));
    case 'message':
      return read(KEYWORDS.plain, (p) => ({
        kind,
        signal: SIGNALS.find((signal) => signal === word) ?? 'notice',
        ...p.message(),
      }));
    case 'text':
      return read(KEYWORDS.plain, (p) => ({
        ...p.nothing(),
        kind,
        word: TEXT_HEADS.find((text) => text === word) ?? 'note',
      }));
    case 'picture':
      return read(KEYWORDS.plain, (p) => ({ kind, ...p.picture() }));
    case 'clip':
      return read(KEYWORDS.clip, (p) => ({ kind, ...p.clip() }));
    case 'perform':
      return read(KEYWORDS.perform, (p) => ({ kind, ...p.perform() }));
    case 'when':
      return read(KEYWORDS.guard, (p) => ({ kind, ...p.when() }));
    case 'if':
      return read(KEYWORDS.if, (p) => ({ kind, ...p.if_() }));
    case 'repeat':
      return read(KEYWORDS.plain, (p) => ({ kind, ...p.repeat() }));
  }
}

const parser = new LineParser();
const clauseWords = new Map<Keywords, readonly string[]>();

function run(
  { file, joined, code }: FieldSource,
  keywords: Keywords,
  tokens: readonly IToken[],
  set: ClauseSet,
  rule: (parser: LineParser) => Fields,
): Result {
  let words = clauseWords.get(keywords);
  if (words === undefined) {
    words = phrasesOf(keywords);
    clauseWords.set(keywords, words);
  }
  const source: LineSource = { file, code: joined, base: code.start, clauseWords: words };
  return parser.read(rule, markKeywords(tokens, joined, keywords), source, set);
}

/** How many tokens the head takes from what the grammar rule reads. */
function headLength(classified: Exclude<Classified, { is: 'unknown' }>): number {
  if (classified.is === 'head') return classified.length;
  return classified.is === 'section' || classified.is === 'entry' || classified.is === 'verb' ? 1 : 0;
}

function headName(
  classified: Exclude<Classified, { is: 'unknown' }>,
  tokens: readonly IToken[],
  length: number,
  { code, joined }: FieldSource,
): Name {
  const keywords = classified.is === 'rule' ? KEYWORDS.rule : KEYWORDS.entry;
  const first = length === 0 ? markKeywords(tokens.slice(0, 3), joined, keywords)[0] : tokens[0];
  const last = length === 0 ? first : tokens[length - 1];
  const start = code.start + (first?.startOffset ?? 0);
  const end = last === undefined ? start : code.start + endOf(last);
  if (classified.is === 'head') return { text: classified.head.word, start, end };
  return { text: first === undefined ? '' : wordOf(first), start, end };
}

/** Where the code of a line without its colon ends and its text begins. */
function takenAsCode(classified: Classified, rest: readonly IToken[], operands: number): number {
  // `warning stands-first` names a shared message.
  if (classified.is === 'head' && classified.head.kind === 'message')
    return rest.length === 1 && rest[0]?.tokenType === Word ? 1 : 0;
  return operands;
}

/** What a line cannot do without, in words. */
function reportMissing(fields: Fields, head: Name, file: string): Finding | undefined {
  const expected = missingOperand(fields);
  return expected === undefined
    ? undefined
    : finding(operandMissing, { file, span: head }, { word: head.text, expected });
}

function missingOperand(fields: Fields): string | undefined {
  switch (fields.kind) {
    case 'procedure':
      return fields.number ? undefined : 'a number';
    case 'use':
    case 'picture':
    case 'clip':
      return fields.path ? undefined : 'a file name in quotation marks';
    case 'applies':
      return fields.vehicle ? undefined : 'a vehicle';
    case 'sides':
      return fields.sides.length > 0 ? undefined : 'the sides';
    case 'labour':
      return fields.time ? undefined : 'a time';
    case 'crew':
      return fields.count ? undefined : 'how many technicians';
    case 'revision':
      return fields.number ? undefined : 'the number of the revision';
    case 'status':
      return fields.status ? undefined : '`draft`, `proved`, `released` or `withdrawn`';
    case 'review':
      return fields.day ? undefined : 'a day such as 2026-10-05';
    case 'operation':
      return fields.name ? undefined : 'a name';
    case 'perform':
      return fields.operation ? undefined : 'an operation';
    case 'when':
      return fields.guard && fields.guard.terms.length > 0 ? undefined : 'an option and its value';
    case 'if':
      return fields.test ? undefined : TESTS;
    case 'accept':
      return fields.codes.length > 0 ? undefined : 'the codes of the findings';
    default:
      return undefined;
  }
}
