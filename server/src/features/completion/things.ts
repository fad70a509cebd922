// Things that may stand in a slot: what can be done now first, after that by nearness; only kinds that fit.
import {
  type CanDo,
  canDo,
  type Job,
  kindFromUses,
  removalOrder,
  type ThingKind,
  VERB_BY_WORD,
  type VerbDef,
  walkLines,
} from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import type { Texts } from '../../texts/index.js';
import { type Offer, thingOffer, value } from './answer.js';
import type { Cursor } from './cursor.js';

/** Objects of a verb, asked of the state just before the line. What cannot be done yet stands behind, with the reason. */
export function objectOffers(
  snapshot: Snapshot,
  cursor: Cursor,
  verb: VerbDef,
  named: ReadonlySet<string>,
): Offer[] {
  // What can be done now is a question to the work above: that of the last check serves where it is still the same.
  const standing = snapshot.standing(cursor.lineStart);
  const { run, job } = standing?.analysis ?? snapshot.analysis();
  if (!run) return [...job.scope.names.values()].filter((t) => verb.on[t.kind]).map((t) => thingOffer(t));
  const found = canDo(run, standing?.offset ?? cursor.lineStart, verb).filter(
    (c) => !named.has(c.thing.name),
  );
  const now = found.filter((c) => c.lacks.length === 0 || c.lacks.every((l) => named.has(l.thing.name)));
  const offers = now.map((c) => thingOffer(c.thing));
  // Nothing that can be done now: offer the rest after all, so that a list is never empty without need.
  const later =
    now.length > 0
      ? []
      : found.map((c) =>
          thingOffer(c.thing, {
            later: true,
            docs: snapshot.say.notYet(reason(job, c, found, snapshot.say)),
          }),
        );
  return [...offers, ...later];
}

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

/** The values of the condition that is named last, straight before the cursor. */
export function valueOffers(snapshot: Snapshot, before: string): Offer[] {
  const thing = snapshot.job().scope.resolve(/(?:^|[\s,])([^\s,]+)\s+$/.exec(before)?.[1] ?? '');
  return thing?.kind === 'condition' ? thing.values.map((v) => value(v.text, thing.title)) : [];
}

/** Names that steps use and nothing declares, of the kind the section declares, read from how they are used. */
export function undeclaredOffers(snapshot: Snapshot, kind: ThingKind): Offer[] {
  const job = snapshot.job();
  const uses = new Map<string, ThingKind[][]>();
  const see = (name: string, kinds: readonly ThingKind[]): void => {
    if (name !== '' && !job.scope.resolve(name)) uses.set(name, [...(uses.get(name) ?? []), [...kinds]]);
  };
  walkLines(snapshot.tree, (line) => {
    const verb = line.kind === 'statement' ? VERB_BY_WORD.get(line.verb.text) : undefined;
    if (line.kind !== 'statement' || !verb) return;
    for (const item of line.items)
      see(item.name.text, item.count ? ['fastener'] : (Object.keys(verb.on) as ThingKind[]));
    for (const clause of line.clauses)
      for (const item of clause.items) see(item.name.text, verb.clauses[clause.word]?.names ?? []);
  });
  const fitting = [...uses].filter(([name, kinds]) => kindFromUses(name, kinds) === kind);
  return fitting.map(([name]) => value(name, snapshot.say.undeclared));
}
