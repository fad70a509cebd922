// Grammar of lists of names and of guards.
import type { IToken, TokenType } from 'chevrotain';
import { QuantityRules } from './parser-quantities.js';
import { numberNode } from './quantities.js';
import { And, Comma, Count, endOf, NoGuard, Or, When, Word, wordOf } from './tokens.js';
import type { Guard, GuardTerm, Item, MeasureNode, Name } from './tree.js';

export abstract class ListRules extends QuantityRules {
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

  /** Words joined by `or`. */
  protected readonly alternatives = this.RULE('alternatives', (): Name[] => {
    const words: Name[] = [];
    const first = this.CONSUME(Word);
    this.ACTION(() => words.push(this.name(first)));
    this.MANY(() => {
      const or = this.CONSUME(Or);
      this.OPTION(() => {
        const other = this.CONSUME2(Word);
        this.ACTION(() => words.push(this.name(other)));
      });
      this.ACTION(() => {
        if (this.LA(0) === or) this.missing(or, 'a name');
      });
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
    let values: Name[] = [];
    let years: MeasureNode | undefined;
    this.OPTION(() =>
      this.OR([
        {
          ALT: () => {
            values = this.SUBRULE(this.alternatives);
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

  /** A comma goes on with the list before it only while a name or count follows. */
  protected listGoesOn(): boolean {
    const next: TokenType = this.LA(2).tokenType;
    return next === Word || next === Count;
  }
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
