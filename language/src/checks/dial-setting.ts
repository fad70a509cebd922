// What is set on the wrench where that is not the torque itself: drag of a self-locking nut, a crowfoot.
import { torqueLines } from '../names/figures.js';
import type { Job } from '../names/job.js';
import { hasClause, type Thing } from '../names/model.js';
import type { BoundStatement } from '../names/statement.js';
import { numberOf, toSI } from '../quantity/index.js';
import type { Guard, SpecNode } from '../syntax/tree.js';
import { chooseWrench, crowfootSetting, type TorqueTool } from '../trade/wrench.js';
import { asksForTorque, millimetres, type StageTorque, stageTorques } from './fastener-facts.js';

/** One torque of a line with what it takes to reach it. Torques in N·m, lengths in mm. */
export interface DialSetting {
  readonly thing: Thing;
  readonly torque: StageTorque;
  /** The guard of the torque, where it holds on some vehicles alone. */
  readonly guard: Guard | undefined;
  /** Drag that is added; 0 without. */
  readonly prevailingNm: number;
  /** The crowfoot or handle extension, and the wrench it is on. */
  readonly adapter?: {
    readonly tool: Thing;
    readonly offsetMm: number;
    readonly wrench: Thing;
    readonly leverMm: number;
  };
  readonly lowNm: number;
  readonly highNm: number;
}

/** A crowfoot on a wrench whose length nobody has declared. */
export interface NoSetting {
  readonly thing: Thing;
  readonly adapter: Thing;
  /** The wrench that is taken, where one is known. */
  readonly wrench: Thing | undefined;
}

/**
 * What to set for each torque of a line, where it differs from the torque: T plus the drag (AC 43.13-1B), times L/(L + E)
 * for an adapter in line with the wrench (NAVEDTRA 14315). Empty for every other line.
 */
export function dialSettings(job: Job, statement: BoundStatement): (DialSetting | NoSetting)[] {
  if (!asksForTorque(statement.verb)) return [];
  const tools = statement.named('with').flatMap(({ thing }) => (thing?.kind === 'tool' ? [thing] : []));
  const adapter = tools.find((tool) => hasClause(tool, 'offset'));
  const offset = adapter && millimetres(adapter, 'offset');
  return statement.objects.flatMap(({ thing }) => {
    if (thing?.kind !== 'fastener') return [];
    const prevailingNm = prevailing(thing);
    if (prevailingNm === 0 && !offset) return [];
    return torquesOf(statement, thing).flatMap(({ torque, guard }): (DialSetting | NoSetting)[] => {
      const base = { thing, torque, guard, prevailingNm };
      const lowNm = torque.lowNm + prevailingNm;
      const highNm = torque.highNm + prevailingNm;
      if (!adapter || !offset) return [{ ...base, lowNm, highNm }];
      const wrench = tools.find((tool) => hasClause(tool, 'torque')) ?? usualWrench(job, torque.highNm);
      const lever = wrench && millimetres(wrench, 'length');
      if (!wrench || !lever) return [{ thing, adapter, wrench }];
      const low = crowfootSetting(lowNm, lever.mm, offset.mm);
      const high = crowfootSetting(highNm, lever.mm, offset.mm);
      if ('problem' in low || 'problem' in high) return [];
      const on = { tool: adapter, offsetMm: offset.mm, wrench, leverMm: lever.mm };
      return [{ ...base, adapter: on, lowNm: low.settingNm, highNm: high.settingNm }];
    });
  });
}

/** Drag of the fastener on its run, N·m; 0 where none is declared. */
function prevailing(thing: Thing): number {
  const measure = thing.clauses.get('prevailing')?.[0]?.clause.spec?.stages[0]?.measure.measure;
  if (measure?.unit.kind !== 'torque') return 0;
  const { nominal, high, low } = toSI(measure);
  const value = nominal ?? high ?? low;
  return value ? numberOf(value) : 0;
}

/** The torques that a line asks for: its own, or those of the entry; one stage, or all. */
function torquesOf(
  statement: BoundStatement,
  thing: Thing,
): { torque: StageTorque; guard: Guard | undefined }[] {
  const own = statement.clause('bare')?.spec;
  const specs: { spec: SpecNode | undefined; guard: Guard | undefined }[] = own
    ? [{ spec: own, guard: undefined }]
    : torqueLines(thing).map(({ spec, guard }) => ({ spec, guard }));
  const stage = Number(statement.clause('stage')?.raw?.text ?? Number.NaN);
  return specs.flatMap(({ spec, guard }) =>
    stageTorques(spec)
      .filter(({ at }) => own || Number.isNaN(stage) || spec?.stages[stage - 1]?.measure === at)
      .map((torque) => ({ torque, guard })),
  );
}

/** The wrench that the house takes for a torque, where the line names none. */
function usualWrench(job: Job, torqueNm: number): Thing | undefined {
  const { tool } = chooseWrench(torqueNm, [...job.scope.names.values()].flatMap(rangeOf));
  return tool && job.scope.resolve(tool.name);
}

function rangeOf(tool: Thing): TorqueTool[] {
  const measure = tool.kind === 'tool' ? torqueLines(tool)[0]?.spec?.stages[0]?.measure.measure : undefined;
  const { low, high } = measure ? toSI(measure) : {};
  return low && high ? [{ name: tool.name, lowNm: numberOf(low), highNm: numberOf(high) }] : [];
}
