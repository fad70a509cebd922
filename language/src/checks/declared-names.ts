// N102, N103, N104: what is declared twice, what hides an import, what nothing uses.
import { type Finding, finding } from '../diagnostics/define.js';
import { declaredTwice, hidesImport, neverUsed } from '../diagnostics/names.js';
import { isJustBegun } from '../names/draft.js';
import { everyLine, type Job, linesOfWork } from '../names/job.js';
import { type MentionWay, visitMentions } from '../names/mentions.js';
import { clausesOf, type FileModel, hasClause, nameSpan, type Thing } from '../names/model.js';
import { type Clash, resolvePath } from '../names/scope.js';
import type { Line, Name } from '../syntax/tree.js';
import { once } from '../text/once.js';
import type { Span } from '../text/span.js';
import type { ThingKind } from '../vocabulary/kinds.js';
import { nearestName } from '../vocabulary/near.js';
import type { Check } from './check.js';
import { undeclaredUses, wordsOnBrokenLines } from './undeclared.js';

export const declaredNames: Check = ({ job }) => [...clashes(job), ...unused(job)];

function clashes(job: Job): Finding[] {
  const { file, scope } = job;
  return scope.clashes.flatMap((clash) => {
    const { name, first, again } = clash;
    if (first.file === file.path && again.file === file.path) {
      const at = spanOf(again);
      const related = otherPlace(first, 'declared here first');
      return at ? [finding(declaredTwice, { file: file.path, span: at, related }, { name })] : [];
    }
    const at = hidingPlace(clash, job);
    const other = first.file === file.path ? again : first;
    return at
      ? [
          finding(
            hidesImport,
            { file: file.path, span: at, related: otherPlace(other, 'declared here too') },
            { name, first: first.file, again: again.file },
          ),
        ]
      : [];
  });
}

/** The own entry that hides the other, or the line that brings the second of two imports in. */
function hidingPlace({ first, again }: Clash, { file }: Job): Span | undefined {
  if (first.file === file.path) return spanOf(first);
  if (again.file === file.path) return spanOf(again);
  const use =
    file.uses.find((line) => line.path && resolvePath(file.path, line.path.text) === again.file) ??
    file.uses.at(-1);
  return use?.path ? { start: use.path.start, end: use.path.end } : undefined;
}

function unused(job: Job): Finding[] {
  const { file } = job;
  if (file.kind !== 'procedure' || isJustBegun(file)) return [];
  const words = wordsOnBrokenLines(file.lines);
  const known = file.things.map((thing) => thing.name);
  for (const name of undeclaredUses(job).keys()) for (const near of nearestName(name, known)) words.add(near);
  const sections = file.lines.map(namesBelow).filter(({ size }) => size > 0);
  const used: Used = { has: (name) => words.has(name) || sections.some((names) => names.has(name)) };
  return file.things.flatMap((thing) => {
    if (used.has(thing.name)) return [];
    const at = spanOf(thing);
    if (!at || thing.line?.broken || isHeardOf(thing, used) || isTold(thing, file)) return [];
    return [finding(neverUsed, { file: file.path, span: at }, { name: thing.name })];
  });
}

/** Names that a line of the left edge and those below it use: the same until something in it is edited. */
const namesBelow = once((top: Line): ReadonlySet<string> => {
  const names = new Set<string>();
  const use = (name: Name, way: MentionWay): void => {
    if (way !== 'declares') names.add(name.text);
  };
  for (const line of everyLine([top])) visitMentions(line, use);
  return names;
});

type Used = Pick<ReadonlySet<string>, 'has'>;

const UNNAMED: ReadonlySet<ThingKind> = new Set(['rule', 'vehicle', 'source', 'circuit', 'adjustment']);

/**
 * Things that count in a job without being named again: rules, sheets, what rides in another thing or sits on it,
 * what used bolts hold, circuits and adjustments that the work disturbs, fluids that come out at their drain, torque
 * wrenches.
 */
function isHeardOf(thing: Thing, used: Used): boolean {
  if (UNNAMED.has(thing.kind)) return true;
  if (thing.kind === 'fluid') return hasClause(thing, 'drain at');
  // A torque wrench is picked by the figures.
  if (thing.kind === 'tool') return hasClause(thing, 'torque');
  if (hasClause(thing, 'in') || hasClause(thing, 'on')) return true;
  const holders = [...clausesOf(thing, 'held by'), ...clausesOf(thing, 'clamped by')];
  return holders.some(({ clause }) => clause.items.some((item) => used.has(item.name.text)));
}

/** What is taken up by hand and stands in the text by its title: the text is then what to mend. */
function isTold(thing: Thing, file: FileModel): boolean {
  const isAid = thing.kind === 'tool' || thing.kind === 'supply' || thing.kind === 'temporary';
  return isAid && textOf(file).includes(thing.title.toLowerCase());
}

/** All text of the work, in lower case. */
const textOf = once((file: FileModel): string =>
  linesOfWork(file)
    .map((line) => line.prose?.text.toLowerCase() ?? '')
    .join('\n'),
);

function spanOf(thing: Thing): Span | undefined {
  const name = nameSpan(thing);
  return name && { start: name.start, end: name.end };
}

function otherPlace(thing: Thing, message: string): { file: string; span: Span; message: string }[] {
  const span = spanOf(thing);
  return span ? [{ file: thing.file, span, message }] : [];
}
