// The one parser: a grammar rule for each kind of line. The class stays in this folder; `parseLine` is its door.
import type { IToken } from 'chevrotain';
import type { Finding } from '../diagnostics/define.js';
import { VERB_BY_WORD } from '../verbs/index.js';
import { reportLeftover } from './leftover.js';
import type { LineSource } from './line-source.js';
import type { ClauseSet, Clauses } from './parser-clauses.js';
import { HeadRules } from './parser-heads.js';
import { At, Comma, From, IfTestWord, Side, Word, wordOf } from './tokens.js';
import type { Guard, IfTest, Item, MeasureNode, Name, Raw } from './tree.js';

export class LineParser extends HeadRules {
  constructor(skipValidations = true) {
    super(skipValidations);
    this.performSelfAnalysis();
  }

  /** Reads the tokens behind a line's head by one of the rules below. */
  read<Fields>(
    rule: (parser: LineParser) => Fields,
    tokens: IToken[],
    source: LineSource,
    clauseSet: ClauseSet,
  ): { fields: Fields; finding: Finding | undefined } {
    this.source = source;
    this.clauseSet = clauseSet;
    this.firstFinding = undefined;
    this.input = tokens;
    const fields = rule(this);
    return { fields, finding: this.firstFinding };
  }

  readonly named = this.RULE('named', () => {
    const name = this.SUBRULE(this.optionalName);
    this.SUBRULE(this.rest);
    return { name };
  });

  readonly message = this.RULE('message', () => {
    let reference: Name | undefined;
    this.OPTION(() => {
      const token = this.CONSUME(Word);
      this.ACTION(() => {
        reference = this.name(token);
      });
    });
    this.SUBRULE(this.rest);
    return { reference };
  });

  readonly accept = this.RULE('accept', () => {
    let codes: Name[] = [];
    this.OPTION(() => {
      codes = this.SUBRULE(this.words);
    });
    this.SUBRULE(this.rest);
    return { codes };
  });

  readonly picture = this.RULE('picture', () => {
    const path = this.SUBRULE(this.path, { ARGS: ['picture'] });
    this.SUBRULE(this.rest);
    return { path };
  });

  readonly clip = this.RULE('clip', () => {
    const path = this.SUBRULE(this.path, { ARGS: ['clip'] });
    let at: MeasureNode | undefined;
    this.OPTION(() => {
      const word = this.CONSUME(At);
      at = this.SUBRULE(this.optionalMeasure);
      this.ACTION(() => {
        if (at === undefined) this.missing(word, 'a time');
      });
    });
    this.SUBRULE(this.rest);
    return { path, at };
  });

  readonly perform = this.RULE('perform', () => {
    const operation = this.SUBRULE(this.optionalName);
    let from: Raw | undefined;
    let side: Name | undefined;
    this.OPTION(() => {
      const word = this.CONSUME(From);
      from = this.SUBRULE(this.rawText);
      this.ACTION(() => {
        if (from === undefined) this.missing(word, 'a procedure number');
      });
    });
    this.OPTION2({
      GATE: () => this.LA(1).tokenType === Side || this.LA(2).tokenType === Side,
      DEF: () => {
        this.OPTION3(() => this.CONSUME(Comma));
        const word = this.CONSUME(Side);
        this.OPTION4(() => {
          const token = this.CONSUME(Word);
          this.ACTION(() => {
            side = this.name(token);
          });
        });
        this.ACTION(() => {
          if (side === undefined) this.missing(word, 'a side');
        });
      },
    });
    const guard = this.SUBRULE(this.guardTail);
    return { operation, from, side, guard };
  });

  readonly when = this.RULE('when', (): { guard: Guard } => {
    const guard = this.SUBRULE(this.guardTerms, { ARGS: [undefined] });
    this.SUBRULE(this.rest);
    return { guard };
  });

  readonly if_ = this.RULE('if_', () => {
    let subject: Name | undefined;
    let test: IToken | undefined;
    this.OPTION(() => {
      const token = this.CONSUME(Word);
      this.ACTION(() => {
        subject = this.name(token);
      });
    });
    this.OPTION2(() => {
      test = this.CONSUME(IfTestWord);
    });
    this.SUBRULE(this.rest);
    return this.ACTION(() => ({ subject, test: test && (wordOf(test).split(' ')[0] as IfTest) }));
  });

  readonly repeat = this.RULE('repeat', () => {
    const times = this.SUBRULE(this.optionalMeasure);
    this.SUBRULE(this.rest);
    return { times };
  });

  readonly prerequisite = this.RULE('prerequisite', () => {
    const name = this.CONSUME(Word);
    let value: IToken | undefined;
    this.OPTION(() => {
      value = this.CONSUME2(Word);
    });
    const { clauses, guard } = this.SUBRULE(this.clauseTail);
    return this.ACTION(() => ({ name: this.name(name), value: value && this.name(value), clauses, guard }));
  });

  readonly values = this.RULE('values', () => {
    const values = this.SUBRULE(this.words);
    this.SUBRULE(this.rest);
    return { values };
  });

  readonly statement = this.RULE('statement', (verb: Name) => {
    let items: Item[] = [];
    this.OPTION(() => {
      items = this.SUBRULE(this.items, { ARGS: [true] });
    });
    this.ACTION(() => {
      if (VERB_BY_WORD.get(verb.text)?.takesValue !== true) this.reportValues(verb, items);
    });
    const tail: Clauses = this.SUBRULE(this.clauseTail);
    return { verb, items, clauses: tail.clauses, guard: tail.guard };
  });

  /** A second name after an item, where the verb takes no value, is a word too many. */
  private reportValues(verb: Name, items: readonly Item[]): void {
    for (const { name, value } of items) {
      if (value === undefined) continue;
      const token = (at: Name): IToken => ({
        image: at.text,
        startOffset: at.start - this.source.base,
        tokenType: Word,
        tokenTypeIdx: Word.tokenTypeIdx ?? 0,
      });
      this.firstFinding ??= reportLeftover(token(value), token(name), this.source, verb);
      return;
    }
  }
}
