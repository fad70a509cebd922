// The torque of a set at a line: which figures hold on which combinations, which stages are left to do there, and
// the box they are printed in.
import {
  type BoundStatement,
  type Condition,
  clausesOf,
  hasClause,
  NEVER,
  numberOf,
  type PhraseId,
  phrase,
  phraseText,
  type SpecNode,
  type Thing,
  torqueLines,
  toSI,
} from '@baywright/language';
import type { TorqueStage } from '../beside.js';
import type { Prose } from '../inline.js';
import { text } from '../inline.js';
import { openUnit, quantityOf } from './measures.js';
import { capitalFirst } from './names.js';
import type { Place, Print } from './print.js';
import { orderWord } from './sentences.js';
import { titleOf } from './texts.js';
import { variantWords } from './variant-words.js';

/** One torque that may hold at a line. */
export interface TorqueHere {
  readonly stages: readonly TorqueStage[];
  /** The torque of each stage, N·m; none of an angle or an open question. */
  readonly nm: readonly (number | undefined)[];
  /** Where it holds, in words; undefined where it always does. */
  readonly variant: string | undefined;
  readonly per: string | undefined;
}

/** The torques of a set at a line, one for each combination that has its own. */
export function torquesAt(
  print: Print,
  thing: Thing,
  statement: BoundStatement,
  place: Place,
  done: number,
): TorqueHere[] {
  const own = statement.clause('bare')?.spec;
  if (own)
    return [
      {
        ...stagesOf(
          print,
          own,
          own.stages.map((_, i) => i),
        ),
        variant: undefined,
        per: statement.clause('per')?.raw?.text,
      },
    ];
  return holding(print, place.when, torqueLines(thing)).map(({ line, variant }) => {
    const { spec } = line;
    const only = Number(statement.clause('stage')?.raw?.text);
    const which = statement.verb.later
      ? checkedStage(spec)
      : (spec?.stages ?? [])
          .map((_, i) => i)
          .filter((i) => (Number.isInteger(only) ? i === only - 1 : i >= done));
    return {
      ...stagesOf(
        print,
        spec,
        which.length > 0 ? which : (spec?.stages ?? []).map((_, i) => i),
        statement.verb.later !== true,
      ),
      variant,
      per: line.per?.text,
    };
  });
}

/**
 * What a return visit sets the wrench to: the last torque of the stages. An angle turned again overloads the bolt, and
 * the stages before the last are passed already. Common practice, no source.
 */
function checkedStage(spec: SpecNode | undefined): readonly number[] {
  const torques = (spec?.stages ?? []).flatMap(({ measure: { measure }, back }, i) =>
    !back && (measure === undefined || measure.unit.kind === 'torque') ? [i] : [],
  );
  return torques.slice(-1);
}

/** Guarded values with where each holds: a later guarded line takes from the unguarded one. */
export function holding<T extends { readonly guard: Parameters<Print['job']['where']>[0] }>(
  print: Print,
  within: Condition,
  lines: readonly T[],
): { line: T; variant: string | undefined }[] {
  const { diagrams } = print.job.universe;
  const guarded = lines.filter((line) => line.guard !== undefined);
  const taken = guarded.reduce<Condition>(
    (all, line) => diagrams.or(all, print.job.where(line.guard)),
    NEVER,
  );
  return lines.flatMap((line) => {
    const where = line.guard ? print.job.where(line.guard) : diagrams.not(taken);
    const here = diagrams.and(where, within);
    return here === NEVER ? [] : [{ line, variant: variantWords(print, here, within) }];
  });
}

function stagesOf(
  print: Print,
  spec: SpecNode | undefined,
  which: readonly number[],
  isLabelled = true,
): Pick<TorqueHere, 'stages' | 'nm'> {
  const { language } = print;
  const nm: (number | undefined)[] = [];
  const stages = which.map((i): TorqueStage => {
    const stage = spec?.stages[i];
    const measure = stage?.measure.measure;
    const word: PhraseId = stage?.back ? 'stage-back' : i === 0 ? 'stage-first' : 'stage-then';
    const label =
      // A first stage on a line of its own says so too: the rest comes later.
      isLabelled && (spec?.stages.length ?? 1) > 1 ? { label: phrase(word, language) } : {};
    const { nominal, high, low } = measure ? toSI(measure) : {};
    const value = nominal ?? high ?? low;
    nm.push(value && measure?.unit.kind === 'torque' ? numberOf(value) : undefined);
    if (!measure) return { ...label, unit: openUnit(stage?.measure.amounts[0]?.unit, print) };
    return { ...label, figure: quantityOf(measure, print) };
  });
  return { stages: stages.length > 0 ? stages : [{ unit: openUnit(undefined, print) }], nm };
}

/** Threadlocker by its strength; one that a shop declared itself is no member. */
export const LOCKERS: Readonly<Record<string, PhraseId>> = {
  low: 'threadlocker-low',
  medium: 'threadlocker-medium',
  high: 'threadlocker-high',
};

/** What must hold when the figures are used: threadlocker, oil, posture, order. */
export function torqueConditions(
  print: Print,
  thing: Thing,
  statement: BoundStatement,
  order: string | undefined,
): Prose[] {
  const { language } = print;
  const said: string[] = [];
  const raw = (word: string): string | undefined => {
    const clause = clausesOf(thing, word)[0]?.clause.raw;
    return clause?.hole ? '?' : clause?.text;
  };
  const named = (word: string): string => {
    const other = print.job.scope.resolve(word);
    return other ? titleOf(print, other) : word;
  };
  const locker = raw('threadlocker');
  if (locker !== undefined) {
    const id = LOCKERS[locker];
    const own = id === undefined ? print.job.scope.resolve(locker) : undefined;
    // A supply of the shop says by its title what it is.
    said.push(
      own
        ? titleOf(print, own)
        : phraseText('threadlocker', language, { grade: id ? phrase(id, language) : locker }),
    );
  }
  const lubricant = raw('lubricant');
  if (lubricant !== undefined) said.push(phraseText('lubricant', language, { name: named(lubricant) }));
  if (hasClause(thing, 'oiled')) said.push(phrase('oiled', language));
  if (hasClause(thing, 'dry')) said.push(phrase('dry', language));
  const has = (word: string): boolean =>
    hasClause(thing, word) || hasWord(thing, word) || statement.clause(word) !== undefined;
  if (has('on ground')) said.push(phrase('on-ground', language));
  if (has('at ride height')) said.push(phrase('at-ride-height', language));
  if (order !== undefined) said.push(phraseText('order-as', language, { order: orderWord(print, order) }));
  return said.map((words) => [text(capitalFirst(words))]);
}

/** A flag that stands on the line of the torque. */
function hasWord(thing: Thing, word: string): boolean {
  return torqueLines(thing).some(({ at }) => at.line.clauses.some((clause) => clause.word === word));
}
