// The lines of a proposed fitting half as steps: what belongs together is one step, one verb with several things one
// line, and each step has the title that a technician would give it.
import type { Thing } from '../names/model.js';
import { fittingTitle } from './fitting-titles.js';

export interface FittingStep {
  readonly title: string;
  /** Statements, without indent. */
  readonly lines: readonly string[];
  /** A line that performs an operation, which stands in the place of a step. */
  readonly perform?: string;
}

/** One line as it is written, before lines of one verb are joined. */
export interface FittingLine {
  readonly verb: string;
  /** What is worked on; absent for a wait. */
  readonly thing?: Thing;
  /** The thing with its value, or what else stands behind the verb. */
  readonly text: string;
  /** `, when axle heavy`, or nothing. */
  readonly only?: string;
  /** Whether it goes with the step before it whatever that did: the cap of a filler, the bolt of a pipe. */
  readonly goesOn?: boolean;
}

export interface Joined extends Omit<FittingLine, 'thing' | 'text'> {
  readonly things: Thing[];
  readonly texts: string[];
}

interface Step {
  readonly lines: Joined[];
  readonly completes: boolean;
  readonly perform?: string;
}

export class FittingSteps {
  readonly #steps: Step[] = [];

  add(line: FittingLine): void {
    const last = this.#steps.at(-1);
    // Work goes on in its order: what follows the first line that closes the job is not moved before it.
    const completes = last?.completes === true || COMPLETES.has(line.verb);
    const goesOn =
      last && last.perform === undefined && last.completes === completes && !opensStep(line, last);
    const step: Step = goesOn ? last : { lines: [], completes };
    if (step !== last) this.#steps.push(step);
    const before = step.lines.at(-1);
    const joins = before?.verb === line.verb && before.only === line.only && line.thing?.name === line.text;
    if (joins && line.thing && before.things.length === before.texts.length) {
      before.things.push(line.thing);
      before.texts.push(line.text);
      return;
    }
    const { thing, text, ...rest } = line;
    step.lines.push({ ...rest, things: thing?.name === text ? [thing] : [], texts: [text] });
  }

  perform(line: string): void {
    this.#steps.push({ lines: [], completes: this.#steps.at(-1)?.completes === true, perform: line });
  }

  /** The steps of the one half or the other. */
  written(completes: boolean): FittingStep[] {
    return this.#steps
      .filter((step) => step.completes === completes)
      .map(({ lines, perform }) => ({
        ...(perform === undefined ? {} : { perform }),
        title: perform === undefined ? fittingTitle(lines, completes) : '',
        lines: lines.map(({ verb, texts, only }) => `${verb} ${texts.join(', ')}${only ?? ''}`),
      }));
  }
}

/** Work that closes the job rather than fits a part. */
const COMPLETES: ReadonlySet<string> = new Set(['lower', 'unchock', 'untag', 'set', 'adjust', 'bleed']);

/** After one of these a step is whole, and a part that is fitted next begins another. */
const FINISHES: ReadonlySet<string> = new Set([
  'torque',
  'tighten',
  'snug',
  'connect',
  'fill',
  'wait',
  'check-level',
]);

/** The first line of work on a part, a pipe or a fluid. What holds it only goes on with it. */
function opensStep({ verb, thing, goesOn }: FittingLine, { lines, completes }: Step): boolean {
  if (completes) return false;
  const has = (verbs: ReadonlySet<string>): boolean => lines.some((line) => verbs.has(line.verb));
  // A filler is opened, filled through and shut in one step.
  if (verb === 'fill' || (verb === 'remove' && goesOn)) return has(FITS);
  if (goesOn || !OPENS.has(verb) || !has(FINISHES)) return false;
  if (verb === 'connect' || verb === 'uncap') return !has(CONNECTS);
  return verb !== 'install' || thing?.kind !== 'fastener';
}

const OPENS: ReadonlySet<string> = new Set(['install', 'apply', 'clean', 'connect', 'uncap', 'remove']);
const FITS: ReadonlySet<string> = new Set(['install', 'connect', 'torque', 'tighten', 'snug']);
const CONNECTS: ReadonlySet<string> = new Set(['connect', 'uncap']);
