// Refactors of steps: split one at the cursor, turn chosen steps into an operation, performed wherever they repeat.
import { type Line, pathAt, type Span, type StepLine, type TextEdit, wholeLines } from '@baywright/language';
import { CodeActionKind } from 'vscode-languageserver';
import type { Snapshot } from '../../snapshot.js';
import { fromLanguage } from '../../workspace-edit.js';
import type { ActionOffer } from './offer.js';
import { reindented } from './text.js';

export function splitStep(snapshot: Snapshot, span: Span): ActionOffer | undefined {
  const path = pathAt(snapshot.tree, span.start);
  const step = path.findLast((l): l is StepLine => l.kind === 'step');
  const inner = step && path[path.indexOf(step) + 1];
  if (!step || !inner || step.children[0] === inner) return undefined;
  // What is said of the line, and what accepts it, goes along.
  let first = step.children.indexOf(inner);
  while (LEADS.has(step.children[first - 1]?.kind ?? '')) first -= 1;
  if (first <= 0) return undefined;
  const at = wholeLines(snapshot.text, step.children[first] ?? inner).start;
  const title = step.prose?.text.trim() ?? 'Step';
  const edit: TextEdit = {
    file: snapshot.path,
    span: { start: at, end: at },
    text: `${' '.repeat(step.indent)}step: ${title}, continued\n`,
  };
  return {
    title: snapshot.say.splitStep,
    kind: CodeActionKind.RefactorRewrite,
    edit: () => fromLanguage(snapshot, [edit]),
  };
}

/** Lines that stand above the action they belong to. */
const LEADS: ReadonlySet<string> = new Set(['message', 'accept']);

export function toOperation(snapshot: Snapshot, span: Span): ActionOffer | undefined {
  const section = snapshot.tree.lines.find(
    (l) => l.kind === 'section' && l.start <= span.start && l.end >= span.end,
  );
  const chosen =
    section?.children.filter((l) => l.kind === 'step' && l.start <= span.end && l.end >= span.start) ?? [];
  const [first] = chosen;
  const last = chosen.at(-1);
  if (!section || !first || !last || span.start === span.end) return undefined;
  const { text, path } = snapshot;
  const again = repeats(snapshot, chosen, section);
  const edits = (): TextEdit[] => {
    const name = freeName(snapshot, first);
    const block = wholeLines(text, { start: first.start, end: last.end });
    const body = text.slice(block.start, block.end);
    const title = first.prose?.text.trim() ?? name;
    const pad = ' '.repeat(first.indent);
    return [
      { file: path, span: block, text: `${pad}operation ${name}: ${title}\n${reindented(body, 2)}` },
      ...again.map((span) => ({
        file: path,
        span: wholeLines(text, span),
        text: `${pad}perform ${name}\n`,
      })),
    ];
  };
  return {
    title: snapshot.say.toOperation(chosen.length, again.length),
    kind: CodeActionKind.RefactorExtract,
    edit: () => fromLanguage(snapshot, edits()),
  };
}

/** Runs of steps elsewhere in the work that say the same. */
function repeats(snapshot: Snapshot, chosen: readonly Line[], own: Line): Span[] {
  const wanted = chosen.map((l) => said(snapshot, l));
  const found: Span[] = [];
  for (const section of snapshot.tree.lines) {
    if (section.kind !== 'section') continue;
    for (let i = 0; i + wanted.length <= section.children.length; i++) {
      const run = section.children.slice(i, i + wanted.length);
      if (section === own && run.some((l) => chosen.includes(l))) continue;
      const [first] = run;
      const last = run.at(-1);
      if (first && last && run.every((l, k) => l.kind === 'step' && said(snapshot, l) === wanted[k])) {
        found.push({ start: first.start, end: last.end });
        i += wanted.length - 1;
      }
    }
  }
  return found;
}

function said(snapshot: Snapshot, line: Line): string {
  return line.children.map((c) => snapshot.text.slice(c.start, c.end).replace(/\s+/g, ' ')).join('\n');
}

function freeName(snapshot: Snapshot, step: Line): string {
  const words = (step.prose?.text ?? '').toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? ['part'];
  const base =
    words
      .slice(0, 3)
      .join('-')
      .replace(/^\P{L}+/u, '') || 'part';
  const taken = new Set(snapshot.library.model(snapshot.path)?.operations.map((o) => o.name));
  let name = base;
  for (let n = 2; taken.has(name); n++) name = `${base}-${n}`;
  return name;
}
