// What an operation asks for and what it leaves, for the hover of `perform`: it is run alone on the vehicle as it comes
// in; what it lacks there it needs, and where it ends differently from how it began it makes. The proof of a procedure
// does not read this: there the lines of the operation are run in the caller's own state.
import { jobOf } from '../names/job.js';
import type { FileModel, Thing } from '../names/model.js';
import type { Imports } from '../names/scope.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import type { Aspect } from './aspects.js';
import { decode, size } from './counts.js';
import type { Lack } from './deficit.js';
import { CAME_IN } from './guarded.js';
import type { Machine } from './machine.js';
import { runProcedure, type StateRun } from './run.js';
import type { Want } from './wants.js';

/** One thing and how it is: `wheel`, `off`. */
export interface ThingState {
  readonly thing: Thing;
  /** `off`, `torqued`, `raised`; a value of a condition. */
  readonly state: string;
  /** The combinations in words; absent when it holds on all. */
  readonly variants?: string;
}

export interface OperationSummary {
  readonly needs: readonly ThingState[];
  readonly makes: readonly ThingState[];
}

/** `operation` is one that `file` declares. */
export function operationSummary(file: FileModel, operation: Thing, imports: Imports): OperationSummary {
  const job = jobOf(file, imports);
  const section = file.work.find((s) => s.children.some((line) => line === operation.line));
  if (!section || !operation.line) return { needs: [], makes: [] };
  const run = runProcedure({
    ...job,
    file: { ...file, work: [{ ...section, children: operation.line.children }] },
  });
  const needs = needsOf(run);
  return { needs, makes: makesOf(run, new Set(needs.map((n) => n.thing))) };
}

function needsOf(run: StateRun): ThingState[] {
  const m = run.machine;
  const found = new Map<Thing, { state: string; when: Condition }>();
  const add = (thing: Thing, state: string, when: Condition): void => {
    const known = found.get(thing);
    found.set(thing, { state: known?.state ?? state, when: m.d.or(known?.when ?? NEVER, when) });
  };
  const acted = new Set(m.acts.flatMap((a) => a.statement?.objects.map((o) => o.thing) ?? []));
  for (const { act, lacks, also, arrived } of run.deficits) {
    if (!act) continue;
    // What a later line of the operation does itself is no need of it but a fault in its order.
    const asked = lacks.filter((l) => !arrived.has(l.thing) && l.maker === CAME_IN);
    for (const lack of asked) add(lack.thing, stateWanted(lack), lack.when);
    const when = asked.reduce<Condition>((c, l) => m.d.or(c, l.when), NEVER);
    for (const [thing, want] of also)
      if (when !== NEVER && acted.has(thing) && !arrived.has(thing))
        add(thing, WANT_WORDS[want] ?? want, when);
  }
  return [...found].map(([thing, { state, when }]) => stated(m, thing, state, when));
}

function stateWanted({ want, value }: Lack): string {
  return WANT_WORDS[want] ?? value ?? want;
}

/** How things stand at the end that the operation took from how it found them: as they came in, or as it needed them. */
function makesOf(run: StateRun, needed: ReadonlySet<Thing>): ThingState[] {
  const m = run.machine;
  const first = m.asAfter(-1);
  const out: ThingState[] = [];
  for (const [{ thing, aspect }, guarded] of m.cells()) {
    const before = first.read(thing, aspect)[0]?.value;
    const byState = new Map<string, Condition>();
    for (const { value, when, by } of guarded) {
      const act = m.acts[by];
      if (!act || !actsOn(run, thing, by) || (value === before && !needed.has(thing))) continue;
      const state = stateWord(aspect, String(value));
      if (state !== undefined) byState.set(state, m.d.or(byState.get(state) ?? NEVER, when));
    }
    for (const [state, when] of byState) out.push(stated(m, thing, state, when));
  }
  return out;
}

/** Whether the act changed the thing itself: what was only assumed after a lack is a need, not a make. */
function actsOn(run: StateRun, thing: Thing, by: number): boolean {
  return !run.deficits.some(
    (d) =>
      d.act?.index === by &&
      (d.also.has(thing) || d.lacks.some((l) => l.thing === thing)) &&
      !d.act.statement?.objects.some((o) => o.thing === thing),
  );
}

function stated(m: Machine, thing: Thing, state: string, when: Condition): ThingState {
  const variants = m.job.universe.words(when);
  return { thing, state, ...(variants === undefined ? {} : { variants }) };
}

const WANT_WORDS: Readonly<Partial<Record<Want, string>>> = {
  off: 'off',
  slack: 'slack',
  in: 'on',
  mounted: 'on',
  started: 'on',
  tight: 'tight',
  torqued: 'torqued',
  snug: 'snug',
  connected: 'connected',
  disconnected: 'disconnected',
  hung: 'hung',
  up: 'raised',
  supported: 'supported',
  'back on ground': 'on the ground',
  'ride height': 'at ride height',
  drained: 'drained',
  fluid: 'filled',
  levelled: 'level checked',
  bled: 'bled',
  adjusted: 'adjusted',
  gone: 'taken away',
  placed: 'in place',
  chocked: 'chocked',
  unchocked: 'unchocked',
  tagged: 'tagged',
  untagged: 'without a tag',
  tied: 'tied',
  untied: 'untied',
  capped: 'capped',
  clean: 'clean',
  wet: 'sealed',
  'suspension free': 'hanging free',
  'suspension loaded': 'loaded',
  unspent: 'new',
  cured: 'cured',
  settled: 'settled',
  stage: 'torqued to the stage before',
};

function stateWord(aspect: Aspect, value: string): string | undefined {
  switch (aspect) {
    case 'place':
      return value === 'in' ? 'on' : value === 'out' ? 'off' : value;
    case 'tight':
      return tightWord(value);
    case 'link':
    case 'value':
    case 'position':
      return value;
    case 'level':
      return value === 'full' ? 'filled' : value === 'unchecked' ? 'filled, level to be checked' : value;
    case 'air':
      return value === 'bled' ? 'bled' : 'open to air';
    case 'setting':
      return value === 'set' ? 'adjusted' : 'to be adjusted';
    case 'put':
      return value === 'placed' ? 'in place' : 'taken away';
    case 'chock':
      return value === 'yes' ? 'chocked' : 'unchocked';
    case 'tag':
      return value === 'no' ? 'without a tag' : 'tagged';
    case 'tie':
      return value === 'no' ? 'untied' : 'tied';
    case 'posture':
      return value === 'ground' ? 'on the ground' : value;
    case 'suspension':
      return value === 'jacked' ? 'loaded' : undefined;
    case 'joint':
    case 'clean':
    case 'spent':
    case 'fresh':
      return undefined;
  }
}

function tightWord(value: string): string {
  const c = decode(value);
  const n = size(c);
  if (c.out === n) return 'off';
  if (c.torqued === n) return 'torqued';
  if (c.out > 0) return `${c.out} of ${n} off`;
  if (c.loose > 0) return c.loose === n ? 'loose' : `${c.loose} of ${n} loose`;
  return c.snug === n ? 'snug' : 'on by hand';
}
