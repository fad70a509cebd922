// Things that may stand in a slot: what can be done now first, after that by nearness; only kinds that fit.
import { canDo, type Job, type Thing, type ThingKind, VERB_BY_WORD, type VerbDef } from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import { type Offer, thingOffer, value } from './answer.js';
import type { Cursor } from './cursor.js';

/** Objects of a verb, asked of the state just before the line. What cannot be done yet stands behind, with the reason. */
export function objectOffers(
  snapshot: Snapshot,
  cursor: Cursor,
  verb: VerbDef,
  named: ReadonlySet<string>,
): Offer[] {
  const { run, job } = snapshot.analysisAbove(cursor.replaces.start);
  if (!run) return [...job.scope.names.values()].filter((t) => verb.on[t.kind]).map((t) => thingOffer(t));
  const found = canDo(run, cursor.lineStart, verb).filter((c) => !named.has(c.thing.name));
  const now = found.filter((c) => c.lacks.length === 0 || c.lacks.every((l) => named.has(l.thing.name)));
  const offers = now.map((c) => thingOffer(c.thing));
  // Nothing that can be done now: offer the rest after all, so that a list is never empty without need.
  const later =
    now.length > 0
      ? []
      : found.map((c) =>
          thingOffer(c.thing, {
            later: true,
            docs: `Not yet: ${reason(c.lacks.map((l) => l.thing))} first.`,
          }),
        );
  return [...offers, ...later];
}

function reason(things: readonly Thing[]): string {
  return [...new Set(things.map((t) => t.name))].slice(0, 3).join(', ');
}

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

/** Names that steps use and nothing declares, of the kind the section declares, read from how they are used. */
export function undeclaredOffers(snapshot: Snapshot, kind: ThingKind): Offer[] {
  return undeclaredIn(snapshot)
    .filter((u) => u.kind === kind)
    .map((u) => value(u.name, 'used and not declared'));
}

export function undeclaredIn(snapshot: Snapshot): { name: string; kind: ThingKind }[] {
  const { job } = snapshot.analysis();
  const found = new Map<string, ThingKind>();
  for (const line of snapshot.tree.lines) collect(line);
  return [...found].map(([name, kind]) => ({ name, kind }));

  function collect(top: (typeof snapshot.tree.lines)[number]): void {
    const waiting = [top];
    for (let line = waiting.pop(); line; line = waiting.pop()) {
      waiting.push(...line.children);
      if (line.kind !== 'statement') continue;
      const verb = VERB_BY_WORD.get(line.verb.text);
      if (!verb) continue;
      for (const item of line.items) see(item.name.text, item.count ? ['fastener'] : kindsOf(verb));
      for (const clause of line.clauses)
        for (const item of clause.items) see(item.name.text, verb.clauses[clause.word]?.names ?? []);
    }
  }
  function see(name: string, kinds: readonly ThingKind[]): void {
    if (name === '' || job.scope.resolve(name) || found.has(name)) return;
    found.set(name, likeliest(name, kinds));
  }
}

function kindsOf(verb: VerbDef): ThingKind[] {
  return Object.keys(verb.on) as ThingKind[];
}

/** Common practice of shops in naming: a thing that ends so is a fastener. */
const FASTENER_NAME = /(?:^|-)(?:bolt|nut|screw|stud|clip|clamp|pin|plug)s?$/;

function likeliest(name: string, kinds: readonly ThingKind[]): ThingKind {
  if (kinds.includes('fastener') && (FASTENER_NAME.test(name) || kinds.length === 1)) return 'fastener';
  return kinds.find((k) => k !== 'fastener' && k !== 'machine') ?? kinds[0] ?? 'part';
}
