// Formatting of a document, of a range and while typing: the language's own formatter, as edits of changed lines.
import { format, formatRange, pathAt } from '@baywright/language';
import type {
  DocumentFormattingParams,
  DocumentOnTypeFormattingParams,
  DocumentRangeFormattingParams,
  DocumentRangesFormattingParams,
  TextEdit,
} from 'vscode-languageserver';
import type { Snapshot } from '../snapshot.js';
import { documentFeature } from './feature.js';

export const formatting = documentFeature<DocumentFormattingParams>(
  'textDocument/formatting',
  { documentFormattingProvider: true },
  (snapshot) => asEdits(snapshot, format(snapshot.text, snapshot.path).edits),
);

export const rangeFormatting = documentFeature<DocumentRangeFormattingParams>(
  'textDocument/rangeFormatting',
  { documentRangeFormattingProvider: { rangesSupport: true } },
  (snapshot, { range }) =>
    asEdits(snapshot, formatRange(snapshot.text, snapshot.path, snapshot.positions.span(range))),
);

export const rangesFormatting = documentFeature<DocumentRangesFormattingParams>(
  'textDocument/rangesFormatting',
  {},
  (snapshot, { ranges }) => {
    const edits = ranges.flatMap((range) => [
      ...formatRange(snapshot.text, snapshot.path, snapshot.positions.span(range)),
    ]);
    return asEdits(
      snapshot,
      edits.filter(
        (e, i) => edits.findIndex((o) => o.span.start === e.span.start && o.span.end === e.span.end) === i,
      ),
    );
  },
);

/** A new line gets the indent of what may follow: below a block's head or a comma deeper, else level with the line above. */
export const onTypeFormatting = documentFeature<DocumentOnTypeFormattingParams>(
  'textDocument/onTypeFormatting',
  { documentOnTypeFormattingProvider: { firstTriggerCharacter: '\n' } },
  (snapshot, { position }) => {
    const { text, positions } = snapshot;
    const start = positions.lineStart(position.line);
    const offset = positions.offset(position);
    const now = /^[ \t]*/.exec(text.slice(start, start + 400))?.[0] ?? '';
    const before = text.slice(0, start).replace(/[\r\n]+$/, '');
    if (/\n[ \t]*$/.test(text.slice(0, Math.max(0, start - 1))) || before === '') return [];
    const above = before.slice(Math.max(before.lastIndexOf('\n'), before.lastIndexOf('\r')) + 1);
    const wanted = indentAfter(snapshot, before.length, above);
    if (wanted === undefined || wanted === now || offset < start) return [];
    return [{ range: snapshot.range({ start, end: start + now.length }), newText: wanted }];
  },
);

function indentAfter(snapshot: Snapshot, end: number, above: string): string | undefined {
  const own = /^[ \t]*/.exec(above)?.[0].replaceAll('\t', '    ') ?? '';
  const line = pathAt(snapshot.tree, end).pop();
  if (/^\s*#/.test(above)) return own;
  const deeper = `${own}  `;
  if (!line || line.code.end < end - above.length) return own;
  if (above.trimEnd().endsWith(',')) return line.code.start < end - above.length ? own : deeper;
  if (above.trimEnd().endsWith(':')) return deeper;
  switch (line.kind) {
    case 'section':
    case 'step':
    case 'operation':
    case 'when':
    case 'if':
    case 'otherwise':
    case 'repeat':
    case 'entry':
      return deeper;
    default:
      return own;
  }
}

function asEdits(snapshot: Snapshot, edits: ReturnType<typeof formatRange>): TextEdit[] {
  return edits.map((e) => ({ range: snapshot.range(e.span), newText: e.text }));
}
