// The combinations a procedure can meet: vehicle, options, model years, side; and the outcomes of its own tests.
import type { FileModel } from '../names/model.js';
import type { Guard, GuardTerm } from '../syntax/tree.js';
import { coverOf, type Term } from './cover.js';
import { ALWAYS, type Condition, Diagrams, NEVER, type Variable } from './diagrams.js';

/** A way vehicles differ, or an outcome of a test in the procedure. */
export interface Axis {
  readonly name: string;
  readonly variable: Variable;
  /** Words of the values, in order: `light`, `heavy`; `2018 to 2020`. */
  readonly values: readonly string[];
  readonly kind: 'vehicle' | 'option' | 'year' | 'side' | 'outcome';
}

/** The words in which variants are said in another language than that of findings. */
interface VariantWords {
  /** With its spaces: ` and `. */
  readonly and: string;
  readonly or: string;
  /** `axle heavy`, for one value of an axis or for several. */
  term(axis: Axis, values: readonly string[]): string;
}

/** Why a guard term has no meaning here. */
export interface GuardProblem {
  readonly term: GuardTerm;
  readonly what: 'unknown option' | 'unknown value' | 'never';
  readonly written: string;
  readonly known: readonly string[];
}

/** The axes of one job, and what conditions over them mean. Outcomes of tests are added while the work is run. */
export interface Universe {
  readonly diagrams: Diagrams;
  readonly axes: readonly Axis[];
  /** The combinations the procedure applies to. */
  readonly domain: Condition;
  /** Where a guard holds. Problems are told once to `report`, and the term then counts as holding. */
  condition(guard: Guard | undefined, report?: (problem: GuardProblem) => void): Condition;
  /** Adds an axis for the outcome of a test. */
  outcome(name: string, values: readonly string[]): Axis;
  /** The condition in words within the domain; undefined when it holds on all combinations. */
  words(condition: Condition, said?: VariantWords): string | undefined;
  /** The condition as the terms of one `when`: `axle heavy and side left`. Empty when it always holds, undefined when one guard cannot say it. */
  guardText(condition: Condition): string | undefined;
  axis(name: string): Axis | undefined;
}

/** Vehicles that the procedure applies to, with their options and years. */
export function universeOf(
  file: FileModel,
  vehicles: readonly VehicleFacts[],
  guards: readonly Guard[],
): Universe {
  const diagrams = new Diagrams();
  const axes: Axis[] = [];
  const byName = new Map<string, Axis>();
  const add = (name: string, values: readonly string[], kind: Axis['kind']): Axis => {
    const axis: Axis = { name, variable: diagrams.variable(values.length), values, kind };
    axes.push(axis);
    byName.set(name, axis);
    return axis;
  };

  if (vehicles.length > 1)
    add(
      'vehicle',
      vehicles.map((v) => v.name),
      'vehicle',
    );
  if (file.sides.length > 0) add('side', file.sides, 'side');
  const used = namedOptions(guards);
  const options = new Map<string, string[]>();
  for (const vehicle of vehicles) {
    for (const option of vehicle.options) {
      if (!used.has(option.name)) continue;
      const values = options.get(option.name) ?? [];
      for (const value of option.values) if (!values.includes(value)) values.push(value);
      options.set(option.name, values);
    }
  }
  for (const [name, values] of options) add(name, values, 'option');
  const bands = yearBands(vehicles, guards);
  if (bands.length > 1)
    add(
      'year',
      bands.map((b) => (b.from === b.to ? `${b.from}` : `${b.from} to ${b.to}`)),
      'year',
    );

  const termCondition = (term: GuardTerm, report?: (p: GuardProblem) => void): Condition => {
    const name = term.option.text;
    if (term.years) {
      const { from, to } = term.years;
      const axis = byName.get('year');
      const inside = bands.map((b, i) => (b.from >= from && b.to <= to ? i : -1)).filter((i) => i >= 0);
      if (inside.length === 0)
        report?.({ term, what: 'never', written: `${name} ${from} to ${to}`, known: [] });
      if (!axis) return inside.length > 0 || bands.length === 0 ? ALWAYS : NEVER;
      return diagrams.where(axis.variable, inside);
    }
    const axis = byName.get(name);
    if (!axis) {
      if (name === 'vehicle') {
        return term.values.some((v) => vehicles.some((known) => known.name === v.text)) ? ALWAYS : NEVER;
      }
      report?.({
        term,
        what: 'unknown option',
        written: name,
        known: [...knownOptions(vehicles), 'side', 'year'],
      });
      return ALWAYS;
    }
    const indexes: number[] = [];
    for (const value of term.values) {
      const i = axis.values.indexOf(value.text);
      if (i >= 0) indexes.push(i);
      else report?.({ term, what: 'unknown value', written: value.text, known: axis.values });
    }
    if (indexes.length === 0) return ALWAYS;
    let result = diagrams.where(axis.variable, indexes);
    if (axis.kind === 'option' && vehicles.length > 1) result = diagrams.and(result, ofVehicles(name, term));
    return result;
  };

  /** An option that only some vehicles have holds on those alone. */
  const ofVehicles = (option: string, term: GuardTerm): Condition => {
    const axis = byName.get('vehicle');
    if (!axis) return ALWAYS;
    const having = vehicles.map((v, i) =>
      v.options.some((o) => o.name === option && term.values.some((x) => o.values.includes(x.text))) ? i : -1,
    );
    return diagrams.where(
      axis.variable,
      having.filter((i) => i >= 0),
    );
  };

  const memo = new Map<Guard, Condition>();
  const condition = (guard: Guard | undefined, report?: (p: GuardProblem) => void): Condition => {
    if (!guard) return ALWAYS;
    const known = memo.get(guard);
    if (known !== undefined && !report) return known;
    let result: Condition = ALWAYS;
    for (const term of guard.terms) result = diagrams.and(result, termCondition(term, report));
    memo.set(guard, result);
    return result;
  };

  let domain: Condition = ALWAYS;
  if (vehicles.length > 1) {
    domain = NEVER;
    file.applies.forEach((line) => {
      const axis = byName.get('vehicle');
      const i = vehicles.findIndex((v) => v.name === line.vehicle?.text);
      if (!axis || i < 0) return;
      domain = diagrams.or(domain, diagrams.and(diagrams.where(axis.variable, [i]), condition(line.guard)));
    });
  } else if (file.applies.length > 0) {
    domain = NEVER;
    for (const line of file.applies) domain = diagrams.or(domain, condition(line.guard));
  }
  if (domain === NEVER) domain = ALWAYS;

  return {
    diagrams,
    axes,
    domain,
    condition,
    outcome: (name, values) => add(name, values, 'outcome'),
    axis: (name) => byName.get(name),
    words: (c, said = FINDING_WORDS) => wordsOf(diagrams, axes, c, domain, said),
    guardText(c) {
      if (diagrams.implies(domain, c)) return '';
      const terms = coverOf(diagrams, c, domain);
      const [only] = terms;
      if (!only || terms.length > 1) return undefined;
      return [...only.keys()].some((v) => axes[v]?.kind === 'outcome')
        ? undefined
        : termWords(axes, only, FINDING_WORDS);
    },
  };
}

/** What the universe needs to know of a vehicle. */
export interface VehicleFacts {
  readonly name: string;
  readonly options: readonly { readonly name: string; readonly values: readonly string[] }[];
  /** Years the procedure applies to on this vehicle. */
  readonly from: number | undefined;
  readonly to: number | undefined;
}

function knownOptions(vehicles: readonly VehicleFacts[]): string[] {
  return [...new Set(vehicles.flatMap((v) => v.options.map((o) => o.name)))];
}

function namedOptions(guards: readonly Guard[]): Set<string> {
  return new Set(guards.flatMap((g) => g.terms.map((t) => t.option.text)));
}

/** The years applied to, cut wherever a guard begins or ends. */
function yearBands(
  vehicles: readonly VehicleFacts[],
  guards: readonly Guard[],
): { from: number; to: number }[] {
  const starts = new Set<number>();
  const terms = guards.flatMap((g) => g.terms.flatMap((t) => (t.years ? [t.years] : [])));
  if (terms.length === 0) return [];
  const first = Math.min(
    ...declared(vehicles, 'from'),
    ...(declared(vehicles, 'from').length > 0 ? [] : terms.map((t) => t.from)),
  );
  const last = Math.max(
    ...declared(vehicles, 'to'),
    ...(declared(vehicles, 'to').length > 0 ? [] : terms.map((t) => t.to)),
  );
  starts.add(first);
  for (const t of terms) {
    if (t.from > first && t.from <= last) starts.add(t.from);
    if (t.to + 1 > first && t.to + 1 <= last) starts.add(t.to + 1);
  }
  const cuts = [...starts].sort((a, b) => a - b);
  return cuts.map((start, i) => ({ from: start, to: (cuts[i + 1] ?? last + 1) - 1 }));
}

function declared(vehicles: readonly VehicleFacts[], end: 'from' | 'to'): number[] {
  return vehicles.map((v) => v[end]).filter((year) => year !== undefined);
}

function wordsOf(
  d: Diagrams,
  axes: readonly Axis[],
  condition: Condition,
  domain: Condition,
  said: VariantWords,
): string | undefined {
  if (d.implies(domain, condition)) return undefined;
  const terms = coverOf(d, condition, domain);
  return terms.map((t) => termWords(axes, t, said)).join(`;${said.or}`);
}

const FINDING_WORDS: VariantWords = {
  and: ' and ',
  or: ' or ',
  // A test on a line of its own has no thing it is of: `if needed`.
  term: (axis, values) => `${axis.name || 'if'} ${values.join(' or ')}`,
};

function termWords(axes: readonly Axis[], term: Term, said: VariantWords): string {
  const parts: string[] = [];
  for (const [variable, values] of [...term].sort((a, b) => a[0] - b[0])) {
    const axis = axes[variable];
    if (!axis) continue;
    parts.push(
      said.term(
        axis,
        values.map((v) => axis.values[v] ?? ''),
      ),
    );
  }
  return parts.join(said.and);
}
