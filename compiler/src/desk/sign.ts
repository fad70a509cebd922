// Signs a procedure: its text with the new status line, if the rules of the house allow it. Writes nothing.
import { type FileModel, personOf, STATUSES, type Status } from '@baywright/language';
import { dayOf } from '@baywright/server/day';
import { openLibrary } from '../cli/libraries.js';
import { join } from '../cli/paths.js';
import { CannotRun, type Shell } from '../cli/shell.js';
import type { FoundProcedure } from './find.js';
import { releaseObstacles, settingsObstacles, stepObstacle } from './release-rules.js';

export interface SignWish {
  readonly to: Status;
  /** Initials; empty only for a way back to a draft. */
  readonly by: string;
  /** What is to be said of it; empty for nothing. */
  readonly note: string;
}

export type SignResult =
  | { readonly state: 'signed'; readonly line: string; readonly text: string }
  | { readonly state: 'refused'; readonly from: Status; readonly reasons: readonly string[] };

export function signProcedure(
  shell: Shell,
  { shelf, analysis }: Pick<FoundProcedure, 'shelf' | 'analysis'>,
  { to, by, note }: SignWish,
): SignResult {
  if (to !== 'draft' && !/^[\p{L}][\p{L}\p{N}-]{0,15}$/u.test(by))
    throw new CannotRun(`“${by}” are no initials; write them as RB`);
  const said = note.trim().replace(/\s+/g, ' ');
  const { model } = analysis;
  const from = statusOf(model);
  const signed = from === 'proved' ? (model.status?.by ?? []).map((one) => one.text) : [];
  const unknown = to === 'draft' ? [] : settingsObstacles(shelf.settingsFindings);
  if (unknown.length > 0) return { state: 'refused', from, reasons: unknown };
  const obstacle = stepObstacle(from, to, by, signed, said, shelf.settings);
  if (obstacle !== undefined) return { state: 'refused', from, reasons: [obstacle] };
  const day = dayOf(shell.now());
  const others = to === 'released' ? signed.filter((one) => personOf(one) !== personOf(by)) : [];
  const people = [...others, by];
  const line =
    to === 'draft'
      ? 'status draft'
      : `status ${to} by ${people.join(', ')} on ${day}${said === '' ? '' : `: ${said}`}`;
  const text = withStatus(model, line);
  // The rules are asked of the text as it would stand: a release is judged by the checks of a release.
  const reasons = to === 'released' ? obstaclesOf(text) : [];
  return reasons.length > 0 ? { state: 'refused', from, reasons } : { state: 'signed', line, text };

  function obstaclesOf(changed: string): string[] {
    const file = join(shelf.root, analysis.path);
    const trial = openLibrary(
      { ...shell, read: (path) => (path === file ? { text: changed } : shell.read(path)) },
      shelf.root,
      shelf.hasSettings,
      shelf.files,
    );
    const checked = trial.library.analyse(analysis.path);
    return checked === undefined ? [] : releaseObstacles(checked, shelf.settings);
  }
}

function statusOf(model: FileModel): Status {
  return STATUSES.find((status) => status === model.status?.status?.text) ?? 'draft';
}

/** The text with its status line put in place of the one it has, or below the opening line. */
function withStatus({ tree, status, head }: FileModel, line: string): string {
  const { text } = tree;
  if (status !== undefined)
    return text.slice(0, status.start) + line + text.slice(status.end).replace(/^[^\r\n]*/, '');
  const end = /\r\n|\r|\n/.exec(text.slice(head?.end ?? 0));
  const at = (head?.end ?? 0) + (end?.index ?? text.length);
  const newline = end?.[0] ?? '\n';
  return `${text.slice(0, at)}${newline}${newline}${line}${text.slice(at)}`;
}
