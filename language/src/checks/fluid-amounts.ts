// L301 to L307: amounts that go in, drains and fills in their order, refrigerant by mass.
import { type Finding, finding } from '../diagnostics/define.js';
import { fillWithoutAmount } from '../diagnostics/l301-fill-without-amount.js';
import { fillOverSystem } from '../diagnostics/l302-fill-over-system.js';
import { drainedTwice } from '../diagnostics/l303-drained-twice.js';
import { filledTwice } from '../diagnostics/l304-filled-twice.js';
import { chargeNotByMass } from '../diagnostics/l305-charge-not-by-mass.js';
import { chargeWithoutTolerance } from '../diagnostics/l306-charge-without-tolerance.js';
import { chargeOffPlate } from '../diagnostics/l307-charge-off-plate.js';
import type { Job } from '../names/job.js';
import { clausesOf, hasClause, type Thing } from '../names/model.js';
import type { BoundItem } from '../names/statement.js';
import { type Measure, numberOf, type Rational, toSI } from '../quantity/index.js';
import type { MeasureNode } from '../syntax/tree.js';
import { overfill } from '../trade/fluid-amounts.js';
import { NEVER } from '../variants/diagrams.js';
import type { VerbDef } from '../vocabulary/verb.js';
import type { Check } from './check.js';
import { statementsOf, type WorkStatement, workStatements } from './own-lines.js';
import { leaveOut } from './two-places.js';

export const fluidAmounts: Check = ({ job }) => [
  ...statementsOf(job, fills).flatMap((w) => fluidsOf(w).flatMap((object) => fillFindings(job, w, object))),
  ...orderFindings(job),
  ...job.file.things
    .filter((t) => t.kind === 'fluid' && hasClause(t, 'refrigerant'))
    .flatMap((t) => chargeFindings(job, t)),
];

const fills = (verb: VerbDef): boolean => verb.on.fluid?.makes.includes('filled') ?? false;

const drains = (verb: VerbDef): boolean => verb.on.fluid?.makes.includes('drained') ?? false;

const fluidsOf = ({ statement }: WorkStatement): readonly BoundItem[] =>
  statement.objects.filter((o) => o.thing?.kind === 'fluid');

function fillFindings(job: Job, work: WorkStatement, { thing, item }: BoundItem): Finding[] {
  if (!thing) return [];
  const { statement } = work;
  const { path: file, tree } = job.file;
  const bare = statement.clause('bare')?.spec?.stages[0]?.measure;
  const off = bare && offPlate(job, work, thing, bare);
  if (off) return [off];
  const said =
    bare !== undefined || ['fill', 'mass', 'until level at'].some((word) => hasClause(thing, word));
  if (!said && !statement.clause('until level at'))
    return [finding(fillWithoutAmount, { file, span: item.name }, { name: thing.name })];
  // Without an end mark on the line, two figures that differ are a finding of their own.
  const holds = bare && statement.clause('until level at') ? smallest(job, thing, work.when) : undefined;
  const [litres, most] = [litresOf(bare), litresOf(holds)];
  if (!bare || !holds || litres === undefined || most === undefined || !overfill(litres, most)) return [];
  const source = job.imports.model(thing.file)?.tree.text ?? tree.text;
  const data = {
    name: thing.name,
    amount: tree.text.slice(bare.start, bare.end),
    holds: source.slice(holds.start, holds.end),
  };
  return [finding(fillOverSystem, { file, span: bare }, data)];
}

/** The declared figures that hold somewhere the line runs; a guarded figure takes the place of the plain one. */
function holding(job: Job, fluid: Thing, word: 'fill' | 'mass', when: number): MeasureNode[] {
  const d = job.universe.diagrams;
  const declared = clausesOf(fluid, word);
  const elsewhere = declared.reduce((left, c) => (c.guard ? d.minus(left, job.where(c.guard)) : left), when);
  return declared
    .filter((c) => (c.guard ? d.and(when, job.where(c.guard)) : elsewhere) !== NEVER)
    .flatMap((c) => c.clause.spec?.stages[0]?.measure ?? []);
}

/** A charge by mass that is outside what the entry allows on some vehicle that the line is for. */
function offPlate(
  job: Job,
  { statement, when }: WorkStatement,
  fluid: Thing,
  bare: MeasureNode,
): Finding | undefined {
  const charged = bare.measure;
  if (charged?.unit.kind !== 'mass') return undefined;
  const allowed = holding(job, fluid, 'mass', when).find(
    ({ measure }) => measure && !isWithin(charged, measure),
  );
  const { path: file, tree } = job.file;
  const source = job.imports.model(fluid.file)?.tree.text ?? tree.text;
  const own = statement.clause('bare');
  const fixes = own ? [leaveOut(job, statement, own)] : [];
  return (
    allowed &&
    finding(
      chargeOffPlate,
      { file, span: bare, fixes },
      {
        name: fluid.name,
        amount: tree.text.slice(bare.start, bare.end),
        allowed: source.slice(allowed.start, allowed.end),
      },
    )
  );
}

/** A plain figure allows half a percent, so that a rounded conversion is no quarrel. */
function isWithin(charged: Measure, allowed: Measure): boolean {
  const [least, most] = extent(charged);
  const [low, high] = extent(allowed);
  const slack = low === high ? low * 0.005 : 0;
  return least >= low - slack && most <= high + slack;
}

function extent(measure: Measure): readonly [number, number] {
  const { nominal, low, high } = toSI(measure);
  const of = (value: Rational | undefined, none: number): number =>
    value === undefined ? none : numberOf(value);
  return [of(low ?? nominal, 0), of(high ?? nominal, Number.POSITIVE_INFINITY)];
}

/** The smallest declared fill that holds somewhere the line runs. */
function smallest(job: Job, fluid: Thing, when: number): MeasureNode | undefined {
  const measures = holding(job, fluid, 'fill', when);
  if (measures.some((m) => litresOf(m) === undefined)) return undefined;
  return measures.sort((a, b) => (litresOf(a) ?? 0) - (litresOf(b) ?? 0))[0];
}

function litresOf(node: MeasureNode | undefined): number | undefined {
  const measure = node?.measure;
  if (measure?.unit.kind !== 'volume') return undefined;
  const { nominal, high } = toSI(measure);
  const value = nominal ?? high;
  return value === undefined ? undefined : numberOf(value) * 1000;
}

/**
 * Drains and fills of each fluid in the order written. A line that is done only sometimes, or any other line that may let
 * fluid out or move it, makes the fluid's state unknown and ends the comparison.
 */
function orderFindings(job: Job): Finding[] {
  const file = job.file.path;
  const d = job.universe.diagrams;
  const last = new Map<
    string,
    {
      readonly did: 'drained' | 'filled';
      readonly when: number;
      readonly span: { readonly start: number; readonly end: number };
    }
  >();
  const found: Finding[] = [];
  // Without a drain or a fill there is no order of them.
  if (statementsOf(job, (verb) => fills(verb) || drains(verb)).length === 0) return found;
  let operation = workStatements(job)[0]?.operation;
  for (const work of workStatements(job)) {
    if (work.operation !== operation) last.clear();
    operation = work.operation;
    const makes = work.statement.verb.on.fluid?.makes ?? [];
    const did = makes.includes('filled') ? 'filled' : makes.includes('drained') ? 'drained' : undefined;
    if (
      did === undefined &&
      LETS_OUT.some(
        (kind) => work.statement.objects.some((o) => o.thing?.kind === kind) && !isPassive(work, kind),
      )
    )
      last.clear();
    for (const { thing, item } of did === undefined ? [] : work.statement.objects) {
      if (thing?.kind !== 'fluid') continue;
      const before = last.get(thing.id);
      if (
        before &&
        before.did === did &&
        !work.sometimes &&
        d.and(before.when, work.when) !== NEVER &&
        whole(work)
      ) {
        const related = [
          { file, span: before.span, message: did === 'drained' ? 'drained here' : 'filled here' },
        ];
        found.push(
          finding(
            did === 'drained' ? drainedTwice : filledTwice,
            { file, span: item.name, related },
            { name: thing.name },
          ),
        );
      }
      if (work.sometimes || !whole(work)) last.delete(thing.id);
      else if (did !== undefined) last.set(thing.id, { did, when: work.when, span: work.line.code });
    }
  }
  return found;
}

const LETS_OUT = ['part', 'connection', 'circuit', 'machine'] as const;

/** A verb that only looks at, cleans or fits the thing lets nothing out. */
function isPassive({ statement }: WorkStatement, kind: (typeof LETS_OUT)[number]): boolean {
  const makes = statement.verb.on[kind]?.makes ?? [];
  return makes.every((m) => m === 'outcome' || m === 'fitted');
}

/** `drain axle-oil, 2 L` lets out a part only, and `until level` fills only what lacks. */
function whole({ statement }: WorkStatement): boolean {
  const partial = drains(statement.verb) && statement.clause('bare') !== undefined;
  return !partial && !(statement.clause('until level at') && !statement.clause('bare'));
}

function chargeFindings(job: Job, fluid: Thing): Finding[] {
  const { path: file, tree } = job.file;
  return ['fill', 'mass'].flatMap((word) =>
    clausesOf(fluid, word).flatMap(({ clause }) => {
      const node = clause.spec?.stages[0]?.measure;
      const { measure } = node ?? {};
      if (!node || !measure) return [];
      if (measure.unit.kind === 'volume')
        return [finding(chargeNotByMass, { file, span: node }, { name: fluid.name })];
      if (
        measure.unit.kind !== 'mass' ||
        measure.form !== 'amount' ||
        measure.plus !== undefined ||
        measure.minus !== undefined
      )
        return [];
      return [
        finding(
          chargeWithoutTolerance,
          { file, span: node },
          { name: fluid.name, mass: tree.text.slice(node.start, node.end) },
        ),
      ];
    }),
  );
}
