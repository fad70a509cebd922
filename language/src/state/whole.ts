// What is not as it came in: asked by lowering, running and road testing, and at the end of the procedure.
import { hasClause, type Thing } from '../names/model.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import { decode, size } from './counts.js';
import type { Lack } from './deficit.js';
import { sealantOf } from './joints.js';
import type { Machine } from './machine.js';
import { inNotTorqued, lacksOf, notIn, whenOf } from './relations.js';

/**
 * What the vehicle has to be ready for.
 *
 * - `wheels`: wheels on and their nuts at least snug, before the vehicle stands on them.
 * - `engine`: closed joints, connections, fluids; a part that seals nothing may be off while the engine runs.
 * - `road`: all back on, torqued, connected, bled, adjusted, filled.
 * - `end`: that, and conditions, temporary things, chocks, posture, levels.
 */
type Readiness = 'wheels' | 'engine' | 'road' | 'end';

/** What keeps the vehicle from being ready for it, on the combinations of `when`. */
export function wholeLacks(m: Machine, when: Condition, ready: Readiness): Lack[] {
  const lacks: Lack[] = [];
  for (const [{ thing, aspect }] of m.cells()) {
    switch (aspect) {
      case 'place':
        if (
          ready === 'wheels'
            ? thing.marks.includes('wheel')
            : ready !== 'engine' || sealsOrHoldsFluid(m, thing)
        )
          lacks.push(...lacksOf(m, thing, 'place', (v) => v !== 'in', 'in', when));
        break;
      case 'position':
        if (ready !== 'wheels' && ready !== 'engine' && thing.values.length > 0)
          lacks.push(
            ...lacksOf(
              m,
              thing,
              'position',
              (v) => v !== thing.values[0]?.text,
              'position',
              when,
              thing.values[0]?.text ?? '',
            ),
          );
        break;
      case 'tight':
        lacks.push(...fastenerLacks(m, thing, when, ready));
        break;
      case 'link':
        if (ready !== 'wheels')
          lacks.push(...lacksOf(m, thing, 'link', (v) => v !== 'connected', 'connected', when));
        break;
      case 'level':
        if (ready !== 'wheels')
          lacks.push(...lacksOf(m, thing, 'level', (v) => v === 'low' || v === 'drained', 'fluid', when));
        if (ready === 'end')
          lacks.push(...lacksOf(m, thing, 'level', (v) => v === 'unchecked', 'levelled', when));
        break;
      case 'air':
        if (ready !== 'wheels') lacks.push(...lacksOf(m, thing, 'air', (v) => v === 'air', 'bled', when));
        break;
      case 'setting':
        if (ready === 'road' || ready === 'end')
          lacks.push(...lacksOf(m, thing, 'setting', (v) => v === 'disturbed', 'adjusted', when));
        break;
      case 'value':
        if (ready === 'end' && !hasClause(thing, 'free')) {
          const rest = m.rest(thing);
          lacks.push(...lacksOf(m, thing, 'value', (v) => v !== rest, 'set', when, rest));
        }
        break;
      case 'put':
        if (ready === 'end') lacks.push(...lacksOf(m, thing, 'put', (v) => v === 'placed', 'gone', when));
        break;
      case 'chock':
        if (ready === 'end') lacks.push(...lacksOf(m, thing, 'chock', (v) => v === 'yes', 'unchocked', when));
        break;
      case 'tag':
        if (ready === 'end') lacks.push(...lacksOf(m, thing, 'tag', (v) => v === 'yes', 'untagged', when));
        break;
      case 'tie':
        if (ready === 'end') lacks.push(...lacksOf(m, thing, 'tie', (v) => v === 'yes', 'untied', when));
        break;
      case 'posture':
        if (ready === 'end' || ready === 'road')
          lacks.push(...lacksOf(m, thing, 'posture', (v) => v !== 'ground', 'back on ground', when));
        break;
      default:
        break;
    }
  }
  return ready === 'wheels' ? lacks : withoutFollowers(m, lacks);
}

function fastenerLacks(m: Machine, thing: Thing, when: Condition, ready: Readiness): Lack[] {
  if (ready === 'wheels') {
    const wheel = m.job.inverse(thing, 'held by').some((r) => r.of.marks.includes('wheel'));
    if (!wheel) return [];
    const snug = (v: string): boolean => decode(v).snug + decode(v).torqued === size(decode(v));
    return [
      ...notIn(m, thing, when),
      ...lacksOf(m, thing, 'tight', (v) => decode(v).out === 0 && !snug(v), 'snug', when),
    ];
  }
  const out = ready === 'engine' && onlyHoldsLooseParts(m, thing) ? [] : notIn(m, thing, when);
  return [...out, ...inNotTorqued(m, thing, when)];
}

/** A part that closes a fluid or carries a sealed joint must be on before an engine runs; a tray need not. */
function sealsOrHoldsFluid(m: Machine, part: Thing): boolean {
  return (
    sealantOf(m.job, part) !== undefined ||
    hasClause(part, 'closes') ||
    m.job.inverse(part, 'drain at').length > 0 ||
    part.marks.includes('engine-cover')
  );
}

function onlyHoldsLooseParts(m: Machine, fastener: Thing): boolean {
  const held = [...m.job.inverse(fastener, 'held by'), ...m.job.inverse(fastener, 'clamped by')];
  return held.length > 0 && held.every((r) => r.of.kind === 'part' && !sealsOrHoldsFluid(m, r.of));
}

/** A fastener or connection is not told of where the part it belongs to is missing as well. */
function withoutFollowers(m: Machine, lacks: readonly Lack[]): Lack[] {
  return lacks.flatMap((l) => {
    if (l.want !== 'torqued' && l.want !== 'connected') return [l];
    const parts = [...m.job.inverse(l.thing, 'held by'), ...m.job.inverse(l.thing, 'clamped by')]
      .map((r) => r.of)
      .concat(m.job.relations(l.thing, 'on').map((r) => r.target));
    const when = m.d.minus(
      l.when,
      whenOf(
        m,
        lacks.filter((o) => o.want === 'in' && parts.includes(o.thing)),
      ),
    );
    return when === NEVER ? [] : [{ ...l, when }];
  });
}
