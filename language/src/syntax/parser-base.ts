// What all grammar rules share: the place of the line in the file, the one finding it may have, and the rules for
// names, raw text, quantities, items and guards. The grammar is total: whatever does not fit is taken by a rule for
// leftovers, so no rule ever fails and no line needs to be skipped.
import { EmbeddedActionsParser, type IToken, type TokenType } from 'chevrotain';
import { type DiagnosticDef, type Finding, type Fix, finding } from '../diagnostics/define.js';
import { operandMissing } from '../diagnostics/g204-operand-missing.js';
import { type Span, span } from '../text/span.js';
import { reportLeftover } from './leftover.js';
import { type AmountTokens, amountNode, amountsNode, numberNode, rangeNode, withUnit } from './quantities.js';
import {
  And,
  AnyToken,
  Back,
  Bound,
  Comma,
  Count,
  Dash,
  endOf,
  Hole,
  NoGuard,
  NumberToken,
  Or,
  PlusMinus,
  RawToken,
  Then,
  TOKEN_TYPES,
  To,
  TolerancePair,
  UnitToken,
  When,
  Word,
  wordOf,
} from './tokens.js';
import type { Guard, GuardTerm, Item, MeasureNode, Name, Raw, SpecNode } from './tree.js';

/** The line that is being read. */
export interface LineSource {
  readonly file: string;
  /** The line's code, and its place in the file. */
  readonly code: string;
  readonly base: number;
  /** Words that may open a clause here; the nearest is offered where a word does not fit. */
  readonly clauseWords: readonly string[];
}

const NO_SOURCE: LineSource = { file: '', code: '', base: 0, clauseWords: [] };

export abstract class ParserBase extends EmbeddedActionsParser {
  protected source: LineSource = NO_SOURCE;
  /** The first finding of the line: what follows it is often its echo. */
  protected firstFinding: Finding | undefined;

  protected constructor(skipValidations: boolean) {
    super([...TOKEN_TYPES], {
      skipValidations,
      maxLookahead: 2,
      recoveryEnabled: false,
      nodeLocationTracking: 'none',
    });
  }

  protected readonly rawText = this.RULE('rawText', (): Raw | undefined => {
    let first: IToken | undefined;
    let last: IToken | undefined;
    this.MANY(() => {
      const token = this.CONSUME(RawToken);
      first ??= token;
      last = token;
    });
    return this.ACTION(() => (first && last ? this.raw(first, last) : undefined));
  });

  protected readonly amount = this.RULE('amount', (): AmountTokens => {
    const number = this.OR([{ ALT: () => this.CONSUME(NumberToken) }, { ALT: () => this.CONSUME(Hole) }]);
    const rest: IToken[] = [];
    this.OPTION({
      GATE: () => this.isTolerance(),
      DEF: () => this.SUBRULE(this.tolerance, { ARGS: [rest] }),
    });
    this.OPTION2(() =>
      rest.push(this.OR2([{ ALT: () => this.CONSUME(UnitToken) }, { ALT: () => this.CONSUME(Word) }])),
    );
    this.OPTION3(() => rest.push(this.CONSUME2(UnitToken)));
    this.OPTION4({
      GATE: () => this.isTolerance(),
      DEF: () => this.SUBRULE2(this.tolerance, { ARGS: [rest] }),
    });
    return { number, rest };
  });

  private readonly tolerance = this.RULE('tolerance', (rest: IToken[]): void => {
    const take = (token: IToken) => this.ACTION(() => rest.push(token));
    this.OR([
      { ALT: () => take(this.CONSUME(TolerancePair)) },
      {
        ALT: () => {
          take(this.CONSUME(PlusMinus));
          take(this.CONSUME(NumberToken));
        },
      },
    ]);
    this.OPTION(() => take(this.CONSUME(UnitToken)));
  });

  /** A quantity; after a bound it may be missing, which is reported. */
  protected readonly measure = this.RULE('measure', (): MeasureNode | undefined =>
    this.OR([
      {
        ALT: () => {
          const bound = this.CONSUME(Bound);
          return this.SUBRULE(this.afterBound, { ARGS: [bound] });
        },
      },
      { ALT: () => this.SUBRULE(this.unbounded, { ARGS: [undefined] }) },
    ]),
  );

  protected readonly afterBound = this.RULE('afterBound', (bound: IToken): MeasureNode | undefined => {
    let measure: MeasureNode | undefined;
    this.OPTION(() => {
      measure = this.SUBRULE(this.unbounded, { ARGS: [bound] });
    });
    return this.ACTION(() => {
      if (measure === undefined) this.missing(bound, 'a quantity');
      return measure;
    });
  });

  private readonly unbounded = this.RULE('unbounded', (bound: IToken | undefined): MeasureNode => {
    const amounts: AmountTokens[] = [];
    let high: AmountTokens | undefined;
    amounts.push(this.SUBRULE(this.amount));
    this.OR([
      {
        GATE: () => this.isRange(),
        ALT: () => {
          this.OR2([{ ALT: () => this.CONSUME(To) }, { ALT: () => this.CONSUME(Dash) }]);
          high = this.SUBRULE2(this.amount);
        },
      },
      { ALT: () => this.MANY(() => amounts.push(this.SUBRULE3(this.amount))) },
    ]);
    return this.ACTION(() => this.measureOf(bound, amounts, high));
  });

  protected readonly spec = this.RULE('spec', (): SpecNode | undefined => {
    const stages: SpecNode['stages'][number][] = [];
    this.SUBRULE(this.stage, { ARGS: [stages] });
    this.MANY(() => {
      const then = this.CONSUME(Then);
      this.OPTION(() => this.SUBRULE2(this.stage, { ARGS: [stages] }));
      this.ACTION(() => {
        if (this.LA(0) === then) this.missing(then, 'a quantity');
      });
    });
    return this.ACTION(() => specOf(stages));
  });

  private readonly stage = this.RULE('stage', (stages: SpecNode['stages'][number][]): void => {
    this.OR([
      {
        ALT: () => {
          const back = this.CONSUME(Back);
          let measure: MeasureNode | undefined;
          this.OPTION(() => {
            measure = this.SUBRULE(this.measure);
          });
          this.ACTION(() => {
            if (measure !== undefined) stages.push({ back: true, measure });
            else if (this.LA(0) === back) this.missing(back, 'a quantity');
          });
        },
      },
      {
        ALT: () => {
          const measure = this.SUBRULE2(this.measure);
          this.ACTION(() => {
            if (measure !== undefined) stages.push({ back: false, measure });
          });
        },
      },
    ]);
  });

  /** Names with counts and alternatives, parted by commas; a second name is a value where the caller allows it. */
  protected readonly items = this.RULE('items', (takesValue: boolean): Item[] => {
    const items: Item[] = [];
    items.push(this.SUBRULE(this.item, { ARGS: [takesValue] }));
    this.MANY({
      GATE: () => this.listGoesOn(),
      DEF: () => {
        this.CONSUME(Comma);
        items.push(this.SUBRULE2(this.item, { ARGS: [takesValue] }));
      },
    });
    return items;
  });

  private readonly item = this.RULE('item', (takesValue: boolean): Item => {
    let count: IToken | undefined;
    let name: IToken | undefined;
    let value: IToken | undefined;
    const alternatives: Name[] = [];
    this.OR([
      {
        ALT: () => {
          count = this.CONSUME(Count);
          this.OPTION(() => {
            name = this.CONSUME(Word);
          });
        },
      },
      {
        ALT: () => {
          name = this.CONSUME2(Word);
        },
      },
    ]);
    this.MANY(() => {
      const or = this.CONSUME(Or);
      this.OPTION2(() => {
        const token = this.CONSUME3(Word);
        this.ACTION(() => alternatives.push(this.name(token)));
      });
      this.ACTION(() => {
        if (this.LA(0) === or) this.missing(or, 'a name');
      });
    });
    this.OPTION3({
      GATE: () => takesValue,
      DEF: () => {
        value = this.CONSUME4(Word);
      },
    });
    return this.ACTION(() => {
      const first = count ?? name;
      if (name === undefined && count !== undefined) this.missing(count, 'a name');
      const last = value ?? this.LA(0);
      return {
        start: this.source.base + (first?.startOffset ?? 0),
        end: this.source.base + endOf(last),
        count: count && numberNode(count, this.source.base),
        name: name ? this.name(name) : { text: '', ...this.after(last) },
        value: value && this.name(value),
        alternatives,
      };
    });
  });

  /** Words parted by commas: marks, positions, values. */
  protected readonly words = this.RULE('words', (): Name[] => {
    const words: Name[] = [];
    const first = this.CONSUME(Word);
    this.ACTION(() => words.push(this.name(first)));
    this.MANY({
      GATE: () => this.listGoesOn(),
      DEF: () => {
        this.CONSUME(Comma);
        const token = this.CONSUME2(Word);
        this.ACTION(() => words.push(this.name(token)));
      },
    });
    return words;
  });

  protected readonly guard = this.RULE('guard', (): Guard => {
    const word = this.CONSUME(When);
    return this.SUBRULE(this.guardTerms, { ARGS: [word] });
  });

  /** `axle heavy and year 2021 to 2025`, after its `when`. */
  protected readonly guardTerms = this.RULE('guardTerms', (when: IToken | undefined): Guard => {
    const terms: GuardTerm[] = [];
    this.OPTION(() => {
      terms.push(this.SUBRULE(this.guardTerm));
      this.MANY(() => {
        const and = this.CONSUME(And);
        this.OPTION2(() => terms.push(this.SUBRULE2(this.guardTerm)));
        this.ACTION(() => {
          if (this.LA(0) === and) this.missing(and, 'an option and its value');
        });
      });
    });
    return this.ACTION(() => {
      const first = when ? this.source.base + when.startOffset : (terms[0]?.start ?? this.source.base);
      if (terms.length === 0 && when) this.missing(when, 'an option and its value');
      return {
        start: first,
        end: this.source.base + endOf(this.LA(0)),
        only: when !== undefined && wordOf(when) === 'only when',
        terms,
      };
    });
  });

  private readonly guardTerm = this.RULE('guardTerm', (): GuardTerm => {
    const option = this.CONSUME(Word);
    const values: Name[] = [];
    let years: MeasureNode | undefined;
    this.OPTION(() =>
      this.OR([
        {
          ALT: () => {
            const value = this.CONSUME2(Word);
            this.ACTION(() => values.push(this.name(value)));
            this.MANY(() => {
              const or = this.CONSUME(Or);
              this.OPTION2(() => {
                const other = this.CONSUME3(Word);
                this.ACTION(() => values.push(this.name(other)));
              });
              this.ACTION(() => {
                if (this.LA(0) === or) this.missing(or, 'a value');
              });
            });
          },
        },
        {
          ALT: () => {
            years = this.SUBRULE(this.measure);
          },
        },
      ]),
    );
    return this.ACTION(() => {
      if (this.LA(0) === option) this.missing(option, 'a value');
      const base = this.source.base;
      return {
        start: base + option.startOffset,
        end: base + endOf(this.LA(0)),
        option: this.name(option),
        values,
        years: yearsOf(years),
      };
    });
  });

  /** What is left on a line whose form is complete: commas and one guard where it may have one. */
  protected readonly guardTail = this.RULE('guardTail', (): Guard | undefined => {
    let guard: Guard | undefined;
    this.MANY(() =>
      this.OR([
        { ALT: () => this.CONSUME(Comma) },
        {
          ALT: () => {
            const next = this.SUBRULE(this.guard);
            this.ACTION(() => {
              if (guard === undefined) guard = next;
              else this.leftover(this.LA(0));
            });
          },
        },
        {
          ALT: () => {
            const token = this.CONSUME(NoGuard);
            this.ACTION(() => this.leftover(token));
          },
        },
      ]),
    );
    return guard;
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

  /** Reports a finding unless the line has one. */
  protected report<Data>(def: DiagnosticDef<Data>, at: Span, data: Data, fixes: readonly Fix[] = []): void {
    this.firstFinding ??= finding(def, { file: this.source.file, span: at, fixes }, data);
  }

  protected missing(after: IToken, expected: string): void {
    this.report(operandMissing, this.place(after), {
      word: after.tokenType === Comma ? ',' : wordOf(after),
      expected,
    });
  }

  protected leftover(token: IToken): void {
    this.firstFinding ??= reportLeftover(token, this.LA(-1), this.source);
  }

  /** A comma goes on with the list before it only while a name or count follows. */
  protected listGoesOn(): boolean {
    const next: TokenType = this.LA(2).tokenType;
    return next === Word || next === Count;
  }

  private isTolerance(): boolean {
    return this.LA(1).tokenType === TolerancePair || this.LA(2).tokenType === NumberToken;
  }

  private isRange(): boolean {
    const after = this.LA(2).tokenType;
    return after === NumberToken || after === Hole;
  }

  private measureOf(
    bound: IToken | undefined,
    tokens: readonly AmountTokens[],
    high: AmountTokens | undefined,
  ): MeasureNode {
    const base = this.source.base;
    const amounts = tokens.map((amount) => amountNode(amount, base));
    const start = bound === undefined ? (amounts[0]?.start ?? base) : base + bound.startOffset;
    const place = span(start, base + endOf(this.LA(0)));
    const [low] = amounts;
    if (high !== undefined && low !== undefined) return rangeNode(low, amountNode(high, base), place);
    const side = bound === undefined ? undefined : wordOf(bound) === 'at least' ? 'least' : 'most';
    return amountsNode(amounts, side, place);
  }
}

/** Stages with the last unit given to those before it that have none. */
function specOf(stages: readonly SpecNode['stages'][number][]): SpecNode | undefined {
  const [first] = stages;
  const last = stages[stages.length - 1];
  if (first === undefined || last === undefined) return undefined;
  const unit = last.measure.measure?.unit;
  return {
    start: first.measure.start,
    end: last.measure.end,
    stages:
      unit === undefined || stages.length === 1
        ? stages
        : stages.map(({ back, measure }) => ({ back, measure: withUnit(measure, unit) })),
  };
}

/** Model years of a guard, open ends as infinities. */
function yearsOf(measure: MeasureNode | undefined): GuardTerm['years'] {
  const [low, high] = (measure?.amounts ?? []).map(({ number }) =>
    number.value === undefined ? undefined : number.value.valueOf(),
  );
  if (measure === undefined || low === undefined) return undefined;
  if (measure.bound === 'least') return { from: low, to: Number.POSITIVE_INFINITY };
  if (measure.bound === 'most') return { from: Number.NEGATIVE_INFINITY, to: low };
  return { from: low, to: high ?? low };
}
