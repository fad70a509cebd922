// Completion below an entry: the clauses its kind may have and does not have yet, and what stands in them.
import { ENTRY_CLAUSE_BY_WORD, ENTRY_CLAUSES, type ThingKind } from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import type { Texts } from '../../texts/index.js';
import { type Offer, value, word } from './answer.js';
import { type Cursor, entryOf } from './cursor.js';
import { guardOffers } from './guards.js';
import { hasWord, lastClause } from './statement.js';
import { kindOffers, valueOffers } from './things.js';
import { CLAUSE_QUANTITY, endsInNumber, headOffers, rawOffers, threadOffers, unitOffers } from './values.js';

export function entryOffers(snapshot: Snapshot, cursor: Cursor): Offer[] {
  const kind: ThingKind = cursor.declares ?? 'part';
  const { before } = cursor;
  const guard = /(?:^|[\s,])(?:only )?when\s(.*)$/.exec(before);
  if (guard) return guardOffers(snapshot, guard[1] ?? '');
  if (before === '') return clauseWords(snapshot.say, cursor, kind, '');
  const known = ENTRY_CLAUSES.filter((c) => c.on.includes(kind)).map((c) => c.word);
  const at = lastClause(before, known);
  const text = at ? before.slice(at.end) : before;
  if (/(?:^|[\s,])\d+\s+of\s+$/.test(text))
    return at?.word === 'held by' ? named(snapshot, 'held by', before) : threadOffers(snapshot.say);
  if (endsInNumber(text) && at) return unitOffers(CLAUSE_QUANTITY[at.word] ?? []);
  const def = at && ENTRY_CLAUSE_BY_WORD.get(at.word);
  const values = def?.shape === 'names' ? valueOffers(snapshot, text) : [];
  if (values.length > 0) return values;
  if (at && (text.trim() === '' || /,\s*$/.test(text) || /\bof\s*$/.test(text))) {
    const own = text.trim() === '';
    if (def?.shape === 'names')
      return [
        ...named(snapshot, at.word, before),
        ...(own ? [] : clauseWords(snapshot.say, cursor, kind, before)),
      ];
    if (own && at.word === 'per')
      return kindOffers(snapshot.job(), ['source']).map((o) => ({ ...o, insert: `"${o.label}"` }));
    if (own && at.word === 'marked') return marks(snapshot);
    if (own && (at.word === 'hex' || at.word === 'twelve-point')) return headOffers(threadOf(cursor));
    if (own) return rawOffers(at.word);
  }
  return clauseWords(snapshot.say, cursor, kind, before);
}

function named(snapshot: Snapshot, clause: string, before: string): Offer[] {
  return kindOffers(
    snapshot.job(),
    ENTRY_CLAUSE_BY_WORD.get(clause)?.names ?? [],
    new Set(before.split(/[\s,]+/)),
  );
}

function clauseWords(say: Texts, cursor: Cursor, kind: ThingKind, before: string): Offer[] {
  const entry = entryOf(cursor);
  const there = new Set(
    entry?.children.flatMap((l) => (l.kind === 'clauses' ? l.clauses.map((c) => c.word) : [])) ?? [],
  );
  const words = ENTRY_CLAUSES.filter(
    (c) => c.on.includes(kind) && !(there.has(c.word) && c.shape === 'flag') && !hasWord(before, c.word),
  );
  const fresh = words.filter((c) => !there.has(c.word));
  const again = words.filter((c) => there.has(c.word));
  const offers = [...fresh, ...again].map((c) =>
    word(c.word, c.docs, c.shape === 'flag' ? {} : { insert: `${c.word} `, goesOn: true }),
  );
  return [
    ...offers,
    word('when', say.lineOnlyFor, { insert: 'when ', goesOn: true }),
    word('only when', say.existsOnlyOn, { insert: 'only when ', goesOn: true }),
  ];
}

function threadOf(cursor: Cursor): string | undefined {
  const own = /\d+\s+of\s+([^,]+)/.exec(cursor.before)?.[1]?.trim();
  if (own !== undefined) return own;
  const entry = entryOf(cursor);
  const clause = entry?.children
    .flatMap((l) => (l.kind === 'clauses' ? l.clauses : []))
    .find((c) => c.word === 'of');
  return clause?.raw?.text;
}

/** Marks that the library uses already. */
function marks(snapshot: Snapshot): Offer[] {
  const found = new Set([...snapshot.job().scope.names.values()].flatMap((t) => t.marks));
  return [...found].sort().map((m) => value(m, snapshot.say.mark));
}
