// Where missing lines can go: behind the last line that deals with the same joint, else before the line that needs them.
import { hasClause, type Thing } from '../names/model.js';
import type { Line } from '../syntax/tree.js';
import type { Act } from './act.js';
import type { Deficit, Lack } from './deficit.js';
import { facesOf, sealantOf } from './joints.js';
import type { Machine } from './machine.js';
import { holds } from './relations.js';
import { directionOfMake } from './wants.js';

/** Behind or before a line of the procedure itself. */
export interface Anchor {
  readonly line: Line;
  readonly side: 'before' | 'behind';
}

export function anchorFor(m: Machine, deficit: Deficit, lacks: readonly Lack[]): Anchor | undefined {
  const { act } = deficit;
  const filler = lacks.every((l) => l.want === 'fluid' || l.want === 'levelled')
    ? beforeFillerShuts(m, lacks, act)
    : undefined;
  if (filler) return filler;
  const fromObject =
    act?.statement?.objects.some((o) => o.thing && lacks.some((l) => l.thing === o.thing)) ?? false;
  const wholeOrEnd = act === undefined || act.statement?.verb.wholeVehicle === true;
  if (
    act &&
    (fromObject || !wholeOrEnd) &&
    !lacks.every((l) => l.want === 'torqued' || l.want === 'levelled')
  )
    return before(m, beforeSealing(m, lacks, act), lacks);
  const drive = lacks.every((l) => l.want === 'untagged') ? beforeDrive(m, lacks) : undefined;
  if (drive) return drive;
  if (lacks.every((l) => l.want === 'gone' || l.want === 'untied'))
    return beforeRunning(m, lacks) ?? (act ? before(m, act, lacks) : atEnd(m));
  if (act === undefined && lacks.every((l) => l.want === 'set')) return atEnd(m);
  const last = lastKin(m, lacks, act?.index ?? m.acts.length);
  if (last) return { line: last, side: 'behind' };
  if (act) return before(m, act, lacks);
  return atEnd(m);
}

/** A part comes off before its joint is cleaned and sealed: taken off behind that, its faces would be dirty again. */
function beforeSealing(m: Machine, lacks: readonly Lack[], act: Act): Act {
  const from = Math.max(-1, ...lacks.map((l) => l.maker));
  const joint = new Set(
    lacks
      .filter((l) => l.want === 'off')
      .flatMap((l) => [...facesOf(m.job, l.thing), sealantOf(m.job, l.thing)]),
  );
  const works = (a: Act): boolean =>
    a.index > from &&
    !a.through &&
    a.file === act.file &&
    covers(m, a, lacks) &&
    (a.statement?.objects.some(
      ({ thing }) =>
        thing &&
        joint.has(thing) &&
        (a.statement?.verb.on[thing.kind]?.makes.some((x) => x === 'cleaned' || x === 'coated') ?? false),
    ) ??
      false);
  return m.acts.slice(0, act.index).find(works) ?? act;
}

/** What was placed or tied for the job goes away behind its last use, before the machine is run or lowered. */
function beforeRunning(m: Machine, lacks: readonly Lack[]): Anchor | undefined {
  // What sits on a part is used as long as that is worked on.
  const things = new Set(
    lacks.flatMap((l) => [l.thing, ...m.job.relations(l.thing, 'on').map((r) => r.target)]),
  );
  const uses = (a: Act): boolean =>
    a.statement !== undefined &&
    [...a.statement.objects, ...a.statement.named('with'), ...a.statement.named('into')].some(
      (o) => o.thing && things.has(o.thing),
    );
  const last = Math.max(-1, ...m.acts.filter(uses).map((a) => a.index));
  const user = m.acts[last];
  const own = user?.statement?.objects.some((o) => lacks.some((l) => l.thing === o.thing)) ?? true;
  if (user && !own && !user.through && user.file === m.job.file.path && isWorkOn(m, user, lacks))
    return { line: passedByAll(m, user, lacks), side: 'behind' };
  const next = m.acts.find((a) => a.index > last && a.statement?.verb.wholeVehicle === true);
  return next ? before(m, next, lacks) : undefined;
}

/** Whether the act works on a part that one of the things sits on. */
const isWorkOn = (m: Machine, { statement }: Act, lacks: readonly Lack[]): boolean =>
  statement?.objects.some((o) =>
    lacks.some((l) => m.job.relations(l.thing, 'on').some((r) => r.target === o.thing)),
  ) ?? false;

/** A tag says that nothing is to be started: it goes before the first start behind the line that hung it. */
function beforeDrive(m: Machine, lacks: readonly Lack[]): Anchor | undefined {
  const from = Math.max(-1, ...lacks.map((l) => l.maker));
  const next = m.acts.find(
    (a) => a.index > from && a.statement?.verb.on.machine?.makes.includes('fluids moved'),
  );
  return next ? before(m, next, lacks) : undefined;
}

function atEnd(m: Machine): Anchor | undefined {
  // Where all the work so far is performed, behind that.
  const line = lastStatement(m) ?? m.acts.findLast(({ through }) => through)?.through;
  return line ? { line, side: 'behind' } : undefined;
}

/** Fluid goes in while its filler is still open: before the line that shuts it, the last time it is shut. */
function beforeFillerShuts(m: Machine, lacks: readonly Lack[], act: Act | undefined): Anchor | undefined {
  const fillers = new Set(lacks.flatMap((l) => m.job.relations(l.thing, 'fill at').map((r) => r.target)));
  const from = Math.max(-1, ...lacks.map((l) => l.maker));
  const shuts = m.acts.find(
    (a) =>
      a.index > from &&
      !a.through &&
      a.file === m.job.file.path &&
      covers(m, a, lacks) &&
      a.statement?.objects.some((o) => o.thing && fillers.has(o.thing) && isTogether(a, o.thing)),
  );
  return shuts && shuts.index < (act?.index ?? m.acts.length)
    ? { line: shuts.line, side: 'before' }
    : undefined;
}

/** Untying and untagging put nothing together: what was tied may still be off. */
function isTogether(act: Act, thing: Thing): boolean {
  return (act.statement?.verb.on[thing.kind]?.makes ?? []).some(
    (x) => directionOfMake(x) === 'together' && x !== 'untied' && x !== 'untagged',
  );
}

/** Whether the act works on something that the missing part will cover. */
function reachesBehind(m: Machine, act: Act, thing: Thing, lacks: readonly Lack[]): boolean {
  if (!act.statement?.verb.on[thing.kind]?.needs.includes('reachable')) return false;
  return m.job
    .relations(thing, 'behind')
    .some((r) => lacks.some((l) => l.thing === r.target && l.want === 'in'));
}

/** Whether the act runs wherever something lacks: a line in a branch is no place for what all paths need. */
function covers(m: Machine, act: Act, lacks: readonly Lack[]): boolean {
  return lacks.every((l) => m.d.implies(l.when, act.when));
}

/** Before the act; where it runs on fewer combinations than lack, before the block of its step that holds it. */
function before(m: Machine, act: Act, lacks: readonly Lack[]): Anchor | undefined {
  if (act.through) return { line: act.through, side: 'before' };
  if (act.file !== m.job.file.path) return undefined;
  return { line: passedByAll(m, act, lacks), side: 'before' };
}

/** The act's line; where it runs on fewer combinations than lack, the block of its step that holds it. */
function passedByAll(m: Machine, act: Act, lacks: readonly Lack[]): Line {
  if (covers(m, act, lacks)) return act.line;
  return act.step?.children.find((c) => c.start <= act.line.start && act.line.end <= c.end) ?? act.line;
}

/** The last line, after the thing was taken apart and before `limit`, that puts something of the same joint back. */
function lastKin(m: Machine, lacks: readonly Lack[], limit: number): Line | undefined {
  const kin = new Set(lacks.flatMap((l) => kinOf(m, l.thing)));
  const posture = lacks.some((l) => hasClause(l.thing, 'on ground') || hasClause(l.thing, 'at ride height'));
  const from = Math.max(-1, ...lacks.map((l) => l.maker));
  // A torque belongs right behind the line that closed its joint; all else behind the last line of the joint.
  const soonest = lacks.every((l) => l.want === 'torqued');
  const cures = soonest && lacks.some((l) => holds(m, l.thing).some((r) => hasCure(m, r.of)));
  let found: Line | undefined;
  for (const act of m.acts.slice(0, limit)) {
    if (act.index < from || act.through || act.file !== m.job.file.path || !act.statement) continue;
    if (!answers(m, act, lacks, kin, { from, posture, cures, limit })) continue;
    found = passedByAll(m, act, lacks);
    if (soonest && !posture) return found;
  }
  const maker = m.acts[from];
  return (
    found ??
    (soonest && maker && !maker.through && maker.file === m.job.file.path
      ? passedByAll(m, maker, lacks)
      : undefined)
  );
}

interface Search {
  readonly from: number;
  readonly limit: number;
  /** The torque asks for a posture: a line that lowers or loads counts. */
  readonly posture: boolean;
  /** The torque waits for sealant: only a wait counts. */
  readonly cures: boolean;
}

function answers(
  m: Machine,
  act: Act,
  lacks: readonly Lack[],
  kin: ReadonlySet<Thing>,
  search: Search,
): boolean {
  const statement = act.statement;
  if (!statement) return false;
  const { verb, objects } = statement;
  if (search.cures) return verb.alone?.makes.includes('waited') ?? false;
  if (
    lacks.some((l) => l.want === 'bled') &&
    objects.some((o) => o.thing?.kind === 'fluid') &&
    !fills(m, act, search)
  )
    return false;
  if (search.posture && verb.on.machine?.makes.some((x) => x === 'lowered' || x === 'loaded')) return true;
  if (act.index === search.from && lacks.every((l) => l.want === 'levelled')) return true;
  return objects.some(
    (o) => o.thing && kin.has(o.thing) && (isTogether(act, o.thing) || reachesBehind(m, act, o.thing, lacks)),
  );
}

/** Whether the act is the one that puts the fluid in: a `fill`, or a `top-up` where nothing fills. */
function fills(m: Machine, act: Act, search: Search): boolean {
  const makes = (a: Act): readonly string[] => a.statement?.verb.on.fluid?.makes ?? [];
  if (makes(act).includes('filled')) return true;
  const filled = m.acts.slice(search.from, search.limit).some((a) => makes(a).includes('filled'));
  return !filled && makes(act).includes('topped');
}

function hasCure(m: Machine, part: Thing): boolean {
  return m.job.relations(part, 'sealed with').some((r) => hasClause(r.target, 'torque after'));
}

/** What must be shut before a circuit is bled: its connections with what clamps and holds them. */
function circuitKin(m: Machine, circuit: Thing): Thing[] {
  return m.job
    .inverse(circuit, 'in')
    .flatMap((r) => [
      r.of,
      ...m.job.relations(r.of, 'held by').map((h) => h.target),
      ...m.job.relations(r.of, 'clamped by').map((h) => h.target),
    ]);
}

/** The thing, what it holds, what holds it, what sits behind it, and the circuit or fluid it belongs to. */
function kinOf(m: Machine, thing: Thing): Thing[] {
  return [
    thing,
    ...holds(m, thing).map((r) => r.of),
    ...m.job.relations(thing, 'held by').map((r) => r.target),
    ...m.job.inverse(thing, 'behind').map((r) => r.of),
    ...m.job.relations(thing, 'in').map((r) => r.target),
    ...m.job.relations(thing, 'on').map((r) => r.target),
    ...m.job.inverse(thing, 'in').map((r) => r.of),
    ...(thing.kind === 'circuit' ? circuitKin(m, thing) : []),
    ...m.job.relations(thing, 'uses').map((r) => r.target),
  ];
}

function lastStatement(m: Machine): Line | undefined {
  const step = m.job.file.work
    .at(-1)
    ?.children.filter((l) => l.kind === 'step')
    .at(-1);
  return step?.children
    .filter((l) => l.kind === 'statement' || l.kind === 'when' || l.kind === 'text')
    .at(-1);
}
