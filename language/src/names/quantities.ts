// Every quantity written in a file, with what it says something about and what its place wants.

import type { Line, MeasureNode, SpecNode, StatementLine } from '../syntax/tree.js';
import { memory, once } from '../text/once.js';
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
  const entries = new Map<Line, Thing>();
  for (const thing of file.things) if (thing.line) entries.set(thing.line, thing);
  return file.lines.flatMap((line) => written(line, () => quantitiesBelow(line, entries)));
});

/** The quantities of a line of the left edge and all below it: the same until something in it is edited. */
const written = memory<Line, readonly WrittenQuantity[]>();

function quantitiesBelow(top: Line, entries: ReadonlyMap<Line, Thing>): readonly WrittenQuantity[] {
  const found: WrittenQuantity[] = [];
  const stack: Inside[] = [];
  const push = (lines: readonly Line[], thing?: Thing, statement?: StatementLine): void => {
    for (let i = lines.length - 1; i >= 0; i--) {
      const line = lines[i];
      if (line) stack.push({ line, thing: entries.get(line) ?? thing, statement });
    }
  };
  push([top]);
  for (let next = stack.pop(); next; next = stack.pop()) {
    const { line, thing } = next;
    const statement = line.kind === 'statement' ? line : next.statement;
    if (!line.broken) addQuantities(found, { line, thing, statement });
    push(line.children, thing, statement);
  }
  return found;
}

/** A line with the entry and the statement it stands in. */
interface Inside {
  readonly line: Line;
  readonly thing: Thing | undefined;
  readonly statement: StatementLine | undefined;
}

/** Adds the quantities of one line alone. Every check of every edit starts here: no arrays are made on the way. */
function addQuantities(found: WrittenQuantity[], { line, thing, statement }: Inside): void {
  const one = (node: MeasureNode | undefined, word: string, expected: Expected): void => {
    if (node) found.push({ line, thing, statement, spec: undefined, stage: 0, node, word, expected });
  };
  switch (line.kind) {
    case 'labour':
      one(line.time, 'labour', A_TIME);
      break;
    case 'repeat':
      one(line.times, 'repeat', A_COUNT);
      break;
    case 'clip':
      one(line.at, 'clip', A_TIME);
      break;
    case 'rule':
      for (const clause of line.clauses) {
        if (clause.word === 'require') one(clause.wait, 'wait', A_TIME);
        const target = 'pattern' in clause ? clause.pattern?.target : undefined;
        if (clause.word !== 'require' && target?.form === 'any') one(target.over, 'over', A_MASS);
      }
      break;
    case 'statement':
    case 'clauses':
    case 'prerequisite':
      for (const { word, spec } of line.clauses) {
        if (!spec) continue;
        const expected = statement
          ? expectedInStatement(VERB_BY_WORD.get(statement.verb.text), word)
          : line.kind === 'prerequisite' || thing
            ? expectedInEntry(word)
            : ANYTHING;
        spec.stages.forEach(({ measure }, stage) => {
          found.push({ line, thing, statement, spec, stage, node: measure, word, expected });
        });
      }
      break;
    default:
      break;
  }
}
