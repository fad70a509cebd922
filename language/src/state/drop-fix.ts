// Fix of a line that does again what is done already: takes the line out, or only the things it is about.
import type { Fix } from '../diagnostics/define.js';
import type { TextEdit } from '../text/span.js';
import type { Need } from '../vocabulary/needs.js';
import type { Act } from './act.js';
import type { Lack } from './deficit.js';
import type { Machine } from './machine.js';

/** Needs that fail because the work is done already. */
export const DONE_ALREADY: ReadonlySet<Need | 'end'> = new Set<Need>([
  'mounted',
  'hangable',
  'some on',
  'connected',
  'tight enough',
  'away',
  'not chocked',
]);

/** Undefined in performed lines, where a count is named, and where other lines hang below. */
export function dropFix(m: Machine, act: Act, lacks: readonly Lack[]): Fix | undefined {
  const { line, statement } = act;
  if (
    act.through ||
    act.file !== m.job.file.path ||
    line.kind !== 'statement' ||
    !statement ||
    line.children.length > 0
  )
    return undefined;
  const { text } = m.job.file.tree;
  const done = line.items.map((_, i) => lacks.some((l) => l.thing === statement.objects[i]?.thing));
  if (!done.includes(true) || line.items.some((item) => item.count)) return undefined;
  if (!done.includes(false)) {
    const start = text.lastIndexOf('\n', line.start - 1) + 1;
    const end = text.indexOf('\n', line.end);
    return {
      title: 'Take this line out',
      edits: [{ file: act.file, span: { start, end: end < 0 ? text.length : end + 1 }, text: '' }],
    };
  }
  const kept = line.items.filter((_, i) => done[i] === false).map((item) => text.slice(item.start, item.end));
  const first = line.items[0];
  const last = line.items.at(-1);
  if (!first || !last) return undefined;
  const edits: TextEdit[] = [
    { file: act.file, span: { start: first.start, end: last.end }, text: kept.join(', ') },
  ];
  const names = line.items.filter((_, i) => done[i]).map((item) => `\`${item.name.text}\``);
  return { title: `Take ${names.join(', ')} out of this line`, edits };
}
