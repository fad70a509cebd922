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
