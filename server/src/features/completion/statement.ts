// Completion behind a verb: its objects, the clauses it still lacks, what stands in them.
import { STEP_CLAUSE_BY_WORD, stateAt, type Thing, type VerbDef } from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import type { Texts } from '../../texts/index.js';
import { aidsFirst } from './aids.js';
import { type Offer, value, word } from './answer.js';
import type { Cursor } from './cursor.js';
import { guardOffers } from './guards.js';
import { inTheHouse } from './imports.js';
import { kindOffers, objectOffers, sourceOffers } from './things.js';
import { endsInNumber, unitOffers } from './units.js';
import { rawOffers } from './values.js';

/** `rest` is the code between the verb and the word being typed. */
export function statementOffers(snapshot: Snapshot, cursor: Cursor, verb: VerbDef, rest: string): Offer[] {
  const guard = /(?:^|[\s,])when\s(.*)$/.exec(rest);
  if (guard) return guardOffers(snapshot, guard[1] ?? '');
  const words = Object.keys(verb.clauses).sort((a, b) => b.length - a.length);
  const at = lastClause(rest, words);
  const job = snapshot.job();
  const named = new Set(rest.split(/[\s,]+/));
  const text = at ? rest.slice(at.end) : rest;
  if (endsInNumber(text)) {
    // Behind names and a comma the amount of the line stands: `at adjuster, 2 turns`.
    const isOwn = !at || /,\s*[^\s,]+\s?$/.test(text);
    const kinds = (at && verb.clauses[at.word]?.quantity) ?? (isOwn ? verb.bare?.quantity : undefined) ?? [];
    if (kinds.length > 0 && !(at === undefined && verb.takesCount && /^\s*\d+\s$/.test(rest)))
      return unitOffers(kinds, rest);
    if (verb.takesCount && !at) return [word('of', snapshot.say.ofASet, { insert: 'of ', goesOn: true })];
  }
  if (at) {
    const slot = verb.clauses[at.word];
    const fresh = text.trim() === '' || /(?:,|\bor)\s*$/.test(text);
    if (!fresh) return furtherClauses(verb, rest, slot?.names !== undefined, snapshot.say);
    if (at.word === 'per') return sourceOffers(snapshot);
    const known = kindOffers(job, slot?.names ?? [], named);
    const more = at.word === 'with' ? inTheHouse(snapshot, slot?.names ?? [], known) : [];
    const answers = slot?.names ? aidsFirst(snapshot, verb, [...known, ...more]) : rawOffers(at.word);
    return [...positions(snapshot, rest, at.word), ...answers];
  }
  if (verb.takesValue) {
    const condition = job.scope.resolve(/^\s*(\S+)\s+$/.exec(rest)?.[1] ?? '');
    if (condition?.kind === 'condition') return settings(snapshot, cursor, condition);
  }
  const isCounted = /\bof\s*$/.test(rest);
  const wantsObject = verb.object !== 'none' && (rest.trim() === '' || isCounted || /,\s*$/.test(rest));
  const objects = wantsObject ? objectOffers(snapshot, cursor, verb, named, isCounted) : [];
  return rest.trim() === '' || isCounted
    ? objects
    : [...objects, ...furtherClauses(verb, rest, false, snapshot.say)];
}

/** Clauses that the verb knows and the line does not have yet; those it may not do without come first. */
function furtherClauses(verb: VerbDef, rest: string, afterNames: boolean, say: Texts): Offer[] {
  const open = Object.entries(verb.clauses).filter(([w]) => !hasWord(rest, w));
  const needed = (slot: VerbDef['clauses'][string]): number => (slot.required ? 0 : 1);
  const clauses = open
    .sort((a, b) => needed(a[1]) - needed(b[1]))
    .map(([w, slot]) =>
      word(w, slot.docs, { insert: `${w} `, goesOn: STEP_CLAUSE_BY_WORD.get(w)?.shape !== 'flag' }),
    );
  const or = afterNames ? [word('or', say.alternative, { insert: 'or ', goesOn: true })] : [];
  return [...clauses, ...or, word('when', say.onlyForThese, { insert: 'when ', goesOn: true })];
}

/** The values of a condition: what it may be set to first, what it is at the line already last. */
function settings(snapshot: Snapshot, cursor: Cursor, condition: Thing): Offer[] {
  const standing = snapshot.standing(cursor.lineStart);
  const { run } = standing?.analysis ?? snapshot.analysis();
  const changed =
    run && stateAt(run, standing?.offset ?? cursor.lineStart).find((f) => f.thing === condition);
  const now = changed?.said.what === 'word' ? changed.said.word : condition.values[0]?.text;
  const offers = condition.values.map((v) => value(v.text, condition.title));
  return [...offers.filter((o) => o.label !== now), ...offers.filter((o) => o.label === now)];
}

/** Positions of the part that `move` acts on. */
function positions(snapshot: Snapshot, rest: string, clause: string): Offer[] {
  if (clause !== 'to') return [];
  const thing = snapshot.job().scope.resolve(/^\s*([^\s,]+)/.exec(rest)?.[1] ?? '');
  return thing?.clauses.has('positions') ? thing.values.map((v) => value(v.text, thing.title)) : [];
}

/** The clause word that stands last, with where it ends. */
export function lastClause(
  text: string,
  words: readonly string[],
): { word: string; end: number } | undefined {
  let last: { word: string; end: number } | undefined;
  for (const w of words) {
    const pattern = new RegExp(`(?:^|[\\s,])${w.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?=\\s)`, 'g');
    for (const match of text.matchAll(pattern)) {
      const end = match.index + match[0].length;
      // `until level at` ends where `at` does: the longer word stands.
      if (!last || end > last.end) last = { word: w, end };
    }
  }
  return last;
}

export function hasWord(text: string, w: string): boolean {
  return new RegExp(`(?:^|[\\s,])${w}(?=[\\s,]|$)`).test(text);
}
