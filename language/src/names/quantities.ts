// Every quantity written in a file, with what it says something about and what its place wants.

import type { Line, MeasureNode, SpecNode, StatementLine } from '../syntax/tree.js';
import { once } from '../text/once.js';
import { VERB_BY_WORD } from '../verbs/index.js';
import {
  A_COUNT,
  A_MASS,
  A_TIME,
  ANYTHING,
  type Expected,
  expectedInEntry,
  expectedInStatement,
} from '../vocabulary/expected.js';
import { everyLine } from './job.js';
import type { FileModel, Thing } from './model.js';

export interface WrittenQuantity {
  readonly node: MeasureNode;
  readonly expected: Expected;
  /** The clause word; `bare` for a quantity that stands alone; the head of any other line. */
  readonly word: string;
  readonly line: Line;
  /** The thing whose entry it stands in. */
  readonly thing: Thing | undefined;
  /** The statement it belongs to. */
  readonly statement: StatementLine | undefined;
  /** The stages it is one of, and which. */
  readonly spec: SpecNode | undefined;
  readonly stage: number;
}

/** All quantities of a file in the order written; lines that have a finding of their own syntax are left out. */
export const writtenQuantities = once((file: FileModel): readonly WrittenQuantity[] => {
  const found: WrittenQuantity[] = [];
  const entries = new Map<Line, Thing>();
  for (const thing of file.things) if (thing.line) entries.set(thing.line, thing);
  const stack = [...file.lines].reverse().map((line) => ({
    line,
    thing: undefined as Thing | undefined,
    statement: undefined as StatementLine | undefined,
  }));
  for (let next = stack.pop(); next; next = stack.pop()) {
    const { line } = next;
    const thing = entries.get(line) ?? next.thing;
    const statement = line.kind === 'statement' ? line : next.statement;
    if (!line.broken) found.push(...quantitiesOf(line, thing, statement));
    for (const child of [...line.children].reverse()) stack.push({ line: child, thing, statement });
  }
  return found;
});

/** The quantities of one line alone. */
function quantitiesOf(
  line: Line,
  thing: Thing | undefined,
  statement: StatementLine | undefined,
): WrittenQuantity[] {
  const at = { line, thing, statement, spec: undefined, stage: 0 };
  const one = (node: MeasureNode | undefined, word: string, expected: Expected): WrittenQuantity[] =>
    node ? [{ ...at, node, word, expected }] : [];
  switch (line.kind) {
    case 'labour':
      return one(line.time, 'labour', A_TIME);
    case 'repeat':
      return one(line.times, 'repeat', A_COUNT);
    case 'clip':
      return one(line.at, 'clip', A_TIME);
    case 'rule':
      return line.clauses.flatMap((clause) => {
        if (clause.word === 'require') return one(clause.wait, 'wait', A_TIME);
        const target = 'pattern' in clause ? clause.pattern?.target : undefined;
        return target?.form === 'any' ? one(target.over, 'over', A_MASS) : [];
      });
    case 'statement':
    case 'clauses':
    case 'prerequisite': {
      const verb = statement ? VERB_BY_WORD.get(statement.verb.text) : undefined;
      return line.clauses.flatMap(({ word, spec }) => {
        if (!spec) return [];
        const expected = statement
          ? expectedInStatement(verb, word)
          : line.kind === 'prerequisite' || thing
            ? expectedInEntry(word)
            : ANYTHING;
        return spec.stages.map(({ measure }, stage) => ({
          ...at,
          node: measure,
          word,
          expected,
          spec,
          stage,
        }));
      });
    }
    default:
      return [];
  }
}

/** Whether any of the lines has a finding of its own syntax: what it would have said is then unknown. */
export function hasBrokenLine(lines: readonly Line[]): boolean {
  for (const line of everyLine(lines)) if (line.broken || line.kind === 'unread') return true;
  return false;
}
