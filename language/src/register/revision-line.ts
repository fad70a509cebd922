// Drafts the line that a reader finds in the revision history, from what changed.
import { type Change, changeText } from './changes.js';

/** Changes of the work are told by number beyond these many; figures are always told. */
const MOST_WORDS = 220;

/**
 * `revision 5 on 2026-11-02: Hub-to-knuckle bolts: torque 105 N·m → 115 N·m.` The shop lead puts it into better words; the
 * figures are right as they stand.
 */
export function revisionLine(revision: number | '?', day: string, changes: readonly Change[]): string {
  return `revision ${revision} on ${day}: ${changeSummary(changes)}`;
}

/** The changes as one sentence or two, cut short where there are many. */
export function changeSummary(changes: readonly Change[]): string {
  const figures = changes.filter((one) => one.in === 'figure').map(changeText);
  const lines = changes.filter((one) => one.in === 'work');
  const told: string[] = [];
  let length = 0;
  for (const text of figures) {
    if (told.length > 0 && length + text.length > MOST_WORDS) break;
    told.push(text);
    length += text.length;
  }
  const left = figures.length - told.length;
  if (left > 0) told.push(`${left} more figure${left === 1 ? '' : 's'} changed`);
  const steps = [...new Set(lines.map((one) => one.subject))];
  if (lines.length > 0)
    told.push(
      `${lines.length} line${lines.length === 1 ? '' : 's'} of the work changed (${steps.slice(0, 3).join('; ')}${steps.length > 3 ? ' and others' : ''})`,
    );
  return told.length === 0 ? 'No change in the work.' : `${told.join('; ')}.`;
}
