// Helpers of the refactors: whole lines, sections, where an entry or step can be put.
import {
  type Line,
  SECTION_BY_WORD,
  SECTIONS,
  type SectionLine,
  type TextEdit,
  type ThingKind,
  wholeLines,
} from '@baywright/language';

/** A block moved to another indent; text without a line break at its end gets one. */
export function reindented(block: string, by: number): string {
  const lines = block
    .split('\n')
    .map((l) =>
      l.trim() === '' ? l.trim() : by >= 0 ? ' '.repeat(by) + l : l.replace(new RegExp(`^ {0,${-by}}`), ''),
    );
  const text = lines.join('\n');
  return text.endsWith('\n') ? text : `${text}\n`;
}

/** The word of the section that declares a kind. */
function sectionFor(kind: ThingKind): string | undefined {
  return SECTIONS.find((s) => s.declares === kind)?.word;
}

/** Puts entries at the end of the section of their kind, which is made where there is none. */
export function entryInsertion(
  file: string,
  text: string,
  lines: readonly Line[],
  kind: ThingKind,
  block: string,
): TextEdit | undefined {
  const word = sectionFor(kind);
  if (word === undefined) return undefined;
  const section = lines.filter((l): l is SectionLine => l.kind === 'section' && l.word === word).at(-1);
  if (section) {
    const at = wholeLines(text, { start: section.start, end: section.end }).end;
    const gap = at > 0 && text[at - 1] !== '\n' ? '\n' : '';
    return { file, span: { start: at, end: at }, text: `${gap}${block}` };
  }
  const work = lines.find((l) => l.kind === 'section' && SECTION_BY_WORD.get(l.word)?.work);
  if (work) {
    const at = wholeLines(text, work).start;
    return { file, span: { start: at, end: at }, text: `${word}\n${block}\n` };
  }
  return {
    file,
    span: { start: text.length, end: text.length },
    text: `${text.endsWith('\n') || text === '' ? '' : '\n'}\n${word}\n${block}`,
  };
}
