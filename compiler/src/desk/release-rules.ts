// The house's rules for a release: what still stands in the way, in words for the shop lead. Settings say which hold.
import {
  type Analysis,
  type Finding,
  newestRevision,
  personOf,
  type Settings,
  type Status,
  statusesAfter,
} from '@baywright/language';

/** Who may take the status to where, and what else the settings ask. Empty when nothing stands in the way. */
export function releaseObstacles(analysis: Analysis, settings: Settings): string[] {
  const { model } = analysis;
  const status = model.status?.status?.text ?? 'draft';
  const own = analysis.findings.filter(({ file }) => file === analysis.path);
  const revision = newestRevision(model);
  return [
    ...(model.number === undefined ? ['it has no number'] : []),
    ...(revision === undefined ? ['it has no line `revision 1 on DAY: …`'] : []),
    ...(status === 'withdrawn' ? [] : standing(status, own)),
    ...(status === 'released' && settings.release.reviewDay && !hasReviewDay(analysis, settings)
      ? ['it names no day for the next review (`review DAY`), and this house asks for one']
      : []),
  ];
}

/** What is wrong with the settings of the house: while they cannot be read as they were meant, nobody knows its rules. */
export function settingsObstacles(findings: readonly Finding[]): string[] {
  const [first] = findings.filter(({ severity }) => severity === 'error' || severity === 'warning');
  return first === undefined
    ? []
    : [
        `the rules of the house are not known while ${first.file} has a fault: ${first.code} ${first.message}`,
      ];
}

function standing(status: string, own: readonly Finding[]): string[] {
  const told = (severity: Finding['severity']): string[] => {
    const found = own.filter((finding) => finding.severity === severity);
    const [first] = found;
    if (first === undefined) return [];
    const more = found.length > 1 ? ` and ${found.length - 1} more` : '';
    return [`${severity}: ${first.code} ${first.message}${more}`];
  };
  const register = own
    .filter((finding) => REFUSING.has(finding.code))
    .map(({ code, message }) => `${code}: ${message}`);
  return [
    ...(status === 'released' ? [] : [`its status is ${status}, not released`]),
    ...told('error'),
    ...told('question'),
    ...register,
  ];
}

/**
 * Warnings of the register that a release cannot go out with: not signed, review due, performs what is not released or
 * withdrawn, revisions whose days cannot be right (of these depends whether it was signed after it was written).
 */
const REFUSING: ReadonlySet<string> = new Set(['R104', 'R106', 'R107', 'R109', 'R112']);

function hasReviewDay({ model }: Analysis, { release }: Settings): boolean {
  return release.reviewMonths !== undefined || model.lines.some((line) => line.kind === 'review' && line.day);
}

/** Why a status cannot follow another, undefined when it can. */
export function stepObstacle(
  from: Status,
  to: Status,
  by: string,
  signed: readonly string[],
  note: string,
  { release }: Settings,
): string | undefined {
  if (from === to) return `it is ${to} already`;
  if (!statusesAfter(from).includes(to))
    return `from ${from} it goes to ${statusesAfter(from).join(' or ')}, not to ${to}`;
  const may = to === 'proved' ? release.provedBy : to === 'draft' ? [] : release.by;
  if (may.length > 0 && !may.includes(by)) return `${by} may not sign this; ${may.join(', ')} may`;
  if (to === 'released' && release.twoInitials && signed.map(personOf).includes(personOf(by)) && note === '')
    return `${by} proved it, and this house asks for a second person, or for a note that says why there is none`;
  if (to === 'withdrawn' && note === '') return 'a note must say why it is withdrawn';
  return undefined;
}
