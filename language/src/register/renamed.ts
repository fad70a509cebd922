// Names of entries are the writer's own and print nowhere: an edition read with the names that its things have now, so that
// a part which was only renamed is no change.
import type { Fact, ShopFacts, WorkLine } from './facts.js';

/** The older edition with new names for what has the same kind and title in both, and no other name in common. */
export function withNamesOf(old: ShopFacts, now: ShopFacts): ShopFacts {
  const names = renamed(old.facts, now.facts);
  if (names.size === 0) return old;
  const inCode = (text: string): string => text.replace(NAME, (name) => names.get(name) ?? name);
  return {
    ...old,
    facts: old.facts.map((fact) => ({
      ...fact,
      key: fact.key.replace(NAME, (name, at: number) => (at === 0 ? (names.get(name) ?? name) : name)),
      value: isEntry(fact) || fact.what === 'text' ? fact.value : inCode(fact.value),
    })),
    work: old.work.map((line): WorkLine => ({ ...line, text: line.text.replace(CODE, inCode) })),
  };
}

const NAME = /[\p{L}\p{N}]+(?:-[\p{L}\p{N}]+)*/gu;

/** What the checker reads of a line: all before the colon behind which its sentence begins. */
const CODE = /^.*?(?=: |$)/su;

/** The fact that there is such a thing: its title under its name alone. */
const isEntry = (fact: Fact): boolean => fact.subject !== '' && !fact.key.includes(' ');

/** New names by old ones. A kind and title that two things share tells neither from the other. */
function renamed(old: readonly Fact[], now: readonly Fact[]): ReadonlyMap<string, string> {
  const names = (facts: readonly Fact[]): Set<string> => new Set(facts.filter(isEntry).map(({ key }) => key));
  const [before, after] = [names(old), names(now)];
  const alone = (facts: readonly Fact[], others: ReadonlySet<string>): Map<string, string> => {
    const own = facts.filter((fact) => isEntry(fact) && !others.has(fact.key));
    const titled = ({ what, value }: Fact): string => `${what} ${value}`;
    const single = own.filter((fact) => own.filter((one) => titled(one) === titled(fact)).length === 1);
    return new Map(single.map((fact) => [titled(fact), fact.key]));
  };
  const came = alone(now, before);
  return new Map(
    [...alone(old, after)].flatMap(([title, name]) => {
      const next = came.get(title);
      return next === undefined ? [] : [[name, next] as const];
    }),
  );
}
