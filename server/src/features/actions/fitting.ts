// Writes the fitting half of the job from the taking-off half, at the end of what is written.
import { type FittingStep, fittingHalf, type Line, type TextEdit } from '@baywright/language';
import { type CodeAction, CodeActionKind } from 'vscode-languageserver';
import type { Snapshot } from '../../snapshot.js';
import { fromLanguage } from '../../workspace-edit.js';
import { innerIndent, wholeLines } from './text.js';

export function writeFittingHalf(snapshot: Snapshot): CodeAction | undefined {
  const { run } = snapshot.analysis();
  if (!run) return undefined;
  const half = fittingHalf(run);
  if (half.installation.length === 0 && half.completion.length === 0) return undefined;
  const edits = [
    put(snapshot, 'installation', half.installation),
    put(snapshot, 'completion', half.completion),
  ].filter((e) => e !== undefined);
  return {
    title: 'Write the fitting half from the taking-off half',
    kind: CodeActionKind.RefactorRewrite,
    edit: fromLanguage(snapshot, merged(edits)),
  };
}

function put(snapshot: Snapshot, word: string, steps: readonly FittingStep[]): TextEdit | undefined {
  if (steps.length === 0) return undefined;
  const { text, tree, path } = snapshot;
  const section = tree.lines.find((l) => l.kind === 'section' && l.word === word);
  if (section) {
    const at = wholeLines(text, section).end;
    return { file: path, span: { start: at, end: at }, text: stepsText(steps, innerIndent(section)) };
  }
  const at = text.trimEnd().length;
  const end = placeBefore(tree.lines, word, text) ?? at;
  return {
    file: path,
    span: { start: end, end: end === at ? text.length : end },
    text: end === at ? `\n\n${word}\n${stepsText(steps, 2)}` : `${word}\n${stepsText(steps, 2)}\n`,
  };
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
    .map((s) => `${pad}step: ${s.title}\n${s.lines.map((l) => `${pad}  ${l}\n`).join('')}`)
    .join('');
}

/** Two insertions at one place become one, in their order. */
function merged(edits: readonly TextEdit[]): TextEdit[] {
  const [a, b] = edits;
  if (a && b && a.span.start === b.span.start)
    return [
      {
        ...a,
        span: { start: a.span.start, end: Math.max(a.span.end, b.span.end) },
        text: a.text + b.text.replace(/^\n/, ''),
      },
    ];
  return [...edits];
}
