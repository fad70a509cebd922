// The lines of a text as they stand: where each starts, how deep, whether it is blank, a comment or text; and where
// the code of a line ends.
import { COLON, HASH, isDigit, QUOTE } from './characters.js';

export interface PhysicalLine {
  /** Offset of the line's first character, and of its line end. */
  readonly start: number;
  readonly end: number;
  /** Offset of the first character behind the indent. */
  readonly content: number;
  /** Columns of indent, a tab counting to the next multiple of four. */
  readonly indent: number;
  readonly hasTab: boolean;
  readonly kind: 'blank' | 'comment' | 'text';
}

/**
 * Splits a text at LF, CRLF and lone CR, from the start of a line on; a mark at the text's start that names its encoding
 * belongs to no line.
 */
export function readPhysicalLines(text: string, from = 0): PhysicalLine[] {
  const lines: PhysicalLine[] = [];
  let start = from === 0 && text.charCodeAt(0) === 0xfeff ? 1 : from;
  for (;;) {
    let indent = 0;
    let hasTab = false;
    let at = start;
    for (; at < text.length; at++) {
      const code = text.charCodeAt(at);
      if (code === SPACE) indent += 1;
      else if (code === TAB) {
        indent += 4 - (indent % 4);
        hasTab = true;
      } else break;
    }
    const content = at;
    let isBlank = true;
    for (; at < text.length; at++) {
      const code = text.charCodeAt(at);
      if (code === LF || code === CR) break;
      if (isBlank && code !== SPACE && code !== TAB) isBlank = false;
    }
    const kind = isBlank ? 'blank' : isComment(text, content) ? 'comment' : 'text';
    lines.push({ start, end: at, content, indent, hasTab, kind });
    if (at >= text.length) return lines;
    start = at + (text.charCodeAt(at) === CR && text.charCodeAt(at + 1) === LF ? 2 : 1);
  }
}

/** `#` followed by a blank, another `#` or nothing. `#10` is text. */
function isComment(text: string, at: number): boolean {
  if (text.charCodeAt(at) !== HASH) return false;
  const next = text.charCodeAt(at + 1);
  return Number.isNaN(next) || next === SPACE || next === TAB || next === HASH || next === LF || next === CR;
}

/**
 * The first colon outside quotes and not between two digits, or -1. A quote that is never closed hides no colon,
 * and a mark straight after a digit is an inch mark.
 */
export function colonIn(text: string, start: number, end: number): number {
  let isClosing = true;
  for (let i = start; i < end; i++) {
    const code = text.charCodeAt(i);
    if (code === QUOTE && isClosing && !(i > start && isDigit(text.charCodeAt(i - 1)))) {
      const close = text.indexOf('"', i + 1);
      if (close >= 0 && close < end) i = close;
      else isClosing = false;
    } else if (code === COLON && !(isDigit(text.charCodeAt(i - 1)) && isDigit(text.charCodeAt(i + 1)))) {
      return i;
    }
  }
  return -1;
}

/** The offset behind the last character that is no blank. */
export function trimEnd(text: string, start: number, end: number): number {
  let at = end;
  while (at > start && (text.charCodeAt(at - 1) === SPACE || text.charCodeAt(at - 1) === TAB)) at -= 1;
  return at;
}

/** The offset of the first character that is no blank. */
export function trimStart(text: string, start: number, end: number): number {
  let at = start;
  while (at < end && (text.charCodeAt(at) === SPACE || text.charCodeAt(at) === TAB)) at += 1;
  return at;
}

const SPACE = 0x20;
const TAB = 0x09;
const LF = 0x0a;
const CR = 0x0d;
