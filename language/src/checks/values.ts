// N206, N207: values of conditions and positions of parts.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { valueMissing, valueNotDeclared } from '../diagnostics/names.js';
import { type Job, linesOfWork } from '../names/job.js';
import type { Thing } from '../names/model.js';
import type { BoundStatement } from '../names/statement.js';
import type { Name } from '../syntax/tree.js';
import { nearestName } from '../vocabulary/near.js';
import type { Check } from './check.js';
import { nameUses } from './name-uses.js';
import { statementsOf } from './own-lines.js';

export const values: Check = ({ job }) => [
  ...inStatements(job),
  ...inUses(job),
  ...inPrerequisites(job),
  ...sides(job),
];

function inStatements(job: Job): Finding[] {
  return statementsOf(job, ({ takesValue }) => takesValue === true).flatMap(({ statement }) => {
    const { objects, line, file } = statement;
    return objects.flatMap(({ thing, item }) => {
      if (thing?.kind !== 'condition' || item.value || line.broken) return [];
      const known = thing.values.map((value) => value.text);
      const fixes: Fix[] = known.map((value) => ({
        title: `Write \`${item.name.text} ${value}\``,
        edits: [{ file, span: { start: item.name.end, end: item.name.end }, text: ` ${value}` }],
      }));
      return [
        finding(
          valueMissing,
          { file, span: { start: item.name.start, end: item.name.end }, fixes },
          { name: thing.name, known },
        ),
      ];
    });
  });
}

/** The part with positions that a statement moves `to` somewhere: what is named there is one of its positions. */
export function movedPart(statement: BoundStatement, word: string): Thing | undefined {
  if (word !== 'to' || !statement.verb.on.part?.makes.includes('moved')) return undefined;
  return statement.objects
    .map((object) => object.thing)
    .find((thing) => thing?.kind === 'part' && thing.values.length > 0);
}

/** Values behind names: of objects, in relations, and the positions that parts are moved to. */
function inUses(job: Job): Finding[] {
  const found: Finding[] = [];
  for (const { item, name, thing, at } of nameUses(job)) {
    if (!item || item.name !== name || (!item.value && at.form !== 'clause')) continue;
    const moved = !thing && at.form === 'clause' ? movedPart(at.statement, at.clause.word) : undefined;
    if (thing && item.value) found.push(...valueFault(job, thing, item.value));
    else if (moved) found.push(...valueFault(job, moved, name));
  }
  return found;
}

function inPrerequisites(job: Job): Finding[] {
  return job.file.prerequisites.flatMap((line) => {
    if (line.kind !== 'prerequisite' || line.broken || !line.value) return [];
    const thing = job.scope.resolve(line.name.text);
    return thing ? valueFault(job, thing, line.value) : [];
  });
}

function valueFault(job: Job, thing: Thing, value: Name): Finding[] {
  const known = thing.values.map((each) => each.text);
  if (known.includes(value.text) || (thing.kind === 'condition' && known.length === 0)) return [];
  const near = nearestName(value.text, known);
  const span = { start: value.start, end: value.end };
  const fixes: Fix[] = known.map((text) => ({
    title: `Write \`${text}\``,
    edits: [{ file: job.file.path, span, text }],
    ...(near.length === 1 && near[0] === text ? { preferred: true as const } : {}),
  }));
  return [
    finding(
      valueNotDeclared,
      { file: job.file.path, span, fixes: fixes.slice(0, 4) },
      { name: thing.name, value: value.text, known },
    ),
  ];
}

/** Sides that the procedure is not worked on. A procedure without sides is for either. */
function sides({ file }: Job): Finding[] {
  if (file.sides.length === 0) return [];
  return linesOfWork(file).flatMap((line) => {
    if (line.broken) return [];
    const named =
      line.kind === 'perform'
        ? line.side
          ? [line.side]
          : []
        : 'clauses' in line
          ? line.clauses.flatMap((clause) =>
              clause.word === 'side' && 'words' in clause ? clause.words : [],
            )
          : [];
    return named
      .filter(({ text }) => !file.sides.includes(text))
      .map(({ text, start, end }) => {
        const fixes: Fix[] = file.sides.map((side) => ({
          title: `Write \`${side}\``,
          edits: [{ file: file.path, span: { start, end }, text: side }],
        }));
        return finding(
          valueNotDeclared,
          { file: file.path, span: { start, end }, fixes },
          { name: 'side', value: text, known: file.sides },
        );
      });
  });
}
