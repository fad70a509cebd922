// Parts a text that is too long for a page into pieces of so many lines at most.
import type { Inline, Prose } from '../document/inline.js';
import { plain } from '../document/inline.js';
import { fill } from './type/lines.js';
import { proseRuns, type Style } from './type/runs.js';

/** Nearly always the text itself. */
export function cut(prose: Prose, style: Style, width: number, most: number): readonly Prose[] {
  // A line has at most so many characters as fit of the narrowest: short texts need not be measured.
  if (plain(prose).length < most * 8) return [prose];
  const lines = fill(proseRuns(prose, style), width).count;
  if (lines <= most) return [prose];
  const characters = plain(prose).length;
  const [head, tail] = split(prose, Math.floor((characters * most * 0.8) / lines));
  if (head.length === 0 || tail.length === 0) return [prose];
  return [...cut(head, style, width, most), ...cut(tail, style, width, most)];
}

/** The text before and after a place, or the last break before it. Figures and links stay whole. */
function split(prose: Prose, at: number): readonly [Prose, Prose] {
  let seen = 0;
  for (const [i, inline] of prose.entries()) {
    const length = plain([inline]).length;
    if (seen + length <= at) {
      seen += length;
      continue;
    }
    const [head, tail] = splitInline(inline, at - seen);
    return [
      [...prose.slice(0, i), ...head],
      [...tail, ...prose.slice(i + 1)],
    ];
  }
  return [prose, []];
}

function splitInline(inline: Inline, at: number): readonly [Prose, Prose] {
  if (inline.kind === 'text' || inline.kind === 'code' || inline.kind === 'thing') {
    const place = Math.max(inline.text.lastIndexOf(' ', at), inline.text.lastIndexOf('\u200B', at)) + 1;
    const part = (text: string): Prose => (text === '' ? [] : [{ ...inline, text }]);
    return [part(inline.text.slice(0, place)), part(inline.text.slice(place))];
  }
  if (inline.kind === 'strong' || inline.kind === 'emphasis' || inline.kind === 'foreign') {
    const [head, tail] = split(inline.children, at);
    const part = (children: Prose): Prose => (children.length === 0 ? [] : [{ ...inline, children }]);
    return [part(head), part(tail)];
  }
  return [[], [inline]];
}
