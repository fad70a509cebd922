// Fixes of an act that fails because a line before it was missed, where that line is told by what stands around it, or
// because of the order within its own line.
import type { Fix } from '../diagnostics/define.js';
import type { Thing } from '../names/model.js';
import type { Line } from '../syntax/tree.js';
import type { Act } from './act.js';
import type { Lack } from './deficit.js';
import type { Machine } from './machine.js';
import { directionOfMake } from './wants.js';

/**
 * In a branch, `loosen` and then `snug` of a set that is loose already: it was to be snug before the test. The line that
 * closes the branch is missing in front of it.
 */
export function closedBefore(m: Machine, act: Act, lacks: readonly Lack[]): Fix | undefined {
  const { line, step } = act;
  const owner = step?.children.find((c) => c !== line && c.start <= line.start && line.end <= c.end);
  if (owner?.kind !== 'statement' || !goes(act, lacks, 'apart')) return undefined;
  const closing = m.acts
    .slice(act.index + 1)
    .find((later) => later.line.end <= owner.end && goes(later, lacks, 'together'));
  const verb = closing?.statement?.verb.word;
  const names = [...new Set(lacks.map((l) => l.thing.name))].join(', ');
  return verb === undefined ? undefined : insertAt(m, act, owner, `${verb} ${names}`);
}

/** Whether the act takes all of what lacks apart, or puts it together. */
function goes({ statement }: Act, lacks: readonly Lack[], way: 'apart' | 'together'): boolean {
  const isObject = (thing: Thing): boolean => statement?.objects.some((o) => o.thing === thing) ?? false;
  return lacks.every(
    ({ thing }) =>
      isObject(thing) && statement?.verb.on[thing.kind]?.makes.some((make) => directionOfMake(make) === way),
  );
}

/**
 * In the completion, a look at what the job has covered again: the engine was to run before it, and the look is one from
 * outside. Undefined where the covers were never off.
 */
export function runBeforeLook(m: Machine, act: Act, lacks: readonly Lack[]): Fix | undefined {
  const { line } = act;
  const section = m.job.file.work.find((s) => s.start <= line.start && line.end <= s.end);
  const isCoveredAgain = lacks.every(({ maker }) => maker >= 0);
  if (section?.word !== 'completion' || act.statement?.verb.judges !== 'by looking' || !isCoveredAgain)
    return undefined;
  return insertAt(m, act, line, 'run engine');
}

/** Names first, within the line, what must be on first. */
export function reorderFix(m: Machine, act: Act, lacks: readonly Lack[]): Fix | undefined {
  const { line, statement, file } = act;
  const first = line.kind === 'statement' ? line.items[0] : undefined;
  const last = line.kind === 'statement' ? line.items.at(-1) : undefined;
  if (!first || !last || !statement || act.through || file !== m.job.file.path) return undefined;
  const { text } = m.job.file.tree;
  const isFirst = (i: number): boolean => lacks.some(({ thing }) => thing === statement.objects[i]?.thing);
  const items = statement.objects.map(({ item }, i) => ({
    said: text.slice(item.start, item.end),
    isFirst: isFirst(i),
  }));
  const inOrder = [...items.filter((i) => i.isFirst), ...items.filter((i) => !i.isFirst)].map(
    ({ said }) => said,
  );
  const said = inOrder.join(', ');
  return {
    title: `Write \`${statement.verb.word} ${said}\``,
    edits: [{ file, span: { start: first.start, end: last.end }, text: said }],
  };
}

function insertAt(m: Machine, act: Act, line: Line, text: string): Fix | undefined {
  const { path, tree } = m.job.file;
  if (act.through || act.file !== path) return undefined;
  const at = tree.text.lastIndexOf('\n', line.start - 1) + 1;
  return {
    title: `Insert \`${text}\``,
    edits: [{ file: path, span: { start: at, end: at }, text: `${' '.repeat(line.indent)}${text}\n` }],
  };
}
