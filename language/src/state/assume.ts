// After a lack: set what was needed and mark the whole joint, so that its later failures are silent.
import { allThings } from '../names/job.js';
import type { Thing } from '../names/model.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import type { Deficit, Lack } from './deficit.js';
import type { Machine } from './machine.js';
import { fastenerSlack, holds, lacksOf, notIn, notOff, notTorqued } from './relations.js';
import { assumeState, directionOf, type Want } from './wants.js';

export function assumeLack(m: Machine, lack: Lack, deficit: Deficit): void {
  const by = deficit.act?.index ?? m.acts.length;
  assumeState(m, lack.thing, lack.want, lack.when, lack.value, by);
  m.assume(lack.thing, lack.want, lack.when, deficit);
  for (const [thing, want] of jointOf(m, lack)) {
    if (!deficit.lacks.some((l) => l.thing === thing)) deficit.also.set(thing, want);
    assumeState(m, thing, want, lack.when, undefined, by);
    m.assume(thing, want, lack.when, deficit);
  }
}

/**
 * What is put right along with a thing. Together: what it holds and what holds it, what rides in it, what sits behind it.
 * Apart: what still holds it. Only things that are not so already are named.
 */
function jointOf(m: Machine, lack: Lack): Map<Thing, Want> {
  const direction = directionOf(lack.want);
  if (direction === 'together' && (lack.want === 'in' || lack.want === 'connected' || lack.want === 'torqued')) return fittedJoint(m, lack);
  if (direction === 'apart' && (lack.want === 'off' || lack.want === 'disconnected')) return openedJoint(m, lack);
  return new Map();
}

function fittedJoint(m: Machine, lack: Lack): Map<Thing, Want> {
  const joint = new Map<Thing, Want>();
  const queue: Thing[] = [lack.thing];
  const seen = new Set<Thing>(queue);
  for (let thing = queue.pop(); thing; thing = queue.pop()) {
    for (const next of neighbours(m, thing, lack.when)) {
      if (seen.has(next)) continue;
      seen.add(next);
      const lacks = lacking(m, next, lack.when);
      const first = lacks[0];
      if (!first) continue;
      joint.set(next, first.want);
      queue.push(next);
    }
  }
  return joint;
}

/** What has to come off with a thing: what holds and covers it, and other parts that the same fasteners alone hold. */
function openedJoint(m: Machine, lack: Lack): Map<Thing, Want> {
  const joint = new Map<Thing, Want>();
  const queue: Thing[] = [lack.thing];
  const inside = (r: { when: Condition }): boolean => m.d.and(r.when, lack.when) !== NEVER;
  const add = (thing: Thing, want: Want, on: boolean): void => {
    if (!on || joint.has(thing) || thing === lack.thing) return;
    joint.set(thing, want);
    if (want !== 'slack') queue.push(thing);
  };
  for (let thing = queue.pop(); thing; thing = queue.pop()) {
    for (const r of m.job.relations(thing, 'held by').filter(inside)) add(r.target, r.target.kind === 'connection' ? 'disconnected' : 'off', isOn(m, r.target, lack.when));
    for (const r of m.job.relations(thing, 'clamped by').filter(inside)) add(r.target, 'slack', lacksOf(m, r.target, 'tight', (v) => !fastenerSlack(v), 'slack', lack.when).length > 0);
    for (const r of m.job.relations(thing, 'behind').filter(inside)) if (r.target.kind === 'part') add(r.target, 'off', isOn(m, r.target, lack.when));
    if (thing.kind === 'fastener') {
      for (const r of m.job.inverse(thing, 'held by').filter(inside)) {
        const alone = m.job.relations(r.of, 'held by').every((h) => h.target === thing || joint.has(h.target));
        if (r.of.kind === 'part' && alone) add(r.of, 'off', isOn(m, r.of, lack.when));
      }
    }
  }
  return joint;
}

function isOn(m: Machine, thing: Thing, when: Condition): boolean {
  if (thing.kind === 'condition') return false;
  return notOff(m, { target: thing, count: undefined, value: undefined, when }, when).length > 0;
}

function neighbours(m: Machine, thing: Thing, when: Condition): Thing[] {
  const inside = (r: { when: Condition }): boolean => m.d.and(r.when, when) !== NEVER;
  return [
    ...holds(m, thing).filter(inside).map((r) => r.of),
    ...m.job.relations(thing, 'held by').filter(inside).map((r) => r.target),
    ...m.job.relations(thing, 'clamped by').filter(inside).map((r) => r.target),
    ...m.job.inverse(thing, 'in').filter(inside).map((r) => r.of),
    ...(thing.kind === 'part' ? m.job.inverse(thing, 'behind').filter(inside).map((r) => r.of) : []),
  ].filter((t) => t.kind === 'part' || t.kind === 'fastener' || t.kind === 'connection');
}

function lacking(m: Machine, thing: Thing, when: Condition): Lack[] {
  return thing.kind === 'fastener' ? notTorqued(m, thing, when) : notIn(m, thing, when);
}

/** Mutes every declared thing named by words of a line that could not be read. */
export function muteNames(m: Machine, words: readonly string[], when: Condition): void {
  const named = new Set(words);
  for (const thing of allThings(m.job.scopes)) if (named.has(thing.name)) m.mute(thing, when);
}
