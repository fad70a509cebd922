// In what order a fitting half puts things right, and what waits its turn.
import { hasClause, type Thing } from '../names/model.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import { decode, size } from './counts.js';
import type { Machine } from './machine.js';
import type { StateFact } from './state-at.js';

/** What is still open, in the order to try: the latest taken off first within a kind of work. What no line mends is left out. */
export function inFittingOrder(m: Machine, facts: readonly StateFact[]): StateFact[] {
  const fillers = new Set(
    facts
      .filter((f) => f.thing.kind === 'fluid')
      .flatMap((f) => m.job.relations(f.thing, 'fill at').map((r) => r.target)),
  );
  const rank = (fact: StateFact): number => {
    const group = GROUP_ORDER[fact.group] ?? -1;
    // The filler stays open until the fluid is in; chocks stay until the wheels carry, a tag until the end.
    const isLast = fillers.has(fact.thing) || fact.said.what === 'chocked' || fact.said.what === 'tagged';
    if (group >= 0 && isLast) return group + LAST;
    return group === IN_REVERSE && fact.thing.marks.includes('battery-negative') ? ON_LAST : group;
  };
  return facts
    .filter((f) => rank(f) >= 0)
    .sort((a, b) => rank(a) - rank(b) || (b.act?.index ?? -1) - (a.act?.index ?? -1));
}

/**
 * Tightening follows fitting at once. Parts and pipes go on, and what was placed for the job goes, in the reverse of how
 * that was done. Fluids and the vehicle's own posture come when all is closed.
 */
const GROUP_ORDER: Readonly<Partial<Record<StateFact['group'], number>>> = {
  untorqued: 0,
  loose: 0,
  off: 1,
  hung: 1,
  disconnected: 1,
  capped: 1,
  placed: 1,
  drained: 2,
  owed: 3,
  unbled: 4,
  disturbed: 5,
  raised: 6,
  changed: 7,
};
const TIGHTENING = 0;
const IN_REVERSE = 1;
/** The negative lead of a battery is off first and on last, wherever its line stands. */
const ON_LAST = 4.5;
const LAST = 10;

/** What is done at once, before anything else goes on. */
export const isTightening = ({ group }: StateFact): boolean => GROUP_ORDER[group] === TIGHTENING;

/** What is next to go back: the last that came off, unless it would shut in work. */
export function nextInReverse(m: Machine, facts: readonly StateFact[]): StateFact | undefined {
  return facts.find((fact) => GROUP_ORDER[fact.group] === IN_REVERSE && !shutsIn(m, fact));
}

/** Whether a fact at its place may be settled: a battery or a support waits its turn, and so does what would shut in work. */
export function inTurn(m: Machine, facts: readonly StateFact[]): (fact: StateFact, i: number) => boolean {
  const next = nextInReverse(m, facts);
  const turn = next ? facts.indexOf(next) : -1;
  return (fact, i) => (WAITS.has(fact.group) ? i <= turn || turn < 0 : !shutsIn(m, fact));
}

const WAITS: ReadonlySet<StateFact['group']> = new Set<StateFact['group']>(['disconnected', 'placed']);

/** Whether fitting the thing hides a fastener that is not tight yet, or where a circuit is bled. */
function shutsIn(m: Machine, { group, thing }: StateFact): boolean {
  if (group !== 'off' && group !== 'hung') return false;
  return m.job.inverse(thing, 'behind').some(({ of, when }) => {
    if (of.kind !== 'fastener') return false;
    const slack = m.where(of, 'tight', (v) => !isTight(of, v));
    const air = m.job.inverse(of, 'bleed at').reduce<Condition>((all, r) => {
      const unbled = m.where(r.of, 'air', (v) => v === 'air');
      return m.d.or(all, m.d.and(unbled, r.when));
    }, NEVER);
    return m.d.and(when, m.d.or(slack, air)) !== NEVER;
  });
}

function isTight(thing: Thing, word: string | number): boolean {
  const c = decode(String(word));
  return hasClause(thing, 'no torque') ? c.out + c.loose === 0 : c.torqued === size(c);
}
