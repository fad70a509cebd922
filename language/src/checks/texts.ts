// The texts a technician reads in the work of a job, cut into sentences with their places in the file.
import type { Job } from '../names/job.js';
import type { Prose } from '../syntax/tree.js';
import { type WorkLine, workLines } from './own-lines.js';

/** What a text does: tells what to do, explains, or names (titles and lists). */
type TextUse = 'instruction' | 'explanation' | 'label';

export interface WorkText {
  readonly work: WorkLine;
  readonly use: TextUse;
  /** The text as it stands in the file, line breaks included. */
  readonly text: string;
  readonly start: number;
}

export interface Sentence {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

export function workTexts(job: Job): WorkText[] {
  const found: WorkText[] = [];
  for (const work of workLines(job)) {
    const { prose } = work.line;
    const use = prose && useOf(work);
    if (use) found.push({ work, use, text: sourceOf(job, prose), start: prose.start });
  }
  return found;
}

/** Sentences of a text; a colon or semicolon ends one as a full stop does, a blank line and a list dash too. */
export function sentencesOf({ text, start }: Pick<WorkText, 'text' | 'start'>): Sentence[] {
  const found: Sentence[] = [];
  for (const match of text.matchAll(/(?:[^.!?:;\n]|[.:](?=\S)|\n(?!\s*(?:\n|- )))+/g)) {
    const lead = match[0].length - match[0].trimStart().length;
    const sentence = match[0].trim();
    if (sentence !== '')
      found.push({
        text: sentence,
        start: start + match.index + lead,
        end: start + match.index + lead + sentence.length,
      });
  }
  return found;
}

/** Words by the counting of ASD-STE100: a hyphenated word is one, a figure with its unit is one, a reference is one. */
export function countWords(sentence: string): number {
  const plain = sentence.replace(/\{[^{}]*\}/g, 'figure').replace(/(\d[\d.,/]*)\s+\p{L}[\p{L}·/°]*/gu, '$1');
  return plain.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
}

/** The text with comment lines blanked, so that places still count. */
function sourceOf(job: Job, prose: Prose): string {
  const source = job.file.tree.text.slice(prose.start, prose.end);
  if (!source.includes('#')) return source;
  return source.replace(/^[ \t]*#(?=[\s#]|$).*$/gm, (comment) => ' '.repeat(comment.length));
}

function useOf({ line }: WorkLine): TextUse | undefined {
  if (line.kind === 'step' || line.kind === 'operation' || line.kind === 'picture' || line.kind === 'clip')
    return 'label';
  if (line.kind === 'statement' || line.kind === 'message' || line.kind === 'repeat') return 'instruction';
  if (line.kind !== 'text') return undefined;
  if (line.word === 'note' || line.word === 'because') return 'explanation';
  return line.word === 'reject' || line.word === 'expect' ? 'label' : 'instruction';
}
