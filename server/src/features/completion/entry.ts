// Completion below an entry: the clauses its kind may have and does not have yet, and what stands in them.
import {
  type ClauseDef,
  ENTRY_CLAUSE_BY_WORD,
  ENTRY_CLAUSES,
  type EntryLine,
  type QuantityKind,
  quantityKinds,
  type ThingKind,
} from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import { type Offer, value, word } from './answer.js';
import { clauseRank } from './clause-order.js';
import { type Cursor, entryOf } from './cursor.js';
import { guardOffers } from './guards.js';
import { markOffers } from './marks.js';
import { passesOffers } from './passes.js';
import { setOffer } from './snippets.js';
import { hasWord, lastClause } from './statement.js';
import { kindOffers, sourceOffers, valueOffers } from './things.js';
import { endsInNumber, unitOffers } from './units.js';
import { headOffers, rawOffers, restOffers, threadOffers } from './values.js';

export function entryOffers(snapshot: Snapshot, cursor: Cursor): Offer[] {
  const kind: ThingKind = cursor.declares ?? 'part';
  const { before } = cursor;
  const guard = /(?:^|[\s,])(?:only )?when\s(.*)$/.exec(before);
  if (guard) return guardOffers(snapshot, guard[1] ?? '');
  if (before === '') return clauseWords(snapshot, cursor, kind);
  const known = ENTRY_CLAUSES.filter((c) => c.on.includes(kind)).map((c) => c.word);
  const at = lastClause(before, known);
  const text = at ? before.slice(at.end) : before;
  const def = at && ENTRY_CLAUSE_BY_WORD.get(at.word);
  if (/(?:^|[\s,])(?:\d+|\?)\s+of\s+$/.test(text))
    return def?.shape === 'names' ? named(snapshot, cursor, def, before) : threadOffers(snapshot.say);
  if (!at && kind === 'fastener' && /^(?:\d+|\?)\s+$/.test(text))
    return [word('of', snapshot.say.ofASet, { insert: 'of ', goesOn: true })];
  if (def?.unitless && endsInNumber(text)) return clauseWords(snapshot, cursor, kind);
  if (endsInNumber(text) && (def?.shape === 'spec' || (!at && kind === 'limit')))
    return unitOffers(quantitiesOf(def, text), kind === 'limit' ? textOf(snapshot, entryOf(cursor)) : '');
  const values = def?.shape === 'names' ? valueOffers(snapshot, text) : [];
  if (values.length > 0) return values;
  if (at?.word === 'torque' && /\bthen\s+$/.test(text))
    return [word('back', snapshot.say.turnBack, { insert: 'back ' })];
  if (def && (text.trim() === '' || /,\s*$/.test(text) || /\bof\s*$/.test(text)))
    return [
      ...inClause(snapshot, cursor, def, text.trim() === ''),
      ...(text.trim() === '' && def.shape !== 'flag' ? [] : clauseWords(snapshot, cursor, kind)),
    ];
  const rest = def?.shape === 'raw' ? restOffers(def.word, text.trimStart()) : [];
  if (rest.length > 0) return rest;
  const further = at?.word === 'torque' && kind === 'fastener' && !/,\s*$/.test(text);
  return [
    ...(further
      ? [word('then', snapshot.say.nextStage, { insert: 'then ' }), ...passesOffers(snapshot, cursor, text)]
      : []),
    ...clauseWords(snapshot, cursor, kind),
  ];
}

/** What stands in a clause, straight behind its word or behind a comma. */
function inClause(snapshot: Snapshot, cursor: Cursor, def: ClauseDef, isFirst: boolean): Offer[] {
  const hole = cursor.word === '' ? [value('?', snapshot.say.notKnownYet)] : [];
  if (def.shape === 'names') return named(snapshot, cursor, def, cursor.before);
  if (!isFirst) return [];
  if (def.word === 'per') return sourceOffers(snapshot);
  if (def.word === 'marked') return markOffers(snapshot);
  if (def.word === 'hex' || def.word === 'twelve-point') return [...headOffers(threadOf(cursor)), ...hole];
  if (def.shape === 'spec' || def.shape === 'raw') return [...rawOffers(def.word), ...hole];
  return [];
}

/** A limit may be of anything that can be read; else the clause says what fits, an angle only behind a first stage. */
function quantitiesOf(def: ClauseDef | undefined, text: string): readonly QuantityKind[] {
  const kinds = def?.quantity ?? READ;
  return def?.word === 'torque' && kinds.includes('angle') && /\bthen\b/.test(text)
    ? ['angle', 'torque']
    : kinds;
}

const READ: readonly QuantityKind[] = [
  'length',
  'pressure',
  'voltage',
  'current',
  'temperature',
  ...(Object.keys(quantityKinds) as QuantityKind[]),
];

function named(snapshot: Snapshot, cursor: Cursor, def: ClauseDef, before: string): Offer[] {
  const own = entryOf(cursor)?.head.text ?? '';
  const job = snapshot.job();
  const kinds = def.names ?? [];
  const offers = kindOffers(job, kinds, new Set([...before.split(/[\s,]+/), own]));
  if (def.word !== 'held by' && def.word !== 'clamped by') return offers;
  // What holds nothing yet is what is looked for; fasteners before parts.
  const holds = new Set(
    [...job.scope.names.values()].flatMap((thing) =>
      ['held by', 'clamped by'].flatMap((w) =>
        (thing.clauses.get(w) ?? []).flatMap(({ clause }) => clause.items.map((item) => item.name.text)),
      ),
    ),
  );
  const rank = ({ label }: Offer): number => {
    const thing = job.scope.resolve(label);
    const kind = thing ? kinds.indexOf(thing.kind) : kinds.length;
    return kind * 4 + (thing?.file === job.file.path ? 0 : 2) + (holds.has(label) ? 1 : 0);
  };
  return [...offers].sort((a, b) => rank(a) - rank(b));
}

function clauseWords(snapshot: Snapshot, cursor: Cursor, kind: ThingKind): Offer[] {
  const { say, client } = snapshot;
  const { before } = cursor;
  const entry = entryOf(cursor);
  const there = new Set(
    entry?.children.flatMap((l) => (l.kind === 'clauses' ? l.clauses.map((c) => c.word) : [])) ?? [],
  );
  const rank = clauseRank(kind);
  const words = ENTRY_CLAUSES.filter(
    (c) => c.on.includes(kind) && !(there.has(c.word) && c.shape === 'flag') && !hasWord(before, c.word),
  ).sort((a, b) => Number(there.has(a.word)) - Number(there.has(b.word)) || rank(a.word) - rank(b.word));
  const offers = words.map((c) =>
    word(c.word, c.docs, c.shape === 'flag' ? {} : { insert: `${c.word} `, goesOn: true }),
  );
  const wantsSet = kind === 'fastener' && before === '' && !there.has('of') && client.snippets;
  const set = wantsSet ? [setOffer(say)] : [];
  return [
    ...set,
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

function textOf(snapshot: Snapshot, entry: EntryLine | undefined): string {
  return entry ? snapshot.text.slice(entry.start, entry.end) : '';
}
