// The same nodes further on in the text. Only the kinds of line that procedures are made of; the others are read anew.
import type {
  AmountNode,
  Clause,
  Fields,
  Guard,
  Item,
  MeasureNode,
  Name,
  NumberNode,
  Raw,
  SpecNode,
  Token,
  UnitNode,
} from './tree.js';

/** The fields of a line `by` characters further on; undefined for kinds of line that are rare. */
export function movedFields(fields: Fields, by: number): Fields | undefined {
  switch (fields.kind) {
    case 'section':
    case 'step':
    case 'otherwise':
    case 'text':
      return fields;
    case 'entry':
      return { ...fields, name: movedName(fields.name, by) };
    case 'message':
      return { ...fields, reference: fields.reference && movedName(fields.reference, by) };
    case 'clauses': {
      const clauses = movedClauses(fields.clauses, by);
      return clauses && { ...fields, clauses, guard: fields.guard && movedGuard(fields.guard, by) };
    }
    case 'statement': {
      const clauses = movedClauses(fields.clauses, by);
      return (
        clauses && {
          kind: fields.kind,
          verb: movedName(fields.verb, by),
          items: fields.items.map((item) => movedItem(item, by)),
          clauses,
          guard: fields.guard && movedGuard(fields.guard, by),
        }
      );
    }
    default:
      return undefined;
  }
}

export function movedToken(token: Token, by: number): Token {
  return { kind: token.kind, image: token.image, start: token.start + by, end: token.end + by };
}

export function movedName(name: Name, by: number): Name {
  return { text: name.text, start: name.start + by, end: name.end + by };
}

function movedItem(item: Item, by: number): Item {
  return {
    start: item.start + by,
    end: item.end + by,
    count: item.count && movedNumber(item.count, by),
    name: movedName(item.name, by),
    value: item.value && movedName(item.value, by),
    alternatives: item.alternatives.length === 0 ? item.alternatives : movedNames(item.alternatives, by),
  };
}

function movedNames(names: readonly Name[], by: number): readonly Name[] {
  return names.map((name) => movedName(name, by));
}

/** Undefined where a clause holds an event, which is rare. */
function movedClauses(clauses: readonly Clause[], by: number): readonly Clause[] | undefined {
  if (clauses.length === 0) return clauses;
  const moved: Clause[] = [];
  for (const clause of clauses) {
    if (clause.event !== undefined) return undefined;
    const { start, end } = clause.wordSpan;
    moved.push({
      start: clause.start + by,
      end: clause.end + by,
      word: clause.word,
      wordSpan: { start: start + by, end: end + by },
      items: clause.items.map((item) => movedItem(item, by)),
      spec: clause.spec && movedSpec(clause.spec, by),
      raw: clause.raw && movedRaw(clause.raw, by),
      words: movedNames(clause.words, by),
      count: clause.count && movedNumber(clause.count, by),
      event: undefined,
    });
  }
  return moved;
}

function movedRaw(raw: Raw, by: number): Raw {
  return { ...raw, start: raw.start + by, end: raw.end + by };
}

function movedGuard(guard: Guard, by: number): Guard {
  return {
    start: guard.start + by,
    end: guard.end + by,
    only: guard.only,
    terms: guard.terms.map((term) => ({
      start: term.start + by,
      end: term.end + by,
      option: movedName(term.option, by),
      values: movedNames(term.values, by),
      years: term.years,
    })),
  };
}

function movedSpec(spec: SpecNode, by: number): SpecNode {
  return {
    start: spec.start + by,
    end: spec.end + by,
    stages: spec.stages.map(({ back, measure }) => ({ back, measure: movedMeasure(measure, by) })),
  };
}

function movedMeasure(node: MeasureNode, by: number): MeasureNode {
  return {
    ...node,
    start: node.start + by,
    end: node.end + by,
    amounts: node.amounts.map((amount) => movedAmount(amount, by)),
  };
}

function movedAmount({ start, end, number, unit, tolerance }: AmountNode, by: number): AmountNode {
  return {
    start: start + by,
    end: end + by,
    number: movedNumber(number, by),
    unit: unit && movedUnit(unit, by),
    tolerance: tolerance && {
      ...tolerance,
      start: tolerance.start + by,
      end: tolerance.end + by,
      numberEnd: tolerance.numberEnd + by,
      unit: tolerance.unit && movedUnit(tolerance.unit, by),
    },
  };
}

function movedNumber(node: NumberNode, by: number): NumberNode {
  return { ...node, start: node.start + by, end: node.end + by };
}

function movedUnit(node: UnitNode, by: number): UnitNode {
  return { ...node, start: node.start + by, end: node.end + by };
}
