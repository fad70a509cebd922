// Folding of every block, texts and comments; selections that grow from word to clause to line to block.
import { namesOnLine, pathAt, type Span, walkLines } from '@baywright/language';
import {
  type FoldingRange,
  FoldingRangeKind,
  type FoldingRangeParams,
  type SelectionRange,
  type SelectionRangeParams,
} from 'vscode-languageserver';
import { documentFeature } from './feature.js';

export const folding = documentFeature<FoldingRangeParams>(
  'textDocument/foldingRange',
  { foldingRangeProvider: true },
  (snapshot) => {
    const ranges: FoldingRange[] = [];
    const add = (from: number, end: number, kind?: FoldingRangeKind): void => {
      const startLine = snapshot.positions.position(from).line;
      const endLine = snapshot.positions.position(end).line;
      if (endLine > startLine) ranges.push({ startLine, endLine, ...(kind === undefined ? {} : { kind }) });
    };
    walkLines(snapshot.tree, (line) => {
      if (line.children.length > 0 || line.prose?.below || line.lastLine > line.firstLine)
        add(line.start, line.end);
    });
    const uses = snapshot.tree.lines.filter((l) => l.kind === 'use');
    const [first] = uses;
    const last = uses.at(-1);
    if (first && last) add(first.start, last.code.end, FoldingRangeKind.Imports);
    let run: { from: Span; to: Span; line: number } | undefined;
    for (const comment of snapshot.tree.comments) {
      if (run && comment.line === run.line + 1) run = { ...run, to: comment, line: comment.line };
      else {
        if (run) add(run.from.start, run.to.end, FoldingRangeKind.Comment);
        run = { from: comment, to: comment, line: comment.line };
      }
    }
    if (run) add(run.from.start, run.to.end, FoldingRangeKind.Comment);
    return ranges;
  },
);

export const selection = documentFeature<SelectionRangeParams>(
  'textDocument/selectionRange',
  { selectionRangeProvider: true },
  (snapshot, { positions }) =>
    positions.map((position) => {
      const offset = snapshot.positions.offset(position);
      const spans: Span[] = [{ start: 0, end: snapshot.text.length }];
      const path = pathAt(snapshot.tree, offset);
      for (const line of path) {
        spans.push(line);
        const own = { start: line.start, end: Math.max(line.code.end, line.prose?.end ?? 0) };
        spans.push(own);
      }
      const line = path.at(-1);
      if (line) {
        spans.push(line.code);
        if ('clauses' in line) for (const clause of line.clauses) spans.push(clause);
        if (line.prose) spans.push(line.prose);
        for (const name of namesOnLine(line)) spans.push(name);
        for (const token of line.tokens) spans.push(token);
      }
      const around = spans
        .filter((s) => s.start <= offset && s.end >= offset)
        .sort((a, b) => b.end - b.start - (a.end - a.start));
      let range: SelectionRange | undefined;
      for (const span of around) {
        if (
          range &&
          span.start === snapshot.positions.offset(range.range.start) &&
          span.end === snapshot.positions.offset(range.range.end)
        )
          continue;
        range = range ? { range: snapshot.range(span), parent: range } : { range: snapshot.range(span) };
      }
      return range ?? { range: { start: position, end: position } };
    }),
);
