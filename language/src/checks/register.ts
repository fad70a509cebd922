// R101, R102, R104, R107 to R110, R112: the procedure as an item of the library: its number, status, revisions, pictures.
import { type Finding, finding } from '../diagnostics/define.js';
import { numberTwice } from '../diagnostics/r101-number-twice.js';
import { pictureMissing } from '../diagnostics/r102-picture-missing.js';
import { performsUnreleased } from '../diagnostics/r104-performs-unreleased.js';
import { reviewDue } from '../diagnostics/r106-review-due.js';
import { revisionOrder } from '../diagnostics/r107-revision-order.js';
import { statusUnknown } from '../diagnostics/r108-status-unknown.js';
import { releaseNotSigned } from '../diagnostics/r109-release-not-signed.js';
import { dayImpossible } from '../diagnostics/r110-day-impossible.js';
import { performsWithdrawn } from '../diagnostics/r112-performs-withdrawn.js';
import type { LibraryHost } from '../library.js';
import { type Job, linesOfKind, linesOfWork } from '../names/job.js';
import type { FileModel } from '../names/model.js';
import { resolvePath } from '../names/scope.js';
import { numberOf } from '../quantity/index.js';
import { monthsLater } from '../register/days.js';
import { newestRevision } from '../register/edition.js';
import type { Settings } from '../settings/index.js';
import type { Name, ReviewLine } from '../syntax/tree.js';
import { nearestWord } from '../vocabulary/near.js';
import { personOf, STATUSES } from '../vocabulary/statuses.js';
import type { Check } from './check.js';
import { nearFixes } from './near-fixes.js';

export const register: Check = ({ job, library }) => {
  const { file } = job;
  return [
    ...numberFindings(job),
    ...pictureFindings(file, library.host),
    ...performFindings(job),
    ...revisionFindings(file),
    ...statusFindings(file, library.settings, library.host.today?.()),
    ...dayFindings(file),
    ...reviewFindings(file, library.settings, library.host.today?.()),
  ];
};

/** The later of two files, in the order the library lists them. */
function numberFindings({ file, imports }: Job): Finding[] {
  if (file.number === undefined || file.head?.kind !== 'procedure' || !file.head.number) return [];
  const first = imports.numbered(file.number);
  if (!first || first.path === file.path) return [];
  const related = first.head ? [{ file: first.path, span: first.head.code, message: 'the same number' }] : [];
  return [
    finding(
      numberTwice,
      { file: file.path, span: file.head.number, related },
      { number: file.number, other: first.path },
    ),
  ];
}

function pictureFindings(file: FileModel, host: LibraryHost): Finding[] {
  const found: Finding[] = [];
  for (const line of [...linesOfKind(file, 'picture'), ...linesOfKind(file, 'clip')]) {
    if (!line.path || line.path.hole) continue;
    const path = resolvePath(file.path, line.path.text);
    if (path !== undefined && (host.exists?.(path) ?? true)) continue;
    found.push(
      finding(
        pictureMissing,
        { file: file.path, span: line.path },
        { path: path ?? line.path.text, outside: path === undefined },
      ),
    );
  }
  return found;
}

/** R112 while anybody still works by this file; R104 where it is released itself. */
function performFindings({ file, imports }: Job): Finding[] {
  const own = file.status?.status?.text;
  if (own === 'withdrawn') return [];
  const found: Finding[] = [];
  for (const line of linesOfWork(file)) {
    if (line.kind !== 'perform' || !line.from || line.from.hole) continue;
    const callee = imports.numbered(line.from.text);
    const status = callee?.status?.status?.text ?? 'draft';
    if (!callee || status === 'released' || (status !== 'withdrawn' && own !== 'released')) continue;
    const related = callee.status
      ? [{ file: callee.path, span: callee.status.code, message: 'its status' }]
      : [];
    const at = { file: file.path, span: line.code, related };
    const number = line.from.text;
    found.push(
      status === 'withdrawn'
        ? finding(performsWithdrawn, at, { number })
        : finding(performsUnreleased, at, { number, status, own: 'released' }),
    );
  }
  return found;
}

/** Newest first, as a reader looks for it; a file that keeps them oldest first throughout is left alone. */
function revisionFindings(file: FileModel): Finding[] {
  const known = file.revisions.flatMap((line) =>
    line.number?.value === undefined
      ? []
      : [{ line, number: line.number, value: numberOf(line.number.value), day: line.day?.text }],
  );
  const rising =
    known.length > 1 && known.every((r, i) => i === 0 || r.value > (known[i - 1]?.value ?? r.value));
  const found: Finding[] = [];
  known.forEach((revision, i) => {
    const above = known[i - 1];
    if (!above) return;
    const at = { file: file.path, span: revision.number };
    const [newer, older] = rising ? [revision, above] : [above, revision];
    if (known.slice(0, i).some((r) => r.value === revision.value))
      found.push(finding(revisionOrder, at, { problem: `revision ${revision.value} stands here twice` }));
    else if (newer.value < older.value)
      found.push(
        finding(revisionOrder, at, {
          problem: `revision ${revision.value} stands below revision ${above.value}; the newest goes first`,
        }),
      );
    else if (newer.day !== undefined && older.day !== undefined && newer.day < older.day) {
      found.push(
        finding(revisionOrder, at, {
          problem: `revision ${newer.value} is of ${newer.day}, and revision ${older.value} of ${older.day}`,
        }),
      );
    }
  });
  return found;
}

function statusFindings(file: FileModel, { release }: Settings, today: string | undefined): Finding[] {
  const { path, status: line } = file;
  const word = line?.status;
  if (!line || !word) return [];
  if (!(STATUSES as readonly string[]).includes(word.text)) {
    const near = nearestWord(word.text, STATUSES, 1);
    const fixes = nearFixes(path, [word], near);
    return [finding(statusUnknown, { file: path, span: word, fixes }, { word: word.text, near })];
  }
  if (word.text !== 'released') return [];
  const problem =
    signing(
      line.by.map((n) => n.text),
      line.day !== undefined,
      (line.prose?.text.trim() ?? '') !== '',
      release,
    ) ?? signedWhen(file, today);
  return problem === undefined ? [] : [finding(releaseNotSigned, { file: path, span: word }, { problem })];
}

function signing(
  by: readonly string[],
  dated: boolean,
  hasNote: boolean,
  release: Settings['release'],
): string | undefined {
  const people = new Set(by.map(personOf));
  if (people.size === 0) return 'released by nobody';
  if (release.twoInitials && people.size < 2 && !hasNote)
    return `released by ${by[0]} alone, and this house asks for two, or for a note after a colon`;
  if (release.by.length > 0 && !by.some((b) => release.by.includes(b)))
    return `none of ${by.join(', ')} may release a procedure here (${release.by.join(', ')} may)`;
  return dated ? undefined : 'released on no day';
}

/** What was signed is the text of that day: a later revision is not signed yet. */
function signedWhen(file: FileModel, today: string | undefined): string | undefined {
  const day = file.status?.day?.text;
  if (day === undefined || !isDay(day)) return undefined;
  const newest = newestRevision(file);
  if (newest?.day !== undefined && isDay(newest.day) && day < newest.day)
    return `released on ${day}, before revision ${newest.number} of ${newest.day} was written`;
  // Computers of one library may stand in two time zones.
  return today !== undefined && isDay(today) && day > dayAfter(today)
    ? `released on ${day}, which is still to come`
    : undefined;
}

function dayAfter(day: string): string {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  const next = [
    [year, month, date + 1],
    [year, month + 1, 1],
    [year + 1, 1, 1],
  ].map(([y = 0, m = 1, d = 1]) =>
    [String(y).padStart(4, '0'), String(m).padStart(2, '0'), String(d).padStart(2, '0')].join('-'),
  );
  return next.find(isDay) ?? day;
}

function dayFindings(file: FileModel): Finding[] {
  const days: (Name | undefined)[] = [
    file.status?.day,
    ...file.revisions.map((r) => r.day),
    ...reviewLines(file).map((r) => r.day),
  ];
  return days.flatMap((day) =>
    day && !isDay(day.text)
      ? [finding(dayImpossible, { file: file.path, span: day }, { day: day.text })]
      : [],
  );
}

/** Whether the calendar has the day. */
function isDay(text: string): boolean {
  const [year = 0, month = 0, day = 0] = text.split('-').map(Number);
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  return month >= 1 && month <= 12 && day >= 1 && day <= (days[month - 1] ?? 0);
}

function reviewLines(file: FileModel): ReviewLine[] {
  return file.lines.filter((l) => l.kind === 'review');
}

/** The day written, or the house's months after the release. */
function reviewFindings(file: FileModel, settings: Settings, today: string | undefined): Finding[] {
  if (today === undefined || file.status?.status?.text !== 'released') return [];
  const written = reviewLines(file)[0]?.day;
  const released = file.status.day;
  const months = settings.release.reviewMonths;
  const due =
    written?.text ?? (released && months !== undefined ? monthsLater(released.text, months) : undefined);
  const span = written ?? released;
  return due !== undefined && span && due < today
    ? [finding(reviewDue, { file: file.path, span }, { day: due })]
    : [];
}
