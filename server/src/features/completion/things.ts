// Things that may stand in a slot: what can be done now first, after that by nearness; only kinds that fit.
import {
  type CanDo,
  canDo,
  countKnown,
  type Job,
  removalOrder,
  type Thing,
  type ThingKind,
  tighteningCount,
  type VerbDef,
} from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import type { Texts } from '../../texts/index.js';
import { aidsFirst } from './aids.js';
import { type Offer, thingOffer, value } from './answer.js';
import type { Cursor } from './cursor.js';
import { inTheHouse } from './imports.js';
import { withUndeclared } from './undeclared.js';

/** Objects of a verb, asked of the state just before the line. What cannot be done yet stands behind, with the reason. */
export function objectOffers(
  snapshot: Snapshot,
  cursor: Cursor,
  verb: VerbDef,
  named: ReadonlySet<string>,
  isCounted = false,
): Offer[] {
  // What can be done now is a question to the work above: that of the last check serves where it is still the same.
  const standing = snapshot.standing(cursor.lineStart);
  const { run, job } = standing?.analysis ?? snapshot.analysis();
  const fits = (thing: Thing): boolean => !isCounted || isSeveral(thing);
  if (!run)
    return [...job.scope.names.values()].filter((t) => verb.on[t.kind] && fits(t)).map((t) => thingOffer(t));
  const found = canDo(run, standing?.offset ?? cursor.lineStart, verb).filter(
    (c) => !named.has(c.thing.name) && fits(c.thing),
  );
  const isFree = (c: CanDo): boolean => c.lacks.every((l) => named.has(l.thing.name));
  const free = inOrder(job, verb, found.filter(isFree), named).map((t) =>
    thingOffer(t, verb.takesValue ? { insert: `${t.name} `, goesOn: true } : {}),
  );
  const now = isCounted ? free : withUndeclared(snapshot, verb, job, named, free);
  // Gear is the shop's, not the vehicle's: what is usual counts, and house catalogues have it.
  if (verb.on.tool && !verb.on.part)
    return aidsFirst(snapshot, verb, [
      ...now,
      ...inTheHouse(snapshot, Object.keys(verb.on) as ThingKind[], now),
    ]);
  // Which places a verb is used at is a habit of the shop: wheels are chocked, not adjusters.
  if (Object.keys(verb.on).every((kind) => kind === 'place')) return aidsFirst(snapshot, verb, now);
  // What cannot be done yet is offered where nothing else answers: a list is never empty without need.
  const isAsked = cursor.word !== '' && !now.some((o) => o.label.includes(cursor.word.toLowerCase()));
  if (now.length > 0 && !isAsked) return now;
  const later = found
    .filter((c) => !isFree(c))
    .map((c) => {
      const docs = snapshot.say.notYet(reason(job, c, found, snapshot.say));
      return thingOffer(c.thing, { detail: `${c.thing.title} · ${docs}`, docs });
    });
  return [...now, ...later];
}

/** Whether a thing may be taken by count. */
function isSeveral(thing: Thing): boolean {
  return thing.kind === 'fastener'
    ? !countKnown(thing) || tighteningCount(thing) > 1
    : thing.clauses.has('count');
}

/** The nearest first; before them, what is joined to a thing that the line names already, and of readings the limits. */
function inOrder(job: Job, verb: VerbDef, found: readonly CanDo[], named: ReadonlySet<string>): Thing[] {
  const things = found.map((c) => c.thing);
  const isJoined = (thing: Thing): boolean =>
    JOINS.some(
      (word) =>
        job.relations(thing, word).some((r) => named.has(r.target.name)) ||
        job.inverse(thing, word).some((r) => named.has(r.of.name)),
    );
  const [foremost] = Object.keys(verb.on);
  const isReading = (thing: Thing): boolean => thing.kind === 'limit' && foremost === 'limit';
  const rank = (thing: Thing): number => (isJoined(thing) ? 0 : isReading(thing) ? 1 : 2);
  return things.sort((a, b) => rank(a) - rank(b));
}

const JOINS = ['held by', 'clamped by'] as const;

/** What is still in the way, in the order it comes off; then what is asked for beside that. */
function reason(job: Job, { thing, lacks }: CanDo, found: readonly CanDo[], say: Texts): string {
  const lacking = lacks.map((lack) => lack.thing);
  const open = new Set([...lacking, ...found.map((other) => other.thing)]);
  const way = removalOrder(job, thing)
    .map((before) => before.thing)
    .filter((before) => open.has(before));
  const names = [...new Set([...way.reverse(), ...lacking])].map(({ name }) => name);
  return names.length > MOST_NAMED
    ? say.andMore(names.slice(0, MOST_NAMED).join(', '), names.length - MOST_NAMED)
    : names.join(', ');
}

const MOST_NAMED = 4;

/** Declared things of these kinds, those of the own file first. */
export function kindOffers(
  job: Job,
  kinds: readonly ThingKind[],
  named: ReadonlySet<string> = new Set(),
): Offer[] {
  const own = job.file.path;
  return [...job.scope.names.values()]
    .filter((t) => kinds.includes(t.kind) && !named.has(t.name))
    .sort((a, b) => Number(a.file !== own) - Number(b.file !== own) || a.name.localeCompare(b.name, 'en'))
    .map((t) => thingOffer(t));
}

/** Sheets that a figure may come from, in quotes; those that the file takes the most from first. */
export function sourceOffers(snapshot: Snapshot): Offer[] {
  const taken = new Map<string, number>();
  for (const [, sheet = ''] of snapshot.text.matchAll(/\bper "([^"\r\n]*)"/g))
    taken.set(sheet, (taken.get(sheet) ?? 0) + 1);
  const sheets = kindOffers(snapshot.job(), ['source'])
    .map((o) => ({ ...o, insert: `"${o.label}"` }))
    .sort((a, b) => (taken.get(b.label) ?? 0) - (taken.get(a.label) ?? 0));
  return [...sheets, value('?', snapshot.say.notKnownYet)];
}

/** The values of the condition that is named last, straight before the cursor. */
export function valueOffers(snapshot: Snapshot, before: string): Offer[] {
  const thing = snapshot.job().scope.resolve(/(?:^|[\s,])([^\s,]+)\s+$/.exec(before)?.[1] ?? '');
  return thing?.kind === 'condition' ? thing.values.map((v) => value(v.text, thing.title)) : [];
}
