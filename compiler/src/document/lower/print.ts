// What one print of a procedure is made with: the combinations it is for, the sides, the language, and what the
// rows gather on the way for the first page and the record.
import {
  type Analysis,
  type Condition,
  chosenCondition,
  type Guard,
  type IssuedEdition,
  type Job,
  type Language,
  NEVER,
  type Scope,
  type Settings,
  type StateRun,
} from '@baywright/language';
import type { OutputFinding, Sheet } from '../document.js';
import type { SourceRef } from '../inline.js';
import { type Trace, traceOf } from './trace.js';
import { newUses, type Uses } from './uses.js';

/** What somebody chose when the guide was asked for. */
export interface GuideChoice {
  readonly sheet: Sheet;
  /** A side the procedure names, or `both` for all of them one after the other. Absent: as `both`. */
  readonly side?: string;
  /** Chosen values by option: `{ axle: 'heavy' }`; `year` may be among them. What is absent is printed for all. */
  readonly option: Readonly<Record<string, string>>;
  readonly units: Settings['units'];
  readonly language: Language;
  /** Where the procedure is left, as an offset in its text, for the hand-over sheet. */
  readonly at?: number;
}

/** What the lowering asks of the library beside the analysis. */
export interface GuideShelf {
  readonly settings: Settings;
  /** The bytes of a file by library path, undefined when there is none. */
  bytes(path: string): Uint8Array | undefined;
  /**
   * What was issued under a number: the newest edition, or the newest below a revision; the same object each time.
   * Without it there are no change bars.
   */
  issued?(number: string, below?: number): IssuedEdition | undefined;
  /** A library as it was when an edition was issued, beside what it is now. Without it pictures and translations count as unchanged. */
  asIssued?(edition: IssuedEdition, now: Analysis): AsIssued;
  /** Translations of the prose of a file into the language of the print, by the text as written. */
  translations?(path: string, language: Language): ReadonlyMap<string, string> | undefined;
}

export interface AsIssued {
  /** A picture whose file has another content today is not there. */
  readonly shelf: GuideShelf;
  /** The languages whose translations were kept. */
  readonly languages: readonly Language[];
  /** Whether the procedure says or shows something else now. */
  isChanged(): boolean;
}

/** A side that is printed, with how far its rows have run. `word` is missing when the job has no sides. */
export interface SidePrint {
  readonly word: string | undefined;
  readonly when: Condition;
  readonly trace: Trace;
}

export interface Print {
  readonly analysis: Analysis;
  readonly job: Job;
  readonly run: StateRun | undefined;
  readonly shelf: GuideShelf;
  readonly choice: GuideChoice;
  readonly language: Language;
  /** The combinations that are printed. */
  readonly when: Condition;
  readonly sides: readonly SidePrint[];
  readonly uses: Uses;
  readonly findings: OutputFinding[];
  /** Texts without a translation, by file, for the list of what is missing. */
  readonly untranslated: Map<string, Set<string>>;
}

export function printOf(analysis: Analysis, choice: GuideChoice, shelf: GuideShelf): Print {
  const { job, run } = analysis;
  const { universe } = job;
  const when = chosenCondition(universe, choice.option);
  const words = analysis.model.sides.filter(
    (side) => choice.side === undefined || choice.side === 'both' || choice.side === side,
  );
  const sides = (words.length > 0 ? words : [undefined]).map((word): SidePrint => {
    const here =
      word === undefined ? when : universe.diagrams.and(when, chosenCondition(universe, { side: word }));
    return { word, when: here, trace: traceOf(run, job, here) };
  });
  const printed = sides.reduce((all, side) => universe.diagrams.or(all, side.when), sides[0]?.when ?? when);
  return {
    analysis,
    job,
    run,
    shelf,
    choice,
    language: choice.language,
    when: printed,
    sides,
    uses: newUses(),
    findings: [],
    untranslated: new Map(),
  };
}

/** Where a block of lines stands: whose names it uses, on which combinations, for which side. */
export interface Place {
  readonly scope: Scope;
  readonly when: Condition;
  /** Undefined while both sides are printed together. */
  readonly side: SidePrint | undefined;
  /** The lines are repeated for each side under a heading that is for both: each has to say which side it is for. */
  readonly isInPair?: boolean;
  /** Inside a branch that may not be taken. */
  readonly maybe: boolean;
}

/** Whether something guarded is met on any of the combinations of a place. */
export const holdsHere = ({ job }: Print, guard: Guard | undefined, when: Condition): boolean =>
  job.universe.diagrams.and(job.where(guard), when) !== NEVER;

/** The line of the source that something comes from, counted from 1. */
export function sourceOf(print: Print, file: string, offset: number): SourceRef | undefined {
  const text = file === print.analysis.path ? print.analysis.text : print.job.imports.model(file)?.tree.text;
  if (text === undefined) return undefined;
  let line = 1;
  for (let at = text.indexOf('\n'); at >= 0 && at < offset; at = text.indexOf('\n', at + 1)) line++;
  return { file, line };
}

/** The text in the language of the print; as written, and noted as missing, where there is no translation. */
export function translated(print: Print, file: string, source: string): string {
  if (print.language === print.shelf.settings.languages[0] || source.trim() === '') return source;
  const found = print.shelf.translations?.(file, print.language)?.get(source);
  if (found !== undefined && found !== '') return found;
  const missing = print.untranslated.get(file) ?? new Set<string>();
  missing.add(source);
  print.untranslated.set(file, missing);
  return source;
}
