// N214: relations that lead from a thing back to itself, told once for each ring at its first relation in the file.
import { finding } from '../diagnostics/define.js';
import { relationCycle } from '../diagnostics/n214-relation-cycle.js';
import type { Relation } from '../names/job.js';
import { relationCycles } from '../names/removal-order.js';
import type { Check } from './check.js';

export const cyclicRelations: Check = ({ job }) =>
  relationCycles(job).flatMap((cycle) => {
    const own = cycle
      .filter(({ of }) => of.file === job.file.path)
      .sort((a, b) => a.item.start - b.item.start);
    const [first] = own;
    // What an import declares in a ring of its own is told where that file is checked.
    if (!first || first.of.line?.broken) return [];
    const at = cycle.indexOf(first);
    const around = [...cycle.slice(at), ...cycle.slice(0, at)];
    const related = around
      .slice(1)
      .map((r) => ({ file: r.of.file, span: { start: r.item.start, end: r.item.end }, message: said(r) }));
    const word = FAMILY.get(first.clause.word) ?? ('off' as const);
    const data = {
      name: first.of.name,
      way: around.map(said),
      word,
    };
    return [finding(relationCycle, { file: job.file.path, span: first.item, related }, data)];
  });

const said = ({ of, target, clause }: Relation): string => `${of.name} ${clause.word} ${target.name}`;

const FAMILY: ReadonlyMap<string, 'in' | 'on'> = new Map([
  ['in', 'in'],
  ['on', 'on'],
]);
