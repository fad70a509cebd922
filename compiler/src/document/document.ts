// The document between a checked procedure and every output: what is printed, in the order it is printed, with
// all figures converted and all sentences made. Renderers choose how it looks and nothing else.
import type { Language } from '@baywright/language';
import type { Block } from './blocks.js';
import type { Prose } from './inline.js';
import type { Words } from './words.js';

/** The sheets that one procedure gives. */
export const SHEETS = ['guide', 'torque-card', 'pull-sheet', 'record', 'off-now'] as const;
export type Sheet = (typeof SHEETS)[number];

/** What every page says about itself. */
export interface Identity {
  readonly number: string;
  readonly title: string;
  /** Of a title without a translation. */
  readonly titleLanguage?: Language;
  readonly revision: string;
  /** ISO date of the revision; empty for a draft without one. */
  readonly date: string;
  /** `Left side`, `Both sides`; missing when the job has no sides. */
  readonly side?: string;
  readonly options: readonly string[];
  readonly shop: string;
  readonly status: 'draft' | 'proved' | 'released' | 'withdrawn';
  /** Printed in the frame of the running head: `Draft: 2 questions open`. */
  readonly statusText: string;
  /** What tells this print from others of the same procedure: side and options as one word, for stored progress. */
  readonly print: string;
}

/** A ban or a clock that runs over several lines, for the running bar. */
export interface Ban {
  readonly id: string;
  readonly text: Prose;
  readonly fromRow: string;
  readonly untilRow: string;
}

export interface GuideDocument {
  readonly sheet: Sheet;
  readonly language: Language;
  readonly identity: Identity;
  readonly words: Words;
  /** The standing statement at the foot of every page. */
  readonly standing: string;
  /** Display names of the things that lines change, by id. */
  readonly things: Readonly<Record<string, string>>;
  readonly bans: readonly Ban[];
  readonly blocks: readonly Block[];
}

/** Something an output could not print as it was written. */
export interface OutputFinding {
  readonly message: string;
  readonly file?: string;
  readonly line?: number;
}
