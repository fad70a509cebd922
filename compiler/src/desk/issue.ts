// Issues one procedure: asks the rules, makes the files, writes them as a whole.
import { changeSummary, changeText, newestRevision, VERSION } from '@baywright/language';
import { relativeTo } from '../cli/paths.js';
import type { Shell } from '../cli/shell.js';
import { changesSince, shownNow } from './changes-since.js';
import type { FoundProcedure } from './find.js';
import { issueFiles } from './issue-files.js';
import { newestEdition, recordOf, writeIssue } from './issue-store.js';
import { releaseObstacles, settingsObstacles } from './release-rules.js';

export type IssueResult =
  | {
      readonly state: 'issued';
      readonly revision: number;
      readonly folder: string;
      readonly change: string;
      /** The copies that now hang with an earlier revision. */
      readonly pull: Pull | undefined;
    }
  | { readonly state: 'current'; readonly revision: number }
  | { readonly state: 'refused'; readonly reasons: readonly string[] };

export interface Pull {
  readonly revision: number;
  readonly copies: readonly string[];
}

export interface IssueWishes {
  /** Where printed copies will hang. */
  readonly copies: readonly string[];
  /** Ask the rules and write nothing. */
  readonly trial: boolean;
}

export async function issueProcedure(
  shell: Shell,
  procedure: FoundProcedure,
  wishes: IssueWishes,
): Promise<IssueResult> {
  const { shelf, analysis, number } = procedure;
  const { model } = analysis;
  const revision = newestRevision(model)?.number ?? 0;
  const before = newestEdition(shell, shelf, number);
  const changes = changesSince(shell, shelf, before, analysis.job);
  const status = model.status?.status?.text === 'withdrawn' ? 'withdrawn' : 'released';
  if (
    before !== undefined &&
    before.revision === revision &&
    changes.length === 0 &&
    status === statusIn(before)
  )
    return { state: 'current', revision };
  const reasons = [
    ...settingsObstacles(shelf.settingsFindings),
    ...releaseObstacles(analysis, shelf.settings),
    ...(before !== undefined && revision <= before.revision
      ? [
          late(
            revision,
            before.revision,
            changes.map((change) => changeText(change)),
          ),
        ]
      : []),
  ];
  if (reasons.length > 0) return { state: 'refused', reasons };
  const change = before === undefined ? 'First issue.' : changeSummary(changes);
  const held = before && recordOf(shell, shelf, number, before.revision);
  const pull =
    held === undefined || held.copies.length === 0
      ? undefined
      : { revision: held.revision, copies: held.copies };
  if (wishes.trial) return { state: 'issued', revision, folder: '', change, pull };
  const line = model.status;
  const issue = writeIssue(
    shell,
    shelf,
    {
      number,
      title: model.title,
      revision,
      status,
      by: (line?.by ?? []).map((name) => name.text),
      day: line?.day?.text ?? '',
      note: line?.prose?.text.trim().replace(/\s+/g, ' ') ?? '',
      issued: shell.now().toISOString(),
      program: VERSION,
      source: analysis.path,
      change,
      copies: [...wishes.copies],
      shown: shownNow(shell, shelf.root, analysis.job),
    },
    await issueFiles(shell, shelf, analysis),
  );
  return { state: 'issued', revision, folder: relativeTo(shell.folder, issue.folder), change, pull };
}

/** The status that an issued source has. */
function statusIn({
  path,
  files,
}: {
  readonly path: string;
  readonly files: ReadonlyMap<string, string>;
}): string {
  return /^status\s+withdrawn\b/m.test(files.get(path) ?? '') ? 'withdrawn' : 'released';
}

function late(revision: number, issued: number, changes: readonly string[]): string {
  const [first, ...more] = changes;
  const what =
    first === undefined
      ? 'its status changed'
      : `${first}${more.length > 0 ? ` and ${more.length} more` : ''}`;
  return `revision ${issued} is in the workshop already, and since then ${what}; add a line \`revision ${Math.max(issued, revision) + 1} on DAY: …\``;
}
