// F205, F206, F211, F212: lines of work that tighten, against what the set's entry says.
import { type Finding, finding } from '../diagnostics/define.js';
import { torqueWithoutFigure } from '../diagnostics/f205-torque-without-figure.js';
import { tightenWithFigure } from '../diagnostics/f206-tighten-with-figure.js';
import { stageBeyond } from '../diagnostics/f211-stage-beyond.js';
import { countAboveSet } from '../diagnostics/f212-count-above-set.js';
import { countKnown, isFormless, stageCount, tighteningCount, torqueLines } from '../names/figures.js';
import type { Job } from '../names/job.js';
import { hasClause, type Thing } from '../names/model.js';
import type { BoundItem, BoundStatement } from '../names/statement.js';
import type { Check } from './check.js';
import { asksForTorque, tightensByHand } from './fastener-facts.js';
import { insertClause, workStatements } from './own-lines.js';

export const tighteningLines: Check = ({ job }) => {
  const asked = new Set<string>();
  const found: Finding[] = [];
  for (const { statement } of workStatements(job)) {
    for (const object of statement.objects) {
      const { thing } = object;
      if (thing?.kind !== 'fastener') continue;
      const own = [
        figureFinding(job, statement, object, thing, asked),
        stageFinding(job, statement, thing),
        countFinding(job, object, thing),
      ];
      for (const each of own) if (each) found.push(each);
    }
  }
  return found;
};

/** Once for each set: the question is about its entry, not about the line. */
function figureFinding(
  job: Job,
  statement: BoundStatement,
  object: BoundItem,
  thing: Thing,
  asked: Set<string>,
): Finding | undefined {
  const { path: file, tree } = job.file;
  if (
    asksForTorque(statement.verb) &&
    !hasClause(thing, 'torque') &&
    !statement.clause('bare')?.spec &&
    !isFormless(thing)
  ) {
    if (asked.has(thing.id)) return undefined;
    asked.add(thing.id);
    const verb = statement.line.verb;
    const fixes = [
      ...(thing.file === file && thing.line
        ? [
            {
              title: `Add \`torque ?\` to \`${thing.name}\``,
              edits: [insertClause(job, thing.line, 'torque ?')],
            },
          ]
        : []),
      ...(statement.objects.length === 1
        ? [
            {
              title: 'Write `tighten`',
              edits: [{ file, span: { start: verb.start, end: verb.end }, text: 'tighten' }],
            },
          ]
        : []),
    ];
    return finding(torqueWithoutFigure, { file, span: object.item, fixes }, { name: thing.name });
  }
  if (!tightensByHand(statement.verb)) return undefined;
  const spec = torqueLines(thing)[0]?.spec;
  if (!spec || spec.stages.length === 0) return undefined;
  const { verb } = statement.line;
  const written = thing.file === file ? tree.text : (job.imports.model(thing.file)?.tree.text ?? '');
  const fixes = [
    {
      title: 'Write `torque`',
      edits: [{ file, span: { start: verb.start, end: verb.end }, text: 'torque' }],
      preferred: true as const,
    },
  ];
  return finding(
    tightenWithFigure,
    { file, span: verb, fixes },
    { name: thing.name, torque: written.slice(spec.start, spec.end) },
  );
}

function stageFinding(job: Job, statement: BoundStatement, thing: Thing): Finding | undefined {
  const raw = statement.clause('stage')?.raw;
  if (!raw || raw.hole || !hasClause(thing, 'torque')) return undefined;
  const stages = stageCount(thing);
  const stage = /^\d+$/.test(raw.text) ? Number(raw.text) : Number.NaN;
  if (stage >= 1 && stage <= stages) return undefined;
  return finding(
    stageBeyond,
    { file: job.file.path, span: raw },
    { stage: raw.text, name: thing.name, stages },
  );
}

function countFinding(job: Job, { count, item }: BoundItem, thing: Thing): Finding | undefined {
  if (count === undefined || !item.count || !countKnown(thing)) return undefined;
  const set = tighteningCount(thing);
  if (count <= set) return undefined;
  return finding(countAboveSet, { file: job.file.path, span: item.count }, { count, name: thing.name, set });
}
