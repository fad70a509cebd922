// The words that a state finding is made of; report.ts fills them in.

export interface StateWords {
  /** The things that are not as needed, as names joined for a sentence: `hub-bolt and hub`. */
  readonly names: string;
  /** `is` or `are` for them. */
  readonly are: string;
  /** What is left to do to them, as a participle: `put on`, `torqued`. */
  readonly wanted: string;
  /** `off` or `disconnected`. */
  readonly off: string;
  /** `in place`, or `chocked` for a place. */
  readonly placed: string;
  /** What the line acts on, and its verb forms. */
  readonly object: string;
  readonly objectIs: string;
  /** Posture of the vehicle and of its suspension, in words. */
  readonly posture: string;
  readonly suspension: string;
  /** The value wanted of a condition. */
  readonly value: string;
  /** Time left, in words. */
  readonly minutes: string;
}
