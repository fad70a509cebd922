// Reads one line of code: what it is where it stands, its fields, and what may stand behind its colon and below it.
import type { IToken } from 'chevrotain';
import { type Finding, finding } from '../diagnostics/define.js';
import { stepMissing } from '../diagnostics/g112-step-missing.js';
import { unknownWord } from '../diagnostics/g201-unknown-word.js';
import { unexpected } from '../diagnostics/g203-unexpected.js';
import { type Span, span } from '../text/span.js';
import type { HeadClass } from '../vocabulary/heads.js';
import { classify, type Place, slipAt } from './classify.js';
import type { Above, CodeLine } from './code-line.js';
import { readFields } from './fields.js';
import { formOf } from './forms.js';
import { lex } from './lexer.js';
import { formFindings, reportNothingBelow, reportUnknown } from './line-findings.js';
import { Comma, endOf, kindOf } from './tokens.js';
import type { Fields, Name, Token } from './tree.js';

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
const LONGEST_CODE = 20_000;

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
  const meant = word.split(' ').flatMap((image, i) => {
    const token = tokens[Math.min(i, length - 1)];
    return token === undefined ? [] : [{ ...token, image, endOffset: endOf(token) - 1 }];
  });
  tokens.splice(0, length, ...meant);
}

const EMPTY_TOKEN = { image: '', startOffset: 0 } as IToken;
