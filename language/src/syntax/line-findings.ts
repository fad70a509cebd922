// The findings of a whole line: a first word that cannot be read, a block where none goes, a title or text that is
// missing.
import { type Finding, finding } from '../diagnostics/define.js';
import { nothingBelow } from '../diagnostics/g104-nothing-below.js';
import { titleMissing } from '../diagnostics/g105-title-missing.js';
import { colonMissing } from '../diagnostics/g106-colon-missing.js';
import { textMissing } from '../diagnostics/g107-text-missing.js';
import { textBelowRemark } from '../diagnostics/g110-text-below-remark.js';
import { unknownWord } from '../diagnostics/g201-unknown-word.js';
import { wordOutOfPlace } from '../diagnostics/g202-word-out-of-place.js';
import { reservedName } from '../diagnostics/g207-reserved-name.js';
import { type Span, span, type TextEdit } from '../text/span.js';
import { CONTEXT_WORDS } from '../vocabulary/heads.js';
import { type BlockPlace, SAID_IN_SENTENCES, type UnknownHead } from './classify.js';
import type { Above, CodeLine } from './code-line.js';
import type { Form } from './forms.js';
import { lex } from './lexer.js';
import { endOf } from './tokens.js';
import type { Fields, Name } from './tree.js';

/** What a line of its class lacks. Text that may still come below is looked for when the block ends. */
export function formFindings(
  line: CodeLine,
  form: Form,
  head: Name,
  textInCode: Span | undefined,
  fields: Fields,
  place: BlockPlace,
): Finding[] {
  const { file } = line;
  if (textInCode !== undefined) {
    const engine =
      head.text === 'stop' ? ENGINE.exec(line.text.slice(textInCode.start, textInCode.end)) : null;
    if (engine) {
      const text = `do: Stop ${engine[0]}`;
      const edits = [{ file, span: span(head.start, textInCode.end), text }];
      return [
        finding(
          colonMissing,
          {
            file,
            span: textInCode,
            fixes: [{ title: `Write \`${text}\``, edits, preferred: true as const }],
          },
          { head: head.text, meant: text },
        ),
      ];
    }
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

/** What is switched off, where `stop` would end the job. */
const ENGINE = /^(?:the )?(?:engine|motor|pump|compressor|machine)\b.*$/;

export function reportNothingBelow(line: CodeLine, above: Above, word: Name): Finding {
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

export function reportUnknown(
  line: CodeLine,
  above: Above,
  place: BlockPlace,
  problem: UnknownHead,
  word: Name,
): Finding {
  const { file, code } = line;
  if (problem.form === 'unknown') {
    const bullet = /^(?:[-*•–]|\d+[.)])[ \t]+(?=\S)/.exec(line.text.slice(code.start, code.end))?.[0];
    if (bullet !== undefined) {
      const at = span(code.start, code.start + bullet.trimEnd().length);
      const edits = [{ file, span: span(code.start, code.start + bullet.length), text: '' }];
      return finding(
        unknownWord,
        { file, span: at, fixes: [{ title: 'Take it out', edits, preferred: true }] },
        {
          word: bullet.trimEnd(),
          where: CONTEXT_WORDS[place.context],
          readAs: undefined,
          near: [],
          isBullet: true,
        },
      );
    }
    if (place.context === 'entry' && /^[MG]\d/.test(problem.word)) return setMeant(line, word);
    const isBan = place.context === 'step' && BANS.has(problem.word.toLowerCase());
    const isSentence =
      isBan ||
      SAID_IN_SENTENCES.has(problem.word) ||
      /^\p{Lu}\S*(?:\s+\S+){2,}\.$/u.test(line.text.slice(code.start, code.end));
    const near = isSentence ? [] : problem.near();
    const isText =
      above.remark !== undefined &&
      place.context === 'statement' &&
      (near.length === 0 || /^\p{Lu}/u.test(problem.word));
    if (isText && above.remark !== undefined) {
      return finding(
        textBelowRemark,
        { file, span: span(code.start, lineEnd(line)), fixes: belowFix(line, above.remark) },
        { head: above.head },
      );
    }
    const fixes = near.map((meant) => ({
      title: `Write \`${meant}\``,
      edits: [writeFor(line, word, meant)],
    }));
    const where = CONTEXT_WORDS[place.context];
    const plain =
      place.context === 'step' && fixes.length === 0
        ? (isBan ? ['notice', 'caution'] : ['do']).flatMap((head) => plainly(line, head) ?? [])
        : [];
    const plainFixes = plain.map((edit) => ({ title: `Write \`${edit.text}\``, edits: [edit] }));
    return finding(
      unknownWord,
      { file, span: word, fixes: plain.length > 0 ? plainFixes : fixes },
      { word: problem.word, where, readAs: undefined, near, plain: plain[0]?.text, isBan },
    );
  }
  const last = lex(line.joined)[problem.length - 1];
  const at = span(code.start, last === undefined ? word.end : code.start + endOf(last));
  if (problem.form === 'reserved') {
    const longer = nameFromTitle(line, problem.word);
    const fixes =
      longer === undefined
        ? []
        : [{ title: `Write \`${longer}\``, edits: [{ file, span: at, text: longer }] }];
    return finding(reservedName, { file, span: at, fixes }, { word: problem.word, longer });
  }
  return finding(
    wordOutOfPlace,
    { file, span: at },
    { word: problem.word, where: CONTEXT_WORDS[place.context], goes: problem.goes },
  );
}

/** The title as a name, where it is longer than the word: `brake-cleaner` of `Brake cleaner`. */
function nameFromTitle({ text, remark }: CodeLine, word: string): string | undefined {
  if (remark === undefined) return undefined;
  const name = text.slice(remark.start, remark.end).trim().toLowerCase().replace(/ +/g, '-');
  return name.length > word.length && /^\p{L}+(?:-\p{L}+){1,2}$/u.test(name) ? name : undefined;
}

/** Writes the words meant in the place of what was said for them: `>=` for a limit, `sealed by` for `sealed with`. */
function writeFor({ file, text }: CodeLine, word: Name, meant: string): TextEdit {
  const behind = text.slice(word.end);
  const more = meant.startsWith(`${word.text} `)
    ? /^ (?:as|at|by|from|in|of|on|to|until|when|with)(?= )/.exec(behind)
    : /^\p{L}/u.test(word.text)
      ? undefined
      : /^=/.exec(behind);
  const end = word.end + (more?.[0].length ?? 0);
  return { file, span: span(word.start, end), text: /\d/.test(text.charAt(end)) ? `${meant} ` : meant };
}

/** `M6, hex 10 mm`: a set begins with how many it is. */
function setMeant({ file }: CodeLine, word: Name): Finding {
  const fixes = ['1', '?'].map((count) => ({
    title: `Write \`${count} of ${word.text}\``,
    edits: [{ file, span: span(word.start, word.start), text: `${count} of ` }],
  }));
  const data = { word: word.text, where: CONTEXT_WORDS.entry, readAs: undefined, near: [], set: word.text };
  return finding(unknownWord, { file, span: word, fixes }, data);
}

/** What a sentence begins with that forbids. */
const BANS: ReadonlySet<string> = new Set(['never', "don't", 'don’t', 'avoid', 'beware']);

/** The line as plain words for the technician, when it is short. */
function plainly(line: CodeLine, head: string): TextEdit | undefined {
  const { file, code, text } = line;
  const said = text.slice(code.start, code.end);
  if (!/^\p{L}[^\n]{0,100}$/u.test(said)) return undefined;
  return { file, span: code, text: `${head}: ${said.charAt(0).toUpperCase()}${said.slice(1)}` };
}

/** Moves the text behind the colon of the line above to a line of its own. */
function belowFix(line: CodeLine, afterColon: number): Finding['fixes'] {
  const { file, text, code } = line;
  let lineStart = code.start;
  while (isIndent(text[lineStart - 1])) lineStart -= 1;
  let end = afterColon;
  while (isIndent(text[end])) end += 1;
  const edits = [{ file, span: span(afterColon, end), text: `\n${text.slice(lineStart, code.start)}` }];
  return [{ title: 'Put all the text below', edits, preferred: true }];
}

function isIndent(character: string | undefined): boolean {
  return character === ' ' || character === '\t';
}

function lineEnd(line: CodeLine): number {
  return line.remark?.end ?? (line.colon === undefined ? line.code.end : line.colon + 1);
}
