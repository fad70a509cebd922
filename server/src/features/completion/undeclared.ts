// Names that the file uses and nothing declares yet: first drafts are full of them, and the next line means them too.
import {
  ENTRY_CLAUSE_BY_WORD,
  type Job,
  kindFromUses,
  type Thing,
  type ThingKind,
  VERB_BY_WORD,
  type VerbDef,
  walkLines,
} from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import { type Offer, value } from './answer.js';

/** Names of steps that nothing declares, of the kind the section declares, read from how they are used. */
export function undeclaredOffers(snapshot: Snapshot, kind: ThingKind): Offer[] {
  const uses = usesOf(snapshot);
  const fitting = [...uses].filter(([name, kinds]) => kindFromUses(name, kinds) === kind);
  return fitting.map(([name]) => value(name, snapshot.say.undeclared));
}

/**
 * Names that nothing declares and that the verb may act on, put among its objects: what holds a part before that part
 * where it comes off, and behind it where it goes on. A name that an earlier line of the verb has is left out.
 */
export function withUndeclared(
  snapshot: Snapshot,
  verb: VerbDef,
  job: Job,
  named: ReadonlySet<string>,
  now: readonly Offer[],
): Offer[] {
  const open = [...usesOf(snapshot)]
    .filter(([name, kinds]) => verb.on[kindFromUses(name, kinds)] !== undefined)
    .map(([name]) => name)
    .filter((name) => !named.has(name) && !isDone(snapshot, verb, name));
  if (open.length === 0) return [...now];
  const offer = (name: string): Offer => value(name, snapshot.say.undeclared);
  const isTakenApart = verb.on.fastener?.makes.some((make) => make === 'out' || make === 'loose') ?? false;
  const placed = new Set<string>();
  const among = now.flatMap((own) => {
    const thing = job.scope.resolve(own.label);
    const holding = thing ? holdersOf(thing).filter((name) => open.includes(name) && !placed.has(name)) : [];
    for (const name of holding) placed.add(name);
    return isTakenApart ? [...holding.map(offer), own] : [own, ...holding.map(offer)];
  });
  return [...among, ...open.filter((name) => !placed.has(name)).map(offer)];
}

const holdersOf = (thing: Thing): string[] =>
  (thing.clauses.get('held by') ?? []).flatMap(({ clause }) => clause.items.map((item) => item.name.text));

/** Whether a line of the verb names it already. */
function isDone({ tree }: Snapshot, verb: VerbDef, name: string): boolean {
  let found = false;
  walkLines(tree, (line) => {
    if (line.kind === 'statement' && line.verb.text === verb.word)
      found ||= line.items.some((item) => item.name.text === name);
    return undefined;
  });
  return found;
}

/** How each name that nothing declares is used, in entries and in steps. */
function usesOf(snapshot: Snapshot): Map<string, ThingKind[][]> {
  const job = snapshot.job();
  const uses = new Map<string, ThingKind[][]>();
  const see = (name: string, kinds: readonly ThingKind[]): void => {
    if (name !== '' && !job.scope.resolve(name)) uses.set(name, [...(uses.get(name) ?? []), [...kinds]]);
  };
  walkLines(snapshot.tree, (line) => {
    if (line.kind === 'clauses')
      for (const clause of line.clauses)
        for (const item of clause.items)
          see(
            item.name.text,
            item.count ? ['fastener'] : (ENTRY_CLAUSE_BY_WORD.get(clause.word)?.names ?? []),
          );
    const verb = line.kind === 'statement' ? VERB_BY_WORD.get(line.verb.text) : undefined;
    if (line.kind !== 'statement' || !verb) return undefined;
    for (const item of line.items)
      see(item.name.text, item.count ? ['fastener'] : (Object.keys(verb.on) as ThingKind[]));
    for (const clause of line.clauses)
      for (const item of clause.items) see(item.name.text, verb.clauses[clause.word]?.names ?? []);
    return undefined;
  });
  return uses;
}
