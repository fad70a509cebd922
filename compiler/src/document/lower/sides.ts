// Both sides in one print. What each side has is worked on once a side, what the vehicle has once is done once, and
// nothing that is done once stands between the two rows of a pair: so whatever one side alone may do in this order,
// both may do in lockstep.
import {
  isEachSide,
  type Line,
  type Scope,
  type Thing,
  VERB_BY_WORD,
  type VerbDef,
} from '@baywright/language';
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
    // What is only read, waited for or pumped and stands last holds for all sides: once is enough.
    const end = pair.findLastIndex((line) => !isShared(line, print, place.scope)) + 1;
    for (const side of end > 0 ? print.sides : [])
      runs.push({ lines: pair.slice(0, end), place: { ...atSide(print, place, side), isInPair: true } });
    if (end < pair.length) runs.push({ lines: pair.slice(end), place });
    pair = [];
  };
  for (const line of lines) {
    const touch = touchOf(line, print, place.scope);
    if (touch === 'side' || (pair.length > 0 && (touch === 'none' || touch === 'read'))) pair.push(line);
    else {
      close();
      runs.push({ lines: [line], place });
    }
  }
  close();
  return runs;
}

const isShared = (line: Line, print: Print, scope: Scope): boolean =>
  touchOf(line, print, scope) === 'read' ||
  (line.kind === 'statement' && VERB_BY_WORD.get(line.verb.text)?.bothSides !== undefined);

const onlySide = (print: Print, place: Place): Place => {
  const [side] = print.sides;
  return side ? atSide(print, place, side) : place;
};

export function atSide(print: Print, place: Place, side: NonNullable<Place['side']>): Place {
  return { ...place, side, when: print.job.universe.diagrams.and(place.when, side.when) };
}

/** What a block of lines touches. */
export function touches(lines: readonly Line[], print: Print, scope: Scope): Touch {
  return lines.reduce<Touch>((all, line) => join(all, touchOf(line, print, scope)), 'read');
}

function touchOf(line: Line, print: Print, scope: Scope): Touch {
  const inside = touches(line.children, print, scope);
  if (line.kind === 'perform') return 'both';
  if (line.kind !== 'statement')
    return line.kind === 'text' && line.word === 'hold' ? join('none', inside) : inside;
  const own = join('none', inside);
  const verb = VERB_BY_WORD.get(line.verb.text);
  if (verb?.bothSides === 'one line') return join(own, verb.later ? 'once' : 'none');
  const at = line.clauses
    .filter((clause) => verb?.isUnderOneArm && clause.word === 'at')
    .flatMap((clause) => clause.items.map((item) => touchOfName(item.name.text, undefined, print, scope)));
  if (at.includes('side')) return join(own, 'side');
  const objects = line.items.map((item) => touchOfName(item.name.text, verb, print, scope));
  // What goes onto a face of one side is done with that side.
  const faces = line.clauses
    .filter((clause) => verb?.goesOnto && (clause.word === 'to' || clause.word === 'on'))
    .flatMap((clause) => clause.items.map((item) => touchOfName(item.name.text, undefined, print, scope)));
  return [...objects, ...faces.filter((touch) => touch === 'side')].reduce(join, own);
}

function touchOfName(name: string, verb: VerbDef | undefined, print: Print, scope: Scope): Touch {
  const thing = scope.resolve(name);
  if (!thing) return 'none';
  if (isEachSide(thing) || belongsToSide(thing, print)) return 'side';
  if (SHARED.has(thing.kind)) return 'once';
  if (
    thing.kind === 'part' ||
    thing.kind === 'fastener' ||
    thing.kind === 'connection' ||
    thing.kind === 'adjustment'
  )
    return 'once';
  // Chocks are set once; a face that is cleaned belongs to the side that is worked on.
  const makes = thing.kind === 'place' ? (verb?.on.place?.makes ?? []) : [];
  return makes.some((make) => make === 'chocked' || make === 'unchocked') ? 'once' : 'none';
}

/** A face of a joint that each side has, a spot or a thing placed that such a part covers or carries. */
function belongsToSide(thing: Thing, { job }: Print): boolean {
  if (thing.kind !== 'place' && thing.kind !== 'temporary') return false;
  const parts = ['behind', 'on', 'in'].flatMap((word) => job.relations(thing, word));
  const sealed = thing.kind === 'place' ? sealedOn(thing, job) : [];
  return [...parts.map(({ target }) => target), ...sealed].some(isEachSide);
}

/** The parts that are sealed on a face. */
const sealedOn = (face: Thing, job: Print['job']): Thing[] => job.inverse(face, 'on').map(({ of }) => of);

function join(a: Touch, b: Touch): Touch {
  if (a === 'read' || a === b) return b;
  if (b === 'read') return a;
  if (a === 'none') return b;
  if (b === 'none') return a;
  return 'both';
}
