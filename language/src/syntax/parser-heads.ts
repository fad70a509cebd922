// Grammar of the lines at the head of a file, and of the small pieces that lines of a fixed form share.
import type { Fix } from '../diagnostics/define.js';
import { operandForm } from '../diagnostics/g208-operand-form.js';
import { RuleRules } from './parser-rules.js';
import { numberNode } from './quantities.js';
import { By, Day, From, Hole, NumberToken, On, Word } from './tokens.js';
import type { MeasureNode, Name, NumberNode, Raw } from './tree.js';

export abstract class HeadRules extends RuleRules {
  readonly procedure = this.RULE('procedure', () => {
    const number = this.SUBRULE(this.rawText);
    this.SUBRULE(this.rest);
    return { number };
  });

  /** Lines with nothing between head and colon. */
  readonly nothing = this.RULE('nothing', (): Record<never, never> => {
    this.SUBRULE(this.rest);
    return {};
  });

  readonly use = this.RULE('use', () => {
    const path = this.SUBRULE(this.path, { ARGS: ['use'] });
    this.SUBRULE(this.rest);
    return { path };
  });

  readonly applies = this.RULE('applies', () => {
    const vehicle = this.SUBRULE(this.optionalName);
    let from: NumberNode | undefined;
    let to: NumberNode | undefined;
    this.OPTION(() => {
      const word = this.CONSUME(From);
      this.OPTION2(() => {
        const years = this.SUBRULE(this.measure);
        this.ACTION(() => {
          from = years?.amounts[0]?.number;
          to = years?.form === 'range' ? years.amounts[1]?.number : undefined;
        });
      });
      this.ACTION(() => {
        if (from === undefined) this.missing(word, 'a model year');
      });
    });
    const guard = this.SUBRULE(this.guardTail);
    return { vehicle, from, to, guard };
  });

  readonly sides = this.RULE('sides', () => {
    let sides: Name[] = [];
    this.OPTION(() => {
      sides = this.SUBRULE(this.words);
    });
    this.SUBRULE(this.rest);
    return { sides };
  });

  readonly labour = this.RULE('labour', () => {
    const time = this.SUBRULE(this.optionalMeasure);
    const guard = this.SUBRULE(this.guardTail);
    return { time, guard };
  });

  readonly crew = this.RULE('crew', () => {
    const count = this.SUBRULE(this.optionalNumber);
    this.SUBRULE(this.rest);
    return { count };
  });

  readonly revision = this.RULE('revision', () => {
    const number = this.SUBRULE(this.optionalNumber);
    const day = this.SUBRULE(this.onDay);
    this.SUBRULE(this.rest);
    return { number, day };
  });

  readonly status = this.RULE('status', () => {
    const status = this.SUBRULE(this.optionalName);
    let by: Name[] = [];
    this.OPTION(() => {
      this.CONSUME(By);
      this.OPTION2(() => {
        by = this.SUBRULE(this.words);
      });
    });
    const day = this.SUBRULE(this.onDay);
    this.SUBRULE(this.rest);
    return { status, by, day };
  });

  readonly review = this.RULE('review', () => {
    let day: Name | undefined;
    this.OPTION(() => {
      const token = this.CONSUME(Day);
      this.ACTION(() => {
        day = this.name(token);
      });
    });
    this.SUBRULE(this.rest);
    return { day };
  });

  /** A file name in quotation marks, or `?`. */
  protected readonly path = this.RULE('path', (word: string): Raw | undefined => {
    const path = this.SUBRULE(this.rawText);
    return this.ACTION(() => {
      if (path !== undefined && !path.quoted && !path.hole) {
        const fixes = path.text.includes('"') ? [] : [this.quoteFix(path)];
        this.report(operandForm, path, { word, expected: 'a file name in quotation marks' }, fixes);
      }
      return path;
    });
  });

  protected readonly optionalName = this.RULE('optionalName', (): Name | undefined => {
    let name: Name | undefined;
    this.OPTION(() => {
      const token = this.CONSUME(Word);
      this.ACTION(() => {
        name = this.name(token);
      });
    });
    return name;
  });

  protected readonly optionalNumber = this.RULE('optionalNumber', (): NumberNode | undefined => {
    let number: NumberNode | undefined;
    this.OPTION(() => {
      const token = this.OR([{ ALT: () => this.CONSUME(NumberToken) }, { ALT: () => this.CONSUME(Hole) }]);
      this.ACTION(() => {
        number = numberNode(token, this.source.base);
      });
    });
    return number;
  });

  protected readonly optionalMeasure = this.RULE('optionalMeasure', (): MeasureNode | undefined => {
    let measure: MeasureNode | undefined;
    this.OPTION(() => {
      measure = this.SUBRULE(this.measure);
    });
    return measure;
  });

  protected readonly onDay = this.RULE('onDay', (): Name | undefined => {
    let day: Name | undefined;
    this.OPTION(() => {
      const on = this.CONSUME(On);
      this.OPTION2(() => {
        const token = this.CONSUME(Day);
        this.ACTION(() => {
          day = this.name(token);
        });
      });
      this.ACTION(() => {
        if (day === undefined) this.missing(on, 'a day such as 2026-10-05');
      });
    });
    return day;
  });

  private quoteFix({ start, end, text }: Raw): Fix {
    const edits = [{ file: this.source.file, span: { start, end }, text: `"${text}"` }];
    return { title: 'Put it in quotation marks', edits, preferred: true };
  }
}
