// What each physical line of a file becomes. A group is one physical line, or the lines of code that commas carry over.
import { type PhysicalLine, readPhysicalLines, trimEnd } from '../syntax/physical.js';
import type { Line, Tree } from '../syntax/tree.js';
import { walkLines } from '../syntax/walk.js';
import type { Span } from '../text/span.js';
import type { Piece } from './clause-text.js';
import { linePieces } from './line-text.js';

export interface Group extends Span {
  /** The lines as they stand, line ends left out. */
  readonly lines: readonly Span[];
  /** The lines as they should be; none when the lines go. */
  readonly written: readonly string[];
}

/** The groups of a file in order; together they cover all its lines. */
export function groupsOf(tree: Tree): Group[] {
  const page = new Page(tree.text);
  walkLines(tree, (line) => {
    page.writeLine(line);
    return undefined;
  });
  for (const comment of tree.comments) page.writeComment(comment.line);
  page.writeBlanks();
  return page.groups();
}

/** Two columns a level; code that a comma carries over stands two levels in, clear of the block below. */
const STEP = 2;
const CARRIED = 4;

class Page {
  private readonly physical: readonly PhysicalLine[];
  private readonly written: (readonly string[] | undefined)[];
  /** New columns of text lines. */
  private readonly columns: (number | undefined)[];
  /** By the line it stood on: the column of a text that goes to a line of its own, below its code. */
  private readonly moved = new Map<number, number>();
  /** For lines of code that a comma carries over: the line on which the code starts. */
  private readonly carriedFrom: (number | undefined)[];
  /** The text lines nearest above and below each line. */
  private readonly above: (number | undefined)[];
  private readonly below: (number | undefined)[];
  private previous: Line | undefined;

  constructor(private readonly text: string) {
    this.physical = readPhysicalLines(text);
    this.written = new Array(this.physical.length);
    this.columns = new Array(this.physical.length);
    this.carriedFrom = new Array(this.physical.length);
    this.above = nearestText(this.physical, 1);
    this.below = nearestText(this.physical, -1);
  }

  writeLine(line: Line): void {
    const column = line.depth * STEP;
    if (line.broken || line.kind === 'unread' || this.hasGap(line)) this.shiftLine(line, column);
    else this.writeCode(line, column);
    this.partSections(line);
    this.previous = line;
  }

  /** A comment goes with the line it was level with, the one below it first. */
  writeComment(index: number): void {
    const line = this.physical[index];
    if (line === undefined) return;
    const next = this.below[index];
    const before = this.above[index];
    const isLevel = (other: number | undefined) =>
      other !== undefined && this.physical[other]?.indent === line.indent;
    const beside = isLevel(next) ? next : isLevel(before) ? before : (next ?? before);
    const column = beside === undefined ? undefined : this.columns[beside];
    // Above the comment there is now the text that stood behind the code.
    const moved = beside === undefined || beside === next ? undefined : this.moved.get(beside);
    this.set(index, moved ?? column ?? 0, line);
  }

  /** Blank lines part paragraphs and blocks: one is enough, none at the start of a block or either end of the file. */
  writeBlanks(): void {
    let isWanted = false;
    const last = this.physical.length - 1;
    const lastWritten = this.physical.findLastIndex(({ kind }) => kind !== 'blank');
    for (const [i, line] of this.physical.entries()) {
      if (line.kind !== 'blank') isWanted = true;
      else if (this.written[i] === undefined) {
        this.written[i] = i === last || (isWanted && i < lastWritten && !this.opensBlock(i)) ? [''] : [];
        isWanted = false;
      }
    }
    const end = this.physical[last];
    if (end !== undefined && end.kind !== 'blank') this.written[last] = [...(this.written[last] ?? []), ''];
  }

  groups(): Group[] {
    const groups: Group[] = [];
    for (let i = 0; i < this.physical.length; ) {
      const lines: Span[] = [];
      let next = i;
      do {
        const { start, end } = this.physical[next] ?? { start: 0, end: 0 };
        lines.push({ start, end });
        next += 1;
      } while (next < this.physical.length && this.carriedFrom[next] === i);
      const [first] = lines;
      const last = lines[lines.length - 1];
      const written = this.written[i] ?? lines.map(({ start, end }) => this.text.slice(start, end));
      if (first && last) groups.push({ start: first.start, end: last.end, lines, written });
      i = next;
    }
    return groups;
  }

  private writeCode(line: Line, column: number): void {
    const { firstLine, lastLine, prose } = line;
    for (let i = firstLine; i <= lastLine; i++) {
      this.columns[i] = column;
      if (i > firstLine) this.carriedFrom[i] = firstLine;
    }
    const code = this.layCode(linePieces(this.text, line), column);
    const codeEnd = this.physical[lastLine]?.end ?? 0;
    const inline =
      prose?.lines[0] !== undefined && prose.lines[0].start <= codeEnd ? prose.lines[0] : undefined;
    const below = (inline === undefined ? prose?.lines : prose?.lines.slice(1)) ?? [];
    const inlineText = inline === undefined ? '' : this.text.slice(inline.start, inline.end);
    // Text that begins with a hash would become a comment on a line of its own.
    const isBlock = below.length > 0 && !inlineText.startsWith('#');
    const proseColumn = column + STEP;
    if (prose !== undefined) {
      const last = code.length - 1;
      code[last] += inline === undefined || isBlock ? ':' : `: ${inlineText}`;
      if (inline !== undefined && isBlock) {
        code.push(' '.repeat(proseColumn) + inlineText);
        this.moved.set(lastLine, proseColumn);
      }
    }
    this.written[firstLine] = code;
    this.writeProse(below, proseColumn);
  }

  /** Text below its line keeps what it is indented beyond the block. */
  private writeProse(lines: readonly Span[], column: number): void {
    const placed = lines.map((at) => this.lineAt(at.start));
    const least = placed.reduce((min, i) => {
      const line = this.physical[i];
      return line === undefined || line.kind !== 'text' ? min : Math.min(min, line.indent);
    }, Number.POSITIVE_INFINITY);
    for (const i of placed) {
      const line = this.physical[i];
      if (line === undefined) continue;
      if (line.kind === 'text') this.set(i, column + line.indent - least, line);
      else this.written[i] = [''];
    }
  }

  /** Moves a line and its text with the block, its code as it stands. */
  private shiftLine(line: Line, column: number): void {
    const shift = column - (this.physical[line.firstLine]?.indent ?? 0);
    const move = (i: number, least: number) => {
      const physical = this.physical[i];
      if (physical?.kind === 'text') this.set(i, Math.max(least, physical.indent + shift), physical);
      else if (physical?.kind === 'blank') this.written[i] = [''];
    };
    for (let i = line.firstLine; i <= line.lastLine; i++)
      move(i, i === line.firstLine ? column : column + STEP);
    for (const at of line.prose?.lines ?? []) {
      const i = this.lineAt(at.start);
      if (i > line.lastLine) move(i, column + STEP);
    }
  }

  /** Pieces on lines; a line break that the writer put after a comma stays. */
  private layCode(pieces: readonly Piece[], column: number): string[] {
    const lines: string[] = [];
    let current = ' '.repeat(column);
    let isFirst = true;
    let row = 0;
    for (const { text, start, join } of pieces) {
      const at = this.lineAt(start);
      if (isFirst) {
        current += text;
        row = at;
      } else if (at > row) {
        lines.push(`${current},`);
        current = ' '.repeat(column + CARRIED) + text;
        row = at;
      } else current += join + text;
      isFirst = false;
    }
    lines.push(current);
    return lines;
  }

  /** A section that follows code directly is parted from it. */
  private partSections(line: Line): void {
    const i = line.firstLine;
    if (line.kind !== 'section' || this.previous === undefined || this.previous.kind === 'accept') return;
    if (this.physical[i - 1]?.kind === 'text') this.written[i] = ['', ...(this.written[i] ?? [])];
  }

  /** Whether comments or blank lines stand between the lines of the code. */
  private hasGap({ firstLine, lastLine }: Line): boolean {
    for (let i = firstLine + 1; i < lastLine; i++) if (this.physical[i]?.kind !== 'text') return true;
    return false;
  }

  /** Whether a blank line stands between a line and the block below it. */
  private opensBlock(index: number): boolean {
    const above = this.above[index];
    const below = this.below[index];
    if (above === undefined || below === undefined) return false;
    return (this.columns[below] ?? 0) > (this.columns[above] ?? 0);
  }

  private set(index: number, column: number, line: PhysicalLine): void {
    this.columns[index] = column;
    this.written[index] = [
      ' '.repeat(column) + this.text.slice(line.content, trimEnd(this.text, line.content, line.end)),
    ];
  }

  /** The physical line that holds an offset. */
  private lineAt(offset: number): number {
    let low = 0;
    let high = this.physical.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((this.physical[middle]?.start ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    return low;
  }
}

/** For each line the nearest line of text before it in the direction of the walk. */
function nearestText(lines: readonly PhysicalLine[], step: 1 | -1): (number | undefined)[] {
  const nearest: (number | undefined)[] = new Array(lines.length);
  let last: number | undefined;
  for (let i = step === 1 ? 0 : lines.length - 1; i >= 0 && i < lines.length; i += step) {
    nearest[i] = last;
    if (lines[i]?.kind === 'text') last = i;
  }
  return nearest;
}
