// Fixed phrases with more than plain text in their slots: rows of the guide become links to them.
import { type Language, type PhraseId, phraseText } from '@baywright/language';
import type { Inline, Prose } from '../inline.js';
import { text } from '../inline.js';
import type { RowAt } from './uses.js';

type Slot = string | RowAt | Prose | undefined;

/** A phrase with its slots filled: `No filling before 7.2, 2 h after 6.3`. */
export function lineProse(
  id: PhraseId,
  language: Language,
  slots: Readonly<Record<string, Slot>> = {},
): Prose {
  const rich: Prose[] = [];
  const filled = Object.fromEntries(
    Object.entries(slots).map(([name, value]) => {
      if (value === undefined || typeof value === 'string') return [name, value];
      rich.push('row' in value ? [{ kind: 'line', text: value.number, row: value.row }] : value);
      return [name, `${MARK}${rich.length - 1}${MARK}`];
    }),
  );
  return phraseText(id, language, filled)
    .split(MARK)
    .flatMap((part, i): readonly Inline[] => {
      if (i % 2 === 1) return rich[Number(part)] ?? [];
      return part === '' ? [] : [text(part)];
    });
}

/** Stands around a slot while the phrase is put together; no text holds it. */
const MARK = '\u0000';
