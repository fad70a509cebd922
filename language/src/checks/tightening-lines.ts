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
  return workStatements(job).flatMap(({ statement }) =>
    statement.objects.flatMap((object) => {
      const { thing } = object;
      if (thing?.kind !== 'fastener') return [];
      return [
        ...figureFindings(job, statement, object, thing, asked),
        ...stageFindings(job, statement, thing),
        ...countFindings(job, object, thing),
      ];
    }),
  );
};

/** Once for each set: the question is about its entry, not about the line. */
function figureFindings(
  job: Job,
  statement: BoundStatement,
  object: BoundItem,
  thing: Thing,
  asked: Set<string>,
): Finding[] {
  const { path: file, tree } = job.file;
  if (
    asksForTorque(statement) &&
    !hasClause(thing, 'torque') &&
    !statement.clause('bare')?.spec &&
    !isFormless(thing)
  ) {
    if (asked.has(thing.id)) return [];
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
    return [finding(torqueWithoutFigure, { file, span: object.item, fixes }, { name: thing.name })];
  }
  const spec = torqueLines(thing)[0]?.spec;
  if (!tightensByHand(statement) || !spec || spec.stages.length === 0) return [];
  const { verb } = statement.line;
  const written = thing.file === file ? tree.text : (job.imports.model(thing.file)?.tree.text ?? '');
  const fixes = [
    {
      title: 'Write `torque`',
      edits: [{ file, span: { start: verb.start, end: verb.end }, text: 'torque' }],
      preferred: true as const,
    },
  ];
  return [
    finding(
      tightenWithFigure,
      { file, span: verb, fixes },
      { name: thing.name, torque: written.slice(spec.start, spec.end) },
    ),
  ];
}

function stageFindings(job: Job, statement: BoundStatement, thing: Thing): Finding[] {
  const raw = statement.clause('stage')?.raw;
  if (!raw || raw.hole || !hasClause(thing, 'torque')) return [];
  const stages = stageCount(thing);
  const stage = /^\d+$/.test(raw.text) ? Number(raw.text) : Number.NaN;
  if (stage >= 1 && stage <= stages) return [];
  return [
    finding(stageBeyond, { file: job.file.path, span: raw }, { stage: raw.text, name: thing.name, stages }),
  ];
}

function countFindings(job: Job, object: BoundItem, thing: Thing): Finding[] {
  const { count } = object;
  const set = tighteningCount(thing);
  if (count === undefined || !countKnown(thing) || count <= set || !object.item.count) return [];
  return [
    finding(
      countAboveSet,
      { file: job.file.path, span: object.item.count },
      { count, name: thing.name, set },
    ),
  ];
}
