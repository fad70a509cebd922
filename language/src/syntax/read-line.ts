// Reads one line of code: what it is where it stands, its fields, and what may stand behind its colon and below it.
import type { IToken } from 'chevrotain';
import { type Finding, finding } from '../diagnostics/define.js';
import { nothingBelow } from '../diagnostics/g104-nothing-below.js';
import { titleMissing } from '../diagnostics/g105-title-missing.js';
import { colonMissing } from '../diagnostics/g106-colon-missing.js';
import { textMissing } from '../diagnostics/g107-text-missing.js';
import { textBelowRemark } from '../diagnostics/g110-text-below-remark.js';
import { stepMissing } from '../diagnostics/g112-step-missing.js';
import { unknownWord } from '../diagnostics/g201-unknown-word.js';
import { wordOutOfPlace } from '../diagnostics/g202-word-out-of-place.js';
import { unexpected } from '../diagnostics/g203-unexpected.js';
import { reservedName } from '../diagnostics/g207-reserved-name.js';
import { type Span, span } from '../text/span.js';
import { CONTEXT_WORDS, type HeadClass } from '../vocabulary/heads.js';
import {
  type BlockPlace,
  type Classified,
  classify,
  type Place,
  slipAt,
  type UnknownHead,
} from './classify.js';
import { type Fields, readFields } from './fields.js';
import { lex } from './lexer.js';
import { Comma, endOf, kindOf } from './tokens.js';
import type { Name, Token } from './tree.js';

/** A line of code as layout found it. */
export interface CodeLine {
  readonly file: string;
  readonly text: string;
  readonly code: Span;
  /** The code with comments inside it blanked out, when it goes over several lines. */
  readonly joined: string;
  /** Offset of the colon, and the span of the text behind it. */
  readonly colon: number | undefined;
  readonly remark: Span | undefined;
}

/** What stands above a line. */
export interface Above {
  readonly place: Place;
  /** The head of the line above, for messages. */
  readonly head: string;
  /** Offset behind the colon of a line above whose text stands on the line. */
  readonly remark: number | undefined;
}

/** A line that has been read, before its text and block. */
export interface ReadLine {
  readonly fields: Fields;
  readonly head: Name;
  readonly tokens: readonly Token[];
  readonly class: HeadClass;
  readonly place: Place;
  readonly findings: readonly Finding[];
  /** The text of a line that lacks its colon. */
  readonly textInCode: Span | undefined;
  /** True when the lines beside it are not to be read either. */
  readonly spoilsBlock: boolean;
}

/** Longer code is not read: no one writes it, and its tokens would fill the memory. */
export const LONGEST_CODE = 20_000;

export function readLine(line: CodeLine, above: Above): ReadLine {
  const { file, code } = line;
  if (code.end - code.start > LONGEST_CODE) return tooLong(line);
  const lexed = lex(line.joined);
  const tokens = lexed.map((token) => treeToken(token, code.start));
  // A comma with nothing after it is reported by layout; what is before it reads as if it were not there.
  if (lexed.length > 1 && lexed[lexed.length - 1]?.tokenType === Comma) lexed.pop();
  const [first] = tokens;
  const firstWord: Name = { text: first?.image ?? '', start: code.start, end: first?.end ?? code.start };
  const unread = (findings: readonly Finding[], spoilsBlock = false): ReadLine => ({
    fields: { kind: 'unread' },
    head: firstWord,
    tokens,
    class: 'plain',
    place: 'unread',
    findings,
    textInCode: undefined,
    spoilsBlock,
  });
  if (above.place === 'unread') return unread([]);
  if (above.place === 'nothing') return unread([reportNothingBelow(line, above, firstWord)], true);

  const hasTitle = line.colon !== undefined && lexed.length === 1;
  let classified = classify(lexed, above.place, hasTitle);
  let findings: Finding[] = [];
  let isMended = false;
  if (classified.is === 'unknown' && classified.problem.form === 'unknown') {
    const slip = slipAt(lexed, above.place);
    if (slip !== undefined) {
      const at = span(code.start, code.start + endOf(lexed[slip.length - 1] ?? lexed[0] ?? EMPTY_TOKEN));
      const fixes = [
        {
          title: `Write \`${slip.word}\``,
          edits: [{ file, span: at, text: slip.word }],
          preferred: true as const,
        },
      ];
      findings = [
        finding(
          unknownWord,
          { file, span: at, fixes },
          { word: line.text.slice(at.start, at.end), where: '', readAs: slip.word, near: [] },
        ),
      ];
      isMended = true;
      mend(lexed, slip.word, slip.length);
      classified = classify(lexed, above.place, hasTitle);
    }
  }
  if (classified.is === 'unknown' && above.place.doubtful === true) return unread([]);
  if (classified.is === 'unknown')
    return unread([reportUnknown(line, above, above.place, classified.problem, firstWord)]);

  const form = formOf(classified, above.place, lexed[0]?.image ?? '');
  const read = readFields(classified, above.place, lexed, line, form.operands, form.class);
  if (findings.length === 0 && read.finding !== undefined) findings = [read.finding];
  if (findings.length === 0)
    findings = formFindings(line, form, read.head, read.textInCode, read.fields, above.place);
  if (classified.is === 'verb' && above.place.context !== 'step' && findings.length === 0) {
    findings = [finding(stepMissing, { file, span: read.head }, { head: read.head.text })];
  }
  return {
    fields: read.fields,
    head: read.head,
    tokens,
    class: form.class,
    place: isMended || (findings.length > 0 && form.place === 'nothing') ? doubtful(form.place) : form.place,
    findings,
    textInCode: read.textInCode,
    spoilsBlock: false,
  };
}

/** The block below a line whose head may have been another: what does not fit there is left unread. */
function doubtful(place: Place): Place {
  if (typeof place === 'object') return { ...place, doubtful: true };
  return 'unread';
}

interface Form {
  readonly class: HeadClass;
  readonly place: Place;
  /** How many tokens of a titled or bare line belong to its code when the colon is missing. */
  readonly operands: number;
}

function formOf(classified: Exclude<Classified, { is: 'unknown' }>, place: BlockPlace, word: string): Form {
  switch (classified.is) {
    case 'section':
      return { class: 'block', place: sectionPlace(classified.section), operands: 0 };
    case 'entry':
      return { class: 'titled', place: { context: 'entry', kind: place.kind }, operands: 0 };
    case 'verb':
      return { class: 'plain', place: { context: 'statement', kind: undefined, verb: word }, operands: 0 };
    case 'prerequisite':
      return { class: 'plain', place: { context: 'entry', kind: undefined }, operands: 0 };
    case 'clauses':
    case 'values':
    case 'rule':
      return { class: 'plain', place: 'nothing', operands: 0 };
    case 'head':
      return headForm(classified, place);
  }
}

function headForm({ head }: Extract<Classified, { is: 'head' }>, place: BlockPlace): Form {
  const base = {
    class: head.class,
    operands: head.kind === 'operation' || head.kind === 'procedure' ? 1 : 0,
  };
  const at = (context: BlockPlace['context']): Form => ({ ...base, place: { context, kind: undefined } });
  switch (head.kind) {
    case 'operation':
      return at('operation');
    case 'step':
      return at('step');
    case 'perform':
      return at('statement');
    case 'when':
      return { ...base, place };
    case 'if':
    case 'otherwise':
    case 'repeat':
      return place.context === 'statement' ? at('step') : { ...base, place };
    default:
      return { ...base, place: 'nothing' };
  }
}

function sectionPlace(section: {
  readonly word: string;
  readonly declares?: BlockPlace['kind'];
  readonly work?: true;
}): BlockPlace {
  if (section.work === true) return { context: 'work', kind: undefined };
  if (section.declares === undefined) return { context: 'prerequisites', kind: undefined };
  return { context: 'declarations', kind: section.declares };
}

/** What a line of its class lacks. Text that may still come below is looked for when the block ends. */
function formFindings(
  line: CodeLine,
  form: Form,
  head: Name,
  textInCode: Span | undefined,
  fields: Fields,
  place: BlockPlace,
): Finding[] {
  const { file } = line;
  if (textInCode !== undefined) {
    const at = line.text.slice(head.end, textInCode.start).trimEnd().length + head.end;
    const fixes = [
      {
        title: 'Put the colon in',
        edits: [{ file, span: span(at, at), text: ':' }],
        preferred: true as const,
      },
    ];
    return [
      finding(colonMissing, { file, span: textInCode, fixes }, { head: line.text.slice(head.start, at) }),
    ];
  }
  if (form.class === 'titled' && line.remark === undefined)
    return [finding(titleMissing, { file, span: head }, { head: head.text })];
  const wantsText =
    fields.kind === 'text' ||
    fields.kind === 'accept' ||
    (fields.kind === 'message' && fields.reference === undefined && place.kind !== 'message');
  if (wantsText && line.colon === undefined)
    return [finding(textMissing, { file, span: head }, { head: head.text })];
  return [];
}

function reportNothingBelow(line: CodeLine, above: Above, word: Name): Finding {
  const { file, code } = line;
  if (above.remark !== undefined) {
    return finding(
      textBelowRemark,
      { file, span: span(code.start, lineEnd(line)), fixes: belowFix(line, above.remark) },
      { head: above.head },
    );
  }
  return finding(nothingBelow, { file, span: word }, { head: above.head });
}

function reportUnknown(
  line: CodeLine,
  above: Above,
  place: BlockPlace,
  problem: UnknownHead,
  word: Name,
): Finding {
  const { file, code } = line;
  if (problem.form === 'unknown') {
    const isText =
      above.remark !== undefined &&
      place.context === 'statement' &&
      (problem.near.length === 0 || /^\p{Lu}/u.test(problem.word));
    if (isText && above.remark !== undefined) {
      return finding(
        textBelowRemark,
        { file, span: span(code.start, lineEnd(line)), fixes: belowFix(line, above.remark) },
        { head: above.head },
      );
    }
    const fixes = problem.near.map((near) => ({
      title: `Write \`${near}\``,
      edits: [{ file, span: word, text: near }],
    }));
    const where = CONTEXT_WORDS[place.context];
    return finding(
      unknownWord,
      { file, span: word, fixes },
      { word: problem.word, where, readAs: undefined, near: problem.near },
    );
  }
  const last = lex(line.joined)[problem.length - 1];
  const at = span(code.start, last === undefined ? word.end : code.start + endOf(last));
  if (problem.form === 'reserved') return finding(reservedName, { file, span: at }, { word: problem.word });
  return finding(
    wordOutOfPlace,
    { file, span: at },
    { word: problem.word, where: CONTEXT_WORDS[place.context], goes: problem.goes },
  );
}

/** Moves the text behind the colon of the line above to a line of its own. */
function belowFix(line: CodeLine, afterColon: number): Finding['fixes'] {
  const { file, text, code } = line;
  const lineStart =
    Math.max(text.lastIndexOf('\n', code.start - 1), text.lastIndexOf('\r', code.start - 1)) + 1;
  let end = afterColon;
  while (text[end] === ' ' || text[end] === '\t') end += 1;
  const edits = [{ file, span: span(afterColon, end), text: `\n${text.slice(lineStart, code.start)}` }];
  return [{ title: 'Put all the text below', edits, preferred: true }];
}

function lineEnd(line: CodeLine): number {
  return line.remark?.end ?? (line.colon === undefined ? line.code.end : line.colon + 1);
}

function tooLong(line: CodeLine): ReadLine {
  const { code, text, file } = line;
  const image = text.slice(code.start, code.end);
  return {
    fields: { kind: 'unread' },
    head: { text: '', start: code.start, end: code.start },
    tokens: [{ kind: 'junk', image, start: code.start, end: code.end }],
    class: 'plain',
    place: 'unread',
    findings: [
      finding(
        unexpected,
        { file, span: span(code.start, code.start + 1) },
        { what: `code of ${code.end - code.start} characters`, hint: 'it is kept as it is and not read' },
      ),
    ],
    textInCode: undefined,
    spoilsBlock: false,
  };
}

function treeToken(token: IToken, base: number): Token {
  return {
    kind: kindOf(token),
    image: token.image,
    start: base + token.startOffset,
    end: base + endOf(token),
  };
}

/** Makes the first words read as the one that was meant; their places stay. */
function mend(tokens: IToken[], word: string, length: number): void {
  const words = word.split(' ');
  for (let i = 0; i < length; i++) {
    const token = tokens[i];
    if (token !== undefined)
      tokens[i] = { ...token, image: words[i] ?? token.image, endOffset: endOf(token) - 1 };
  }
}

const EMPTY_TOKEN = { image: '', startOffset: 0 } as IToken;
