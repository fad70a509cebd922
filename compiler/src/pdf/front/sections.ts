// Sections dealt to pages: whole where that is asked for, else with their title and the head of their table repeated. All
// heights are known before.

import { type Raw, sequence } from '../typst-code.js';
import { type Item, itemsHigh } from './items.js';

/** What stands under one title; without rows that may part, it is one row. Millimetres. */
export interface Section {
  readonly title?: string;
  /** What stands over and under it, where that is more than its neighbours keep. */
  readonly above: number;
  readonly below: number;
  readonly rows: number;
  /** Of the rows from one to before another, with the head of their table. */
  readonly high: (from: number, to: number) => number;
  readonly code: (from: number, to: number) => Raw;
}

export interface SectionLook {
  /** The title of a section, and of one that goes on from the page before. */
  readonly title: (title: string) => Item;
  readonly goOn: (title: string) => Item;
  /** What every page after the first begins with. */
  readonly next: readonly Item[];
  /** No section that fits a page is parted. */
  readonly whole: boolean;
}

/** Rows of a table that stand on a page at least, where it is parted. */
const LEAST_ROWS = 2;

/** `begin` stands at the top of the first page; `full` is the height of a page. */
export function dealSections(
  begin: readonly Item[],
  sections: readonly Section[],
  look: SectionLook,
  full: number,
): readonly (readonly Item[])[] {
  const pages: Item[][] = [[...begin]];
  const page = (): Item[] => pages.at(-1) ?? [];
  const isFresh = (): boolean => page().length === (pages.length === 1 ? begin : look.next).length;
  for (const section of sections) {
    const { rows } = section;
    for (let from = 0; from < rows; ) {
      let to = fitting(section, page(), look, full, from);
      if (to < rows) {
        if (rows - to < LEAST_ROWS && to - from > LEAST_ROWS) to = rows - LEAST_ROWS;
        if (!isFresh() && (look.whole || to - from < Math.min(LEAST_ROWS, rows - from))) {
          pages.push([...look.next]);
          continue;
        }
        to = Math.max(to, from + 1);
      }
      page().push(...sectionItems(section, look, from, to));
      from = to;
      if (from < rows) pages.push([...look.next]);
    }
  }
  return pages;
}

/** Behind the last of the rows that fit on a page which holds this much; `from` where none does. */
function fitting(
  section: Section,
  page: readonly Item[],
  look: SectionLook,
  full: number,
  from: number,
): number {
  const { rows, title, above, below, high } = section;
  const head = title === undefined ? [] : [titleOf(title, look, from)];
  const fits = (to: number): boolean =>
    itemsHigh([...page, ...head, { above, below, height: high(from, to) }]) <= full;
  if (fits(rows)) return rows;
  let to = from;
  while (fits(to + 1)) to += 1;
  return to;
}

const titleOf = (title: string, look: SectionLook, from: number): Item =>
  from === 0 ? look.title(title) : look.goOn(title);

function sectionItems(
  { title, above, below, high, code }: Section,
  look: SectionLook,
  from: number,
  to: number,
): readonly Item[] {
  const body: Item = {
    above,
    below,
    height: high(from, to),
    // Pages are dealt several times before they are set once.
    get code() {
      return code(from, to);
    },
  };
  return title === undefined ? [body] : [titleOf(title, look, from), body];
}

/** An item as a section that is never parted. */
export const itemSection = ({ above, below, height, code }: Item, title?: string): Section => ({
  ...(title === undefined ? {} : { title }),
  above,
  below,
  rows: 1,
  high: () => height,
  code: () => code,
});

/** Items that follow each other and are never parted. */
export const wholeSection = (items: readonly Item[]): Section =>
  itemSection({
    above: items[0]?.above ?? 0,
    below: items.at(-1)?.below ?? 0,
    height: itemsHigh(items),
    code: sequence(items.map(({ code }) => code)),
  });

/** Sections below each other on as many pages as it takes. */
export const flowingItems = (sections: readonly Section[], look: SectionLook): readonly Item[] =>
  sections.flatMap((section) => sectionItems(section, look, 0, section.rows));
