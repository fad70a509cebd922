// Seeds one-edit faults into a clean procedure: each is a text with what the checker must say of it.
import type { Analysis } from '../../language/src/library.js';
import { everyLine } from '../../language/src/names/job.js';
import type { Thing } from '../../language/src/names/model.js';
import { type BoundStatement, bindStatement } from '../../language/src/names/statement.js';
import type { Line, StatementLine } from '../../language/src/syntax/tree.js';

export type FaultKind =
  | 'put-back line deleted'
  | 'take-apart line deleted'
  | 'chocks deleted'
  | 'lines swapped'
  | 'unit of another kind'
  | 'torque times twelve'
  | 'name misspelt';

export interface Fault {
  readonly kind: FaultKind;
  /** The line that was touched, one-based, with its text. */
  readonly line: number;
  readonly what: string;
  readonly text: string;
  /** Things of which one must be named in the finding. */
  readonly names: readonly string[];
}

/** Verbs whose deletion leaves something undone, and verbs without which what follows cannot be done. */
const PUTS_BACK = new Set([
  'install',
  'torque',
  'tighten',
  'connect',
  'fill',
  'charge',
  'lower',
  'unchock',
  'bleed',
]);
const TAKES_APART = new Set(['remove', 'disconnect', 'separate', 'hang', 'drain', 'support']);

export function seedFaults(analysis: Analysis): Fault[] {
  return [...deletions(analysis), ...swaps(analysis), ...units(analysis), ...misspellings(analysis)];
}

interface Seen {
  readonly line: StatementLine;
  readonly bound: BoundStatement;
  /** Stands under an `if`, `otherwise` or `repeat`: what it does may be done another way. */
  readonly optional: boolean;
  /** What goes with the line when it is deleted: a `when` around it alone. */
  readonly whole: Line;
}

function statementsOf(analysis: Analysis): Seen[] {
  const seen: Seen[] = [];
  const visit = (lines: readonly Line[], optional: boolean, around?: Line): void => {
    const alone = around?.kind === 'when' && lines.length === 1 ? around : undefined;
    for (const line of lines) {
      const bound =
        line.kind === 'statement' ? bindStatement(line, analysis.path, analysis.job.scope) : undefined;
      if (line.kind === 'statement' && bound) seen.push({ line, bound, optional, whole: alone ?? line });
      visit(
        line.children,
        optional || line.kind === 'if' || line.kind === 'otherwise' || line.kind === 'repeat',
        line,
      );
    }
  };
  visit(analysis.model.work, false);
  return seen;
}

function deletions(analysis: Analysis): Fault[] {
  const statements = statementsOf(analysis);
  const faults: Fault[] = [];
  statements.forEach(({ line, bound, optional, whole }, i) => {
    if (optional || line.children.length > 0) return;
    const fault = (kind: FaultKind): void => {
      faults.push({
        kind,
        line: lineNumber(analysis.text, line.start),
        what: codeOf(analysis.text, line),
        text: deleteLine(analysis.text, whole),
        names: bound.objects.map((o) => o.item.name.text),
      });
    };
    const temporary = bound.objects.some((o) => o.thing?.kind === 'temporary');
    const verb = line.verb.text;
    if (
      doneAgain(statements, i) ||
      harmless(statements, i) ||
      bound.objects.every((o) => !o.thing || (bound.verb.on[o.thing.kind]?.makes ?? []).length === 0)
    )
      return;
    if (
      PUTS_BACK.has(verb) ||
      (verb === 'remove' && temporary) ||
      (verb === 'set' && restores(statements, i))
    )
      fault('put-back line deleted');
    else if (verb === 'chock') fault('chocks deleted');
    else if (TAKES_APART.has(verb) && !temporary && !drainsByPlug(analysis, bound))
      fault('take-apart line deleted');
  });
  return faults;
}

/** A hand-tight set holds as soon as it is on; a part that is hung and then taken off may as well be taken off at once. */
function harmless(statements: readonly Seen[], i: number): boolean {
  const bound = statements[i]?.bound;
  const things = new Set(bound?.objects.map((o) => o.thing));
  if (bound?.verb.word === 'tighten') return bound.objects.every((o) => o.thing?.clauses.has('no torque'));
  if (bound?.verb.word !== 'hang') return false;
  const next = statements.slice(i + 1).find((s) => s.bound.objects.some((o) => things.has(o.thing)));
  return next?.bound.verb.word === 'remove' || next?.bound.verb.word === 'install';
}

/** Where a plug or hose is the drain, opening it lets the fluid out: a `drain` line then says how, and is no fault when gone. */
function drainsByPlug(analysis: Analysis, bound: BoundStatement): boolean {
  return (
    bound.verb.word === 'drain' &&
    bound.objects.every(
      (o) => o.thing && !analysis.job.relations(o.thing, 'drain at').some((r) => r.target.kind === 'part'),
    )
  );
}

/** A line whose work the next statement on the same things does as well: `snug` then `torque`, `fill` then `top-up`. */
function doneAgain(statements: readonly Seen[], i: number): boolean {
  const here = statements[i];
  const makes = (s: Seen | undefined): readonly string[] =>
    s?.bound.objects.flatMap((o) => (o.thing ? (s.bound.verb.on[o.thing.kind]?.makes ?? []) : [])) ?? [];
  const things = new Set(here?.bound.objects.map((o) => o.thing));
  const next = statements
    .slice(i + 1)
    .find((s) => s.bound.objects.some((o) => things.has(o.thing)) && makes(s).length > 0);
  const fills = (m: readonly string[]): boolean => m.some((x) => x === 'filled' || x === 'topped');
  const torques = (m: readonly string[]): boolean => m.includes('torqued');
  const staged = here?.bound.clause('stage') !== undefined && next?.bound.clause('stage') === undefined;
  return (fills(makes(here)) && fills(makes(next))) || (staged && torques(makes(next)));
}

/** Whether a `set` puts its condition back to where it rests, for the last time. */
function restores(statements: readonly Seen[], i: number): boolean {
  const item = statements[i]?.line.items[0];
  const thing = statements[i]?.bound.objects[0]?.thing;
  if (!item?.value || !thing || thing.values[0]?.text !== item.value.text || thing.clauses.has('free'))
    return false;
  const same = (s: Seen): boolean =>
    s.line.verb.text === 'set' && s.line.items[0]?.name.text === item.name.text;
  return (
    !statements.slice(i + 1).some(same) &&
    statements.slice(0, i).some((s) => same(s) && s.line.items[0]?.value?.text !== item.value?.text)
  );
}

/** Neighbouring lines of one step of which the second needs the first: fit then torque, bolt then part. */
function swaps(analysis: Analysis): Fault[] {
  const { text } = analysis;
  const faults: Fault[] = [];
  const blocks = [...everyLine(analysis.model.work)].filter((l) => l.kind === 'step').map((l) => l.children);
  for (const lines of blocks) {
    lines.forEach((first, i) => {
      const second = lines[i + 1];
      if (
        first.kind !== 'statement' ||
        second?.kind !== 'statement' ||
        first.children.length + second.children.length > 0
      )
        return;
      const a = bindStatement(first, analysis.path, analysis.job.scope);
      const b = bindStatement(second, analysis.path, analysis.job.scope);
      if (!a || !b || !dependent(analysis, a, b)) return;
      const [one, two] = [wholeLine(text, first), wholeLine(text, second)];
      const between = text.slice(one.end, two.start);
      faults.push({
        kind: 'lines swapped',
        line: lineNumber(text, first.start),
        what: `${codeOf(text, first)} ⇄ ${codeOf(text, second)}`,
        text:
          text.slice(0, one.start) +
          text.slice(two.start, two.end) +
          between +
          text.slice(one.start, one.end) +
          text.slice(two.end),
        names: [...a.objects, ...b.objects].map((o) => o.item.name.text),
      });
    });
  }
  return faults;
}

function dependent(analysis: Analysis, a: BoundStatement, b: BoundStatement): boolean {
  const { job } = analysis;
  const first = a.objects.map((o) => o.thing).filter((t) => t !== undefined);
  const second = b.objects.map((o) => o.thing).filter((t) => t !== undefined);
  const verbs = `${a.verb.word} ${b.verb.word}`;
  const shared = first.some((t) => second.includes(t));
  if (shared && ['install torque', 'install snug', 'loosen torque', 'connect disconnect'].includes(verbs))
    return true;
  const held = (parts: readonly Thing[], by: readonly Thing[]): boolean =>
    parts.some((p) => job.relations(p, 'held by').some((r) => by.includes(r.target)));
  const covered = (inner: readonly Thing[], outer: readonly Thing[]): boolean =>
    inner.some((p) => job.relations(p, 'behind').some((r) => outer.includes(r.target)));
  if (verbs === 'remove remove') return held(second, first) || covered(second, first);
  if (verbs === 'install install') return held(first, second) || covered(first, second);
  if (verbs === 'connect torque')
    return first.some((c) =>
      [...job.relations(c, 'held by'), ...job.relations(c, 'clamped by')].some((r) =>
        second.includes(r.target),
      ),
    );
  return false;
}

/** A torque declared as a pressure, a volume declared as a torque; a torque of a classed fastener twelve times as large. */
function units(analysis: Analysis): Fault[] {
  const { text } = analysis;
  const faults: Fault[] = [];
  for (const line of everyLine(analysis.tree.lines)) {
    if (line.kind !== 'clauses') continue;
    const classed =
      line.clauses.some((c) => c.word === 'class' || c.word === 'grade') ||
      siblings(analysis, line).some((c) => c.word === 'class' || c.word === 'grade');
    for (const clause of line.clauses) {
      const unit = clause.spec?.stages.at(-1)?.measure.amounts.at(-1)?.unit;
      const first = clause.spec?.stages[0]?.measure.amounts[0];
      const put = (kind: FaultKind, at: { start: number; end: number }, by: string): void => {
        faults.push({
          kind,
          line: lineNumber(text, line.start),
          what: codeOf(text, line),
          text: text.slice(0, at.start) + by + text.slice(at.end),
          names: [],
        });
      };
      if (unit?.unit?.kind === 'torque' && clause.word === 'torque') put('unit of another kind', unit, 'psi');
      if (unit?.unit?.kind === 'volume' && clause.word === 'fill') put('unit of another kind', unit, 'N·m');
      const only = clause.spec?.stages.length === 1 && clause.spec.stages[0]?.measure.amounts.length === 1;
      if (
        classed &&
        only &&
        clause.word === 'torque' &&
        first?.number.value &&
        first.unit?.unit?.kind === 'torque'
      ) {
        put('torque times twelve', first.number, String(first.number.value.valueOf() * 12));
      }
    }
  }
  return faults;
}

function siblings(analysis: Analysis, line: Line): { word: string }[] {
  const entry = [...everyLine(analysis.tree.lines)].find(
    (l) => l.kind === 'entry' && l.children.includes(line),
  );
  return (entry?.children ?? []).flatMap((l) => (l.kind === 'clauses' ? l.clauses : []));
}

/** One object of a statement with a letter doubled. */
function misspellings(analysis: Analysis): Fault[] {
  const { text } = analysis;
  return statementsOf(analysis)
    .filter((_, i) => i % 2 === 0)
    .flatMap(({ line, bound }) => {
      const object = bound.objects[0];
      if (!object?.thing || object.thing.kind === 'machine') return [];
      const { name } = object.item;
      const at = name.start + 2;
      return [
        {
          kind: 'name misspelt' as const,
          line: lineNumber(text, line.start),
          what: codeOf(text, line),
          text: text.slice(0, at) + text.slice(at - 1),
          names: [],
        },
      ];
    });
}

function deleteLine(text: string, line: Line): string {
  const { start, end } = wholeLine(text, line);
  return text.slice(0, start) + text.slice(end);
}

function wholeLine(text: string, line: Line): { start: number; end: number } {
  const newline = text.indexOf('\n', line.end);
  return { start: text.lastIndexOf('\n', line.start - 1) + 1, end: newline < 0 ? text.length : newline + 1 };
}

function codeOf(text: string, line: Line): string {
  return text.slice(line.code.start, line.code.end);
}

export function lineNumber(text: string, offset: number): number {
  return text.slice(0, offset).split('\n').length;
}
