// Drafts the line that a reader finds in the revision history, from what changed.
import type { Language } from '../vocabulary/kinds.js';
import { type PhraseId, phrase, phraseText } from '../vocabulary/phrases.js';
import { type Change, changeText } from './changes.js';

/** Letters of changed figures that are told one by one; those beyond are counted. */
const MOST_LETTERS = 220;

/**
 * `revision 5 on 2026-11-02: Hub-to-knuckle bolts: torque 105 N·m → 115 N·m.` The shop lead puts it into better words; the
 * figures are right as they stand.
 */
export function revisionLine(revision: number | '?', day: string, changes: readonly Change[]): string {
  return `revision ${revision} on ${day}: ${changeSummary(changes)}`;
}

/** The changes as one sentence or two, cut short where there are many. */
export function changeSummary(changes: readonly Change[], language: Language = 'en'): string {
  const figures = changes.filter((one) => one.in === 'figure').map((one) => changeText(one, language));
  const lines = changes.filter((one) => one.in === 'work');
  const told: string[] = [];
  let length = 0;
  for (const text of figures) {
    if (told.length > 0 && length + text.length > MOST_LETTERS) break;
    told.push(text);
    length += text.length;
  }
  const left = figures.length - told.length;
  if (left > 0) told.push(counted(left, 'one-more-figure', 'more-figures', language));
  const steps = [...new Set(lines.map((one) => one.subject))];
  const where = steps.slice(0, MOST_STEPS).join('; ');
  if (lines.length > 0)
    told.push(
      counted(lines.length, 'one-line-changed', 'lines-changed', language, {
        steps: steps.length > MOST_STEPS ? phraseText('and-others', language, { things: where }) : where,
      }),
    );
  return told.length === 0 ? phrase('no-change', language) : `${told.join('; ')}.`;
}

/** Steps are named up to this many. */
const MOST_STEPS = 3;

const counted = (
  count: number,
  one: PhraseId,
  many: PhraseId,
  language: Language,
  slots: Readonly<Record<string, string>> = {},
): string => phraseText(count === 1 ? one : many, language, { ...slots, count });
