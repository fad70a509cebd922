// Settles doubtful units by the place they stand in: `31 lb` is a mass where a mass is wanted. The grammar reads
// numbers and units as written; this pass over a line's fields gives the measures that they mean there.
import { type QuantityKind, resolveUnit, type Unit } from '../quantity/index.js';
import { VERB_BY_WORD } from '../verbs/index.js';
import {
  A_COUNT,
  A_MASS,
  A_TIME,
  type Expected,
  expectedInEntry,
  expectedInStatement,
} from '../vocabulary/expected.js';
import type { BlockPlace } from './classify.js';
import { amountsNode, rangeNode, withUnit } from './quantities.js';
import type {
  AmountNode,
  Clause,
  Fields,
  MeasureNode,
  Name,
  RuleClause,
  SpecNode,
  UnitNode,
} from './tree.js';

/** The fields of a line with every unit settled that its place can settle. */
export function withUnitsMeant(fields: Fields, place: BlockPlace, head: Name): Fields {
  switch (fields.kind) {
    case 'statement':
      return { ...fields, clauses: clausesMeant(fields.clauses, inStatement(head.text)) };
    case 'prerequisite':
      return { ...fields, clauses: clausesMeant(fields.clauses, expectedInEntry) };
    case 'clauses':
      return {
        ...fields,
        clauses: clausesMeant(
          fields.clauses,
          place.context === 'entry' ? expectedInEntry : inStatement(place.verb),
        ),
      };
    case 'labour':
      return fields.time ? { ...fields, time: measureMeant(fields.time, A_TIME.kinds) } : fields;
    case 'repeat':
      return fields.times ? { ...fields, times: measureMeant(fields.times, A_COUNT.kinds) } : fields;
    case 'clip':
      return fields.at ? { ...fields, at: measureMeant(fields.at, A_TIME.kinds) } : fields;
    case 'rule':
      return { ...fields, clauses: fields.clauses.map(ruleMeant) };
    default:
      return fields;
  }
}

function inStatement(verb: string | undefined): (word: string) => Expected {
  const def = verb === undefined ? undefined : VERB_BY_WORD.get(verb);
  return (word) => expectedInStatement(def, word);
}

function clausesMeant(clauses: readonly Clause[], expected: (word: string) => Expected): readonly Clause[] {
  return clauses.map((clause) =>
    clause.spec ? { ...clause, spec: specMeant(clause.spec, expected(clause.word).kinds) } : clause,
  );
}

function ruleMeant(clause: RuleClause): RuleClause {
  if (clause.word === 'require')
    return clause.wait ? { ...clause, wait: measureMeant(clause.wait, A_TIME.kinds) } : clause;
  if (!('pattern' in clause) || clause.pattern?.target?.form !== 'any' || !clause.pattern.target.over)
    return clause;
  const { pattern } = clause;
  const over = measureMeant(clause.pattern.target.over, A_MASS.kinds);
  return { ...clause, pattern: { ...pattern, target: { ...clause.pattern.target, over } } };
}

/**
 * Stages from the last to the first: a unit serves the stages before it that have none. An angle does not: the
 * `40` of `40 then 90°` is a torque that lacks its unit.
 */
function specMeant(spec: SpecNode, kinds: readonly QuantityKind[] | undefined): SpecNode {
  let unit: Unit | undefined;
  const stages = [...spec.stages].reverse().map(({ back, measure }) => {
    const settled = measureMeant(measure, kinds);
    const meant = unit === undefined || unit.kind === 'angle' ? settled : withUnit(settled, unit);
    unit = meant.measure?.unit ?? unit;
    return { back, measure: meant };
  });
  return { ...spec, stages: stages.reverse() };
}

function measureMeant(node: MeasureNode, kinds: readonly QuantityKind[] | undefined): MeasureNode {
  if (
    node.measure !== undefined ||
    node.amounts.every(({ unit, tolerance }) => isSettled(unit) && isSettled(tolerance?.unit))
  )
    return node;
  const amounts = node.amounts.map((amount) => amountMeant(amount, kinds));
  const [low, high] = amounts;
  const place = { start: node.start, end: node.end };
  if (node.form === 'range') return low && high ? rangeNode(low, high, place) : node;
  return amountsNode(amounts, node.bound, place);
}

function isSettled(unit: UnitNode | undefined): boolean {
  return unit === undefined || unit.unit !== undefined || unit.readings.length === 0;
}

function amountMeant(amount: AmountNode, kinds: readonly QuantityKind[] | undefined): AmountNode {
  const { unit, tolerance } = amount;
  return {
    ...amount,
    unit: unit && unitMeant(unit, kinds),
    tolerance: tolerance?.unit ? { ...tolerance, unit: unitMeant(tolerance.unit, kinds) } : tolerance,
  };
}

function unitMeant(node: UnitNode, kinds: readonly QuantityKind[] | undefined): UnitNode {
  return isSettled(node) ? node : { ...node, unit: resolveUnit(node, kinds) };
}
