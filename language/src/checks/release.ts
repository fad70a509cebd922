// R105: a released procedure that still has questions. It reads what all other checks have found.
import { type Finding, finding } from '../diagnostics/define.js';
import { valueNotKnown } from '../diagnostics/q120-value-not-known.js';
import { releasedWithOpenPoints } from '../diagnostics/r105-released-with-open-points.js';
import { linesOf } from '../names/job.js';
import type { FileModel } from '../names/model.js';

/** `findings` are those of the file as they stand in the end: accepted ones left out, severities of the house put in. */
export function releaseFindings(file: FileModel, findings: readonly Finding[]): Finding[] {
  const { status } = file;
  if (status?.status?.text !== 'released') return [];
  const own = findings.filter((f) => f.file === file.path);
  // An error speaks for itself, and no release can be issued with one; a question would pass unseen.
  // Values not known yet are counted in the text itself, so that no setting hides one from the release.
  let blanks = 0;
  for (const line of linesOf(file)) for (const token of line.tokens) if (token.kind === 'hole') blanks += 1;
  const questions =
    own.filter((f) => f.severity === 'question' && f.code !== valueNotKnown.code).length + blanks;
  if (questions === 0 || own.some((f) => f.severity === 'error')) return [];
  return [finding(releasedWithOpenPoints, { file: file.path, span: status.status }, { questions })];
}
