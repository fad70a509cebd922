// Grammar of clauses: of entries, prerequisites and statements, and of the lines below statements.
import type { IToken, TokenType } from 'chevrotain';
import type { Fix } from '../diagnostics/define.js';
import { unexpected } from '../diagnostics/g203-unexpected.js';
import { operandMissing } from '../diagnostics/g204-operand-missing.js';
import { operandForm } from '../diagnostics/g208-operand-form.js';
import { cover, type Span } from '../text/span.js';
import { ENTRY_CLAUSE_BY_WORD, STEP_CLAUSE_BY_WORD } from '../vocabulary/clauses.js';
import { ListRules } from './parser-lists.js';
import { numberNode } from './quantities.js';
import {
  Comma,
  Count,
  EventWord,
  endOf,
  FlagWord,
  NamesWord,
  NoClause,
  NumberToken,
  RawToken,
  RawWord,
  SpecWord,
  Word,
  WordsWord,
  wordOf,
} from './tokens.js';
import type { Clause, EventPattern, Guard, Item, Name, Raw, SpecNode } from './tree.js';

/** Which clauses a line takes. */
export type ClauseSet = 'entry' | 'step';

/** The clauses of a line with the guard that ends it. */
export interface Clauses {
  readonly clauses: readonly Clause[];
  readonly guard: Guard | undefined;
}

export abstract class ClauseRules extends ListRules {
  /** Which clauses the line takes; set before a line is read. */
  protected clauseSet: ClauseSet = 'entry';

  /** Clauses and a guard in any order, commas between them free, to the end of the line. */
  readonly clauseTail = this.RULE('clauseTail', (): Clauses => {
    const clauses: Clause[] = [];
    let guard: Guard | undefined;
    this.MANY(() =>
      this.OR([
        { ALT: () => this.CONSUME(Comma) },
        { ALT: () => clauses.push(this.SUBRULE(this.clause)) },
        {
          ALT: () => {
            const next = this.SUBRULE(this.guard);
            this.ACTION(() => {
              if (guard === undefined) guard = next;
              else
                this.report(unexpected, next, { what: 'a second `when`', hint: 'join conditions by `and`' });
            });
          },
        },
        {
          ALT: () => {
            const token = this.CONSUME(NoClause);
            this.ACTION(() => this.leftover(token));
            // What follows it up to the next comma or clause word went with it.
            this.MANY2(() => this.CONSUME(RawToken));
          },
        },
      ]),
    );
    return { clauses, guard };
  });

  /** Alternatives that need nothing of their rule are made once, as chevrotain advises: they cost more than the reading. */
  private readonly clauseForms = [
    { ALT: () => this.SUBRULE(this.namesClause) },
    { ALT: () => this.SUBRULE(this.specClause) },
    { ALT: () => this.SUBRULE(this.rawClause) },
    { ALT: () => this.SUBRULE(this.wordsClause) },
    { ALT: () => this.SUBRULE(this.flagClause) },
    { ALT: () => this.SUBRULE(this.eventClause) },
    { ALT: () => this.SUBRULE(this.bareClause) },
    { ALT: () => this.SUBRULE(this.countClause) },
  ];

  readonly clause = this.RULE('clause', (): Clause => this.OR(this.clauseForms));

  private readonly namesClause = this.RULE('namesClause', (): Clause => {
    const word = this.CONSUME(NamesWord);
    const operand = this.SUBRULE(this.operand, { ARGS: [this.clauseSet === 'entry'] });
    return this.ACTION(() => this.clauseOf(word, operand));
  });

  private readonly specClause = this.RULE('specClause', (): Clause => {
    const word = this.CONSUME(SpecWord);
    const operand = this.SUBRULE(this.operand, { ARGS: [false] });
    return this.ACTION(() => this.clauseOf(word, operand));
  });

  private readonly rawClause = this.RULE('rawClause', (): Clause => {
    const word = this.CONSUME(RawWord);
    const raw = this.SUBRULE(this.rawText);
    let last: IToken | undefined;
    // `order inside-out, 2 rows` is one value.
    this.OPTION({
      GATE: () =>
        wordOf(word) === 'order' && this.LA(2).tokenType === NumberToken && ROWS.test(this.LA(3).image),
      DEF: () => {
        this.CONSUME(Comma);
        this.CONSUME(NumberToken);
        last = this.CONSUME(Word);
      },
    });
    return this.ACTION(() => this.clauseOf(word, { raw: raw && last ? this.rawOver(raw, last) : raw }));
  });

  private readonly wordsClause = this.RULE('wordsClause', (): Clause => {
    const word = this.CONSUME(WordsWord);
    let words: Name[] = [];
    let option: Name | undefined;
    this.OPTION({
      GATE: () => wordOf(word) === 'option',
      DEF: () => {
        const token = this.CONSUME(Word);
        this.ACTION(() => {
          option = this.name(token);
        });
      },
    });
    this.OPTION2(() => {
      words = this.SUBRULE(this.words);
    });
    return this.ACTION(() => this.clauseOf(word, { words: option ? [option, ...words] : words }));
  });

  private readonly flagClause = this.RULE('flagClause', (): Clause => {
    const word = this.CONSUME(FlagWord);
    return this.ACTION(() => this.clauseOf(word, { words: [] }));
  });

  private readonly eventClause = this.RULE('eventClause', (): Clause => {
    const word = this.CONSUME(EventWord);
    let event: EventPattern | undefined;
    this.OPTION(() => {
      event = this.SUBRULE(this.event);
    });
    return this.ACTION(() => this.clauseOf(word, { event }));
  });

  /** `disconnect battery-negative`, after `since`. */
  private readonly event = this.RULE('event', (): EventPattern => {
    const verbs = this.SUBRULE(this.alternatives);
    let names: Name[] = [];
    this.OPTION(() => {
      names = this.SUBRULE2(this.alternatives);
    });
    return this.ACTION(() => ({
      ...this.spanOf(verbs, names),
      verbs,
      target: targetOf(names),
      value: undefined,
      clauses: [],
    }));
  });

  /** A quantity that stands alone; its word is `at least` or `at most` when it is a bound. */
  private readonly bareClause = this.RULE('bareClause', (): Clause => {
    const spec = this.SUBRULE(this.spec);
    return this.ACTION(() => {
      const place: Span = spec ?? this.place(this.LA(0));
      const bound = spec?.stages[0]?.measure.bound;
      const written = bound === undefined ? 0 : (/^at\s+\w+/.exec(this.written(place))?.[0].length ?? 0);
      const wordSpan = { start: place.start, end: place.start + written };
      return {
        ...EMPTY,
        start: place.start,
        end: place.end,
        wordSpan,
        word: bound === undefined ? 'bare' : `at ${bound}`,
        spec,
      };
    });
  });

  private readonly countClause = this.RULE('countClause', (): Clause => {
    const count = this.CONSUME(Count);
    const raw = this.SUBRULE(this.rawText);
    return this.ACTION(() => {
      const place = this.place(count);
      if (this.clauseSet === 'step') {
        this.report(unexpected, place, { what: `\`${count.image}\``, hint: 'part names by commas' });
      }
      return {
        ...EMPTY,
        ...this.clausePlace(count),
        word: 'of',
        count: numberNode(count, this.source.base),
        raw,
      };
    });
  });

  /** Names or a quantity, whichever stands there. */
  private readonly operand = this.RULE('operand', (takesValue: boolean): Operand => {
    let items: Item[] = [];
    let spec: SpecNode | undefined;
    this.OPTION(() =>
      this.OR([
        {
          ALT: () => {
            items = this.SUBRULE(this.items, { ARGS: [takesValue] });
          },
        },
        {
          ALT: () => {
            spec = this.SUBRULE(this.spec);
          },
        },
      ]),
    );
    return { items, spec };
  });

  private clauseOf(word: IToken, operand: Operand): Clause {
    const wordSpan = this.place(word);
    const clause: Clause = {
      start: wordSpan.start,
      end: this.source.base + endOf(this.LA(0)),
      word: wordOf(word),
      wordSpan,
      items: operand.items ?? NONE,
      spec: operand.spec,
      raw: operand.raw,
      words: operand.words ?? NONE,
      count: undefined,
      event: operand.event,
    };
    this.checkOperand(word, clause);
    return clause;
  }

  private clausePlace(word: IToken): Span & { wordSpan: Span } {
    const wordSpan = this.place(word);
    return { wordSpan, ...cover(wordSpan, this.place(this.LA(0))) };
  }

  /** Reports an operand that is missing or of the other form. */
  private checkOperand(word: IToken, clause: Clause): void {
    const shape = (this.clauseSet === 'entry' ? ENTRY_CLAUSE_BY_WORD : STEP_CLAUSE_BY_WORD).get(
      clause.word,
    )?.shape;
    const { items, spec, raw, words, event } = clause;
    if (items.length + words.length === 0 && !spec && !raw && !event) {
      const expected = OPERANDS.get(word.tokenType);
      if (expected !== undefined) this.missing(word, expected);
    } else if (spec !== undefined && shape === 'names' && this.clauseSet === 'entry' && !isHole(spec)) {
      this.report(operandForm, spec, { word: clause.word, expected: 'names' });
    } else if (items.length > 0 && shape === 'spec') {
      const [first] = items;
      const byHand =
        this.written({ start: clause.start, end: clause.end }) === 'by hand' ? this.byHand(clause) : [];
      if (first)
        this.report(
          operandForm,
          first,
          {
            word: clause.word,
            expected: 'a quantity',
            written: this.written({ start: first.start, end: clause.end }),
          },
          byHand,
        );
    } else if (clause.word === 'option' && words.length < 2) {
      this.optionIncomplete(word);
    }
  }

  /** Who does it by hand is told in text. */
  private byHand({ start, end }: Span): Fix[] {
    const { file, base, code } = this.source;
    const ahead = base + code.slice(0, start - base).trimEnd().length;
    const edits = [{ file, span: { start: ahead, end }, text: '' }];
    return [{ title: 'Take `by hand` out', edits, preferred: true }];
  }

  /** `option drive 4x2, 4x4`: a name begins with a letter, and so does a value. */
  private optionIncomplete(word: IToken): void {
    const { code, base, file } = this.source;
    const rest = /^ *([^:]*)/.exec(code.slice(endOf(word)))?.[1]?.trimEnd() ?? '';
    const [option = ''] = rest.split(/[ ,]/);
    const initial = /^\p{L}/u.exec(option)?.[0];
    const meant = rest.replace(/(?<=^|[ ,])\d[\p{L}\d./-]*/gu, (value) =>
      `${initial ?? 'with-'}${value}`.replace(/(\d)\.(?=\d)/g, '$1-'),
    );
    if (meant === rest || rest.split(/[ ,]+/).length < 2) this.missing(word, 'an option and its values');
    else {
      const start = base + endOf(word) + 1;
      const edits = [{ file, span: { start, end: start + rest.length }, text: meant }];
      const data = { word: 'option', expected: 'words that begin with a letter', meant: `option ${meant}` };
      this.report(operandMissing, this.place(word), data, [{ title: `Write \`option ${meant}\``, edits }]);
    }
  }

  protected spanOf(...lists: readonly (readonly Span[])[]): Span {
    const all = lists.flat();
    const [first = this.place(this.LA(0))] = all;
    return all.reduce(cover, { start: first.start, end: first.end });
  }
}

/** `vehicle`, or names. */
export function targetOf(names: readonly Name[]): EventPattern['target'] {
  const [only] = names;
  if (only === undefined) return undefined;
  return names.length === 1 && only.text === 'vehicle' ? { form: 'vehicle' } : { form: 'names', names };
}

interface Operand {
  readonly items?: readonly Item[];
  readonly spec?: SpecNode | undefined;
  readonly raw?: Raw | undefined;
  readonly words?: readonly Name[];
  readonly event?: EventPattern | undefined;
}

const NONE: readonly never[] = [];

const ROWS = /^(row|column)s?$/;

const EMPTY: Omit<Clause, 'word' | 'wordSpan' | 'start' | 'end'> = {
  items: [],
  spec: undefined,
  raw: undefined,
  words: [],
  count: undefined,
  event: undefined,
};

const OPERANDS = new Map<TokenType, string>([
  [NamesWord, 'a name'],
  [SpecWord, 'a quantity'],
  [RawWord, 'a value'],
  [WordsWord, 'a word'],
  [EventWord, 'an action'],
]);

function isHole(spec: SpecNode): boolean {
  return spec.stages.every(({ measure }) => measure.hole);
}
