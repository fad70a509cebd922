// The shape of one kind of finding. Every code is one file; the catalogue index collects them.
import type { Place, Span, TextEdit } from '../text/span.js';

/**
 * How grave: an error cannot be right; a warning should be acted on; a question is something a draft may still
 * leave open and a release may not; a hint is advice.
 */
export type Severity = 'error' | 'warning' | 'question' | 'hint';

/** Q quantities, N names, F fasteners, S state, L fluids and supplies, H hazards, W wording, V variants, R register, G grammar and layout. */
export type CodeLetter = 'G' | 'Q' | 'N' | 'F' | 'S' | 'L' | 'H' | 'W' | 'V' | 'R';
export type Code = `${CodeLetter}${number}`;

/** Another place that explains a finding: "taken off here". */
export interface Related extends Place {
  readonly message: string;
}

/** A change that mends a finding. `preferred` marks the one that a fixer may apply unasked. */
export interface Fix {
  readonly title: string;
  readonly edits: readonly TextEdit[];
  readonly preferred?: true;
}

export interface Finding {
  readonly code: Code;
  readonly name: string;
  readonly severity: Severity;
  /** One line in the problem's own terms, no final full stop. */
  readonly message: string;
  /** What to do about it, when the message alone does not say. */
  readonly advice?: string;
  readonly file: string;
  readonly span: Span;
  readonly related: readonly Related[];
  readonly fixes: readonly Fix[];
  /** The combinations it holds on, in the fewest words; absent when it holds on all. */
  readonly variants?: string;
  readonly tag?: 'unused' | 'deprecated';
}

export interface DiagnosticDef<Data> {
  readonly code: Code;
  /** Kebab-case name that settings and `explain` accept beside the code. */
  readonly name: string;
  readonly severity: Severity;
  /** The message in the reader's words, lower-case start, no final full stop. */
  message(data: Data): string;
  advice?(data: Data): string | undefined;
  /** Why it matters in the shop; Markdown, one to three short paragraphs. */
  readonly why: string;
  /**
   * A procedure that has this finding and no other, with a comment line under the faulty line whose carets mark
   * the span: `# ^^^^ S101`. Several files are parted by `--- file: path` lines.
   */
  readonly wrong: string;
  /** The same, mended: no finding at all. */
  readonly right: string;
  readonly tag?: 'unused' | 'deprecated';
}

/** Where a finding stands and what goes with it. */
export interface At {
  readonly file: string;
  readonly span: Span;
  readonly related?: readonly Related[];
  readonly fixes?: readonly Fix[];
  readonly variants?: string | undefined;
}

export function defineDiagnostic<Data>(def: DiagnosticDef<Data>): DiagnosticDef<Data> {
  return Object.freeze(def);
}

/** Makes a finding of a kind at a place. */
export function finding<Data>(def: DiagnosticDef<Data>, at: At, data: Data): Finding {
  const advice = def.advice?.(data);
  return {
    code: def.code,
    name: def.name,
    severity: def.severity,
    message: def.message(data),
    ...(advice === undefined ? {} : { advice }),
    file: at.file,
    // Any node may be given as the place; a finding outlives the tree and must not keep it in memory.
    span: { start: at.span.start, end: at.span.end },
    related: at.related ?? [],
    fixes: at.fixes ?? [],
    ...(at.variants === undefined ? {} : { variants: at.variants }),
    ...(def.tag === undefined ? {} : { tag: def.tag }),
  };
}
