// After a lack: set what was needed and mark the whole joint, so that its later failures are silent.
import { allThings } from '../names/job.js';
import type { Thing } from '../names/model.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import type { Deficit, Lack } from './deficit.js';
import type { Machine } from './machine.js';
import { holds, notIn, notTorqued } from './relations.js';
import { assumeState, directionOf, type Want } from './wants.js';

export function assumeLack(m: Machine, lack: Lack, deficit: Deficit): void {
  const by = deficit.act?.index ?? m.acts.length;
  assumeState(m, lack.thing, lack.want, lack.when, lack.value, by);
  m.assume(lack.thing, lack.want, lack.when, deficit);
  for (const [thing, want] of jointOf(m, lack)) {
    deficit.also.add(thing);
    assumeState(m, thing, want, lack.when, undefined, by);
    m.assume(thing, want, lack.when, deficit);
  }
}

/**
 * What is put right along with a thing. Together: what it holds and what holds it, what rides in it, what sits behind it.
 * Apart: what still holds it. Only things that are not so already are named.
 */
function jointOf(m: Machine, lack: Lack): Map<Thing, Want> {
  const joint = new Map<Thing, Want>();
  const direction = directionOf(lack.want);
  if (direction === 'together' && (lack.want === 'in' || lack.want === 'connected' || lack.want === 'torqued')) {
    const queue: Thing[] = [lack.thing];
    const seen = new Set<Thing>(queue);
    for (let thing = queue.pop(); thing; thing = queue.pop()) {
      for (const next of neighbours(m, thing, lack.when)) {
        if (seen.has(next)) continue;
        seen.add(next);
        if (!lacking(m, next, lack.when)) continue;
        joint.set(next, next.kind === 'connection' ? 'connected' : 'in');
        queue.push(next);
      }
    }
  }
  if (direction === 'apart' && (lack.want === 'off' || lack.want === 'disconnected')) {
    for (const r of m.job.relations(lack.thing, 'held by')) if (r.target.kind === 'fastener') joint.set(r.target, 'off');
    for (const r of m.job.relations(lack.thing, 'clamped by')) joint.set(r.target, 'slack');
  }
  return joint;
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

function lacking(m: Machine, thing: Thing, when: Condition): boolean {
  return (thing.kind === 'fastener' ? notTorqued(m, thing, when) : notIn(m, thing, when)).length > 0;
}

/** Mutes every declared thing named by words of a line that could not be read. */
export function muteNames(m: Machine, words: readonly string[], when: Condition): void {
  const named = new Set(words);
  for (const thing of allThings(m.job.scopes)) if (named.has(thing.name)) m.mute(thing, when);
}
