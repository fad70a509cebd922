// N304, N305, N306: operations, procedures and vehicles that a file names and that are not there.
import { type Finding, finding } from '../diagnostics/define.js';
import { performCycle, unknownOperation, unknownVehicle } from '../diagnostics/names.js';
import type { Job } from '../names/job.js';
import type { PerformLine } from '../syntax/tree.js';
import { nearestName } from '../vocabulary/near.js';
import type { Check } from './check.js';
import { oneOf } from './kind-words.js';
import { nearNameFixes } from './near-fixes.js';
import { wordsOnBrokenLines } from './undeclared.js';

export const performed: Check = ({ job, run }) => {
  const found = vehicles(job);
  const seen = new Set<number>();
  for (const { line, file, problem, way } of run?.performProblems ?? []) {
    // What an operation of another file performs in vain is reported there.
    if (file !== job.file.path || seen.has(line.start) || line.broken) continue;
    seen.add(line.start);
    if (problem === 'unknown') found.push(...unknown(job, line));
    else
      found.push(
        finding(
          performCycle,
          { file, span: { start: line.code.start, end: line.code.end } },
          { way: way.map(shortName) },
        ),
      );
  }
  return found;
};

function unknown({ file, imports }: Job, line: PerformLine): Finding[] {
  const { operation, from } = line;
  if (from?.hole || !operation) return [];
  if (!from && wordsOnBrokenLines(file.lines).has(operation.text)) return [];
  const callee = from ? imports.numbered(from.text) : file;
  const at = callee ? operation : (from ?? operation);
  const span = { start: at.start, end: at.end };
  const near = callee
    ? nearestName(
        operation.text,
        callee.operations.map((each) => each.name),
      )
    : [];
  return [
    finding(
      unknownOperation,
      { file: file.path, span, fixes: nearNameFixes(file.path, [span], near) },
      { operation: operation.text, from: from?.text, isFile: callee === undefined, near },
    ),
  ];
}

function vehicles({ file, scope }: Job): Finding[] {
  return file.applies.flatMap((line) => {
    if (!line.vehicle || line.broken) return [];
    const thing = scope.resolve(line.vehicle.text);
    // A missing file is reported at its own line, and may be the one that declares it.
    if (thing?.kind === 'vehicle' || (!thing && scope.missing.length > 0)) return [];
    const span = { start: line.vehicle.start, end: line.vehicle.end };
    const known = [...scope.names.values()]
      .filter((each) => each.kind === 'vehicle')
      .map((each) => each.name);
    const near = nearestName(line.vehicle.text, known);
    return [
      finding(
        unknownVehicle,
        { file: file.path, span, fixes: nearNameFixes(file.path, [span], near) },
        { name: line.vehicle.text, kind: thing && oneOf(thing.kind), near },
      ),
    ];
  });
}

/** The operation in an id such as `procedures/wh-01.bay#operation wheel-off`. */
function shortName(id: string): string {
  return id.slice(id.indexOf('#operation ') + '#operation '.length);
}
