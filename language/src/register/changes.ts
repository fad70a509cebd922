// What changed between two editions of a guide, in shop terms with the old and the new figure.
import { diffArrays } from 'diff';
import type { Language } from '../vocabulary/kinds.js';
import { type PhraseId, phrase } from '../vocabulary/phrases.js';
import type { Fact, ShopFacts, WorkLine } from './facts.js';
import { withNamesOf } from './renamed.js';

export interface Change {
  /** What kind of change: a figure or word of a thing, or a line of the work. */
  readonly in: 'figure' | 'work';
  /** Whom it is about: `Hub-to-knuckle bolts`, or the title of the step. */
  readonly subject: string;
  /** What of it: `torque`, or `line` of the work. */
  readonly what: string;
  /** Absent for what is new. */
  readonly old: string | undefined;
  /** Absent for what is gone. */
  readonly new: string | undefined;
  /** Where it stands now, or stood; line from 0. */
  readonly file: string;
  readonly line: number;
}

/** The changes in the order of the new edition, what is gone after the rest. Layout and names alone are no change. */
export function changesBetween(old: ShopFacts, now: ShopFacts): Change[] {
  const was = withNamesOf(old, now);
  return [...factChanges(was.facts, now.facts), ...workChanges(was.work, now.work)];
}

/** One change in a line: `Hub-to-knuckle bolts: torque 105 N·m → 115 N·m`. */
export function changeText(change: Change, language: Language = 'en'): string {
  const { subject, old, new: now } = change;
  const what = change.in === 'work' ? '' : whatChanged(change.what, language);
  const figures =
    old === undefined
      ? `${what} ${now} ${phrase('change-new', language)}`
      : now === undefined
        ? `${what} ${old} ${phrase('change-gone', language)}`
        : `${what} ${old} → ${now}`;
  const said = figures.trim();
  return subject === '' ? said : `${subject}${phrase('colon', language)} ${said}`;
}

/** Words of the notation that have a word in print; the others are left as the file has them. */
const PRINTED: Readonly<Partial<Record<string, PhraseId>>> = {
  torque: 'torque',
  number: 'part-number',
  title: 'title-head',
};

/** `torque when axle heavy` in the language of the sheet: its first word is what is said of the thing. */
function whatChanged(what: string, language: Language): string {
  if (language === 'en') return what;
  const [word = '', ...more] = what.split(' ');
  const id = PRINTED[word];
  if (id === undefined) return what;
  const printed = phrase(id, language);
  const inside = language === 'de' ? printed : printed.charAt(0).toLowerCase() + printed.slice(1);
  return [inside, ...more].join(' ');
}

function factChanges(old: readonly Fact[], now: readonly Fact[]): Change[] {
  const before = new Map(old.map((fact) => [fact.key, fact]));
  const after = new Map(now.map((fact) => [fact.key, fact]));
  const changes: Change[] = [];
  // An entry that is new as a whole is one change, not one for each of its figures.
  const isWhole = (fact: Fact, other: ReadonlyMap<string, Fact>): boolean =>
    fact.subject !== '' && !other.has(nameOf(fact));
  for (const fact of now) {
    const was = before.get(fact.key);
    if (was?.value === fact.value) continue;
    if (was === undefined && isWhole(fact, before) && fact.key !== nameOf(fact)) continue;
    changes.push(figure(fact, was?.value, fact.value));
  }
  for (const fact of old) {
    if (after.has(fact.key)) continue;
    if (isWhole(fact, after) && fact.key !== nameOf(fact)) continue;
    changes.push(figure(fact, fact.value, undefined));
  }
  return changes;
}

/** A name has no blanks, so the first word of a key is the thing's name. */
const nameOf = (fact: Fact): string => fact.key.split(' ')[0] ?? fact.key;

function figure(fact: Fact, old: string | undefined, now: string | undefined): Change {
  const isEntry = fact.subject !== '' && fact.key === nameOf(fact);
  const subject = isEntry && old !== undefined && now !== undefined ? nameOf(fact) : fact.subject;
  const entry = isEntry ? `${nameOf(fact)} (${fact.what})` : undefined;
  return {
    in: 'figure',
    subject: entry !== undefined && (old === undefined || now === undefined) ? '' : subject,
    what: entry !== undefined && old !== undefined && now !== undefined ? 'title' : (entry ?? fact.what),
    old,
    new: now,
    file: fact.file,
    line: fact.line,
  };
}

/** Lines that came right after lines that went are taken for the same lines, changed. */
function workChanges(old: readonly WorkLine[], now: readonly WorkLine[]): Change[] {
  const changes: Change[] = [];
  let gone: WorkLine[] = [];
  const flush = (): void => {
    for (const line of gone) changes.push(work(line, line.text, undefined));
    gone = [];
  };
  const parts = diffArrays([...old], [...now], { comparator: isSame });
  for (const { value, added, removed } of parts) {
    if (removed) gone.push(...value);
    else if (added) {
      for (const line of value) {
        const at = gone.findIndex((was) => headOf(was) === headOf(line));
        const was = at < 0 ? undefined : gone.splice(at, 1)[0];
        // Another picture under the same name is a new one: there are no two texts to tell.
        changes.push(work(line, was?.text === line.text ? undefined : was?.text, line.text));
      }
      flush();
    } else flush();
  }
  flush();
  return changes;
}

/**
 * Where a list of texts differs from an earlier one: places of what is new or changed, and places before which
 * something is gone without anything in its stead.
 */
export function changedPlaces(
  old: readonly string[],
  now: readonly string[],
): { readonly changed: readonly number[]; readonly gone: readonly number[] } {
  const changed: number[] = [];
  const gone: number[] = [];
  let at = 0;
  // What went is told before what came in its stead.
  let isOpen = false;
  for (const { count = 0, added, removed } of diffArrays([...old], [...now])) {
    if (removed) {
      isOpen = true;
      continue;
    }
    if (added) for (let i = 0; i < count; i++) changed.push(at + i);
    else if (isOpen) gone.push(at);
    isOpen = false;
    at += count;
  }
  if (isOpen) gone.push(at);
  return { changed, gone };
}

/** Pictures differ too where the file is known to be another one. */
const isSame = (a: WorkLine, b: WorkLine): boolean =>
  a.text === b.text && (a.shown === undefined || b.shown === undefined || a.shown === b.shown);

const headOf = (line: WorkLine): string => /^[^\s,:]*/.exec(line.text)?.[0] ?? '';

const work = (line: WorkLine, old: string | undefined, now: string | undefined): Change => ({
  in: 'work',
  subject: line.step,
  what: 'line',
  old,
  new: now,
  file: line.file,
  line: line.line,
});
