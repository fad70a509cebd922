// L404: sealed parts whose sealant holds filling back, and that do not say which fluid they hold in.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { closesMissing } from '../diagnostics/l404-closes-missing.js';
import type { Job } from '../names/job.js';
import { hasClause, nameSpan, type Thing } from '../names/model.js';
import { sealantOf } from '../state/joints.js';
import type { Check } from './check.js';
import { insertClause, workStatements } from './own-lines.js';

export const heldIn: Check = ({ job }) => {
  const fluids = filledIn(job);
  if (fluids.length === 0) return [];
  return job.file.things.flatMap((thing) => findingOn(job, thing, fluids) ?? []);
};

/** The fluids that the work puts in. */
function filledIn(job: Job): Thing[] {
  const found = workStatements(job).flatMap(({ statement }) =>
    statement.verb.on.fluid?.makes.includes('filled')
      ? statement.objects.flatMap(({ thing }) => (thing?.kind === 'fluid' ? [thing] : []))
      : [],
  );
  return [...new Set(found)];
}

function findingOn(job: Job, thing: Thing, fluids: readonly Thing[]): Finding | undefined {
  const supply = thing.kind === 'part' ? sealantOf(job, thing) : undefined;
  if (!supply || !hasClause(supply, 'fill after') || hasClause(thing, 'closes')) return undefined;
  if (job.inverse(thing, 'drain at').length > 0) return undefined;
  const span = nameSpan(thing);
  const { line } = thing;
  if (!span || !line) return undefined;
  const fixes = fluids.map(
    (fluid): Fix => ({
      title: `Add \`closes ${fluid.name}\``,
      edits: [insertClause(job, line, `closes ${fluid.name}`)],
    }),
  );
  return finding(
    closesMissing,
    { file: job.file.path, span, fixes },
    { name: thing.name, supply: supply.name, fluids: fluids.map(({ name }) => name) },
  );
}
