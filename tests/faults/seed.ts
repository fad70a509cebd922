// Seeds one-edit faults into a clean procedure: each is a text with what the checker must say of it.
import { bindStatement } from '../../language/src/names/statement.js';
import { everyLine } from '../../language/src/names/job.js';
import type { Analysis } from '../../language/src/library.js';
import type { Line, StatementLine } from '../../language/src/syntax/tree.js';

export type FaultKind = 'delete a putting-back line' | 'delete a taking-apart line' | 'swap two lines' | 'change a unit' | 'times twelve' | 'by twelve' | 'rename a thing';

export interface Fault {
  readonly kind: FaultKind;
  /** The line that was touched, one-based, with its text. */
  readonly line: number;
  readonly what: string;
  readonly text: string;
}

/** Verbs whose deletion leaves something undone. */
const PUTTING_BACK = new Set(['install', 'torque', 'tighten', 'connect', 'fill', 'charge', 'lower', 'unchock', 'bleed', 'adjust', 'uncap', 'check-level']);
const TAKING_APART = new Set(['remove', 'disconnect', 'separate', 'loosen', 'hang', 'drain', 'raise', 'support']);

export function seedFaults(analysis: Analysis): Fault[] {
  const { text, job } = analysis;
  const statements = [...everyLine(analysis.model.work)].filter((l): l is StatementLine => l.kind === 'statement');
  const faults: Fault[] = [];
  for (const line of statements) {
    const bound = bindStatement(line, analysis.path, job.scope);
    if (!bound || line.children.length > 0) continue;
    const temporary = bound.objects.some((o) => o.thing?.kind === 'temporary');
    const without = deleteLine(text, line);
    const fault = (kind: FaultKind): Fault => ({ kind, line: lineNumber(text, line.start), what: text.slice(line.code.start, line.code.end), text: without });
    if (line.verb.text === 'remove' && temporary) faults.push(fault('delete a putting-back line'));
    else if (PUTTING_BACK.has(line.verb.text)) faults.push(fault('delete a putting-back line'));
    else if (line.verb.text === 'set' && restores(analysis, line)) faults.push(fault('delete a putting-back line'));
    else if (TAKING_APART.has(line.verb.text) && !temporary) faults.push(fault('delete a taking-apart line'));
  }
  return faults;
}

/** Whether a `set` gives its condition the value it must have at the end, and nothing sets it afterwards. */
function restores(analysis: Analysis, line: StatementLine): boolean {
  const item = line.items[0];
  const thing = item && analysis.job.scope.resolve(item.name.text);
  if (!item?.value || !thing || thing.values[0]?.text !== item.value.text) return false;
  const others = [...everyLine(analysis.model.work)].filter((l): l is StatementLine => l.kind === 'statement' && l.verb.text === 'set' && l.items[0]?.name.text === item.name.text);
  const before = others.filter((l) => l.start < line.start);
  return before.some((l) => l.items[0]?.value?.text !== item.value?.text) && others.at(-1) === line;
}

export function deleteLine(text: string, line: Line): string {
  const start = text.lastIndexOf('\n', line.start - 1) + 1;
  const newline = text.indexOf('\n', line.end);
  return text.slice(0, start) + text.slice(newline < 0 ? text.length : newline + 1);
}

export function lineNumber(text: string, offset: number): number {
  return text.slice(0, offset).split('\n').length;
}
