// The page of marks: the words behind `marked` that mean something to the checker.
import { STARTER_MARKS } from '../rules/starter-marks.js';
import { CHECK_MARKS } from '../vocabulary/check-marks.js';
import { HAZARDS } from '../vocabulary/hazards.js';
import { code, type Page, page, table } from './markdown.js';

export function markPages(): Page[] {
  const rows = (marks: Readonly<Record<string, string>>): string[][] =>
    Object.entries(marks).map(([mark, docs]) => [code(mark), docs]);
  const cautions = HAZARDS.flatMap(({ title, triggers }) =>
    triggers.flatMap(({ marks = [], supplies = [] }) =>
      [...marks, ...supplies].map((mark) => [mark, title] as const),
    ),
  );
  const hazardsOf = new Map<string, Set<string>>();
  for (const [mark, title] of cautions) hazardsOf.set(mark, (hazardsOf.get(mark) ?? new Set()).add(title));
  return [
    page(
      'marks.md',
      'Marks',
      'Names belong to the shop; what a thing is, its marks say: `marked wheel`. A mark may be any word of your own for house rules. These mean something already.',
      '## To the checks',
      table(['Mark', 'Means'], rows(CHECK_MARKS)),
      '## To the starter pack',
      'Usual practice ([house rules](rules.md)) binds things with these marks. Common practice, no source.',
      table(['Mark', 'Means'], rows(STARTER_MARKS)),
      '## To the usual cautions',
      'A thing with one of these calls for its [caution](cautions.md) where it is opened, taken off or used.',
      table(
        ['Mark', 'Hazard'],
        [...hazardsOf]
          .sort(([a], [b]) => (a < b ? -1 : 1))
          .map(([mark, titles]) => [code(mark), [...titles].join('; ')]),
      ),
    ),
  ];
}
