// The fixes of a word that is nearly a known one: each of the near ones in its place.
import type { Fix } from '../diagnostics/define.js';
import type { Span } from '../text/span.js';

/** One fix for each near word of the language, at every place of the word; where there is but one, it may be applied unasked. */
export function nearFixes(file: string, places: readonly Span[], near: readonly string[]): Fix[] {
  return nearNameFixes(file, places, near).map((fix) =>
    near.length === 1 ? { ...fix, preferred: true as const } : fix,
  );
}

/** The same for names of the shop's things. None is applied unasked: who meant another thing would have the work done on this one. */
export function nearNameFixes(file: string, places: readonly Span[], near: readonly string[]): Fix[] {
  return near.map((text) => ({
    title: `Write \`${text}\``,
    edits: places.map(({ start, end }) => ({ file, span: { start, end }, text })),
  }));
}
