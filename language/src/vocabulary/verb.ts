// The shape of one verb: everything parser, completion, checker, state engine, hover, reference, editor
// grammar and guide sentences know about it.
import type { QuantityKind } from '../quantity/dimension.js';
import type { ThingKind, Words } from './kinds.js';
import type { Make, Need } from './needs.js';

/** What a verb does to one kind of thing. Needs are checked in order; the first that fails is the finding. */
export interface Effect {
  readonly needs: readonly Need[];
  readonly makes: readonly Make[];
}

/** Which things may stand in a clause of the verb. */
export interface ClauseSlot {
  /** Kinds that may be named; absent for quantities and raw text. */
  readonly names?: readonly ThingKind[];
  /** Kinds of quantity that fit, by the names of the unit table. */
  readonly quantity?: readonly QuantityKind[];
  readonly required?: true;
  readonly docs: string;
}

export interface VerbDef {
  readonly word: string;
  /**
   * The things it acts on and what happens to each. Empty when the verb takes no object (`wait`).
   * A kind with empty needs and makes is allowed and is an event for the rules only.
   */
  readonly on: Readonly<Partial<Record<ThingKind, Effect>>>;
  /** What happens when it stands without an object; only for `object: 'none'` and `'optional'`. */
  readonly alone?: Effect;
  /** Built-in or conventional names it acts on when `on` holds `machine` (`vehicle`, `suspension`, `engine`). */
  readonly machines?: readonly string[];
  /** `none`: no object; `one or more`; `optional`. */
  readonly object: 'none' | 'one or more' | 'optional';
  /** A value follows the object: `set selector park`. */
  readonly takesValue?: true;
  /** Counts may stand before fasteners: `loosen 2 of cover-bolt`. */
  readonly takesCount?: true;
  /** The quantity that may stand alone after the object: `wait 10 min`, `road-test vehicle, 8 km`. */
  readonly bare?: ClauseSlot;
  /** Statement clauses it understands, by clause word (`with`, `at`, `until level at`, …). */
  readonly clauses: Readonly<Record<string, ClauseSlot>>;
  /** Default hands-on minutes for one object, common practice. */
  readonly minutes: number;
  /** True when a whole vehicle is asked for; leftovers are then reported where they were left. */
  readonly wholeVehicle?: true;
  /**
   * Where both sides are printed in one guide: one line for both where both have come to it (a later visit, the bin),
   * or one behind the work on both (the time goes by, the pedal comes up). Absent: a line for each side.
   */
  readonly bothSides?: 'one line' | 'one line behind';
  /** Work of a later visit: nothing of the job waits for it. */
  readonly later?: true;
  /** Its object goes onto what `to` or `on` names, and is of the side that that is of. */
  readonly goesOnto?: true;
  /** Done to the whole suspension under one arm, named by `at`: once for each side that arms are of. */
  readonly isUnderOneArm?: true;
  /** Of a part that is off and goes on new, the new one is worked on: it is made ready, the old one lies on the bench. */
  readonly readies?: true;
  /** It says how a part comes out or goes in, `from` or `into` something; that it is off or on, another verb says. */
  readonly drives?: true;
  /** Of a part that goes on new, the old one is meant. */
  readonly isOfOld?: true;
  /** The thing is found good or not: looked at from outside, or put on trial. */
  readonly judges?: 'by looking' | 'by trial';
  /** A socket or key is put on fasteners for it, with no torque to set. */
  readonly turns?: true;
  /** The record has a blank for it: for each object, or for the drive. */
  readonly records?: 'objects' | 'drive';
  /** Trouble codes may stand in its text. */
  readonly isAboutCodes?: true;
  /** What it puts on frees what is tight, and is cleaned off again: threads are not wet by it. */
  readonly frees?: true;
  /** Entries with one of these clauses are made for it: completion offers them first behind `with`. */
  readonly suits?: readonly string[];
  /**
   * The sentence in each output language. `{object}`, `{value}`, `{amount}` and `{CLAUSE}` are slots; a part in square
   * brackets falls away when one of its slots is empty: `Remove {object}[ from {from}][ with {with}]`.
   */
  readonly phrase: Words;
  /** The sentence for a kind of thing that asks for another word: bolts are taken out, a drain pan is taken away. */
  readonly phraseFor?: Readonly<Partial<Record<ThingKind, Words>>>;
  /**
   * The sentence for a value that has a verb of its own: a brake is applied, not set to applied. By the value as it is
   * written in the source; other values take the usual sentence.
   */
  readonly phraseForValue?: Readonly<Record<string, Words>>;
  /** Past participle or result for records and hovers, e.g. "taken off". English. */
  readonly done: string;
  /** One to three sentences for hover and reference. */
  readonly docs: string;
  /** One line of Baywright that uses it. */
  readonly example: string;
}

/** Declares a verb; the value is frozen so that no reader can change it. */
export function defineVerb(verb: VerbDef): VerbDef {
  return Object.freeze(verb);
}
