// Turns what a run noted into findings: one for each cause, at the line that answers for it.
import { type DiagnosticDef, type Finding, type Fix, finding, type Related } from '../diagnostics/define.js';
import { pathsDiffer } from '../diagnostics/s401-paths-differ.js';
import { neverReached } from '../diagnostics/s402-never-reached.js';
import type { StateWords } from '../diagnostics/state-words.js';
import { absentThing } from '../diagnostics/v101-absent-thing.js';
import { isEndOfDraft, isWithoutEnd } from '../names/draft.js';
import { hasClause, type Thing } from '../names/model.js';
import type { BoundItem } from '../names/statement.js';
import { NEVER } from '../variants/diagrams.js';
import type { Act } from './act.js';
import type { Deficit, Lack } from './deficit.js';
import { DONE_ALREADY, dropFix } from './drop-fix.js';
import { hangFix, insertFix, isEvacuated, moveFix } from './fixes.js';
import { groupLacks } from './group.js';
import type { Machine } from './machine.js';
import { closedBefore, reorderFix, runBeforeLook } from './missed-fix.js';
import { pairFix } from './pair-fix.js';
import { whenOf } from './relations.js';
import {
  isSeenToLast,
  missingOf,
  needDiagnostic,
  orderDiagnostic,
  TOLD_AT_ACT,
  wantedWord,
} from './report-table.js';
import type { StateRun } from './run.js';
import { directionOf } from './wants.js';

export function reportState(run: StateRun): Finding[] {
  const m = run.machine;
  return [
    ...run.deficits.filter((d) => !d.silent && !isDoneAgain(run, d)).flatMap((d) => reportDeficit(m, d)),
    ...absences(run),
    ...differences(run).map((x): Finding => {
      const found = finding(
        pathsDiffer,
        {
          file: x.file,
          span: x.line.code,
          variants: m.job.universe.words(x.when),
          related: x.things.flatMap((t) => lastMakers(m, t)),
        },
        words(m, x.things, undefined, undefined),
      );
      return isEndOfDraft(m.job.file, x.line) ? { ...found, severity: 'question' } : found;
    }),
    ...run.unreached
      .slice(0, 1)
      .map((line) =>
        finding(neverReached, { file: m.job.file.path, span: line.code }, words(m, [], undefined, undefined)),
      ),
  ];
}

/**
 * A line in a branch that takes apart what already is, only because the line that puts it together before is missing:
 * the missing line is the fault, and its finding stands at the line that took it apart.
 */
function isDoneAgain(run: StateRun, deficit: Deficit): boolean {
  if (!DONE_ALREADY.has(deficit.need)) return false;
  const missing = run.deficits
    .filter((d) => !d.silent)
    .flatMap((d) => d.lacks.filter((l) => directionOf(l.want) === 'together'));
  return deficit.lacks.every(
    (l) =>
      l.maker >= 0 &&
      directionOf(l.want) === 'here' &&
      missing.some((other) => other.thing === l.thing && other.maker === l.maker),
  );
}

/** The things that a finding says are never put right. */
export function thingsTold(run: StateRun): ReadonlySet<Thing> {
  const missing = run.deficits
    .filter((d) => !d.silent)
    .flatMap((d) =>
      d.lacks.filter(
        (l) =>
          directionOf(l.want) === 'together' &&
          !arrived(run.machine, d, l) &&
          !isAssumedThere(run.machine, l),
      ),
    );
  return new Set(missing.map((l) => l.thing));
}

/** Paths that differ in a thing that a finding already speaks of are no second fault. */
function differences(run: StateRun): StateRun['differences'] {
  const told = new Set(run.deficits.flatMap((d) => d.lacks.map((l) => l.thing)));
  return run.differences
    .map((x) => ({ ...x, things: x.things.filter((t) => !told.has(t)) }))
    .filter((x) => x.things.length > 0);
}

function reportDeficit(m: Machine, deficit: Deficit): Finding[] {
  const together = deficit.lacks.filter((l) => directionOf(l.want) === 'together');
  const late = together.filter((l) => arrived(m, deficit, l));
  const missing = together.filter((l) => !arrived(m, deficit, l));
  const here = deficit.lacks.filter(
    (l) => TOLD_AT_ACT.has(deficit.need) || directionOf(l.want) !== 'together',
  );
  const out: Finding[] = [];
  if (here.length > 0) out.push(told(m, deficit, here, needDiagnostic(deficit.need, here[0]?.want)));
  else if (late.length > 0) out.push(told(m, deficit, late, orderDiagnostic(deficit.need)));
  if (here.length === 0 && (late.length === 0 || deficit.act === undefined)) {
    const groups =
      deficit.act === undefined || deficit.act.statement?.verb.wholeVehicle
        ? groupLacks(m, missing)
        : missing.length > 0
          ? [missing]
          : [];
    for (const group of groups)
      if (!group.every((l) => isAssumedThere(m, l))) out.push(leftOff(m, deficit, group));
  }
  return out;
}

/** A thing that only an assumption took apart owes nothing: the finding it was assumed after speaks for it. */
function isAssumedThere(m: Machine, lack: Lack): boolean {
  const act = m.acts[lack.maker];
  if (!act || act.statement?.objects.some((o) => o.thing === lack.thing)) return false;
  return m.assumptions(lack.thing).some((a) => a.deficit.act === act && m.d.implies(lack.when, a.when));
}

/** Whether what lacked was done later wherever it lacked. */
function arrived(m: Machine, deficit: Deficit, lack: Lack): boolean {
  return m.d.implies(lack.when, deficit.arrived.get(lack.thing) ?? NEVER);
}

/** A finding at the act that failed. */
function told(m: Machine, deficit: Deficit, lacks: readonly Lack[], def: DiagnosticDef<StateWords>): Finding {
  const { act } = deficit;
  const at = act?.blame ?? { file: m.job.file.path, span: { start: 0, end: 0 } };
  const related: Related[] = [
    ...makersOf(m, lacks)
      .filter((a) => a !== act)
      .map((a) => ({ ...a.blame, message: `${madeWord(a)} here` })),
    ...deficit.late.filter((a) => a !== act).map((a) => ({ ...a.blame, message: 'done only here' })),
  ];
  const fix = act ? fixAtAct(m, act, deficit, lacks) : undefined;
  return finding(
    def,
    { ...at, related, fixes: fix ? [fix] : [], variants: m.job.universe.words(whenOf(m, lacks)) },
    words(m, thingsOf(lacks), deficit, lacks[0]),
  );
}

function fixAtAct(m: Machine, act: Act, deficit: Deficit, lacks: readonly Lack[]): Fix | undefined {
  const { need, late } = deficit;
  if (DONE_ALREADY.has(need)) return closedBefore(m, act, lacks) ?? dropFix(m, act, lacks);
  if (late[0] === act) return reorderFix(m, act, lacks);
  const run = need === 'reachable' ? runBeforeLook(m, act, lacks) : undefined;
  if (run) return run;
  if (need === 'parts joined in' && lacks.every((l) => l.thing.kind === 'part'))
    return hangFix(m, act, lacks);
  // What is torqued behind the lowering is torqued on the ground; in the air it is made snug.
  const stays = lacks.some(
    (l) => l.want === 'slack' || (l.want === 'snug' && (lowers(act) || hasClause(l.thing, 'on ground'))),
  );
  // A line that is done on one way only stays on it.
  const moves =
    late[0] !== undefined &&
    m.d.implies(whenOf(m, lacks), late[0].when) &&
    !comesAgain(m, act, late[0], lacks);
  return late[0] && moves && !stays ? moveFix(m, late[0], act) : insertFix(m, deficit, lacks);
}

const lowers = ({ statement }: Act): boolean =>
  statement?.verb.on.machine?.makes.includes('lowered') ?? false;

/** Chocks that are put there again later are needed there too: what asks for them here comes again behind that line. */
function comesAgain(m: Machine, act: Act, late: Act, lacks: readonly Lack[]): boolean {
  const isAid = lacks.every(({ want }) => want === 'chocked' || want === 'placed');
  return (
    isAid &&
    m.acts
      .slice(late.index + 1)
      .some(
        ({ statement }) =>
          statement?.verb === act.statement?.verb &&
          statement?.objects.some((o) => lacks.some((l) => l.thing === o.thing)),
      )
  );
}

/** A finding at the line that left the things so. */
function leftOff(m: Machine, deficit: Deficit, lacks: readonly Lack[]): Finding {
  const makers = makersOf(m, lacks);
  const first = makers[0];
  const primary = [...lacks].sort((a, b) => rank(a) - rank(b) || a.maker - b.maker)[0] ?? lacks[0];
  const things = thingsOf(lacks.filter((l) => l.want === primary?.want));
  const at = first?.blame ?? deficit.act?.blame ?? { file: m.job.file.path, span: { start: 0, end: 0 } };
  const related: Related[] = [
    ...makers.slice(1).map((a) => ({ ...a.blame, message: `${madeWord(a)} here` })),
    ...(deficit.act && deficit.act !== first ? [{ ...deficit.act.blame, message: 'needed here' }] : []),
  ];
  const fixes: Fix[] = [pairFix(m, deficit, lacks), insertFix(m, deficit, lacks)].filter(
    (f) => f !== undefined,
  );
  const found = finding(
    missingOf(primary?.want ?? 'in'),
    { ...at, related, fixes, variants: m.job.universe.words(whenOf(m, lacks)) },
    words(m, things, deficit, primary),
  );
  const isOpen = deficit.act === undefined && isSeenToLast(primary?.want ?? 'in') && isWithoutEnd(m.job.file);
  return isOpen ? { ...found, severity: 'question' } : found;
}

function absences(run: StateRun): Finding[] {
  const m = run.machine;
  const byLine = new Map<number, (typeof run.absent)[number][]>();
  for (const a of run.absent) byLine.set(a.act.line.start, [...(byLine.get(a.act.line.start) ?? []), a]);
  return [...byLine.values()].flatMap((list) => {
    const first = list[0];
    if (!first) return [];
    const when = whenOf(m, list);
    const span = first.act.through ? first.act.blame.span : first.item.item.name;
    const fix = guardFix(
      m,
      first.act,
      list.map((a) => a.thing),
    );
    return [
      finding(
        absentThing,
        {
          file: first.act.blame.file,
          span: { start: span.start, end: span.end },
          fixes: fix ? [fix] : [],
          variants: m.job.universe.words(when),
        },
        words(
          m,
          list.map((a) => a.thing),
          undefined,
          undefined,
        ),
      ),
    ];
  });
}

/** Guards a line whose things all exist on the same combinations, or hold nothing but what exists on those. */
function guardFix(m: Machine, act: Act, absent: readonly Thing[]): Fix | undefined {
  const { statement, line } = act;
  const first = absent[0];
  if (
    !statement ||
    !first ||
    act.through ||
    act.file !== m.job.file.path ||
    statement.guard ||
    line.children.length > 0
  )
    return undefined;
  const same = statement.objects.every(
    ({ thing }) =>
      thing && (m.job.exists(thing) === m.job.exists(first) || holdsOnly(m, thing, statement.objects, first)),
  );
  const guard = same ? m.job.universe.guardText(m.job.exists(first)) : undefined;
  if (!guard) return undefined;
  const { end } = line.code;
  return {
    title: `Add \`when ${guard}\``,
    edits: [{ file: act.file, span: { start: end, end }, text: `, when ${guard}` }],
  };
}

/** The bolts of a cover have no work of their own where the cover is not. */
function holdsOnly(m: Machine, bolts: Thing, objects: readonly BoundItem[], first: Thing): boolean {
  const held = m.job.inverse(bolts, 'held by').map((r) => r.of);
  return (
    held.length > 0 &&
    held.every((part) => m.job.exists(part) === m.job.exists(first) && objects.some((o) => o.thing === part))
  );
}

function thingsOf(lacks: readonly Lack[]): Thing[] {
  return [...new Set(lacks.map((l) => l.thing))];
}

function makersOf(m: Machine, lacks: readonly Lack[]): Act[] {
  const seen = new Map<number, Act>();
  for (const l of [...lacks].sort((a, b) => a.maker - b.maker)) {
    const act = m.acts[l.maker];
    if (act && !seen.has(act.blame.span.start)) seen.set(act.blame.span.start, act);
  }
  return [...seen.values()];
}

function lastMakers(m: Machine, thing: Thing): Related[] {
  const out: Related[] = [];
  for (const [info, guarded] of m.cells()) {
    if (info.thing !== thing) continue;
    for (const c of guarded) {
      const act = m.acts[c.by];
      if (act && !out.some((r) => r.span.start === act.blame.span.start))
        out.push({ ...act.blame, message: `\`${thing.name}\` ${madeWord(act)} here` });
    }
  }
  return out;
}

function madeWord(act: Act): string {
  return act.statement?.verb.done ?? 'changed';
}

/** Which of several lacks names the finding. */
function rank(lack: Lack): number {
  return lack.want === 'in' || lack.want === 'connected' ? 0 : lack.want === 'fluid' ? 1 : 2;
}

function words(
  m: Machine,
  things: readonly Thing[],
  deficit: Deficit | undefined,
  lack: Lack | undefined,
): StateWords {
  const objects = (deficit?.about ?? []).map((t) => `\`${t.name}\``);
  return {
    names: listed(things.map((t) => `\`${t.name}\``)),
    are: things.length === 1 ? 'is' : 'are',
    wanted: lack ? (lack.want === 'bled' && isEvacuated(m, lack.thing) ? 'evacuated' : wantedWord(lack)) : '',
    off: things[0]?.kind === 'connection' ? 'disconnected' : 'off',
    placed: things[0]?.kind === 'place' ? 'chocked' : 'in place',
    object: listed(objects),
    objectIs: objects.length === 1 ? 'is' : 'are',
    posture:
      deficit?.need !== 'posture'
        ? postureLeft(m, lack)
        : lack?.want === 'ride height'
          ? 'away from ride height'
          : 'with the vehicle in the air',
    suspension: lack?.want === 'suspension free' ? 'still loaded' : 'not loaded',
    value: lack?.value ?? '',
    minutes: lack?.value === undefined ? '' : minutesInWords(Number(lack.value)),
  };
}

/** How the vehicle stands where a line asks for another posture, by the line that left it so. */
function postureLeft(m: Machine, lack: Lack | undefined): string {
  const done = lack ? m.acts[lack.maker]?.statement?.verb.done : undefined;
  return done === undefined || done === 'lowered' ? 'on the ground: raise it first' : `already ${done}`;
}

/** `a`, `a and b`, `a, b and c`. */
function listed(names: readonly string[]): string {
  return names.length <= 1
    ? (names[0] ?? '')
    : `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;
}

function minutesInWords(minutes: number): string {
  if (!Number.isFinite(minutes)) return '';
  const h = Math.floor(minutes / 60);
  const min = Math.round(minutes - 60 * h);
  return [h > 0 ? `${h} h` : '', min > 0 || h === 0 ? `${min} min` : ''].filter((x) => x !== '').join(' ');
}
