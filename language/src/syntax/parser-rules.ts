// Grammar of house rules: what they look for, when, and what they ask.
import type { IToken } from 'chevrotain';
import { unexpected } from '../diagnostics/g203-unexpected.js';
import { cover, type Span } from '../text/span.js';
import { SIGNALS, type Signal } from '../vocabulary/signals.js';
import { ClauseRules, targetOf } from './parser-clauses.js';
import {
  AnyWord,
  AtMostOnce,
  Comma,
  EventWord,
  It,
  Marked,
  NamesWord,
  Needs,
  NoRuleClause,
  Not,
  Over,
  Require,
  RuleEnd,
  RuleWord,
  While,
  Word,
  wordOf,
} from './tokens.js';
import type { Clause, EventPattern, Item, MeasureNode, RuleClause, StatePattern } from './tree.js';

export abstract class RuleRules extends ClauseRules {
  readonly ruleLine = this.RULE('ruleLine', (): { clauses: readonly RuleClause[] } => {
    const clauses: RuleClause[] = [];
    this.MANY(() =>
      this.OR([
        { ALT: () => this.CONSUME(Comma) },
        { ALT: () => clauses.push(this.SUBRULE(this.ruleClause)) },
        {
          ALT: () => {
            const token = this.CONSUME(NoRuleClause);
            this.ACTION(() => this.leftover(token));
          },
        },
      ]),
    );
    return { clauses };
  });

  private readonly ruleClause = this.RULE(
    'ruleClause',
    (): RuleClause =>
      this.OR([
        { ALT: () => this.SUBRULE(this.trigger) },
        { ALT: () => this.SUBRULE(this.requirement) },
        { ALT: () => this.SUBRULE(this.state) },
        { ALT: () => this.SUBRULE(this.need) },
        {
          ALT: () => {
            const word = this.CONSUME(AtMostOnce);
            return this.ACTION((): RuleClause => ({ ...this.rulePlace(word), word: 'at most once' }));
          },
        },
      ]),
  );

  /** `after`, `before`, `never`, `every`, `since` with what they look for; `before next`, `before step ends`. */
  private readonly trigger = this.RULE('trigger', (): RuleClause => {
    const word = this.OR([{ ALT: () => this.CONSUME(RuleWord) }, { ALT: () => this.CONSUME(EventWord) }]);
    let pattern: Pattern | undefined;
    let end: IToken | undefined;
    this.OPTION(() =>
      this.OR2([
        {
          ALT: () => {
            pattern = this.SUBRULE(this.pattern);
          },
        },
        {
          ALT: () => {
            end = this.CONSUME(RuleEnd);
          },
        },
      ]),
    );
    return this.ACTION((): RuleClause => {
      if (pattern === undefined && end === undefined) this.missing(word, 'an action');
      if (pattern?.measure !== undefined) this.reportMeasure(pattern.measure);
      const base = {
        ...this.rulePlace(word),
        word: wordOf(word) as 'after' | 'before' | 'never' | 'every' | 'since',
        pattern: pattern?.event,
      };
      return end === undefined ? base : { ...base, until: wordOf(end) as 'next' | 'step ends' };
    });
  });

  private readonly requirement = this.RULE('requirement', (): RuleClause => {
    const word = this.CONSUME(Require);
    let pattern: Pattern | undefined;
    this.OPTION(() => {
      pattern = this.SUBRULE(this.pattern);
    });
    return this.ACTION((): RuleClause => {
      const base = {
        ...this.rulePlace(word),
        word: 'require' as const,
        pattern: undefined,
        wait: undefined,
        message: undefined,
      };
      if (pattern === undefined) {
        this.missing(word, 'an action, `wait` with a time, `hold` or a signal word');
        return base;
      }
      const { event, measure } = pattern;
      const verb = event.verbs[0]?.text;
      if (verb === 'wait') return { ...base, wait: measure };
      const signal = SIGNALS.find((each) => each === verb);
      const message: Signal | 'hold' | undefined = verb === 'hold' ? 'hold' : signal;
      if (message !== undefined && event.target === undefined && measure === undefined)
        return { ...base, message };
      if (measure !== undefined) this.reportMeasure(measure);
      return { ...base, pattern: event };
    });
  });

  private readonly need = this.RULE('need', (): RuleClause => {
    const word = this.CONSUME(Needs);
    let clause: Clause | undefined;
    this.OPTION(() => {
      clause = this.SUBRULE(this.clause);
    });
    return this.ACTION((): RuleClause => {
      if (clause === undefined) this.missing(word, 'a clause such as `with hoist`');
      return { ...this.rulePlace(word), word: 'needs', clause };
    });
  });

  /** `while vehicle raised`, `while battery-negative not connected`. */
  private readonly state = this.RULE('state', (): RuleClause => {
    const word = this.CONSUME(While);
    let target: EventPattern['target'];
    let not: IToken | undefined;
    let state: IToken | undefined;
    this.OPTION(() => {
      target = this.SUBRULE(this.target);
      this.OPTION2(() => {
        not = this.CONSUME(Not);
      });
      this.OPTION3(() => {
        state = this.CONSUME(Word);
      });
    });
    return this.ACTION((): RuleClause => {
      const place = this.rulePlace(word);
      if (target === undefined || state === undefined) {
        this.missing(not ?? word, 'a thing and its state');
        return { ...place, word: 'while', state: undefined };
      }
      const name = this.name(state);
      const read: StatePattern = {
        start: place.wordSpan.end,
        end: name.end,
        target,
        not: not !== undefined,
        state: name,
      };
      return { ...place, word: 'while', state: read };
    });
  });

  private readonly pattern = this.RULE('pattern', (): Pattern => {
    const clauses: Clause[] = [];
    let target: EventPattern['target'];
    let value: IToken | undefined;
    let measure: MeasureNode | undefined;
    const verbs = this.SUBRULE(this.alternatives);
    this.OPTION(() =>
      this.OR([
        {
          ALT: () => {
            target = this.SUBRULE(this.target);
            this.OPTION2(() => {
              value = this.CONSUME3(Word);
            });
          },
        },
        {
          ALT: () => {
            measure = this.SUBRULE(this.measure);
          },
        },
      ]),
    );
    this.MANY2(() => clauses.push(this.SUBRULE(this.preposition)));
    return this.ACTION(() => ({
      event: {
        ...cover(this.spanOf(verbs), this.place(this.LA(0))),
        verbs,
        target,
        value: value && this.name(value),
        clauses,
      },
      measure,
    }));
  });

  private readonly preposition = this.RULE('preposition', (): Clause => {
    const word = this.CONSUME(NamesWord);
    let items: Item[] = [];
    this.OPTION(() => {
      items = this.SUBRULE(this.items, { ARGS: [false] });
    });
    return this.ACTION(() => {
      if (items.length === 0) this.missing(word, 'a name');
      const wordSpan = this.place(word);
      const place = cover(wordSpan, this.place(this.LA(0)));
      return {
        ...place,
        wordSpan,
        word: wordOf(word),
        items,
        spec: undefined,
        raw: undefined,
        words: [],
        count: undefined,
        event: undefined,
      };
    });
  });

  private readonly target = this.RULE('target', (): EventPattern['target'] =>
    this.OR([
      {
        ALT: () => {
          this.CONSUME(It);
          return { form: 'it' as const };
        },
      },
      { ALT: () => this.SUBRULE(this.anyTarget) },
      {
        ALT: () => {
          const names = this.SUBRULE(this.alternatives);
          return this.ACTION(() => targetOf(names));
        },
      },
    ]),
  );

  /** `any part marked engine-cover over 25 kg`. */
  private readonly anyTarget = this.RULE('anyTarget', (): EventPattern['target'] => {
    const any = this.CONSUME(AnyWord);
    let kind: IToken | undefined;
    let mark: IToken | undefined;
    let over: MeasureNode | undefined;
    this.OPTION(() => {
      kind = this.CONSUME(Word);
    });
    this.OPTION2(() => {
      const marked = this.CONSUME(Marked);
      this.OPTION3(() => {
        mark = this.CONSUME2(Word);
      });
      this.ACTION(() => {
        if (mark === undefined) this.missing(marked, 'a mark');
      });
    });
    this.OPTION4(() => {
      const word = this.CONSUME(Over);
      this.OPTION5(() => {
        over = this.SUBRULE(this.measure);
      });
      this.ACTION(() => {
        if (over === undefined) this.missing(word, 'a quantity');
      });
    });
    return this.ACTION(() => {
      if (kind === undefined) {
        this.missing(any, 'a kind, such as `part` or `fastener`,');
        return undefined;
      }
      return { form: 'any', kind: this.name(kind), mark: mark && this.name(mark), over };
    });
  });

  private rulePlace(word: IToken): Span & { wordSpan: Span } {
    const wordSpan = this.place(word);
    return { wordSpan, ...cover(wordSpan, this.place(this.LA(0))) };
  }

  private reportMeasure(measure: MeasureNode): void {
    this.report(unexpected, measure, {
      what: 'a quantity',
      hint: 'only `wait` and `over` take one in a rule',
    });
  }
}

interface Pattern {
  readonly event: EventPattern;
  readonly measure: MeasureNode | undefined;
}
