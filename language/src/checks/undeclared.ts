// N101: names that nothing declares. One finding for a name, its other uses beside it.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { undeclared as undeclaredName } from '../diagnostics/names.js';
import { isDraft } from '../names/draft.js';
import { everyLine, type Job } from '../names/job.js';
import type { Line } from '../syntax/tree.js';
import { once } from '../text/once.js';
import { dtcCheck } from '../trade/trouble-code.js';
import type { ThingKind } from '../vocabulary/kinds.js';
import { nearestName } from '../vocabulary/near.js';
import type { ClauseSlot } from '../vocabulary/verb.js';
import type { Check } from './check.js';
import { declareFix, entryName, kindFromUses, type Undeclared } from './declare.js';
import { oneOf } from './kind-words.js';
import { type NameUse, nameUses } from './name-uses.js';
import { nearFixes, nearNameFixes } from './near-fixes.js';
import { reverseMeant } from './reverse-meant.js';
import { movedPart } from './values.js';

export const undeclared: Check = ({ job }) => {
  const all = [...undeclaredUses(job)].flatMap(([name, uses]) => asked(job, name, uses) ?? []);
  // While an import is missing, most of these are only its echo; and the entries of a catalogue may name things that
  // each procedure declares. What is near to a known name is a slip in either.
  const isOpen = job.scope.missing.length > 0 || job.file.kind !== 'procedure';
  if (isOpen) return all.filter(({ near }) => near.length > 0).map((each) => report(job, each, undefined));
  const toDeclare = all.filter(({ isName, near }) => isName && near.length === 0).map(({ wanted }) => wanted);
  const ofAll =
    toDeclare.length > 1
      ? declareFix(job.file, toDeclare, `Declare all ${toDeclare.length} undeclared names`, true)
      : undefined;
  return all.map((each) => report(job, each, ofAll));
};

/** A name that nothing declares, where it is used, and what was perhaps meant. */
interface Asked {
  readonly wanted: Undeclared;
  readonly uses: readonly NameUse[];
  /** False where a word of the language was meant. */
  readonly isName: boolean;
  /** What is near stands for the whole line, verb and name. */
  readonly isLine?: true;
  readonly near: readonly string[];
}

function asked(job: Job, name: string, uses: readonly NameUse[]): Asked | undefined {
  const reverse = reverseMeant(job, name, uses);
  if (reverse === '') return undefined;
  if (reverse !== undefined)
    return { wanted: described(name, uses), uses, isName: false, isLine: true, near: [reverse] };
  const brake = brakeMeant(name, uses);
  if (brake !== undefined)
    return { wanted: described(name, uses), uses, isName: false, isLine: true, near: [brake] };
  const words = isTroubleCode(uses) ? ['codes'] : machinesMeant(uses);
  const isName = words.length === 0;
  const near = isName ? nearestName(name, fittingNames(job, uses)) : words;
  return { wanted: described(name, uses), uses, isName, near };
}

/** `apply parking-brake` sets a condition, `apply brake, 10 times` pumps a pedal: neither is a supply. */
function brakeMeant(name: string, uses: readonly NameUse[]): string | undefined {
  const [first, ...others] = uses;
  if (!/(?:^|-)(?:hand)?brakes?$/.test(name) || first?.at.form !== 'object' || others.length > 0)
    return undefined;
  const { verb, clauses } = first.at.statement;
  if (verb.word !== 'apply' && verb.word !== 'release') return undefined;
  return clauses.length > 0 ? 'pump brake-pedal' : `set ${name} ${verb.done}`;
}

/** Uses of names that nothing declares, by name. */
export const undeclaredUses = once((job: Job): ReadonlyMap<string, readonly NameUse[]> => {
  const groups = new Map<string, NameUse[]>();
  const work = new Set<Line>(job.file.work);
  const unreadable = wordsOnBrokenLines(job.file.lines.filter((line) => !work.has(line)));
  for (const use of nameUses(job)) {
    if (use.thing || unreadable.has(use.name.text)) continue;
    if (use.at.form === 'clause' && movedPart(use.at.statement, use.at.clause.word)) continue;
    // A clause that takes a figure and no name, or that the verb does not take, says so itself.
    if (use.at.form === 'clause' && takesNoName(use.at.statement.verb.clauses[use.at.clause.word])) continue;
    const list = groups.get(use.name.text) ?? [];
    list.push(use);
    groups.set(use.name.text, list);
  }
  return groups;
});

/** `record P0301`: a code is text, what is recorded are the codes. */
const isTroubleCode = (uses: readonly NameUse[]): boolean =>
  uses.every(
    ({ at, name }) =>
      at.form === 'object' &&
      (at.statement.verb.machines?.includes('codes') ?? false) &&
      dtcCheck(name.text).ok,
  );

const takesNoName = (slot: ClauseSlot | undefined): boolean =>
  slot === undefined || (slot.quantity !== undefined && slot.names === undefined);

/** Words of lines that could not be read: outside the work, one of them may be the missing entry. */
export function wordsOnBrokenLines(lines: readonly Line[]): Set<string> {
  const words = new Set<string>();
  for (const line of lines) for (const word of brokenBelow(line)) words.add(word);
  return words;
}

/** The same until something in a line of the left edge is edited. */
const brokenBelow = once((top: Line): readonly string[] =>
  everyLine([top]).flatMap(({ broken, kind, tokens }) =>
    broken || kind === 'unread' ? tokens.map(({ image }) => image) : [],
  ),
);

function described(name: string, uses: readonly NameUse[]): Undeclared {
  const kind = kindFromUses(
    name,
    uses.map((use) => use.kinds),
    meantBy(uses),
  );
  const values = [...new Set(uses.flatMap((use) => (use.item?.value ? [use.item.value.text] : [])))];
  const places = uses.map((use) => use.name);
  return { name, places, kind, values: kind === 'condition' ? values : [] };
}

/** What shops mean by a name that they measure or adjust; what is only pointed at and never worked on is a place. */
function meantBy(uses: readonly NameUse[]): ThingKind | undefined {
  // `axle-stands, rated 1500 kg` before the work begins: what has no value is at hand, not set.
  if (uses.some(({ at, line }) => at.form === 'prerequisite' && !('value' in line && line.value)))
    return 'tool';
  const verbs = uses.flatMap(({ at }) => (at.form === 'object' ? [at.statement.verb.word] : []));
  if (verbs.includes('measure') || verbs.includes('read')) return 'limit';
  if (verbs.includes('adjust')) return 'adjustment';
  return verbs.every((word) => word === 'clean') ? 'place' : undefined;
}

/** What shops call the vehicle that stands before them. */
const VEHICLES: ReadonlySet<string> = new Set(['car', 'van', 'truck', 'lorry', 'tractor', 'trailer', 'bus']);

/** `vehicle` for `truck`, behind a verb that moves nothing else, or where it can be nothing else. */
function machinesMeant(uses: readonly NameUse[]): readonly string[] {
  const machines = uses.flatMap(({ at, kinds, name }) => {
    if (at.form !== 'object') return [];
    const { machines = [] } = at.statement.verb;
    return kinds.every((kind) => kind === 'machine') || (machines[0] === 'vehicle' && VEHICLES.has(name.text))
      ? machines
      : [];
  });
  return machines.slice(0, 1);
}

/** `ofAll` declares all names that are no slip of another; without it there are none, or one. */
function report(job: Job, { wanted, uses, isName, isLine, near }: Asked, ofAll: Fix | undefined): Finding {
  const { file } = job;
  const [first, ...rest] = uses;
  const span = { start: first?.name.start ?? 0, end: first?.name.end ?? 0 };
  const places = uses.map(({ name, line }) => (isLine ? { start: line.code.start, end: name.end } : name));
  const fixes = (isName || isLine ? nearNameFixes : nearFixes)(file.path, places, near);
  const isSure = near.length === 0;
  if (isName) {
    const title = `Declare \`${entryName(wanted.name)}\` as ${oneOf(wanted.kind)}`;
    fixes.push(declareFix(file, [wanted], title, isSure && !ofAll));
  }
  // Entries of one section go to one place: name by name they would be in each other's way.
  if (isSure && ofAll) fixes.push(ofAll);
  const related = rest.map(({ name }) => ({
    file: file.path,
    span: { start: name.start, end: name.end },
    message: 'used here too',
  }));
  const found = finding(
    undeclaredName,
    { file: file.path, span, related, fixes },
    { name: wanted.name, near },
  );
  // A draft is typed before its things are declared: what is not a slip for a known name is still open there, not wrong.
  return isSure && isDraft(file) ? { ...found, severity: 'question' } : found;
}

/** Declared names of the kinds that fit every use. */
function fittingNames(job: Job, uses: readonly NameUse[]): string[] {
  const fits = (kind: ThingKind): boolean =>
    uses.some((use) => use.kinds.length === 0 || use.kinds.includes(kind));
  return [...job.scope.names.values()].filter((thing) => fits(thing.kind)).map((thing) => thing.name);
}
