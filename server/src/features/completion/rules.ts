// Completion in house rules: their words, verbs, things by name, kind and mark.
import { RULE_WORDS, type RuleWordDef, stateWords, THING_KINDS, VERBS } from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import { type Offer, thingOffer, value, word } from './answer.js';
import type { Cursor } from './cursor.js';
import { markOffers } from './marks.js';

export function ruleOffers(snapshot: Snapshot, { before }: Cursor): Offer[] {
  if (before === '' || /,\s*$/.test(before)) return OPENING.map(ruleWord);
  if (ASKS_ACT.test(before)) {
    const ends = /(?:^|[\s,])before\s+$/.test(before) ? ENDS.map(ruleWord) : [];
    const verbs = VERBS.map((v) => word(v.word, v.docs, { insert: `${v.word} `, goesOn: true }));
    return [...verbs, ...ends];
  }
  const { scope } = snapshot.job();
  const things = [...scope.names.values()];
  if (/\bmarked\s+$/.test(before)) return markOffers(snapshot);
  if (/\bany\s+$/.test(before)) return THING_KINDS.map((k) => word(k, '', { insert: `${k} `, goesOn: true }));
  const state = /\bwhile\s+(any\s+)?(\S+)\s+(?:marked\s+\S+\s+)?(not\s+)?$/.exec(before);
  if (state && state[2] !== 'any')
    return stateOffers(snapshot, state[2] ?? '', state[1] !== undefined, state[3] !== undefined);
  if (/\bany\s+\S+\s+$/.test(before)) return patterns('marked', 'over');
  const verb = VERBS.find((v) => new RegExp(`(?:^|\\s)${v.word}\\s+$`).test(before));
  if (verb)
    return [
      ...patterns('any', 'it', 'or'),
      ...things.filter((t) => verb.on[t.kind]).map((t) => thingOffer(t)),
    ];
  if (/\bwhile\s+(?:any\s+\S+\s+)?$/.test(before))
    return [
      ...patterns('any'),
      ...things.filter((t) => stateWords(t.kind).length > 0).map((t) => thingOffer(t)),
    ];
  return [];
}

/** States that a thing, or any of a kind, may be in. */
function stateOffers(snapshot: Snapshot, named: string, isKind: boolean, isNot: boolean): Offer[] {
  const thing = isKind ? undefined : snapshot.job().scope.resolve(named);
  const kind = isKind ? THING_KINDS.find((k) => k === named) : thing?.kind;
  if (!kind) return [];
  return [
    ...(thing?.values ?? []).map((v) => value(v.text, thing?.title)),
    ...stateWords(kind).map((state) => value(state)),
    ...(isNot ? [] : patterns(...(isKind ? ['not', 'marked'] : ['not']))),
  ];
}

/** Words that end the time allowed: they stand behind `before` alone, as their own examples show. */
const ENDS = RULE_WORDS.filter((def) => def.example.includes(`before ${def.word}`));

/** Words that may open a line of a rule. */
const OPENING = RULE_WORDS.filter((def) => def.part !== 'pattern' && !ENDS.includes(def));

/** Behind these an act is named. */
const ASKS_ACT = /(?:^|[\s,])(?:after|before|never|every|require|since)\s+$/;

function patterns(...words: readonly string[]): Offer[] {
  return RULE_WORDS.filter((def) => def.part === 'pattern' && words.includes(def.word)).map(ruleWord);
}

/** A word with a space behind it, unless its own example shows that nothing follows. */
function ruleWord({ word: text, docs, example }: RuleWordDef): Offer {
  return example.some((line) => line.endsWith(` ${text}`) || line === text)
    ? word(text, docs)
    : word(text, docs, { insert: `${text} `, goesOn: true });
}
