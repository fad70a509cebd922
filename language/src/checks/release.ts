// R105: a released procedure that still has errors or questions. It reads what all other checks have found.
import { type Finding, finding } from '../diagnostics/define.js';
import { releasedWithOpenPoints } from '../diagnostics/r105-released-with-open-points.js';
import type { FileModel } from '../names/model.js';

/** `findings` are those of the file as they stand in the end: accepted ones left out, severities of the house put in. */
export function releaseFindings(file: FileModel, findings: readonly Finding[]): Finding[] {
  const { status } = file;
  if (status?.status?.text !== 'released') return [];
  const own = findings.filter((f) => f.file === file.path);
  const errors = own.filter((f) => f.severity === 'error').length;
  const questions = own.filter((f) => f.severity === 'question').length;
  if (errors + questions === 0) return [];
  return [finding(releasedWithOpenPoints, { file: file.path, span: status.status }, { errors, questions })];
}
