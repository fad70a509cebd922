// Where the lowering stands on its way through the work: the step and row it numbers, what the rows so far did, and
// the rows that later lines speak of.
import { type BoundStatement, isEachSide, type Line, type Thing, textOf } from '@baywright/language';
import type { Block, Change, Depends, Rail } from '../blocks.js';
import type { Running } from './clocks.js';
import { thingPieces } from './names.js';
import type { Place, Print, SidePrint } from './print.js';
import type { LimitHere } from './readings.js';
import type { Open } from './trace.js';
import type { RowAt } from './uses.js';
import { sideWord } from './variant-words.js';

export interface Walk {
  readonly print: Print;
  /** Number of the step that is being filled, and how many rows it has. */
  step: number;
  rows: number;
  /** The side whose trace moved last: things the vehicle has once are read from it. */
  lead: SidePrint | undefined;
  /** Measurements and inspections by the name that `if` lines ask for. */
  readonly asked: Map<string, Asked>;
  /** The limit that the box of a reading is about, by the box. */
  readonly limits: Map<string, string>;
  /** What follows the outcomes of rows. */
  readonly branches: Branch[];
  /** Rows by verb and thing, for `since` and for clocks. */
  readonly done: Map<string, RowAt>;
  /** Clocks that rows started. */
  readonly clocks: Running[];
  /** The rows that an act of the run became, first and last. */
  readonly acts: Map<number, { readonly first: RowAt; readonly last: RowAt }>;
  /** The first row at which an act did something to a thing, by `rowKey`. */
  readonly actRows: Map<string, RowAt>;
  /** Names of the things that rows change, by the id used in the rows. */
  readonly things: Map<string, string>;
  /** What was open when it was last asked, and how often that had changed. */
  shown: { readonly lead: SidePrint | undefined; readonly changed: number; readonly open: OpenThings };
}

/** What is open, by the id used in the rows. */
export type OpenThings = ReadonlyMap<
  string,
  { readonly thing: Thing; readonly side: SidePrint | undefined; readonly open: Open }
>;

/** A row with an outcome. */
export interface Asked extends RowAt {
  readonly limits: readonly LimitHere[];
}

/** Something is done for one outcome of a row. */
export interface Branch {
  readonly on: Depends;
  /** What it asks; undefined for `otherwise`. */
  readonly test: Extract<Line, { kind: 'if' }>['test'];
  /** The limit it asks about, where the row reads several. */
  readonly limit: string | undefined;
  /** Its first row; undefined where it only tells something. */
  readonly to: RowAt | undefined;
}

export const newWalk = (print: Print): Walk => ({
  print,
  step: 0,
  rows: 0,
  lead: print.sides[0],
  asked: new Map(),
  branches: [],
  limits: new Map(),
  done: new Map(),
  acts: new Map(),
  actRows: new Map(),
  clocks: [],
  things: new Map(),
  shown: { lead: undefined, changed: 0, open: new Map() },
});

/** An act of the run and a thing it acts on, as one word. */
export const rowKey = (act: number, thing: Thing): string => `${act} ${thing.id}`;

/** The row that the `since` of a wait counts from; undefined where none was met. */
export function sinceRow(walk: Walk, statement: BoundStatement): RowAt | undefined {
  const event = statement.clause('since')?.event;
  const names = event?.target?.form === 'names' ? event.target.names : [];
  return event?.verbs
    .flatMap((verb) => names.map((name) => walk.done.get(`${verb.text} ${name.text}`)))
    .find((row) => row !== undefined);
}

export function nextRow(walk: Walk): RowAt {
  walk.rows++;
  return rowAt(walk, walk.rows);
}

/** The row that comes next, not yet taken. */
export function comingRow(walk: Walk): RowAt {
  return rowAt(walk, walk.rows + 1);
}

const rowAt = ({ step }: Walk, row: number): RowAt => ({ row: `r${step}-${row}`, number: `${step}.${row}` });

/** What is open on all printed sides: one entry a thing, or one a side of a thing that each side has. */
export function openNow(walk: Walk): OpenThings {
  const { lead } = walk;
  const changed = walk.print.sides.reduce((sum, { trace }) => sum + trace.changed, 0);
  if (walk.shown.lead !== lead || walk.shown.changed !== changed)
    walk.shown = { lead, changed, open: openOf(walk) };
  return walk.shown.open;
}

function openOf(walk: Walk): OpenThings {
  const { print } = walk;
  const found = new Map<string, { thing: Thing; side: SidePrint | undefined; open: Open }>();
  for (const side of print.sides) {
    for (const [thing, open] of side.trace.open) {
      const twice = print.sides.length > 1 && isEachSide(thing);
      if (!twice && side !== walk.lead) continue;
      found.set(thingId(thing, twice ? side : undefined), { thing, side: twice ? side : undefined, open });
    }
  }
  return found;
}

const thingId = (thing: Thing, side: SidePrint | undefined): string =>
  side?.word === undefined ? thing.name : `${thing.name} ${side.word}`;

export function railNow(walk: Walk): Rail {
  let [off, loose] = [0, 0];
  for (const { open } of openNow(walk).values()) {
    if (open === 'loose') loose++;
    else off++;
  }
  return { off, loose };
}

/** What changed since `before`, with the names of the things put down for the page. */
export function changesSince(walk: Walk, before: OpenThings): Change[] {
  const after = openNow(walk);
  const changes: Change[] = [];
  if (after === before) return changes;
  for (const [id, { thing, side, open }] of after) {
    const old = before.get(id)?.open;
    const to = open === 'loose' ? 'loose' : 'off';
    if (old !== undefined && (old === 'loose') === (open === 'loose')) continue;
    walk.things.set(id, thingName(walk.print, thing, side));
    changes.push({ thing: id, to });
  }
  for (const [id, { thing, side }] of before) {
    if (after.has(id)) continue;
    walk.things.set(id, thingName(walk.print, thing, side));
    changes.push({ thing: id, to: 'done' });
  }
  return changes;
}

/** `hub bolts (4)`, `wheel, left`: without article, for lists and counts. */
export function thingName(print: Print, thing: Thing, side: SidePrint | undefined, state = ''): string {
  const plain = textOf(thingPieces(print, thing, undefined, { strong: true, isListed: true, side }));
  const told = sideWord(print, side?.word);
  const named = told === '' || plain.endsWith(`${told})`) ? plain : `${plain} (${told})`;
  if (state === '') return named;
  return named.endsWith(')') ? `${named.slice(0, -1)}, ${state})` : `${named} (${state})`;
}

/** The sides a line runs on: the one of its place, or all. */
export function sidesOf(walk: Walk, place: Place): readonly SidePrint[] {
  return place.side ? [place.side] : walk.print.sides;
}

/** Blocks that a place adds to. */
export type Out = Block[];
