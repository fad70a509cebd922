// Where a cursor stands, as completion needs it: the context of its line, the code before it, the word being typed.
// It reads the text of the line itself, which is seldom whole while it is typed, and the tree for what is above it.
import {
  type EntryLine,
  type Line,
  type LineContext,
  SECTION_BY_WORD,
  type Span,
  type ThingKind,
  walkLines,
} from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';

export interface Cursor {
  readonly context: LineContext | 'rule' | 'text';
  /** The kind that entries declare here. */
  readonly declares: ThingKind | undefined;
  /** The entry a clause line stands under, the statement a clause line stands under. */
  readonly parent: Line | undefined;
  /** The code of the logical line before the word being typed. */
  readonly before: string;
  /** The word being typed, up to the cursor. */
  readonly word: string;
  /** What accepting an answer replaces; of a text in quotes, all of it with its quotes. */
  readonly replaces: Span;
  /** Where the word ends that the cursor stands in. */
  readonly wordEnd: number;
  /** The word of the section that the line stands in. */
  readonly section: string | undefined;
  readonly lineStart: number;
  /** Inside braces in text: what stands in them so far. */
  readonly reference: string | undefined;
}

export function cursorAt(snapshot: Snapshot, offset: number): Cursor | undefined {
  const { text } = snapshot;
  const lineStart = Math.max(text.lastIndexOf('\n', offset - 1), text.lastIndexOf('\r', offset - 1)) + 1;
  if (offset - lineStart > 2000) return undefined;
  const own = text.slice(lineStart, offset);
  if (/^\s*#(?:[\s#]|$)/.test(own)) return undefined;
  const open = /\{([^{}]*)$/.exec(own);
  const inProse = isProse(snapshot, lineStart, offset, own);
  const quote = inProse ? -1 : openQuote(own);
  const isQuoted = quote >= 0;
  const word = isQuoted ? own.slice(quote + 1) : (WORD_BEFORE.exec(own)?.[0] ?? '');
  const behind = text.slice(offset, offset + 200);
  const begin = isQuoted ? quote : own.length - word.length;
  // An editor writes the closing quote along with the opening one: both are replaced.
  const closing = isQuoted ? (QUOTE_BEHIND.exec(behind)?.[0].length ?? 0) : 0;
  const replaces = { start: lineStart + begin, end: offset + closing };
  const wordEnd = Math.max(
    replaces.end,
    offset + (isQuoted ? 0 : (WORD_BEHIND.exec(behind)?.[0].length ?? 0)),
  );
  const where = contextOf(snapshot, lineStart, /^[ \t]*/.exec(own)?.[0].length ?? 0);
  const base = { word, replaces, wordEnd, lineStart, ...where };
  if (inProse)
    return open
      ? { ...base, context: 'text', before: own.slice(0, begin), reference: open[1] ?? '' }
      : undefined;
  const started = continued(text, lineStart);
  const before = (started + own.slice(0, begin)).trimStart();
  if (started !== '')
    return {
      ...base,
      ...contextOf(
        snapshot,
        text.lastIndexOf('\n', lineStart - 2) + 1,
        /^[ \t]*/.exec(started)?.[0].length ?? 0,
      ),
      before,
      reference: undefined,
    };
  return { ...base, before, reference: undefined };
}

const WORD_BEFORE = /(?:[\p{L}\p{N}][\p{L}\p{N}./×’·-]*)?$/u;
const WORD_BEHIND = /^[\p{L}\p{N}./×’·-]*/u;
const QUOTE_BEHIND = /^[^"\r\n,:]*"/;

/** Where a text in quotes begins that the end of this code stands in; -1 when it does not. An inch mark opens none. */
function openQuote(code: string): number {
  let open = -1;
  for (let i = 0; i < code.length; i++)
    if (code[i] === '"' && (open >= 0 || !/[0-9]/.test(code[i - 1] ?? ''))) open = open >= 0 ? -1 : i;
  return open;
}

/** Code of the line above when its comma carries it on to this one. */
function continued(text: string, lineStart: number): string {
  if (lineStart === 0) return '';
  const above = text.slice(text.lastIndexOf('\n', lineStart - 2) + 1, lineStart).replace(/[\r\n]+$/, '');
  return /,\s*$/.test(above) && !/^\s*#/.test(above) && colonIn(above) < 0 ? `${above} ` : '';
}

function isProse(snapshot: Snapshot, lineStart: number, offset: number, own: string): boolean {
  if (colonIn(own) >= 0) return true;
  let inside = false;
  walkLines(snapshot.tree, (line) => {
    if (line.start > offset || line.end < lineStart) return false;
    if (
      line.prose?.below &&
      line.prose.start <= offset &&
      line.prose.end >= lineStart &&
      line.code.end < lineStart
    )
      inside = true;
    return undefined;
  });
  return inside;
}

/** The colon that ends the code: outside quotes, not between digits; -1 when there is none. */
function colonIn(line: string): number {
  let quoted = false;
  for (let i = 0; i < line.length; i++) {
    const c = line[i];
    if (c === '"' && (quoted || !/[0-9]/.test(line[i - 1] ?? ''))) quoted = !quoted;
    if (c === ':' && !quoted && !(/[0-9]/.test(line[i - 1] ?? '') && /[0-9]/.test(line[i + 1] ?? '')))
      return i;
  }
  return -1;
}

function contextOf(
  snapshot: Snapshot,
  lineStart: number,
  indent: number,
): Pick<Cursor, 'context' | 'declares' | 'parent' | 'section'> {
  const chain = linesAbove(snapshot, lineStart, indent);
  const parent = chain.find((l) => l.kind !== 'when') ?? chain[0];
  const section = chain.find((l) => l.kind === 'section');
  const declares = section ? SECTION_BY_WORD.get(section.word)?.declares : undefined;
  const context = ((): Cursor['context'] => {
    switch (parent?.kind) {
      case undefined:
        return 'file';
      case 'section':
        if (parent.word === 'prerequisites') return 'prerequisites';
        return declares ? 'declarations' : 'work';
      case 'operation':
        return 'operation';
      case 'entry':
        return declares === 'rule' ? 'rule' : 'entry';
      case 'clauses':
      case 'values':
        return declares === 'rule' ? 'rule' : 'entry';
      case 'rule':
        return 'rule';
      case 'statement':
        return 'statement';
      case 'step':
      case 'if':
      case 'otherwise':
      case 'repeat':
        return 'step';
      default:
        return 'statement';
    }
  })();
  return { context, declares, parent, section: section?.word };
}

/** The lines a line at this indent stands under, the nearest first. */
function linesAbove(snapshot: Snapshot, lineStart: number, indent: number): Line[] {
  const above: Line[] = [];
  walkLines(snapshot.tree, (line) => {
    if (line.start >= lineStart) return false;
    // A line belongs to the nearest shallower one above it; siblings that ended before are passed over by indent.
    while ((above.at(-1)?.indent ?? -1) >= line.indent) above.pop();
    above.push(line);
    return undefined;
  });
  while ((above.at(-1)?.indent ?? -1) >= indent) above.pop();
  return above.reverse();
}

/** The entry that a cursor's clause belongs to. */
export function entryOf(cursor: Cursor): EntryLine | undefined {
  return cursor.parent?.kind === 'entry' ? cursor.parent : undefined;
}
