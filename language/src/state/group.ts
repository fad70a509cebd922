// Lacks of one cause: those of one joint, or left by one line.
import type { Thing } from '../names/model.js';
import type { Lack } from './deficit.js';
import type { Machine } from './machine.js';

export function groupLacks(m: Machine, lacks: readonly Lack[]): Lack[][] {
  const groups: Lack[][] = [];
  for (const lack of lacks) {
    const kin = groups.filter((g) => g.some((other) => related(m, lack, other)));
    const merged = [...kin.flat(), lack];
    for (const g of kin) groups.splice(groups.indexOf(g), 1);
    groups.push(merged);
  }
  return groups;
}

function related(m: Machine, a: Lack, b: Lack): boolean {
  if (a.thing === b.thing) return true;
  if (a.want === b.want && (a.want === 'gone' || a.want === 'unchocked')) return true;
  if (a.maker >= 0 && m.acts[a.maker]?.line === m.acts[b.maker]?.line) return true;
  return joined(m, a.thing, b.thing) || joined(m, b.thing, a.thing) || sharedPart(m, a.thing, b.thing);
}

function joined(m: Machine, a: Thing, b: Thing): boolean {
  return ['held by', 'clamped by', 'in', 'on', 'drain at', 'uses'].some((word) =>
    m.job.relations(a, word).some((r) => r.target === b),
  );
}

/** Two fasteners of one part. */
function sharedPart(m: Machine, a: Thing, b: Thing): boolean {
  const held = (t: Thing): Thing[] =>
    [...m.job.inverse(t, 'held by'), ...m.job.inverse(t, 'clamped by')].map((r) => r.of);
  const ofA = held(a);
  return ofA.length > 0 && held(b).some((p) => ofA.includes(p));
}
