// Completion in house rules: their forms, verbs, things by name, kind and mark.
import { THING_KINDS, VERBS } from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import { type Offer, thingOffer, value, word } from './answer.js';
import type { Cursor } from './cursor.js';

const FORMS = [
  ['after', 'The rule begins with this act.'],
  ['before', 'The rule is asked before this act.'],
  ['never', 'This act may not happen.'],
  ['every', 'Each of these acts is bound.'],
  ['require', 'What must have been done.'],
  ['while', 'Holds as long as this is so.'],
  ['needs', 'What the act must be done with.'],
  ['since', 'Counted from this act.'],
  ['at most once', 'Not done twice.'],
] as const;

export function ruleOffers(snapshot: Snapshot, { before }: Cursor): Offer[] {
  if (before === '' || /,\s*$/.test(before))
    return FORMS.map(([form, docs]) => word(form, docs, { insert: `${form} `, goesOn: true }));
  if (/(?:^|[\s,])(?:after|before|never|every|require|since)\s+$/.test(before))
    return VERBS.map((v) => word(v.word, v.docs, { insert: `${v.word} `, goesOn: true }));
  const { scope } = snapshot.analysis().job;
  const things = [...scope.names.values()];
  if (/\bmarked\s+$/.test(before))
    return [...new Set(things.flatMap((t) => t.marks))].sort().map((m) => value(m, 'mark'));
  if (/\bany\s+$/.test(before)) return THING_KINDS.map((k) => word(k, '', { insert: `${k} `, goesOn: true }));
  if (/\bany\s+\S+\s+$/.test(before))
    return [
      word('marked', 'Those with a mark.', { insert: 'marked ', goesOn: true }),
      word('over', 'Those heavier than this.', { insert: 'over ' }),
    ];
  const verb = VERBS.find((v) => new RegExp(`(?:^|\\s)${v.word}\\s+$`).test(before));
  if (verb)
    return [
      word('any', 'Any thing of a kind.', { insert: 'any ', goesOn: true }),
      word('it', 'The thing of the act above.'),
      ...things.filter((t) => verb.on[t.kind]).map((t) => thingOffer(t)),
    ];
  if (/\bwhile\s+(?:any\s+\S+\s+)?$/.test(before)) return things.map((t) => thingOffer(t));
  return [];
}
