// The open lines that a new line may stand under, and the choice among them by its indent.

import type { Place } from './classify.js';
import type { Above } from './code-line.js';
import type { OpenLine } from './open-line.js';

/** The level a line is read on, and what is odd about its indent. */
export interface Level {
  /** How many open lines stay open; the last of them is the parent. */
  readonly keep: number;
  /** The column it is read at. */
  readonly indent: number;
  readonly problem: 'one space' | 'uneven' | undefined;
}

/**
 * Chooses the level of a line. `fits` tells whether its first word may open a line in a place: it settles which of
 * two levels an indent missed by one space.
 */
export function chooseLevel(
  open: readonly OpenLine[],
  indent: number,
  fits: (place: Place) => boolean,
): Level {
  const top = open.length - 1;
  const last = open[top];
  if (last === undefined) return { keep: 0, indent, problem: undefined };
  if (last.childIndent === undefined && indent >= last.indent + 2)
    return { keep: top + 1, indent, problem: undefined };
  const near: Level[] = [];
  for (let i = top; i >= 0; i--) {
    const level = open[i]?.childIndent;
    if (level === indent) return { keep: i + 1, indent, problem: undefined };
    if (level !== undefined && Math.abs(level - indent) === 1)
      near.push({ keep: i + 1, indent: level, problem: 'one space' });
    // Levels only fall from here on: the outer ones are out of reach.
    if (level !== undefined && level < indent - 1) break;
  }
  if (last.childIndent === undefined && indent === last.indent + 1)
    near.push({ keep: top + 1, indent: last.indent + 2, problem: 'one space' });
  const [first] = near;
  if (first !== undefined) return near.find(({ keep }) => fits(placeOf(open[keep - 1]))) ?? first;
  let i = top;
  while (i > 0 && (open[i]?.indent ?? -1) >= indent) i -= 1;
  return { keep: i + 1, indent: open[i]?.childIndent ?? indent, problem: 'uneven' };
}

/** What a line sees of the open line it stands under. */
export function aboveOf(line: OpenLine | undefined): Above {
  return { place: placeOf(line), head: line?.node?.head.text ?? '', remark: line?.remarkAt };
}

function placeOf(line: OpenLine | undefined): Place {
  return line?.place ?? 'unread';
}
