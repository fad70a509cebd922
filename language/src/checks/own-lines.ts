// The lines of a procedure's own file as the checks read them: statements in the order written with where they
// stand, texts for the technician, and the insertions that fixes make.

import type { Job } from '../names/job.js';
import { type BoundStatement, bindStatement } from '../names/statement.js';
import type { Guard, Line, OperationLine, StepLine } from '../syntax/tree.js';
import { once } from '../text/once.js';
import type { TextEdit } from '../text/span.js';
import { ALWAYS, type Condition } from '../variants/diagrams.js';
import type { VerbDef } from '../vocabulary/verb.js';

/** One line of work with the blocks it stands in. */
export interface WorkLine {
  readonly line: Line;
  readonly step: StepLine | undefined;
  readonly operation: OperationLine | undefined;
  /** Inside an `if`, `otherwise` or `repeat`: done only sometimes. */
  readonly sometimes: boolean;
  /** Where the guards around it hold. */
  readonly when: Condition;
  /** Bound, when the line is a statement that could be read. */
  readonly statement: BoundStatement | undefined;
}

export interface WorkStatement extends WorkLine {
  readonly statement: BoundStatement;
}

/** Every line of work of the job's own file in the order written, blocks before what stands in them. */
export const workLines = once((job: Job): readonly WorkLine[] => {
  const found: WorkLine[] = [];
  const stack: WorkLine[] = [];
  const push = (lines: readonly Line[], inside: Omit<WorkLine, 'line' | 'statement'>): void => {
    for (let i = lines.length - 1; i >= 0; i--) {
      const line = lines[i];
      if (line) stack.push(within(job, line, inside));
    }
  };
  push(
    job.file.work.flatMap((s) => s.children),
    { step: undefined, operation: undefined, sometimes: false, when: ALWAYS },
  );
  for (let item = stack.pop(); item; item = stack.pop()) {
    found.push(item);
    push(item.line.children, item);
  }
  return found;
});

/** The statements among them. */
export const workStatements = once((job: Job): readonly WorkStatement[] =>
  workLines(job).filter((l): l is WorkStatement => l.statement !== undefined),
);

/** Those whose verb passes a test. A job has few verbs: where none passes, no line is looked at. */
export function statementsOf(job: Job, passes: (verb: VerbDef) => boolean): readonly WorkStatement[] {
  const verbs = new Set([...verbsOf(job)].filter(passes));
  return verbs.size === 0 ? [] : workStatements(job).filter(({ statement }) => verbs.has(statement.verb));
}

const verbsOf = once(
  (job: Job): ReadonlySet<VerbDef> => new Set(workStatements(job).map(({ statement }) => statement.verb)),
);

/** Those with a clause of this word. */
export function statementsWith(job: Job, word: string): readonly WorkStatement[] {
  return byClause(job).get(word) ?? [];
}

const byClause = once((job: Job): ReadonlyMap<string, readonly WorkStatement[]> => {
  const found = new Map<string, WorkStatement[]>();
  for (const work of workStatements(job)) {
    for (const { word } of work.statement.clauses) {
      const list = found.get(word);
      if (!list) found.set(word, [work]);
      else if (list.at(-1) !== work) list.push(work);
    }
  }
  return found;
});

function within(job: Job, line: Line, inside: Omit<WorkLine, 'line' | 'statement'>): WorkLine {
  const guard = guardOf(line);
  return {
    line,
    step: line.kind === 'step' ? line : inside.step,
    operation: line.kind === 'operation' ? line : inside.operation,
    sometimes: inside.sometimes || line.kind === 'if' || line.kind === 'otherwise' || line.kind === 'repeat',
    when: guard ? job.universe.diagrams.and(inside.when, job.where(guard)) : inside.when,
    statement:
      line.kind === 'statement' && !line.broken ? bindStatement(line, job.file.path, job.scope) : undefined,
  };
}

function guardOf(line: Line): Guard | undefined {
  return line.kind === 'when' || line.kind === 'statement' || line.kind === 'perform'
    ? line.guard
    : undefined;
}

/** The offset at which the physical line of an offset starts. */
export function lineStart(text: string, offset: number): number {
  return text.lastIndexOf('\n', offset - 1) + 1;
}

/** The offset behind the line end that follows an offset. */
export function lineEnd(text: string, offset: number): number {
  const end = text.indexOf('\n', offset);
  return end < 0 ? text.length : end + 1;
}

/** Inserts whole lines before a line, indented as it is. */
export function insertBefore(job: Job, line: Line, lines: readonly string[]): TextEdit {
  const { path, tree } = job.file;
  const at = lineStart(tree.text, line.start);
  return {
    file: path,
    span: { start: at, end: at },
    text: lines.map((l) => `${' '.repeat(line.indent)}${l}\n`).join(''),
  };
}

/** Inserts one clause line below an entry, behind its last line. */
export const insertClause = (job: Job, entry: Line, clause: string): TextEdit =>
  insertBehind(job, entry, clause, entry.indent + 2);

/** Inserts a whole line behind a line and all that stands below it. */
export function insertBehind(job: Job, line: Line, words: string, indent = line.indent): TextEdit {
  const { path, tree } = job.file;
  let last = line;
  for (let below = last.children.at(-1); below; below = last.children.at(-1)) last = below;
  const end = lineEnd(tree.text, last.end);
  const broken = tree.text.slice(0, end).endsWith('\n') ? '' : '\n';
  return { file: path, span: { start: end, end }, text: `${broken}${' '.repeat(indent)}${words}\n` };
}
