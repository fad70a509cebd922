// Words that the rows of needs share.
import { isThreadless, type Thing, threadText } from '@baywright/language';
import { type Inline, type Prose, text } from '../inline.js';
import { capitalFirst, smallFirst } from './names.js';
import type { Print } from './print.js';
import { titleOf } from './texts.js';
import type { RowAt } from './uses.js';

export const strong = (words: string): Inline => ({ kind: 'strong', children: [text(words)] });

/** `M12 × 1.5`, its pitch with the decimal sign of the print; undefined of an open thread, and of a clip that has none. */
export function threadWords({ language }: Print, thing: Thing): string | undefined {
  const thread = threadText(thing);
  if (!thread || thread.hole || isThreadless(thing)) return undefined;
  const pitch = language === 'en' ? thread.text : thread.text.replace(/(?<=x\s*\d+)\.(?=\d)/, ',');
  return pitch.replace('x', '\u00a0×\u00a0');
}

/** Titles of joints in one run: `Hub bolts; wheel nuts`. */
export const listTitles = (print: Print, things: readonly Thing[]): string =>
  capitalFirst(
    things
      .map((thing) => (print.language === 'de' ? titleOf(print, thing) : smallFirst(titleOf(print, thing))))
      .join('; '),
  );

/** Numbers of rows as links: `2.6, 4.1`. */
export function rowsProse(at: readonly RowAt[]): Prose {
  const rows = [...new Map(at.map((row) => [row.row, row])).values()];
  return rows.flatMap(
    ({ row, number }, i): Prose => [...(i === 0 ? [] : [text(', ')]), { kind: 'line', text: number, row }],
  );
}
