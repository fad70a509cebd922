// Grammar of quantities: amounts with units and tolerances, ranges, bounds, stages.
import type { IToken } from 'chevrotain';
import { span } from '../text/span.js';
import { ParserBase } from './parser-base.js';
import {
  type AmountTokens,
  amountNode,
  amountsNode,
  compoundNodes,
  foldedNode,
  rangeNode,
} from './quantities.js';
import {
  Back,
  Bound,
  Dash,
  endOf,
  Hole,
  NumberToken,
  PlusMinus,
  Then,
  To,
  TolerancePair,
  UnitToken,
  Word,
  wordOf,
} from './tokens.js';
import type { AmountNode, MeasureNode, SpecNode } from './tree.js';

export abstract class QuantityRules extends ParserBase {
  private readonly numberForms = [
    { ALT: () => this.CONSUME(NumberToken) },
    { ALT: () => this.CONSUME(Hole) },
  ];
  private readonly unitForms = [{ ALT: () => this.CONSUME(UnitToken) }, { ALT: () => this.CONSUME(Word) }];
  private readonly rangeForms = [{ ALT: () => this.CONSUME(To) }, { ALT: () => this.CONSUME(Dash) }];

  protected readonly amount = this.RULE('amount', (): AmountTokens => {
    const number = this.OR(this.numberForms);
    const rest: IToken[] = [];
    this.OPTION({
      GATE: () => this.isTolerance(),
      DEF: () => this.SUBRULE(this.tolerance, { ARGS: [rest] }),
    });
    this.OPTION2(() => rest.push(this.OR2(this.unitForms)));
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
    this.OR(this.measureForms),
  );

  private readonly measureForms = [
    {
      ALT: () => {
        const bound = this.CONSUME(Bound);
        return this.SUBRULE(this.afterBound, { ARGS: [bound] });
      },
    },
    { ALT: () => this.SUBRULE(this.unbounded, { ARGS: [undefined] }) },
  ];

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
    const high: AmountTokens[] = [];
    amounts.push(this.SUBRULE(this.amount));
    this.MANY(() => amounts.push(this.SUBRULE2(this.amount)));
    this.OPTION({
      GATE: () => this.isRange(),
      DEF: () => {
        this.OR(this.rangeForms);
        high.push(this.SUBRULE3(this.amount));
        this.MANY2(() => high.push(this.SUBRULE4(this.amount)));
      },
    });
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
    above: readonly AmountTokens[],
  ): MeasureNode {
    const base = this.source.base;
    const nodes = (each: readonly AmountTokens[]): readonly AmountNode[] =>
      compoundNodes(each.map((amount) => amountNode(amount, base)));
    const amounts = nodes(tokens);
    const start = bound === undefined ? (amounts[0]?.start ?? base) : base + bound.startOffset;
    const place = span(start, base + endOf(this.LA(0)));
    const [low, high] = [foldedNode(amounts), foldedNode(nodes(above))];
    if (above.length > 0 && low && high) return rangeNode(low, high, place);
    const side = bound === undefined ? undefined : wordOf(bound) === 'at least' ? 'least' : 'most';
    return amountsNode(amounts, side, place);
  }
}

function specOf(stages: readonly SpecNode['stages'][number][]): SpecNode | undefined {
  const [first] = stages;
  const last = stages[stages.length - 1];
  return first && last && { start: first.measure.start, end: last.measure.end, stages };
}
