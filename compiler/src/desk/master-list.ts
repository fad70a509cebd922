// The list of current revisions: what of each guide is in the workshop, and whether the library has moved on since.
import { type Change, changeSummary, type Language, newestRevision, phrase } from '@baywright/language';
import type { Shell } from '../cli/shell.js';
import { changesSince } from './changes-since.js';
import type { FoundProcedure } from './find.js';
import { currentIssues, type Issue, newestEdition, readStore, type StoreLibrary } from './issue-store.js';

export interface MasterRow {
  readonly number: string;
  readonly title: string;
  /** The file it is made from; undefined when it is gone. */
  readonly file: string | undefined;
  readonly status: string;
  /** The newest revision of the file. */
  readonly revision: number | undefined;
  readonly issue: Issue | undefined;
  /** What the status line of the file says after its colon; empty where it says nothing. */
  readonly note: string;
  /** What is otherwise than in the last issue. */
  readonly changes: readonly Change[];
  readonly state: 'never issued' | 'current' | 'changed' | 'withdrawn' | 'file is gone';
}

/** One row for each procedure, and for each number that was issued and has no file any more; `problems` as of {@link readStore}. */
export function masterList(
  shell: Shell,
  library: StoreLibrary,
  procedures: readonly FoundProcedure[],
): { readonly rows: MasterRow[]; readonly problems: readonly string[] } {
  const store = readStore(shell, library);
  const issues = currentIssues(store.issues);
  const rows = procedures.map((procedure) => rowOf(shell, procedure, issues));
  const gone = issues.filter(({ record }) => !procedures.some(({ number }) => number === record.number));
  return {
    rows: [...rows, ...gone.map(goneRow)].sort((a, b) =>
      a.number.localeCompare(b.number, 'en', { numeric: true }),
    ),
    problems: store.problems,
  };
}

/** What is to be said of a guide since its last issue, as one sentence; empty where nothing is. */
export function sinceIssue(row: MasterRow, language: Language = 'en'): string {
  if (isWithdrawing(row)) {
    const why = row.note === '' ? '' : `${phrase('colon', language)} ${row.note.replace(/\.$/, '')}`;
    return `${phrase('withdrawn', language)}${why}.`;
  }
  return row.changes.length === 0 ? '' : changeSummary(row.changes, language);
}

/** Withdrawn in the library, and still in the workshop: what else changed in it does not matter any more. */
export const isWithdrawing = ({ status, state }: MasterRow): boolean =>
  status === 'withdrawn' && state === 'changed';

function rowOf(
  shell: Shell,
  { shelf, analysis, number }: FoundProcedure,
  issues: readonly Issue[],
): MasterRow {
  const { model } = analysis;
  const issue = issues.find(({ record }) => record.number === number);
  const edition = issue === undefined ? undefined : newestEdition(shell, shelf, number);
  const changes = changesSince(shell, shelf, edition, analysis.job);
  const status = model.status?.status?.text ?? 'draft';
  const state =
    issue === undefined
      ? 'never issued'
      : issue.record.status === 'withdrawn'
        ? 'withdrawn'
        : changes.length > 0 || status === 'withdrawn'
          ? 'changed'
          : 'current';
  return {
    number,
    title: model.title,
    file: analysis.path,
    status,
    revision: newestRevision(model)?.number,
    note: model.status?.prose?.text.trim().replace(/\s+/g, ' ') ?? '',
    issue,
    changes,
    state,
  };
}

function goneRow(issue: Issue): MasterRow {
  const { number, title, status } = issue.record;
  const state = status === 'withdrawn' ? 'withdrawn' : 'file is gone';
  return { number, title, file: undefined, status, revision: undefined, note: '', issue, changes: [], state };
}
