// Text for the technician: the lines it stands on and the references in it.

import { type Finding, finding } from '../diagnostics/define.js';
import { referenceOpen } from '../diagnostics/g209-reference-open.js';
import { type Span, span } from '../text/span.js';
import { isDigit, isLetter } from './characters.js';
import type { Name, Prose, ProseReference } from './tree.js';

/** The prose on the given lines; a line of no length parts paragraphs. Lines must be in order and not empty. */
export function readProse(
  text: string,
  file: string,
  lines: readonly Span[],
  below: boolean,
): { prose: Prose; findings: Finding[] } {
  const references: ProseReference[] = [];
  const findings: Finding[] = [];
  for (const line of lines) readReferences(text, file, line, references, findings);
  const joined = lines.map((line) => text.slice(line.start, line.end)).join('\n');
  const start = lines[0]?.start ?? 0;
  const end = lines[lines.length - 1]?.end ?? start;
  return { prose: { start, end, text: joined, below, lines, references }, findings };
}

/** Reads `{name attribute 2}`; a backslash before the brace takes it as itself. */
function readReferences(
  text: string,
  file: string,
  line: Span,
  references: ProseReference[],
  findings: Finding[],
): void {
  const written = text.slice(line.start, line.end);
  for (let open = written.indexOf('{'); open >= 0; ) {
    if (written[open - 1] === '\\') {
      open = written.indexOf('{', open + 1);
      continue;
    }
    const close = written.indexOf('}', open);
    const isClosed = close >= 0;
    const at = line.start + open;
    const end = isClosed ? line.start + close + 1 : at + 1;
    const reference = isClosed ? referenceAt(text, at, end) : undefined;
    if (reference !== undefined) references.push(reference);
    else {
      const fixes = [
        { title: 'Write the brace as itself', edits: [{ file, span: span(at, at), text: '\\' }] },
      ];
      findings.push(finding(referenceOpen, { file, span: span(at, end), fixes }, { closed: isClosed }));
      if (!isClosed) return;
    }
    open = written.indexOf('{', end - line.start);
  }
}

function referenceAt(text: string, start: number, end: number): ProseReference | undefined {
  const words: Name[] = [];
  let at = start + 1;
  while (at < end - 1) {
    if (text[at] === ' ') {
      at += 1;
      continue;
    }
    let stop = at;
    while (stop < end - 1 && text[stop] !== ' ') stop += 1;
    words.push({ text: text.slice(at, stop), start: at, end: stop });
    at = stop;
  }
  const [name, ...rest] = words;
  if (name === undefined || !isLetter(name.text.charCodeAt(0))) return undefined;
  const last = rest[rest.length - 1];
  const index = last !== undefined && isNumber(last.text) ? Number(last.text) : undefined;
  const attribute = index === undefined ? rest : rest.slice(0, -1);
  if (attribute.some((word) => !isLetter(word.text.charCodeAt(0)))) return undefined;
  const [first] = attribute;
  const final = attribute[attribute.length - 1];
  return {
    start,
    end,
    name,
    attribute: first &&
      final && { text: attribute.map((word) => word.text).join(' '), start: first.start, end: final.end },
    index,
  };
}

function isNumber(text: string): boolean {
  return text.length < 10 && [...text].every((character) => isDigit(character.charCodeAt(0)));
}
