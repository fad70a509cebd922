// The data that a page carries for its script. Types only: the page's side and the compiler's side agree here.
import type { ReadingUnit } from '../document/beside.js';
import type { Change, Depends } from '../document/blocks.js';
import type { Words } from '../document/words.js';

export interface PageReading {
  readonly id: string;
  /** The box it stands in, which has one unit for all its blanks. */
  readonly box: string;
  readonly name: string;
  /** Readings of one group are for different vehicles: one of them is taken. */
  readonly group?: string;
  /** Which of several places it is taken at, from 1. */
  readonly place?: number;
  readonly units: readonly ReadingUnit[];
  readonly low?: string;
  readonly high?: string;
}

export interface PageClock {
  readonly id: string;
  readonly name: string;
  readonly sense: 'at least' | 'at most';
  readonly seconds: number;
  readonly fromRow?: string;
  /** Its tick ends the clock. */
  readonly untilRow?: string;
}

export interface PageRow {
  readonly id: string;
  readonly number: string;
  readonly depends?: Depends;
  readonly stop?: boolean;
  /** The vehicles it is for, where the page is for others as well: needed once a line of theirs is begun. */
  readonly variant?: string;
  /** Done on a later visit. */
  readonly later?: boolean;
  /** Outcomes for which the guide tells something and asks for nothing. */
  readonly told?: readonly Depends['result'][];
  readonly changes: readonly Change[];
  readonly holds: readonly string[];
  readonly inspections: readonly string[];
  /** What a line with an inspection says; readings have names of their own. */
  readonly says?: string;
  readonly readings: readonly PageReading[];
  readonly clocks: readonly PageClock[];
}

interface PageGuide {
  readonly number: string;
  readonly title: string;
  readonly revision: string;
  readonly date: string;
  readonly status: string;
  readonly side: string;
  readonly options: readonly string[];
  readonly print: string;
}

export interface PageData {
  readonly guide: PageGuide;
  readonly words: Words;
  readonly things: Readonly<Record<string, string>>;
  readonly rows: readonly PageRow[];
  readonly steps: readonly {
    readonly id: string;
    readonly number: string;
    readonly rows: readonly string[];
  }[];
  readonly bans: readonly { readonly text: string; readonly fromRow: string; readonly untilRow: string }[];
  /** `id` names the blanks of the record. */
  readonly torques: readonly { readonly id: string; readonly number: string; readonly joint: string }[];
}
