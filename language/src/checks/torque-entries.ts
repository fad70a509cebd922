// F204, F207 to F209: the torque clause of a set: its source, order, wrench and what is on the threads.
import { type Finding, finding } from '../diagnostics/define.js';
import { torqueWithoutSource } from '../diagnostics/f204-torque-without-source.js';
import { orderImpossible } from '../diagnostics/f207-order-impossible.js';
import { noWrench } from '../diagnostics/f208-no-wrench.js';
import { wetOnDry } from '../diagnostics/f209-wet-on-dry.js';
import { countKnown, tighteningCount, torqueLines } from '../names/figures.js';
import { allThings, type Job } from '../names/job.js';
import { clausesOf, hasClause, type Thing } from '../names/model.js';
import { numberOf, toSI } from '../quantity/index.js';
import type { Raw, SpecNode } from '../syntax/tree.js';
import { lubricantOnDrySpec } from '../trade/friction.js';
import { isOrder, ORDER_PATTERNS, tighteningOrder } from '../trade/order.js';
import { readOrder } from '../trade/order-read.js';
import { chooseWrench, type TorqueTool } from '../trade/wrench.js';
import { nearestWord } from '../vocabulary/near.js';
import type { Check } from './check.js';
import { asksForTorque, lubricantNamed, stageTorques } from './fastener-facts.js';
import { specFindings } from './joint-strength.js';
import { nearFixes } from './near-fixes.js';
import { statementsWith, workStatements } from './own-lines.js';

export const torqueEntries: Check = ({ job }) => {
  const wrenches = wrenchesOf(job);
  const sets = job.file.things.filter((t) => t.kind === 'fastener');
  const declared = sets.flatMap((thing) => [
    ...torqueLines(thing).flatMap((line) => [
      ...(line.per || !line.spec ? [] : sourceFinding(job, thing, line.spec, line.at.clause)),
      ...wrenchFindings(job, thing, line.spec, wrenches),
    ]),
    ...clausesOf(thing, 'order').flatMap(({ clause }) => orderFindings(job, thing, clause.raw)),
    ...wetFindings(job, thing),
  ]);
  const figured = new Set([...statementsWith(job, 'bare'), ...statementsWith(job, 'order')]);
  const written = workStatements(job)
    .filter((work) => figured.has(work))
    .flatMap(({ statement }) => {
      const bare = asksForTorque(statement.verb) ? statement.clause('bare') : undefined;
      const orders = statement.clauses.filter((c) => c.word === 'order');
      return statement.objects.flatMap(({ thing }) => {
        if (thing?.kind !== 'fastener') return [];
        // A figure that repeats the entry's has the entry's source; one that differs is a finding of its own.
        const isOwn = bare?.spec && !statement.clause('per') && !hasClause(thing, 'torque');
        const source = isOwn && bare?.spec ? sourceFinding(job, thing, bare.spec, bare) : [];
        return [
          ...source,
          ...wrenchFindings(job, thing, bare?.spec, wrenches),
          ...orders.flatMap((c) => orderFindings(job, thing, c.raw)),
        ];
      });
    });
  return [...declared, ...written];
};

function sourceFinding(
  job: Job,
  thing: Thing,
  spec: SpecNode,
  at: { readonly start: number; readonly end: number },
): Finding[] {
  // A hole has no figure yet, so it has no source to name.
  if (spec.stages.length === 0 || spec.stages.some((s) => s.measure.hole)) return [];
  const { path: file, tree } = job.file;
  const fixes = [
    { title: 'Add `per ?`', edits: [{ file, span: { start: spec.end, end: spec.end }, text: ', per ?' }] },
  ];
  return [
    finding(
      torqueWithoutSource,
      { file, span: { start: at.start, end: at.end }, fixes },
      { torque: tree.text.slice(spec.start, spec.end), name: thing.name },
    ),
  ];
}

function orderFindings(job: Job, thing: Thing, raw: Raw | undefined): Finding[] {
  if (!raw || raw.hole) return [];
  const file = job.file.path;
  const read = readOrder(raw.text);
  if ('problem' in read) {
    const fixes = nearFixes(file, [raw], nearestWord(raw.text, ORDER_PATTERNS));
    return [finding(orderImpossible, { file, span: raw, fixes }, { problem: read.problem })];
  }
  if (!countKnown(thing)) return [];
  const rows = Number(
    /^(\d+) rows?$/.exec(clausesOf(thing, 'layout')[0]?.clause.raw?.text ?? '')?.[1] ?? Number.NaN,
  );
  const layout = read.layout ?? (Number.isInteger(rows) && rows > 0 ? { rows } : undefined);
  const order = tighteningOrder({ pattern: read.pattern, count: tighteningCount(thing), layout });
  if (isOrder(order)) return [];
  const { problem, instead } = order;
  // The count may be what is wrong: not to be done unasked.
  const fixes = instead
    ? [
        {
          title: `Write \`${instead}\``,
          edits: [{ file, span: { start: raw.start, end: raw.end }, text: instead }],
        },
      ]
    : [];
  return [finding(orderImpossible, { file, span: raw, fixes }, { problem })];
}

/** The torque wrenches of the tool list: tools with a torque range. */
function wrenchesOf(job: Job): TorqueTool[] {
  return allThings(job.scopes).flatMap((thing) => {
    if (thing.kind !== 'tool') return [];
    const measure = clausesOf(thing, 'torque')[0]?.clause.spec?.stages[0]?.measure.measure;
    if (measure?.unit.kind !== 'torque') return [];
    const { low, high } = toSI(measure);
    return high
      ? [
          {
            name: thing.title,
            lowNm: low && measure.form === 'range' ? numberOf(low) : 0,
            highNm: numberOf(high),
          },
        ]
      : [];
  });
}

function wrenchFindings(
  job: Job,
  thing: Thing,
  spec: SpecNode | undefined,
  wrenches: readonly TorqueTool[],
): Finding[] {
  // A torque that is wrong for its bolt is no reason to buy a wrench.
  if (wrenches.length === 0 || !spec || specFindings(job, thing, spec).length > 0) return [];
  const { path: file, tree } = job.file;
  const missing = stageTorques(spec).find(
    (t) => chooseWrench((t.lowNm + t.highNm) / 2, wrenches).fit === 'none',
  );
  if (!missing) return [];
  const torque = tree.text.slice(missing.at.start, missing.at.end);
  const list = wrenches.map((w) => w.name);
  return [finding(noWrench, { file, span: missing.at }, { torque, name: thing.name, wrenches: list })];
}

/** `dry` beside a lubricant or threadlocker on one entry contradict each other. */
function wetFindings(job: Job, thing: Thing): Finding[] {
  const wet =
    clausesOf(thing, 'lubricant')[0] ?? clausesOf(thing, 'threadlocker')[0] ?? clausesOf(thing, 'oiled')[0];
  if (!wet || !hasClause(thing, 'dry')) return [];
  const { clause } = wet;
  const what =
    clause.word === 'lubricant'
      ? (clause.raw?.text ?? 'a lubricant')
      : clause.word === 'oiled'
        ? 'oil'
        : 'threadlocker';
  return [wetFinding(job, thing, clause, what)].filter((f) => f !== undefined);
}

/** A finding that something slippery goes on threads whose torque holds for dry ones; none where no torque is written. */
export function wetFinding(
  job: Job,
  thing: Thing,
  span: { readonly start: number; readonly end: number },
  what: string,
): Finding | undefined {
  const torque = torqueLines(thing)
    .flatMap((l) => stageTorques(l.spec))
    .at(-1);
  if (!torque) return undefined;
  const lubrication = lubricantNamed(what) ?? 'oiled';
  const factor = numberOf(torque.unit.factor);
  const same = lubricantOnDrySpec(torque.highNm / factor, lubrication).torqueNm;
  const data = {
    name: thing.name,
    what,
    torque: figure(torque.highNm / factor, torque.unit.symbol),
    same: figure(same, torque.unit.symbol),
  };
  return finding(wetOnDry, { file: job.file.path, span: { start: span.start, end: span.end } }, data);
}

function figure(value: number, unit: string): string {
  return `${Number(value.toPrecision(3))} ${unit}`;
}
