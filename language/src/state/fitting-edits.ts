// Puts a proposed fitting half into the text of its procedure: into the sections that are there, else into new ones.
import type { FileModel } from '../names/model.js';
import type { Line } from '../syntax/tree.js';
import type { TextEdit } from '../text/span.js';
import { wholeLines } from '../text/whole-lines.js';
import type { FittingHalf } from './fitting-half.js';
import type { FittingStep } from './fitting-steps.js';

/** The insertions that write it; none where nothing is proposed. They do not touch each other. */
export function fittingEdits(file: FileModel, half: FittingHalf): TextEdit[] {
  const edits = (['installation', 'completion'] as const).flatMap((word) => put(file, word, half[word]));
  const [first, second] = edits;
  if (!first || !second || first.span.start !== second.span.start) return edits;
  // Two insertions at one place become one, in their order.
  const span = { start: first.span.start, end: Math.max(first.span.end, second.span.end) };
  return [{ ...first, span, text: first.text + second.text.replace(/^\n/, '') }];
}

/** The proposed lines as text, section by section. */
export function fittingText({ installation, completion }: FittingHalf): string {
  const written: readonly [string, readonly FittingStep[]][] = [
    ['installation', installation],
    ['completion', completion],
  ];
  return written
    .filter(([, steps]) => steps.length > 0)
    .map(([word, steps]) => `${word}\n${stepsText(steps, 2)}`)
    .join('\n');
}

function put({ path, tree }: FileModel, word: string, steps: readonly FittingStep[]): TextEdit[] {
  if (steps.length === 0) return [];
  const { text, lines } = tree;
  const section = lines.find((line) => line.kind === 'section' && line.word === word);
  if (section) {
    const at = wholeLines(text, section).end;
    const indent = section.children[0]?.indent ?? section.indent + 2;
    const gap = at > 0 && text[at - 1] !== '\n' ? '\n' : '';
    return [{ file: path, span: { start: at, end: at }, text: gap + stepsText(steps, indent) }];
  }
  const before = placeBefore(lines, word, text);
  if (before !== undefined)
    return [{ file: path, span: { start: before, end: before }, text: `${word}\n${stepsText(steps, 2)}\n` }];
  const span = { start: text.trimEnd().length, end: text.length };
  return [{ file: path, span, text: `\n\n${word}\n${stepsText(steps, 2)}` }];
}

/** Installation stands before completion when that is written already. */
function placeBefore(lines: readonly Line[], word: string, text: string): number | undefined {
  const completion =
    word === 'installation' ? lines.find((l) => l.kind === 'section' && l.word === 'completion') : undefined;
  return completion && wholeLines(text, completion).start;
}

function stepsText(steps: readonly FittingStep[], indent: number): string {
  const pad = ' '.repeat(indent);
  return steps
    .map((s) =>
      s.perform === undefined
        ? `${pad}step: ${s.title}\n${s.lines.map((l) => `${pad}  ${l}\n`).join('')}`
        : `${pad}${s.perform}\n`,
    )
    .join('');
}
