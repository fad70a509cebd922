// Both sides in one print. What each side has is worked on once a side, what the vehicle has once is done once, and
// nothing that is done once stands between the two rows of a pair: so whatever one side alone may do in this order,
// both may do in lockstep.
import { type Line, type Scope, VERB_BY_WORD } from '@baywright/language';
import { isEachSide } from './names.js';
import type { Place, Print } from './print.js';

/** - `side`: touches only what each side has. `once`: touches only what there is once. `both`: some of each. */
type Touch = 'side' | 'once' | 'both' | 'none' | 'read';

/** Kinds whose state the vehicle has once: posture, conditions, fluids, things placed. */
const SHARED = new Set(['machine', 'condition', 'fluid', 'circuit', 'temporary']);

export interface Run {
  readonly lines: readonly Line[];
  readonly place: Place;
}

/** Lines in the order they are printed, each run at its place; one run where one side is printed. */
export function runsBySide(print: Print, lines: readonly Line[], place: Place): Run[] {
  if (place.side || print.sides.length === 1)
    return [{ lines, place: place.side ? place : onlySide(print, place) }];
  const runs: Run[] = [];
  let pair: Line[] = [];
  const close = (): void => {
    // What is only read and stands last says what comes next: once is enough.
    for (const side of pair.length > 0 ? print.sides : [])
      runs.push({ lines: pair, place: atSide(print, place, side) });
    pair = [];
  };
  for (const line of lines) {
    const touch = touchOf(line, place.scope);
    if (touch === 'side' || (pair.length > 0 && (touch === 'none' || touch === 'read'))) pair.push(line);
    else {
      close();
      runs.push({ lines: [line], place });
    }
  }
  close();
  return runs;
}

const onlySide = (print: Print, place: Place): Place => {
  const [side] = print.sides;
  return side ? atSide(print, place, side) : place;
};

export function atSide(print: Print, place: Place, side: NonNullable<Place['side']>): Place {
  return { ...place, side, when: print.job.universe.diagrams.and(place.when, side.when) };
}

/** What a block of lines touches. */
export function touches(lines: readonly Line[], scope: Scope): Touch {
  return lines.reduce<Touch>((all, line) => join(all, touchOf(line, scope)), 'read');
}

function touchOf(line: Line, scope: Scope): Touch {
  const inside = touches(line.children, scope);
  if (line.kind === 'perform') return 'both';
  if (line.kind !== 'statement')
    return line.kind === 'text' && line.word === 'hold' ? join('none', inside) : inside;
  return line.items.reduce<Touch>(
    (all, item) => join(all, touchOfName(item.name.text, line.verb.text, scope)),
    join('none', inside),
  );
}

function touchOfName(name: string, verb: string, scope: Scope): Touch {
  const thing = scope.resolve(name);
  if (!thing) return 'none';
  if (isEachSide(thing)) return 'side';
  const makes = VERB_BY_WORD.get(verb)?.on[thing.kind]?.makes.length ?? 0;
  if (SHARED.has(thing.kind)) return 'once';
  if (
    thing.kind === 'part' ||
    thing.kind === 'fastener' ||
    thing.kind === 'connection' ||
    thing.kind === 'adjustment'
  )
    return 'once';
  // Chocks are set once; a face that is cleaned belongs to the side that is worked on.
  return thing.kind === 'place' && makes > 0 && verb.includes('chock') ? 'once' : 'none';
}

function join(a: Touch, b: Touch): Touch {
  if (a === 'read' || a === b) return b;
  if (b === 'read') return a;
  if (a === 'none') return b;
  if (b === 'none') return a;
  return 'both';
}
