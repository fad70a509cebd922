// What the rows of a print gather on the way, in the order met: tools, figures, supplies, readings. The first page,
// the card, the pull sheet and the record are made from it.
import type { Measure, Signal, Thing } from '@baywright/language';
import type { Head, OrderDiagram, TorqueStage } from '../beside.js';
import type { Field, OnSide, Protection } from '../blocks.js';
import type { Prose, SourceRef } from '../inline.js';

/** A numbered row that something was met at. */
export interface RowAt {
  readonly row: string;
  readonly number: string;
}

interface UsedHead {
  readonly head: Head;
  readonly thing: Thing;
  /** The torque at that row, N·m; missing where none is asked. */
  readonly nm?: number;
}

export interface UsedTorque extends RowAt {
  readonly thing: Thing;
  readonly joint: string;
  readonly of?: OnSide;
  readonly head: Head | undefined;
  readonly count: number;
  readonly stages: readonly TorqueStage[];
  /** The torque of each stage, N·m; none of an angle or an open question. */
  readonly nm: readonly (number | undefined)[];
  readonly how: Prose;
  readonly order: OrderDiagram | undefined;
  /** The sheets it comes from. */
  readonly pers: readonly string[];
  /** The vehicles it holds on, where others at the line have another. */
  readonly variant: string | undefined;
  /** The wrench that the line names. */
  readonly tool: Thing | undefined;
  readonly source: SourceRef | undefined;
}

interface UsedReading extends RowAt {
  readonly reading?: string;
  readonly places: number;
  readonly what: string;
  readonly limit: Prose;
  readonly unit?: string;
  readonly of?: OnSide;
}

/** A part or set that is fitted new. */
interface UsedFresh extends RowAt {
  readonly thing: Thing;
  readonly side: string | undefined;
  readonly count: number;
  /** The vehicles that get it, where the print is for others as well. */
  readonly variant?: string;
  /** Fitted only where a row before comes out so: it is laid out, and perhaps not used. */
  readonly maybe: boolean;
}

/** How much of a supply or fluid goes in at a row; `amount` missing where it is not said. */
export interface UsedAmount extends RowAt {
  readonly thing: Thing;
  readonly amount: Measure | undefined;
  /** The side it goes on; undefined where it is used once for the vehicle. */
  readonly side: string | undefined;
  /** The vehicles it is for, in words; undefined for all that are printed. */
  readonly variant: string | undefined;
  /** Only what is missing: not the whole fill that is declared. */
  readonly isTopUp?: boolean;
}

interface UsedMessage {
  readonly signal: Signal;
  readonly body: Prose;
  readonly step: string;
}

export interface Uses {
  readonly heads: UsedHead[];
  readonly torques: UsedTorque[];
  readonly tools: Map<Thing, RowAt[]>;
  readonly supplies: UsedAmount[];
  readonly fluids: UsedAmount[];
  /** What is let out, to be collected. */
  readonly drained: UsedAmount[];
  readonly fresh: UsedFresh[];
  readonly placed: Map<Thing, RowAt[]>;
  readonly worn: Map<Thing, Protection | undefined>;
  readonly readings: UsedReading[];
  readonly holds: (RowAt & { readonly what: Prose; readonly of?: OnSide })[];
  /** Blanks that rows ask to be written in the record. */
  readonly fields: Field[];
  readonly messages: UsedMessage[];
  /** Names of the sheets that figures come from. */
  readonly sources: Set<string>;
  /** Ends of the vehicle that the lines work at. */
  readonly ends: Set<'front' | 'rear'>;
}

export const newUses = (): Uses => ({
  heads: [],
  torques: [],
  tools: new Map(),
  supplies: [],
  fluids: [],
  drained: [],
  fresh: [],
  placed: new Map(),
  worn: new Map(),
  readings: [],
  holds: [],
  fields: [],
  messages: [],
  sources: new Set(),
  ends: new Set(),
});

/** Notes that a thing is used at a row. */
export function note(map: Map<Thing, RowAt[]>, thing: Thing, at: RowAt): void {
  const list = map.get(thing);
  if (list) list.push(at);
  else map.set(thing, [at]);
}
