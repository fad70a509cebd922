// R103: a released procedure whose text, imports, pictures or translations changed since the issue of the same revision.
import { finding } from '../diagnostics/define.js';
import { changedSinceIssue } from '../diagnostics/r103-changed-since-issue.js';
import type { Job } from '../names/job.js';
import { type Change, changesBetween, changeText } from '../register/changes.js';
import { factsOfEdition, type IssuedEdition, newestRevision } from '../register/edition.js';
import { shopFacts } from '../register/facts.js';
import type { Check } from './check.js';

export const changedSince: Check = ({ job, library }) => {
  const { file } = job;
  const word = file.status?.status;
  if (word?.text !== 'released' || file.number === undefined) return [];
  const issued = library.host.issued?.(file.number);
  // Without a revision line there is nothing to raise; a raised one is on its way to its own issue.
  if (!issued || (newestRevision(file)?.number ?? issued.revision) !== issued.revision) return [];
  const isSameText = isUntouched(job, issued);
  const changes =
    library.host.changedSince?.(issued, job, isSameText) ?? (isSameText ? [] : textChanges(issued, job));
  const [change, ...more] = changes;
  if (!change) return [];
  const data = { revision: issued.revision, change: changeText(change), more: more.length };
  return [finding(changedSinceIssue, { file: file.path, span: word }, data)];
};

function textChanges(issued: IssuedEdition, job: Job): readonly Change[] {
  const old = factsOfEdition(issued);
  return old === undefined ? [] : changesBetween(old, shopFacts(job));
}

/** Whether every file is letter for letter the one that was issued, so that nothing need be compared. */
function isUntouched({ file, scopes }: Job, { path, files }: IssuedEdition): boolean {
  const now = scopes.flatMap((scope) => scope.files);
  return path === file.path && now.every((model) => files.get(model.path) === model.tree.text);
}
