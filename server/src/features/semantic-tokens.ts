// Semantic tokens: what each word of a document is. Names are coloured by the kind of thing they mean.
import { clausesOf, mentionsOf, type Scope, type Span, scopeOf, walkLines } from '@baywright/language';
import type { SemanticTokensParams, SemanticTokensRangeParams } from 'vscode-languageserver';
import { TOKEN_MODIFIERS, TOKEN_TYPES } from '../protocol.js';
import type { Snapshot } from '../snapshot.js';
import { documentFeature } from './feature.js';

type TokenType = (typeof TOKEN_TYPES)[number];
interface Coloured extends Span {
  readonly type: TokenType;
  readonly modifiers: number;
}

const legend = { tokenTypes: [...TOKEN_TYPES], tokenModifiers: [...TOKEN_MODIFIERS] };

export const tokensFull = documentFeature<SemanticTokensParams>(
  'textDocument/semanticTokens/full',
  { semanticTokensProvider: { legend, full: { delta: true }, range: true } },
  (snapshot) => {
    const data = encode(snapshot, tokensIn(snapshot, { start: 0, end: snapshot.text.length }));
    return { resultId: remember(snapshot.uri, data), data };
  },
);

export const tokensRange = documentFeature<SemanticTokensRangeParams>(
  'textDocument/semanticTokens/range',
  {},
  (snapshot, { range }) => ({
    data: encode(snapshot, tokensIn(snapshot, snapshot.positions.span(range))),
  }),
);

/** One edit from the tokens sent before: the stretch that differs. */
export const tokensDelta = documentFeature<{ previousResultId: string }>(
  'textDocument/semanticTokens/full/delta',
  {},
  (snapshot, { previousResultId }) => {
    const data = encode(snapshot, tokensIn(snapshot, { start: 0, end: snapshot.text.length }));
    const before = sent.get(snapshot.uri);
    const resultId = remember(snapshot.uri, data);
    if (before?.id !== previousResultId) return { resultId, data };
    const most = Math.min(before.data.length, data.length);
    let head = 0;
    while (head < most && before.data[head] === data[head]) head++;
    let tail = 0;
    while (tail < most - head && before.data[before.data.length - 1 - tail] === data[data.length - 1 - tail])
      tail++;
    const deleteCount = before.data.length - head - tail;
    const inserted = data.slice(head, data.length - tail);
    return {
      resultId,
      edits: deleteCount === 0 && inserted.length === 0 ? [] : [{ start: head, deleteCount, data: inserted }],
    };
  },
);

/** The tokens last sent, for deltas; documents that are not asked about any more make room for others. */
const sent = new Map<string, { readonly id: string; readonly data: number[] }>();
let next = 0;

function remember(uri: string, data: number[]): string {
  next += 1;
  sent.delete(uri);
  sent.set(uri, { id: String(next), data });
  const oldest = sent.size > 32 ? sent.keys().next().value : undefined;
  if (oldest !== undefined) sent.delete(oldest);
  return String(next);
}

function tokensIn(snapshot: Snapshot, within: Span): Coloured[] {
  const model = snapshot.library.model(snapshot.path);
  if (!model) return [];
  const scope = scopeOf(model, snapshot.library);
  const found: Coloured[] = [];
  const add = (span: Span, type: TokenType, modifiers = 0): void => {
    if (span.end > span.start && span.end >= within.start && span.start <= within.end)
      found.push({ start: span.start, end: span.end, type, modifiers });
  };
  for (const comment of snapshot.tree.comments) add(comment, 'comment');
  walkLines(snapshot.tree, (line) => {
    if (line.end < within.start) return false;
    if (line.start > within.end) return false;
    const names = mentionsOf(line);
    const taken = (span: Span): boolean =>
      names.some((m) => m.name.start <= span.start && m.name.end >= span.end);
    for (const m of names)
      add(m.name, ...kindOf(scope, snapshot, m.name.text, m.way === 'declares', m.operation !== undefined));
    if (line.kind === 'statement') add(line.verb, 'function');
    else if (line.kind === 'message') add(line.head, 'signal');
    else if (
      line.kind !== 'clauses' &&
      line.kind !== 'entry' &&
      line.kind !== 'values' &&
      line.kind !== 'unread' &&
      !taken(line.head)
    )
      add(line.head, 'keyword');
    if ('clauses' in line && line.kind !== 'rule')
      for (const clause of line.clauses)
        if (clause.wordSpan.end > clause.wordSpan.start && clause.word !== 'of' && clause.word !== 'bare')
          add(clause.wordSpan, 'keyword');
    if (line.kind === 'rule') for (const clause of line.clauses) add(clause.wordSpan, 'keyword');
    for (const token of line.tokens) {
      if (taken(token)) continue;
      if (
        token.kind === 'number' ||
        token.kind === 'day' ||
        token.kind === 'count' ||
        token.kind === 'tolerance'
      )
        add(token, 'number');
      else if (token.kind === 'unit') add(token, 'unit');
      else if (token.kind === 'string') add(token, 'string');
      else if (token.kind === 'hole') add(token, 'hole');
      else if (token.kind === 'plus-minus' || token.kind === 'dash') add(token, 'operator');
    }
    return undefined;
  });
  found.sort((a, b) => a.start - b.start || b.end - a.end);
  // Tokens may not overlap: the first and widest one of a place stands.
  const apart: Coloured[] = [];
  for (const token of found) if (token.start >= (apart.at(-1)?.end ?? 0)) apart.push(token);
  return apart;
}

const DECLARATION = 1;
const CRITICAL = 2;
const UNKNOWN = 4;

function kindOf(
  scope: Scope,
  snapshot: Snapshot,
  name: string,
  declares: boolean,
  operation: boolean,
): [TokenType, number] {
  if (operation) return ['operation', declares ? DECLARATION : 0];
  const thing = scope.resolve(name);
  if (!thing) return ['part', UNKNOWN];
  const critical = clausesOf(thing, 'marked').length > 0 && thing.marks.includes('critical') ? CRITICAL : 0;
  const type: TokenType = thing.kind === 'machine' ? 'keyword' : thing.kind;
  return [type, (declares && thing.file === snapshot.path ? DECLARATION : 0) | critical];
}

function encode(snapshot: Snapshot, tokens: readonly Coloured[]): number[] {
  const data: number[] = [];
  let line = 0;
  let character = 0;
  for (const token of tokens) {
    for (const piece of lines(snapshot, token)) {
      const start = snapshot.positions.position(piece.start);
      const end = snapshot.positions.position(piece.end);
      data.push(
        start.line - line,
        start.line === line ? start.character - character : start.character,
        end.character - start.character,
        TOKEN_TYPES.indexOf(token.type),
        token.modifiers,
      );
      line = start.line;
      character = start.character;
    }
  }
  return data;
}

/** A token that runs over a line end, in pieces of one line. */
function lines(snapshot: Snapshot, token: Span): Span[] {
  if (!/[\r\n]/.test(snapshot.text.slice(token.start, token.end))) return [token];
  const out: Span[] = [];
  for (const match of snapshot.text.slice(token.start, token.end).matchAll(/[^\r\n]+/g))
    out.push({ start: token.start + match.index, end: token.start + match.index + match[0].length });
  return out;
}
