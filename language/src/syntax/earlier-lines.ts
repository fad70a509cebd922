// What the lines of a file said before it was edited: a line that did not change is not read again.
import { difference } from '../text/difference.js';
import type { Place } from './classify.js';
import type { CodeLine } from './code-line.js';
import type { FileParts } from './layout.js';
import { movedFields, movedName, movedToken } from './moved-lines.js';
import type { ReadLine } from './read-line.js';
import type { Comment, Line } from './tree.js';

interface Entry {
  readonly line: CodeLine;
  readonly place: Place;
  readonly read: ReadLine;
}

/** The head of a file that need not be read again. */
export interface Kept {
  readonly lines: readonly Line[];
  readonly comments: readonly Comment[];
  /** Where it ends, and how many physical lines it has. */
  readonly end: number;
  readonly lineCount: number;
  readonly steps: KeptSteps | undefined;
}

/** What the section behind the head begins with: its own line is read again, the steps or entries above the edit are not. */
export interface KeptSteps {
  readonly lines: readonly Line[];
  readonly comments: readonly Comment[];
  /** The number of the physical line they begin with, and of the one behind them. */
  readonly firstLine: number;
  readonly endLine: number;
  /** Called where they stand, before what follows is asked for. */
  readonly taken: () => void;
}

/**
 * The lines of one file as they were last read. Holds the text's length in memory once more, so it is for files that
 * are being written. What it gives is always what reading the line would give.
 */
export class EarlierLines {
  private text = '';
  private entries: readonly Entry[] = [];
  private next: Entry[] = [];
  /** Where the common head of the old and the new text ends, and where the common tail begins in the new one. */
  private head = 0;
  private tail = 0;
  private shift = 0;
  private cursor = 0;
  private lines: readonly Line[] = [];
  private comments: readonly Comment[] = [];
  /** Up to where the text had no finding. */
  private sound = 0;

  /**
   * Called before the lines of a text are asked for, which then come in its order. Gives the sections at its head that
   * the edit left as they were: they need not be read at all.
   */
  begin(text: string): Kept | undefined {
    const { start, oldEnd, newEnd } = difference(this.text, text);
    this.head = start;
    this.tail = newEnd;
    this.shift = newEnd - oldEnd;
    this.text = text;
    this.entries = this.next;
    const kept = this.keptSections();
    const end = kept?.end ?? 0;
    let cursor = 0;
    while ((this.entries[cursor]?.line.code.start ?? end) < end) cursor += 1;
    this.cursor = cursor;
    this.next = this.entries.slice(0, cursor);
    return kept;
  }

  /** Called with what was read. */
  end({ lines, comments, findings }: FileParts): void {
    this.lines = lines;
    this.comments = comments;
    this.sound = Math.min(...findings.slice(0, 1).map(({ span }) => span.start), Number.POSITIVE_INFINITY);
  }

  /** The sections in front of the one that the edit is in, or stands behind, and what that one begins with. */
  private keptSections(): Kept | undefined {
    const whole = this.whole(this.lines, ({ indent }) => indent === 0);
    const next = this.lines[whole];
    if (next === undefined) return undefined;
    return {
      lines: this.lines.slice(0, whole),
      comments: this.comments.filter(({ line }) => line < next.firstLine),
      end: next.start,
      lineCount: next.firstLine,
      steps: this.keptSteps(next),
    };
  }

  private keptSteps({ children }: Line): KeptSteps | undefined {
    const whole = this.whole(children, () => true);
    const [first, next] = [children[0], children[whole]];
    if (first === undefined || next === undefined || whole < 1) return undefined;
    const [firstLine, endLine] = [first.firstLine, next.firstLine];
    return {
      lines: children.slice(0, whole),
      comments: this.comments.filter(({ line }) => line >= firstLine && line < endLine),
      firstLine,
      endLine,
      taken: () => this.pass(first.start, next.start),
    };
  }

  /**
   * How many lines are whole with all below them: each is over where the next one begins. One with a finding, and what
   * follows it, is read again: findings may hang on what stands above.
   */
  private whole(lines: readonly Line[], fits: (line: Line) => boolean): number {
    const end = lines.findIndex(
      (line) => line.code.end >= this.head || line.start > this.sound || !fits(line),
    );
    return (end < 0 ? lines.length : end) - 1;
  }

  /** What was read of a stretch stays as it was. */
  private pass(start: number, end: number): void {
    for (let entry = this.entries[this.cursor]; entry !== undefined; entry = this.entries[this.cursor]) {
      const at = entry.line.code.start;
      if (at >= end) break;
      if (at >= start) this.next.push(entry);
      this.cursor += 1;
    }
  }

  /** The line as it was read before, at its place of now; or as `read` reads it. */
  line(line: CodeLine, place: Place, read: () => ReadLine): ReadLine {
    const found = this.find(line, place) ?? read();
    // Findings and what they offer hold places of their own: such lines are read again.
    if (found.findings.length === 0) this.next.push({ line, place, read: found });
    return found;
  }

  private find(line: CodeLine, place: Place): ReadLine | undefined {
    const { start, end } = line.code;
    const shift = end <= this.head ? 0 : start >= this.tail ? this.shift : undefined;
    if (shift === undefined) return undefined;
    let entry = this.entries[this.cursor];
    while (entry !== undefined && entry.line.code.start < start - shift) {
      this.cursor += 1;
      entry = this.entries[this.cursor];
    }
    if (entry === undefined || !isSame(entry.line, line, shift) || !isSamePlace(entry.place, place))
      return undefined;
    return moved(entry.read, shift);
  }
}

function isSame(before: CodeLine, now: CodeLine, shift: number): boolean {
  return (
    before.code.start + shift === now.code.start &&
    before.joined === now.joined &&
    (before.colon === undefined ? now.colon === undefined : before.colon + shift === now.colon) &&
    (before.remark === undefined) === (now.remark === undefined)
  );
}

function isSamePlace(before: Place, now: Place): boolean {
  if (before === now) return true;
  return (
    typeof before === 'object' &&
    typeof now === 'object' &&
    before.context === now.context &&
    before.kind === now.kind &&
    before.verb === now.verb &&
    before.doubtful === now.doubtful
  );
}

function moved(read: ReadLine, by: number): ReadLine | undefined {
  if (by === 0) return read;
  const fields = read.textInCode === undefined ? movedFields(read.fields, by) : undefined;
  if (fields === undefined) return undefined;
  return {
    ...read,
    fields,
    head: movedName(read.head, by),
    tokens: read.tokens.map((token) => movedToken(token, by)),
  };
}
