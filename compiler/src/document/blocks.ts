// The blocks a guide and its companion sheets are made of. One interface names them all: the tables of
// renderers in html/ and pdf/ are typed over it, so that a new kind does not compile until both outputs have it.
import type { Language, Signal } from '@baywright/language';
import type { Beside, Head, Marks, OrderDiagram, TorqueStage } from './beside.js';
import type { Film } from './film.js';
import type { Figure, Prose, SourceRef } from './inline.js';
import type { Picture } from './picture.js';

/** What is off the vehicle and what waits for its torque, after a line is done. */
export interface Rail {
  readonly off: number;
  readonly loose: number;
}

/** What a line does to a thing, for the count kept in the bay. */
export interface Change {
  readonly thing: string;
  readonly to: 'off' | 'loose' | 'done';
}

/** A line is done only when another line came out as named: `bad` in any way, or `low` or `high` alone. */
export interface Depends {
  readonly row: string;
  readonly result: 'good' | 'bad' | 'low' | 'high';
}

/** Pictograms of personal protection, drawn for this project after the meanings of ISO 7010. */
const PROTECTIONS = ['gloves', 'eyes', 'ears', 'face', 'feet', 'lungs', 'clothing', 'head'] as const;
export type Protection = (typeof PROTECTIONS)[number];

export interface NeedRow {
  readonly what: Prose;
  readonly for: Prose;
  /** Printed in its own column of the pull sheet. */
  readonly number?: string;
  readonly amount?: Prose;
  /** A figure or number nobody has filled in yet. */
  readonly blank?: string;
  readonly source?: SourceRef;
  readonly revised?: boolean;
}

/** What a row of the record says without its side, and that side in words; only where both sides are printed. */
export interface OnSide {
  readonly what: string;
  readonly side: string;
}

/** A blank to write in. `key` names the value in the saved record. */
export interface Field {
  readonly key: string;
  readonly label: Prose;
  readonly lines: 1 | 2;
  readonly input: 'text' | 'number' | 'date' | 'sign';
}

export interface TorqueRow {
  readonly row: string;
  readonly number: string;
  readonly joint: string;
  readonly detail: Prose;
  readonly head?: Head;
  readonly count: number;
  readonly stage: TorqueStage;
  readonly how: Prose;
  readonly order?: OrderDiagram;
  readonly of?: OnSide;
  readonly source?: SourceRef;
  readonly revised?: boolean;
}

interface Located {
  readonly source?: SourceRef;
  /** Says something else than the edition before: a bar at the edge. */
  readonly revised?: boolean;
}

interface BlockKinds {
  /** Head of the first page. */
  masthead: Located & {
    readonly kind: 'masthead';
    readonly appliesTo: Prose;
    readonly times: readonly { readonly label: string; readonly value: string }[];
    readonly before: readonly Prose[];
    /** Side and options of this print, and what other prints there are; missing where one print is for all. */
    readonly printedFor?: {
      readonly title: string;
      readonly options: readonly string[];
      readonly others?: Prose;
    };
    /** Vehicle from above with the corners worked on filled; missing when the work is not at a corner. */
    readonly plan?: { readonly corners: readonly ('fl' | 'fr' | 'rl' | 'rr')[]; readonly alt: string };
    /** Text of the code printed on the first page. */
    readonly code: string;
  };
  heading: Located & { readonly kind: 'heading'; readonly title: string; readonly lead?: Prose };
  dangers: Located & {
    readonly kind: 'dangers';
    readonly title: string;
    readonly rows: readonly {
      readonly signal: Signal;
      readonly word: string;
      readonly body: Prose;
      readonly where: Prose;
    }[];
  };
  needs: Located & {
    readonly kind: 'needs';
    readonly title: string;
    /** `list` is the table of the first page; `pull` has columns for number, amount and bin. */
    readonly layout: 'list' | 'pull';
    readonly groups: readonly { readonly title: string; readonly rows: readonly NeedRow[] }[];
  };
  /** How to read the pages; `since` says which edition the bars compare with. */
  key: Located & { readonly kind: 'key'; readonly since: Prose };
  statement: Located & { readonly kind: 'statement'; readonly body: Prose };
  sources: Located & {
    readonly kind: 'sources';
    readonly rows: readonly { readonly name: string; readonly title: Prose; readonly revised?: boolean }[];
  };
  revisions: Located & {
    readonly kind: 'revisions';
    readonly rows: readonly {
      readonly revision: string;
      readonly date: string;
      readonly what: Prose;
      readonly where?: Prose;
    }[];
  };
  questions: Located & {
    readonly kind: 'questions';
    readonly rows: readonly { readonly where: string; readonly ask: Prose; readonly source?: SourceRef }[];
  };

  step: Located & {
    readonly kind: 'step';
    readonly id: string;
    readonly number: string;
    readonly title: string;
    /** Of a title without a translation. */
    readonly titleLanguage?: Language;
    readonly phase: string;
    readonly before: Rail;
    readonly items: readonly Block[];
  };
  /** One action, one line, one box. */
  row: Located & {
    readonly kind: 'row';
    readonly id: string;
    readonly number: string;
    /** `If 2.6 is below 22.0 mm:`; printed before the action. */
    readonly condition?: Prose;
    readonly depends?: Depends;
    readonly body: Prose;
    readonly notes: readonly Prose[];
    /** Why it is done; printed in a training print. */
    readonly reasons: readonly Prose[];
    readonly beside: readonly Beside[];
    readonly marks: readonly Marks[];
    readonly order?: OrderDiagram;
    readonly rail: Rail;
    readonly changes: readonly Change[];
    /** The vehicles it is for, where the print is for others as well. */
    readonly variant?: string;
    /** Done on a later visit: the record of this one is signed without it. */
    readonly isLater?: true;
  };
  panel: Located & {
    readonly kind: 'panel';
    readonly signal: Signal;
    /** The signal word in the language of the print. */
    readonly word: string;
    readonly body: Prose;
    readonly rail: Rail;
  };
  wear: Located & {
    readonly kind: 'wear';
    readonly signs: readonly { readonly sign: Protection; readonly label: string }[];
    readonly rail: Rail;
  };
  /** A ban or a clock begins or ends at this place. The text of the running bar is in the document's bans. */
  banner: Located & {
    readonly kind: 'banner';
    readonly ban: string;
    readonly edge: 'start' | 'end';
    readonly body: Prose;
    readonly rail: Rail;
  };
  branch: Located & {
    readonly kind: 'branch';
    readonly heading: Prose;
    readonly depends?: Depends;
    readonly items: readonly Block[];
    readonly rail: Rail;
  };
  repeat: Located & {
    readonly kind: 'repeat';
    readonly heading: Prose;
    /** How many times at most; a box for each. */
    readonly times?: number;
    readonly items: readonly Block[];
    readonly rail: Rail;
  };
  stop: Located & {
    readonly kind: 'stop';
    readonly id: string;
    readonly number: string;
    readonly condition?: Prose;
    readonly depends?: Depends;
    readonly body: Prose;
    readonly rail: Rail;
  };
  note: Located & { readonly kind: 'note'; readonly body: Prose; readonly rail: Rail };
  reason: Located & { readonly kind: 'reason'; readonly body: Prose; readonly rail: Rail };
  figure: Located & { readonly kind: 'figure'; readonly picture: Picture; readonly rail: Rail };
  /** A place in a film; without `film`, one that is not in the page. */
  clip: Located & {
    readonly kind: 'clip';
    readonly body: Prose;
    readonly film?: Film;
    /** What print says in place of `body`: where the film is to be seen. */
    readonly onPaper?: Prose;
    readonly rail: Rail;
  };
  tally: Located & { readonly kind: 'tally'; readonly body: Prose; readonly rail: Rail };

  'torque-table': Located & { readonly kind: 'torque-table'; readonly rows: readonly TorqueRow[] };

  /** Starts the record: its own page, with a tear line. */
  record: Located & { readonly kind: 'record'; readonly title: string; readonly items: readonly Block[] };
  fields: Located & {
    readonly kind: 'fields';
    readonly title?: string;
    readonly columns: 1 | 2 | 3 | 4;
    readonly fields: readonly Field[];
  };
  'record-readings': Located & {
    readonly kind: 'record-readings';
    readonly rows: readonly {
      readonly row: string;
      readonly number: string;
      /** The reading's box; missing for an inspection. */
      readonly reading?: string;
      readonly places: number;
      readonly what: string;
      readonly limit: Prose;
      readonly unit?: string;
      readonly of?: OnSide;
    }[];
  };
  'record-torques': Located & {
    readonly kind: 'record-torques';
    readonly rows: readonly {
      readonly row: string;
      readonly number: string;
      readonly joint: string;
      readonly count: number;
      readonly torque: Prose;
      readonly of?: OnSide;
    }[];
  };
  'record-holds': Located & {
    readonly kind: 'record-holds';
    readonly rows: readonly {
      readonly row: string;
      readonly number: string;
      readonly what: Prose;
      readonly of?: OnSide;
    }[];
  };

  /** What is off at one line, for the person who takes over. */
  'off-now': Located & {
    readonly kind: 'off-now';
    readonly at: string;
    readonly rail: Rail;
    readonly groups: readonly {
      readonly title: string;
      readonly rows: readonly { readonly what: Prose; readonly since: string; readonly next?: Prose }[];
    }[];
    readonly clocks: readonly {
      readonly name: string;
      readonly length: Figure;
      readonly from: string;
      readonly next: Prose;
    }[];
    readonly bans: readonly Prose[];
    readonly torques: readonly {
      readonly joint: string;
      /** What is left to do: `first 20 N·m, then 54 N·m`. */
      readonly torque: Prose;
      readonly number: string;
    }[];
  };
}

type BlockKind = keyof BlockKinds;
export type Block = BlockKinds[BlockKind];
export type BlockOf<K extends BlockKind> = BlockKinds[K];

/** A table of renderers over the block kinds. */
export type BlockRenderers<R, C> = { readonly [K in BlockKind]: (block: BlockKinds[K], context: C) => R };

export function renderBlock<R, C>(table: BlockRenderers<R, C>, block: Block, context: C): R {
  return (table[block.kind] as (block: Block, context: C) => R)(block, context);
}

/** Every block of a list and what is inside, in reading order. */
export function* walkBlocks(blocks: readonly Block[]): Generator<Block> {
  for (const block of blocks) {
    yield block;
    if ('items' in block) yield* walkBlocks(block.items);
  }
}

/** What tells the torques of a record apart: their row, and for the second vehicle of a line its turn as well. */
export const torqueIds = (rows: readonly { readonly row: string }[]): string[] =>
  rows.map(({ row }, at) => {
    const before = rows.slice(0, at).filter((other) => other.row === row).length;
    return before === 0 ? row : `${row}-${before + 1}`;
  });
