// F216: torque wrenches that a line names, against the torque of what it tightens.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { wrenchOutOfRange } from '../diagnostics/f216-wrench-out-of-range.js';
import { torqueLines } from '../names/figures.js';
import { allThings, type Job } from '../names/job.js';
import { clausesOf, hasClause, type Thing } from '../names/model.js';
import type { BoundStatement } from '../names/statement.js';
import { numberOf, toSI } from '../quantity/index.js';
import { chooseWrench, type TorqueTool } from '../trade/wrench.js';
import type { Check } from './check.js';
import { asksForTorque, type StageTorque, stageTorques } from './fastener-facts.js';
import { statementsWith } from './own-lines.js';

export const namedWrenches: Check = ({ job }) =>
  statementsWith(job, 'with').flatMap(({ statement }) =>
    asksForTorque(statement.verb) ? findingsOn(job, statement) : [],
  );

function findingsOn(job: Job, statement: BoundStatement): Finding[] {
  const tools = statement.named('with');
  // What is set with a crowfoot on the wrench is another figure, and a finding of its own where it is not known.
  if (tools.some(({ thing }) => thing && hasClause(thing, 'offset'))) return [];
  return tools.flatMap(({ thing: tool, item }) => {
    const wrench = tool && wrenchOf(tool);
    if (!tool || !wrench) return [];
    for (const { thing } of statement.objects) {
      const missed = thing && torquesOf(statement, thing).find((torque) => !reaches(wrench, torque));
      if (!thing || !missed) continue;
      const { start, end } = item.name;
      const at = { file: job.file.path, span: { start, end }, fixes: otherWrench(job, item.name, missed) };
      return [
        finding(wrenchOutOfRange, at, {
          wrench: tool.name,
          range: written(job, tool.file, clausesOf(tool, 'torque')[0]?.clause.spec),
          torque: written(job, thing.file, missed.at),
          name: thing.name,
        }),
      ];
    }
    return [];
  });
}

/** The torques that a line brings a set to: all of its stages, or the one named. */
function torquesOf(statement: BoundStatement, thing: Thing): readonly StageTorque[] {
  if (thing.kind !== 'fastener' || hasClause(thing, 'prevailing')) return [];
  const stage = Number(statement.clause('stage')?.raw?.text ?? Number.NaN);
  return torqueLines(thing).flatMap(({ spec }) => {
    const all = stageTorques(spec);
    return Number.isInteger(stage) ? all.slice(stage - 1, stage) : all;
  });
}

const middle = ({ lowNm, highNm }: StageTorque): number => (lowNm + highNm) / 2;
const reaches = (wrench: TorqueTool, torque: StageTorque): boolean =>
  chooseWrench(middle(torque), [wrench]).fit !== 'none';

/** The range that the entry of a wrench says. */
function wrenchOf(tool: Thing): TorqueTool | undefined {
  const measure = clausesOf(tool, 'torque')[0]?.clause.spec?.stages[0]?.measure.measure;
  if (tool.kind !== 'tool' || measure?.unit.kind !== 'torque' || measure.form !== 'range') return undefined;
  const { low, high } = toSI(measure);
  return low && high ? { name: tool.name, lowNm: numberOf(low), highNm: numberOf(high) } : undefined;
}

function otherWrench(
  job: Job,
  { start, end }: { readonly start: number; readonly end: number },
  torque: StageTorque,
): Fix[] {
  const tools = allThings(job.scopes).flatMap((thing) => wrenchOf(thing) ?? []);
  const { tool } = chooseWrench(middle(torque), tools);
  if (!tool) return [];
  const edits = [{ file: job.file.path, span: { start, end }, text: tool.name }];
  return [{ title: `Write \`${tool.name}\``, edits }];
}

function written(
  job: Job,
  file: string,
  at: { readonly start: number; readonly end: number } | undefined,
): string {
  const text = file === job.file.path ? job.file.tree.text : (job.imports.model(file)?.tree.text ?? '');
  return at === undefined ? '' : text.slice(at.start, at.end);
}
