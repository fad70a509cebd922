// What all grammar rules share: the place of the line in the file, the one finding it may have, and the rules for raw
// text and leftovers. The grammar is total: whatever does not fit is taken by a rule for leftovers, so no rule ever
// fails and no line needs to be skipped. One token of lookahead tells the alternatives apart; where a comma or sign
// needs the next token too, a gate asks for it.
import { EmbeddedActionsParser, type IToken } from 'chevrotain';
import { type DiagnosticDef, type Finding, type Fix, finding } from '../diagnostics/define.js';
import { operandMissing } from '../diagnostics/g204-operand-missing.js';
import { type Span, span } from '../text/span.js';
import { isOpenString, reportLeftover } from './leftover.js';
import type { LineSource } from './line-source.js';
import { LazyLookahead } from './lookahead.js';
import { SIZE_AHEAD } from './spoken.js';
import { AnyToken, Comma, endOf, RawToken, StringToken, TOKEN_TYPES, wordOf } from './tokens.js';
import type { Name, Raw } from './tree.js';

const NO_SOURCE: LineSource = { file: '', code: '', base: 0, clauseWords: [] };

export abstract class ParserBase extends EmbeddedActionsParser {
  protected source: LineSource = NO_SOURCE;
  /** The first finding of the line: what follows it is often its echo. */
  protected firstFinding: Finding | undefined;

  protected constructor(skipValidations: boolean) {
    super([...TOKEN_TYPES], {
      skipValidations,
      maxLookahead: 1,
      lookaheadStrategy: new LazyLookahead({ maxLookahead: 1 }),
      recoveryEnabled: false,
      nodeLocationTracking: 'none',
    });
  }

  protected readonly rawText = this.RULE('rawText', (): Raw | undefined => {
    let first: IToken | undefined;
    let last: IToken | undefined;
    this.MANY(() => {
      const token = this.CONSUME(RawToken);
      this.ACTION(() => {
        if (isOpenString(token) || first?.tokenType === StringToken) this.leftover(token);
      });
      first ??= token;
      last = token;
    });
    return this.ACTION(() => (first && last ? this.raw(first, last) : undefined));
  });

  /** What is left on a line that takes no more. */
  protected readonly rest = this.RULE('rest', (): void => {
    this.MANY(() => {
      const token = this.CONSUME(AnyToken);
      this.ACTION(() => this.leftover(token));
    });
  });

  protected name(token: IToken): Name {
    return {
      text: token.image,
      start: this.source.base + token.startOffset,
      end: this.source.base + endOf(token),
    };
  }

  protected place(token: IToken): Span {
    return span(this.source.base + token.startOffset, this.source.base + endOf(token));
  }

  /** The source text of a place in the line. */
  protected written({ start, end }: Span): string {
    return this.source.code.slice(start - this.source.base, end - this.source.base);
  }

  /** The empty place behind a token. */
  protected after(token: IToken): Span {
    const end = this.source.base + endOf(token);
    return span(end, end);
  }

  protected raw(first: IToken, last: IToken): Raw {
    const text = this.source.code.slice(first.startOffset, endOf(last));
    const start = this.source.base + first.startOffset;
    const quoted = first === last && text.startsWith('"');
    const inner = quoted ? text.slice(1, text.length > 1 && text.endsWith('"') ? -1 : undefined) : text;
    return { text: inner, start, end: start + text.length, hole: text === '?', quoted };
  }

  /** Raw text drawn out to a later token. */
  protected rawOver(raw: Raw, last: IToken): Raw {
    const { start } = raw;
    const end = this.source.base + endOf(last);
    return { text: this.written({ start, end }), start, end, hole: false, quoted: false };
  }

  /** Reports a finding unless the line has one. */
  protected report<Data>(def: DiagnosticDef<Data>, at: Span, data: Data, fixes: readonly Fix[] = []): void {
    this.firstFinding ??= finding(def, { file: this.source.file, span: at, fixes }, data);
  }

  protected missing(after: IToken, expected: string): void {
    const word = after.tokenType === Comma ? ',' : wordOf(after);
    const at = this.place(after);
    // `9/16 hex`, `22 mm at least`: the size stands in front of its word.
    const sizeAhead = SIZED.has(word) ? SIZE_AHEAD : BOUNDS.has(word) ? FIGURE_AHEAD : undefined;
    const size = sizeAhead?.exec(this.source.code.slice(0, after.startOffset)) ?? null;
    if (!size) {
      this.report(operandMissing, at, { word, expected });
      return;
    }
    const meant = `${word} ${size[0].trim()}`;
    const place = { start: this.source.base + size.index, end: at.end };
    const edits = [{ file: this.source.file, span: place, text: meant }];
    this.report(operandMissing, at, { word, expected, meant }, [{ title: `Write \`${meant}\``, edits }]);
  }

  protected leftover(token: IToken): void {
    this.firstFinding ??= reportLeftover(token, this.LA(-1), this.source);
  }
}

const SIZED: ReadonlySet<string> = new Set(['hex', 'square', 'twelve-point']);
const BOUNDS: ReadonlySet<string> = new Set(['at least', 'at most']);
const FIGURE_AHEAD = /(?<=^|, *)[.\d][^,:]*?(?= *$)/;
