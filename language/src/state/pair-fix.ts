// The fix of what a performed operation took off: performing the operation that puts it back, where there is one.
import type { Fix } from '../diagnostics/define.js';
import type { Line } from '../syntax/tree.js';
import { anchorFor } from './anchor.js';
import type { Deficit, Lack } from './deficit.js';
import { pairFor, runPair } from './fitting-pair.js';
import type { Machine } from './machine.js';

/** Undefined where only some of the lacks come of one `perform`, or its pair could not be done where it would stand. */
export function pairFix(m: Machine, deficit: Deficit, lacks: readonly Lack[]): Fix | undefined {
  const through = m.acts[lacks[0]?.maker ?? -1]?.through;
  if (!through || lacks.some((lack) => m.acts[lack.maker]?.through !== through || !isOnAll(m, lack)))
    return undefined;
  const pair = pairFor(
    m,
    through,
    lacks.map(({ thing }) => thing),
  );
  const anchor = anchorFor(m, deficit, lacks);
  const beside = pair && anchor && besideSteps(m, anchor.line);
  if (!beside) return undefined;
  const { path, tree } = m.job.file;
  const at =
    anchor.side === 'behind'
      ? tree.text.indexOf('\n', beside.end) + 1 || tree.text.length
      : tree.text.lastIndexOf('\n', beside.start) + 1;
  const then = m.asAfter(m.acts.findLastIndex((act) => (act.through ?? act.line).start < at));
  if (!runPair(then, pair)) return undefined;
  const opening = at === tree.text.length && !tree.text.endsWith('\n') ? '\n' : '';
  return {
    title: `Insert \`${pair.line}\``,
    edits: [
      {
        file: path,
        span: { start: at, end: at },
        text: `${opening}${' '.repeat(beside.indent)}${pair.line}\n`,
      },
    ],
  };
}

const isOnAll = ({ d, job }: Machine, { when }: Lack): boolean => d.implies(job.universe.domain, when);

/** The line that stands straight in a section of the work and holds this one: a `perform` stands beside steps. */
function besideSteps({ job }: Machine, line: Line): Line | undefined {
  return job.file.work
    .flatMap((section) => section.children)
    .find((child) => child.start <= line.start && line.end <= child.end && child.kind !== 'operation');
}
