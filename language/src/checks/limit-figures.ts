// Q112, Q122: what a limit says of a new part, against its own bounds.
import { type Finding, finding } from '../diagnostics/define.js';
import { newOutsideLimit } from '../diagnostics/q122-new-outside-limit.js';
import { rangeTwoUnits } from '../diagnostics/quantities.js';
import { clausesOf, type Thing } from '../names/model.js';
import { type Measure, numberOf, toSI, type Unit } from '../quantity/index.js';
import { type Bounds, limitCheck } from '../trade/measure.js';
import type { Check } from './check.js';

export const limitFigures: Check = ({ job: { file } }) =>
  file.things.flatMap((thing) => {
    if (thing.kind !== 'limit') return [];
    const fresh = clausesOf(thing, 'new')[0]?.clause.spec?.stages[0]?.measure;
    const kind = fresh?.measure?.unit.kind;
    const bounds = boundsOf(thing);
    if (!fresh?.measure || bounds === undefined || bounds.kind !== kind) return [];
    const { unit } = fresh.measure;
    if (isOtherSystem(unit, bounds.unit)) {
      const data = { what: 'limit', first: bounds.unit.symbol, second: unit.symbol } as const;
      return [
        finding(rangeTwoUnits, { file: file.path, span: { start: fresh.start, end: fresh.end } }, data),
      ];
    }
    const { low, high } = endsOf(fresh.measure);
    const sides = [low, high].map((end) => (end === undefined ? 'within' : limitCheck(end, bounds).verdict));
    // A new part may differ within its own tolerance; it is wrong when none of it is good.
    const [first] = sides;
    if (first === undefined || first === 'within' || sides.some((side) => side !== first)) return [];
    const written = file.tree.text.slice(fresh.start, fresh.end);
    return [newFinding(file.path, fresh, { written, name: thing.name, side: first })];
  });

/** Millimetres beside inches: one of the two is likely a slip. */
const isOtherSystem = (a: Unit, b: Unit): boolean =>
  a.system !== b.system && a.system !== 'any' && b.system !== 'any';

const newFinding = (
  file: string,
  { start, end }: { readonly start: number; readonly end: number },
  data: Parameters<typeof newOutsideLimit.message>[0],
): Finding => finding(newOutsideLimit, { file, span: { start, end } }, data);

/** The bounds of a limit in the SI unit of its kind; undefined where they hang on the variant, or there are none. */
function boundsOf(thing: Thing): (Bounds & { readonly kind: Unit['kind']; readonly unit: Unit }) | undefined {
  const clauses = ['bare', 'at least', 'at most'].flatMap((word) =>
    clausesOf(thing, word).map(({ clause, guard }) => ({ word, clause, guard })),
  );
  if (clauses.some(({ guard }) => guard !== undefined)) return undefined;
  let bounds: { min?: number; max?: number; kind: Unit['kind']; unit: Unit } | undefined;
  for (const { word, clause } of clauses) {
    const measure = clause.spec?.stages[0]?.measure.measure;
    if (!measure || (bounds && bounds.kind !== measure.unit.kind)) return undefined;
    bounds ??= { kind: measure.unit.kind, unit: measure.unit };
    const { low, high } = endsOf(measure);
    if (word !== 'at most' && low !== undefined) bounds.min = low;
    if (word !== 'at least' && high !== undefined) bounds.max = high;
  }
  return bounds;
}

function endsOf(measure: Measure): { readonly low: number | undefined; readonly high: number | undefined } {
  const { nominal, low, high } = toSI(measure);
  const [first, last] = [low ?? nominal ?? high, high ?? nominal ?? low];
  return { low: first && numberOf(first), high: last && numberOf(last) };
}
