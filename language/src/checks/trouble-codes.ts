// Q121: trouble codes in the text of lines that read, scan or clear, and in titles that speak of codes.
import { finding } from '../diagnostics/define.js';
import { troubleCodeForm } from '../diagnostics/q121-trouble-code-form.js';
import type { Line, Prose } from '../syntax/tree.js';
import { dtcCheck, dtcMeant } from '../trade/trouble-code.js';
import { VERB_BY_WORD } from '../verbs/index.js';
import type { Check } from './check.js';
import { workLines } from './own-lines.js';

export const troubleCodes: Check = ({ job: { file }, job }) => {
  const { text } = file.tree;
  if (!SOMETHING_LIKE_ONE.test(text)) return [];
  const titles = file.head ? [file.head, ...workLines(job).map(({ line }) => line)] : [];
  const told = [
    ...new Set([
      ...workLines(job).flatMap(({ line }) => linesAbout(line)),
      ...titles.filter((l) => isAboutCodes(l, text)),
    ]),
  ];
  return told
    .flatMap(({ prose }) => (prose ? wordsIn(prose, text) : []))
    .flatMap(({ code, start }) => {
      const { ok, problem } = dtcCheck(code);
      if (ok || problem === undefined) return [];
      const meant = dtcMeant(code);
      const span = { start, end: start + code.length };
      const fixes =
        meant === undefined
          ? []
          : [{ title: `Write \`${meant}\``, edits: [{ file: file.path, span, text: meant }] }];
      return [finding(troubleCodeForm, { file: file.path, span, fixes }, { code, problem, meant })];
    });
};

/** Most texts have none. */
const SOMETHING_LIKE_ONE = /[PCBU][0-9OQIL][0-9A-FOQIL]{3}/;

/** A line that asks for codes, with the lines of text below it. */
function linesAbout(line: Line): Line[] {
  if (line.kind !== 'statement' || !VERB_BY_WORD.get(line.verb.text)?.isAboutCodes) return [];
  return [line, ...line.children.filter(({ kind }) => kind === 'text')];
}

function isAboutCodes(line: Line, text: string): boolean {
  if (line.kind !== 'procedure' && line.kind !== 'step' && line.kind !== 'operation') return false;
  return line.prose !== undefined && /\bcodes?\b/i.test(text.slice(line.prose.start, line.prose.end));
}

/**
 * Words that look like a code: a capital P, C, B or U, then four characters, figures among them or letters that are
 * read for figures. A part number or a paint code has another form.
 */
function wordsIn(prose: Prose, text: string): { readonly code: string; readonly start: number }[] {
  return prose.lines.flatMap((line) =>
    [
      ...text
        .slice(line.start, line.end)
        .matchAll(/(?<![\p{L}\p{N}{-])[PCBU][0-9OQIL][0-9A-FOQIL]{3}(?:-[0-9A-F]{2})?(?![\p{L}\p{N}-])/gu),
    ]
      .filter(([code]) => /\d/.test(code))
      .map((match) => ({ code: match[0], start: line.start + match.index })),
  );
}
