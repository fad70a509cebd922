// Measures of the pages of steps, in millimetres, and the inks. What the templates need of them goes there as settings.
import { type Block, walkBlocks } from '../../document/blocks.js';
import type { GuideDocument } from '../../document/document.js';
import { plain } from '../../document/inline.js';
import type { PrintOptions } from '../../print-options.js';
import { widthOf } from '../type/faces.js';

/** Width of the text: the same on A4 and Letter, so that lines break alike. */
export const WIDTH = 178;
export const RAIL = 11;
export const GUT = 6;
export const SIDE = 56;
/** Where a gloved hand writes it needs so much height. Common practice. */
export const HAND = 8;
/** Ruled column for the pencil in a walk-it print. */
export const MARGIN_NOTES = 40;
/** Where the text begins on a page without steps. */
const PLAIN_TOP = 27;
const STEP_TOP = 37;
/** A second bar in the running head, and each after it, is so high. */
const BAR = 7;
const BOTTOM = 16;
/** What is set and what was computed may differ by a hair. */
export const HAIR = 0.3;

/** Name, width and height in millimetres (ISO 216, ANSI/ASME Y14.1). */
const PAPER = { a4: ['a4', 210, 297], letter: ['us-letter', 215.9, 279.4] } as const;

export interface Frame {
  readonly paper: readonly [name: string, width: number, height: number];
  /** Of what stands on a page of steps. */
  readonly body: number;
  /** Column of the boxes to tick and the numbers. */
  readonly label: number;
  /** Column of the words of a line, and of one with nothing beside it: as long as reads well, and to the edge. */
  readonly text: number;
  readonly alone: number;
  readonly edge: number;
  /** Of the band at the left, for each thing that is off. */
  readonly railUnit: number;
  /** Where the steps begin on a page that shows bans with these names, and how much room they have there. */
  readonly stepTop: (bans: ReadonlySet<string>) => number;
  readonly stepHeight: (bans: ReadonlySet<string>) => number;
  /** Free height of any page of steps, and of a page without. */
  readonly leastHeight: number;
  readonly plainHeight: number;
  /** Bars at their full height: more share the room of so many. */
  readonly mostBans: number;
  /** Cell of the signal word. */
  readonly signal: number;
  readonly accent: string;
  readonly tint: string;
  readonly walk: boolean;
}

/** Some seventy letters: a longer line is lost on the way back to its left. */
const LONGEST_LINE = 130;

export function frameOf(document: GuideDocument, { paper, colour, print }: PrintOptions): Frame {
  const size = PAPER[paper];
  const walk = print === 'walk';
  const body = walk ? WIDTH - MARGIN_NOTES : WIDTH;
  // Box and number: 9.9, 9.10, 12.10.
  const label = 16.5 + 1.5 * Math.min(2, Math.max(0, numberLength(document.blocks) - 3));
  // A page may see one ban end and the next begin.
  const most = Math.max(1, Math.min(mostBans(document) + 1, barsOf(document, everyBan(document))));
  const topUnder = (bars: number) => STEP_TOP + BAR * (Math.min(most, Math.max(1, bars)) - 1);
  const stepTop = (shown: ReadonlySet<string>) => topUnder(barsOf(document, shown));
  return {
    paper: size,
    body,
    label,
    text: body - RAIL - label - GUT - SIDE,
    alone: Math.min(LONGEST_LINE, body - RAIL - label),
    edge: body - RAIL - label,
    railUnit: Math.min(0.64, 6.4 / mostOff(document.blocks)),
    stepTop,
    stepHeight: (shown) => size[2] - stepTop(shown) - BOTTOM,
    leastHeight: size[2] - topUnder(most) - BOTTOM,
    plainHeight: size[2] - PLAIN_TOP - BOTTOM,
    mostBans: most,
    // Wide enough for the longest word of the language beside its triangle.
    signal: document.language === 'fr' ? 45 : document.language === 'es' ? 41 : 35,
    accent: colour ? '#5a2a5e' : 'black', // damson: no safety colour of any standard
    tint: colour ? '#dccfe0' : '#cccccc',
    walk,
  };
}

/** In the smallest type of a bar, beside the counts in two lines. */
const LONGEST_BAR = WIDTH - 33 - 12;

const isLong = (said: string): boolean => widthOf(said, '700Bold', 8.5) > LONGEST_BAR;

/** Bars of the running head of a page: one for each text, two where it is long. */
function barsOf({ bans }: GuideDocument, shown: ReadonlySet<string>): number {
  if (shown.size === 0) return 0;
  const texts = bans.filter(({ id }) => shown.has(id)).map(({ text }) => plain(text));
  return [...new Set(texts)].reduce((sum, said) => sum + (isLong(said) ? 2 : 1), 0);
}

const everyBan = ({ bans }: GuideDocument): ReadonlySet<string> => new Set(bans.map(({ id }) => id));

/** Bars of bans in force at once, at most. */
function mostBans(document: GuideDocument): number {
  const live = new Set<string>();
  let most = 1;
  for (const block of walkBlocks(document.blocks)) {
    if (block.kind !== 'banner') continue;
    if (block.edge === 'start') live.add(block.ban);
    most = Math.max(most, barsOf(document, live));
    if (block.edge === 'end') live.delete(block.ban);
  }
  return most;
}

function mostOff(blocks: readonly Block[]): number {
  let most = 1;
  for (const block of walkBlocks(blocks))
    if ('rail' in block) most = Math.max(most, block.rail.off + block.rail.loose);
  return most;
}

/** Characters of the longest line number: the column of the boxes is as wide as it asks. */
function numberLength(blocks: readonly Block[]): number {
  let longest = 0;
  for (const block of walkBlocks(blocks))
    if (block.kind === 'row' || block.kind === 'stop') longest = Math.max(longest, block.number.length);
  return longest;
}
