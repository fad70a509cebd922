// The issues of a library, kept in plain folders that need no other program: `issued/FH-12/4/`. Written once, never
// changed; a change made behind the program's back is noticed by the hashes and refused.
import {
  editionIn,
  type IssuedEdition,
  issueFolder,
  revisionOf,
  type Settings,
  SOURCE,
} from '@baywright/language';
import { join } from '../cli/paths.js';
import { CannotRun, type Shell } from '../cli/shell.js';
import { type IssueRecord, issueRecordSchema, type Register, registerSchema } from './issue-record.js';

/** The name of the record in an issue's folder, and of the list of all issues. */
const RECORD = 'issue.json';
const REGISTER = 'register.json';

export interface Issue {
  readonly record: IssueRecord;
  /** Absolute path of its folder. */
  readonly folder: string;
  /** The hash of its record. */
  readonly hash: string;
}

/** A library as the store sees it. */
export interface StoreLibrary {
  readonly root: string;
  readonly settings: Settings;
}

/** The folder of all issues of a library. */
const storeFolder = ({ root, settings }: StoreLibrary): string => join(root, settings.issues);

/** Revisions of a number that have a folder, rising, whether or not they can be read. */
export function issuedRevisions(shell: Shell, library: StoreLibrary, number: string): number[] {
  const entries = shell.list(issueFolder(storeFolder(library), number));
  if ('problem' in entries) return [];
  return entries
    .flatMap(({ name, kind }) => (kind === 'folder' ? (revisionOf(name) ?? []) : []))
    .sort((a, b) => a - b);
}

/** What the workshop has in hand of a number; undefined where nothing, or nothing readable, was issued. */
export function newestEdition(
  shell: Shell,
  library: StoreLibrary,
  number: string,
): IssuedEdition | undefined {
  const revision = issuedRevisions(shell, library, number).at(-1);
  return revision === undefined ? undefined : edition(shell, library, number, revision);
}

export function edition(
  shell: Shell,
  library: StoreLibrary,
  number: string,
  revision: number,
): IssuedEdition | undefined {
  const source = join(issueFolder(storeFolder(library), number), `${revision}/${SOURCE}`);
  const read = (path: string): string | undefined => {
    const reading = shell.read(path);
    return 'text' in reading ? reading.text : undefined;
  };
  const found = editionIn(`${source}/`, number, revision, filesBelow(shell, source), read);
  const shown = recordOf(shell, library, number, revision)?.shown;
  return found && shown !== undefined ? { ...found, shown } : found;
}

/** What was written down of one issue; undefined where it cannot be read. */
export function recordOf(
  shell: Shell,
  library: StoreLibrary,
  number: string,
  revision: number,
): IssueRecord | undefined {
  const read = readIssue(shell, join(issueFolder(storeFolder(library), number), String(revision)));
  return 'problem' in read ? undefined : read.record;
}

/** Every issue of a library by number and revision, with what is wrong in the store. */
export function readStore(shell: Shell, library: StoreLibrary): { issues: Issue[]; problems: string[] } {
  const folder = storeFolder(library);
  const entries = shell.list(folder);
  if ('problem' in entries) return { issues: [], problems: [] };
  const issues: Issue[] = [];
  const problems: string[] = [];
  for (const { name, kind } of entries) {
    if (kind !== 'folder' || name.startsWith('.')) continue;
    let before: Issue | undefined;
    const inside = shell.list(join(folder, name));
    const revisions = 'problem' in inside ? [] : inside.flatMap((entry) => revisionOf(entry.name) ?? []);
    for (const revision of revisions.sort((a, b) => a - b)) {
      const at = join(folder, `${name}/${revision}`);
      const read = readIssue(shell, at);
      if ('problem' in read) problems.push(read.problem);
      else {
        issues.push(read);
        const { number } = read.record;
        if (issueFolder(folder, number) !== join(folder, name) || read.record.revision !== revision)
          problems.push(`${at} says it is ${number} revision ${read.record.revision}`);
        problems.push(...damage(shell, read), ...brokenChain(before, read));
        before = read;
      }
    }
  }
  return { issues, problems: [...problems, ...missing(shell, folder, issues)] };
}

function readIssue(shell: Shell, folder: string): Issue | { problem: string } {
  const path = join(folder, RECORD);
  const reading = shell.read(path);
  if ('problem' in reading) return { problem: `${path} ${reading.problem}` };
  const parsed = issueRecordSchema.safeParse(json(reading.text));
  if (!parsed.success) return { problem: `${path} is not the record of an issue` };
  return { record: parsed.data, folder, hash: shell.hash(reading.text) };
}

/** Files of an issue that are not as they were written. */
function damage(shell: Shell, { record, folder }: Issue): string[] {
  const there = filesBelow(shell, folder).map((path) => path.slice(folder.length + 1));
  const added = there.filter((name) => name !== RECORD && !Object.hasOwn(record.files, name));
  const changed = Object.entries(record.files).flatMap(([name, hash]) => {
    const bytes = shell.bytes(join(folder, name));
    if (bytes === undefined) return [`${join(folder, name)} is gone`];
    return shell.hash(bytes) === hash ? [] : [`${join(folder, name)} was changed after it was issued`];
  });
  return [...changed, ...added.map((name) => `${join(folder, name)} was added after the issue`)];
}

function brokenChain(before: Issue | undefined, { record, folder }: Issue): string[] {
  const named = record.before;
  if (named === null && before === undefined) return [];
  if (named !== null && before?.record.revision === named.revision)
    return before.hash === named.record
      ? []
      : [`${join(before.folder, RECORD)} was changed after it was issued`];
  const said = named === null ? 'no issue' : `revision ${named.revision}`;
  return [
    `${folder} follows ${said}, and ${before === undefined ? 'none' : `revision ${before.record.revision}`} is there`,
  ];
}

/** Issues that the register lists and the folders do not have any more. */
function missing(shell: Shell, folder: string, issues: readonly Issue[]): string[] {
  const path = join(folder, REGISTER);
  // The first issue may have been written and not yet listed; a second one lists the first.
  if (shell.kind(path) === undefined)
    return issues.length > 1 ? [`${path}, the register of issues, is gone`] : [];
  const reading = shell.read(path);
  const parsed = registerSchema.safeParse('text' in reading ? json(reading.text) : undefined);
  if (!parsed.success) return [`${path} cannot be read as the register of issues`];
  return parsed.data.issues.flatMap(({ number, revision, record }) => {
    const issue = issues.find((one) => one.record.number === number && one.record.revision === revision);
    const at = join(issueFolder(folder, number), String(revision));
    // A folder whose record cannot be read was told already.
    if (issue === undefined)
      return shell.kind(at) === 'folder'
        ? []
        : [`${number} revision ${revision} was issued, and its folder is gone`];
    return issue.hash === record ? [] : [`${join(issue.folder, RECORD)} was changed after it was issued`];
  });
}

/** Writes one issue as a whole, then lists it. A run that ends between the two is mended by the next. */
export function writeIssue(
  shell: Shell,
  library: StoreLibrary,
  record: Omit<IssueRecord, 'files' | 'before' | 'format'>,
  files: ReadonlyMap<string, string | Uint8Array>,
): Issue {
  const { issues, problems } = readStore(shell, library);
  if (problems.length > 0) throw new CannotRun(changedHistory(problems));
  const last = issues
    .map((issue) => issue.record.issued)
    .sort()
    .at(-1);
  if (last !== undefined && last > record.issued)
    throw new CannotRun(
      `the clock of this computer stands at ${record.issued}, before the last issue was written (${last}): set it right first`,
    );
  const before = issues
    .filter((issue) => issue.record.number === record.number && issue.record.revision < record.revision)
    .at(-1);
  const whole: IssueRecord = {
    format: 1,
    ...record,
    files: Object.fromEntries([...files].map(([name, data]) => [name, shell.hash(data)])),
    before: before === undefined ? null : { revision: before.record.revision, record: before.hash },
  };
  const text = `${JSON.stringify(whole, undefined, 2)}\n`;
  const folder = join(issueFolder(storeFolder(library), record.number), String(record.revision));
  shell.writeFolder(folder, new Map([...files, [RECORD, text]]));
  const issue = { record: whole, folder, hash: shell.hash(text) };
  writeRegister(shell, library, [...issues, issue]);
  return issue;
}

function writeRegister(shell: Shell, library: StoreLibrary, issues: readonly Issue[]): void {
  const rows = issues
    .map(({ record: { number, revision }, hash }) => ({ number, revision, record: hash }))
    .sort((a, b) => (a.number < b.number ? -1 : a.number > b.number ? 1 : a.revision - b.revision));
  const register: Register = { format: 1, issues: rows };
  shell.write(join(storeFolder(library), REGISTER), `${JSON.stringify(register, undefined, 2)}\n`);
}

const changedHistory = (problems: readonly string[]): string =>
  `what was issued is not as it was written, so nothing is issued over it:\n${problems.map((one) => `  ${one}`).join('\n')}\nPut these files back from a copy. An issue is never changed: a mistake in it is mended by the next revision.`;

/** For what is read of the issues and not written. */
export const doubtfulHistory = (problems: readonly string[]): string =>
  `what was issued is not as it was written, so this may be wrong:\n${problems.map((one) => `  ${one}`).join('\n')}\nPut these files back from a copy.`;

/** The newest issue of each number. */
export function currentIssues(issues: readonly Issue[]): Issue[] {
  const newest = new Map<string, Issue>();
  for (const issue of issues) {
    const known = newest.get(issue.record.number);
    if (known === undefined || known.record.revision < issue.record.revision)
      newest.set(issue.record.number, issue);
  }
  return [...newest.values()];
}

function filesBelow(shell: Shell, folder: string): string[] {
  const entries = shell.list(folder);
  if ('problem' in entries) return [];
  return entries.flatMap(({ name, kind }) =>
    kind === 'folder' ? filesBelow(shell, join(folder, name)) : [join(folder, name)],
  );
}

function json(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
