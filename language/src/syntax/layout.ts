// Layout: from physical lines to the tree. Indent, colon and comma decide here what belongs together.

import { type Finding, finding } from '../diagnostics/define.js';
import { textMissing } from '../diagnostics/g107-text-missing.js';
import { colonBeforeBlock } from '../diagnostics/g108-colon-before-block.js';
import { trailingComma } from '../diagnostics/g109-trailing-comma.js';
import { type Span, span } from '../text/span.js';
import { COMMA_CODE } from './characters.js';
import { classify, type Place } from './classify.js';
import type { CodeLine } from './code-line.js';
import type { EarlierLines, KeptSteps } from './earlier-lines.js';
import { levelFinding, openingFindings, tabFindings } from './layout-findings.js';
import { aboveOf, chooseLevel, type Level } from './levels.js';
import { lex } from './lexer.js';
import type { GrowingLine, OpenLine } from './open-line.js';
import { colonIn, type PhysicalLine, readPhysicalLines, trimEnd, trimStart } from './physical.js';
import { readProse } from './prose.js';
import { straightQuotes } from './quotes.js';
import { type ReadLine, readLine } from './read-line.js';
import type { Comment, Line } from './tree.js';

export interface FileParts {
  readonly lines: readonly Line[];
  readonly comments: readonly Comment[];
  readonly findings: Finding[];
}

/** `earlier` holds the lines of the same file before it was edited. */
export function readFile(text: string, file: string, earlier?: EarlierLines): FileParts {
  return new Layout(text, file, earlier).read();
}

/** Code of one or more physical lines, still growing while it ends in a comma. */
interface Pending {
  readonly first: number;
  readonly level: Level;
  readonly start: number;
  last: number;
  end: number;
  colon: number | undefined;
  /** Comments between its lines, which are no code. */
  readonly gaps: Span[];
}

/** Holds the open lines while a file is read from top to bottom. */
class Layout {
  /** The lines that are read, and the number of the first. */
  private readonly physical: readonly PhysicalLine[];
  private readonly first: number;
  private readonly root: OpenLine;
  private readonly open: OpenLine[];
  private readonly lines: Line[] = [];
  private readonly comments: Comment[] = [];
  private readonly findings: Finding[] = [];
  private readonly tabs: PhysicalLine[] = [];
  private readonly steps: KeptSteps | undefined;
  private pending: Pending | undefined;

  constructor(
    private readonly text: string,
    private readonly file: string,
    private readonly earlier: EarlierLines | undefined,
  ) {
    const kept = earlier?.begin(text);
    this.physical = readPhysicalLines(text, kept?.end);
    this.first = kept?.lineCount ?? 0;
    this.steps = kept?.steps;
    if (kept !== undefined) {
      for (const line of kept.lines) this.lines.push(line);
      for (const comment of kept.comments) this.comments.push(comment);
    }
    this.root = {
      node: undefined,
      indent: -1,
      childIndent: 0,
      place: { context: 'file', kind: undefined },
      takesText: false,
      remarkAt: undefined,
      text: [],
      textIndent: 0,
      openColon: undefined,
      below: false,
    };
    this.open = [this.root];
  }

  read(): FileParts {
    for (let i = 0; i < this.physical.length; i++) {
      if (this.first + i === this.steps?.firstLine) i = this.takeSteps(this.steps);
      const line = this.physical[i];
      if (line === undefined) break;
      if (line.kind === 'comment') this.comment(i, line);
      else if (line.kind === 'blank') this.blank(line);
      else this.textLine(i, line);
    }
    this.finishPending();
    this.close(0);
    for (const each of [
      ...openingFindings(this.file, this.lines),
      ...tabFindings(this.text, this.file, this.tabs),
    ])
      this.findings.push(each);
    this.findings.sort((a, b) => a.span.start - b.span.start);
    const parts = { lines: this.lines, comments: this.comments, findings: this.findings };
    this.earlier?.end(parts);
    return parts;
  }

  /** The steps that need not be read, below the section that was. Gives the index of the line behind them. */
  private takeSteps({ lines, comments, endLine, taken }: KeptSteps): number {
    this.finishPending();
    taken();
    for (const comment of comments) this.comments.push(comment);
    const section = this.open[this.open.length - 1];
    for (const line of lines) section?.node?.children.push(line);
    if (section?.node) section.node.end = Math.max(section.node.end, lines[lines.length - 1]?.end ?? 0);
    if (section) section.childIndent ??= lines[0]?.indent;
    return endLine - this.first;
  }

  private comment(index: number, line: PhysicalLine): void {
    const at = span(line.content, trimEnd(this.text, line.content, line.end));
    this.comments.push({ ...at, line: this.first + index, indent: line.indent });
    this.pending?.gaps.push(at);
  }

  private blank(line: PhysicalLine): void {
    const top = this.open[this.open.length - 1];
    if (this.pending === undefined && top?.takesText === true && top.text.length > 0)
      top.text.push(span(line.end, line.end));
  }

  private textLine(index: number, line: PhysicalLine): void {
    if (line.hasTab) this.tabs.push(line);
    const { pending } = this;
    if (pending !== undefined) {
      if (line.indent > pending.level.indent) {
        this.extend(pending, index, line);
        return;
      }
      this.finishPending();
    }
    const top = this.open[this.open.length - 1];
    if (top?.takesText === true && line.indent > top.indent && !this.isCodeBelowText(top, line)) {
      top.text.push(span(line.content, trimEnd(this.text, line.content, line.end)));
      top.below = true;
      top.textIndent = Math.max(top.textIndent, line.indent);
      return;
    }
    const level = chooseLevel(this.open, line.indent, (place) => this.fits(line, place));
    if (level.problem !== undefined) this.findings.push(levelFinding(this.file, line, level));
    this.close(level.keep);
    this.extend(
      {
        first: index,
        level,
        start: line.content,
        last: index,
        end: line.content,
        colon: undefined,
        gaps: [],
      },
      index,
      line,
    );
  }

  /** One space too many puts a line of code under the text above it: its first word tells. */
  private isCodeBelowText(top: OpenLine, line: PhysicalLine): boolean {
    const parent = this.open[this.open.length - 2];
    return (
      line.indent === top.indent + 1 &&
      top.textIndent > line.indent &&
      parent !== undefined &&
      this.fits(line, parent.place)
    );
  }

  /** Adds a physical line's code; code that ends in a comma waits for more. */
  private extend(pending: Pending, index: number, line: PhysicalLine): void {
    const colon = colonIn(this.text, line.content, line.end);
    pending.last = index;
    pending.end = trimEnd(this.text, line.content, colon < 0 ? line.end : colon);
    pending.colon = colon < 0 ? undefined : colon;
    this.pending = pending;
    if (colon >= 0 || this.text.charCodeAt(pending.end - 1) !== COMMA_CODE) this.finishPending();
  }

  private finishPending(): void {
    const { pending } = this;
    if (pending === undefined) return;
    this.pending = undefined;
    const last = this.physical[pending.last];
    const { colon } = pending;
    const code = span(pending.start, pending.end);
    const textAt =
      colon === undefined || last === undefined
        ? undefined
        : span(trimStart(this.text, colon + 1, last.end), trimEnd(this.text, colon + 1, last.end));
    const remark = textAt !== undefined && textAt.end > textAt.start ? textAt : undefined;
    const source: CodeLine = {
      file: this.file,
      text: this.text,
      code,
      joined: this.joined(pending),
      colon,
      remark,
    };
    const parent = this.open[this.open.length - 1] ?? this.root;
    const above = aboveOf(parent);
    const fresh = (): ReadLine => readLine(source, above);
    const read = this.earlier === undefined ? fresh() : this.earlier.line(source, above.place, fresh);
    this.add(pending, source, read, parent);
  }

  private add(pending: Pending, source: CodeLine, read: ReadLine, parent: OpenLine): void {
    const { code, colon, remark } = source;
    const findings = [...read.findings];
    if (findings.length === 0 && this.text.charCodeAt(code.end - 1) === COMMA_CODE) {
      const at = span(code.end - 1, code.end);
      findings.push(
        finding(
          trailingComma,
          { file: this.file, span: at, fixes: [this.fix('Take the comma out', at, '')] },
          {},
        ),
      );
    }
    if (colon !== undefined && remark === undefined && read.class === 'block') {
      const at = span(colon, colon + 1);
      findings.push(
        finding(
          colonBeforeBlock,
          { file: this.file, span: at, fixes: [this.fix('Take the colon out', at, '')] },
          { head: read.head.text },
        ),
      );
    }
    const endsInColon = colon !== undefined && remark === undefined;
    const isText = read.class === 'prose' || (read.class === 'plain' && endsInColon);
    const end = remark?.end ?? (colon === undefined ? code.end : colon + 1);
    const own = {
      start: code.start,
      end,
      firstLine: this.first + pending.first,
      lastLine: this.first + pending.last,
      indent: this.physical[pending.first]?.indent ?? 0,
      depth: parent.node === undefined ? 0 : parent.node.depth + 1,
      code:
        read.textInCode === undefined
          ? code
          : span(code.start, trimEnd(this.text, code.start, read.textInCode.start)),
      colon,
      tokens:
        read.textInCode === undefined
          ? read.tokens
          : read.tokens.filter((token) => token.end <= (read.textInCode?.start ?? 0)),
      head: read.head,
      prose: undefined,
      children: [],
      broken: false,
    };
    // Fields come in some thirty shapes: assigning them is faster than spreading.
    const node: Line = Object.assign(own, read.fields);
    const growing = node as GrowingLine;
    (parent.node?.children ?? this.lines).push(node);
    parent.childIndent ??= pending.level.indent;
    if (read.spoilsBlock) parent.place = 'unread';
    growing.broken = findings.length > 0;
    for (const each of findings) this.findings.push(each);
    const inline = read.textInCode ?? remark;
    this.open.push({
      node: growing,
      indent: pending.level.indent,
      childIndent: undefined,
      place: read.place,
      takesText: isText,
      remarkAt: remark !== undefined && read.class === 'plain' && colon !== undefined ? colon + 1 : undefined,
      text: inline === undefined ? [] : [inline],
      textIndent: 0,
      openColon: endsInColon && read.class !== 'block' ? colon : undefined,
      below: false,
    });
  }

  /** Closes open lines until `keep` are left. */
  private close(keep: number): void {
    const least = Math.max(keep, 1);
    while (this.open.length > least) {
      const line = this.open.pop();
      const node = line?.node;
      if (line === undefined || node === undefined) continue;
      this.closeText(line, node);
      const parent = this.open[this.open.length - 1]?.node;
      if (parent !== undefined && parent.end < node.end) parent.end = node.end;
    }
  }

  private closeText(line: OpenLine, node: GrowingLine): void {
    const { text } = line;
    while (text.length > 0 && isEmpty(text[text.length - 1])) text.pop();
    if (text.length > 0) {
      const { prose, findings } = readProse(this.text, this.file, text, line.below);
      node.prose = prose;
      if (prose.end > node.end) node.end = prose.end;
      for (const each of findings) this.findings.push(each);
    } else if (line.openColon !== undefined && !node.broken && line.place !== 'unread') {
      node.broken = true;
      const at = span(line.openColon, line.openColon + 1);
      const isOptional = node.kind !== 'text' && node.kind !== 'message' && node.kind !== 'accept';
      const fixes = isOptional ? [this.fix('Take the colon out', at, '')] : [];
      this.findings.push(
        finding(textMissing, { file: this.file, span: node.head, fixes }, { head: node.head.text }),
      );
    }
  }

  /** The code with comments between its lines blanked out and curled quotes straight, so that every offset stays. */
  private joined({ start, end, gaps }: Pending): string {
    let joined = '';
    let from = start;
    for (const gap of gaps) {
      if (gap.end > end) break;
      joined += this.text.slice(from, gap.start) + ' '.repeat(gap.end - gap.start);
      from = gap.end;
    }
    return straightQuotes(joined + this.text.slice(from, end));
  }

  /** Whether the first word of a line may open a line in a place. */
  private fits(line: PhysicalLine, place: Place): boolean {
    if (place === 'nothing' || place === 'unread') return false;
    const colon = colonIn(this.text, line.content, line.end);
    const end = Math.min(colon < 0 ? line.end : colon, line.content + LONGEST_HEAD);
    const tokens = lex(this.text.slice(line.content, end));
    return tokens.length > 0 && classify(tokens, place, colon >= 0 && tokens.length === 1).is !== 'unknown';
  }

  private fix(title: string, at: Span, text: string) {
    return { title, edits: [{ file: this.file, span: at, text }] };
  }
}

/** Enough of a line to tell its first words. */
const LONGEST_HEAD = 80;

function isEmpty(at: Span | undefined): boolean {
  return at !== undefined && at.start === at.end;
}
