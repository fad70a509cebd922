// Completion of the first word of a line, and behind the heads that are not verbs.
import {
  DIAGNOSTICS,
  HEADS_IN,
  type LineContext,
  monthsLater,
  STATUSES,
  type VerbDef,
  wordsFor,
} from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import { IF_TESTS } from '../if-tests.js';
import { filesUsed, relative } from '../import-lines.js';
import { isWithdrawn, PROCEDURE, proceduresWith } from '../numbered.js';
import { type Offer, thingOffer, value, word } from './answer.js';
import type { Cursor } from './cursor.js';
import { fileOffers } from './file-lines.js';
import { guardOffers, yearsOf } from './guards.js';
import { inTheHouse, vehiclesElsewhere } from './imports.js';
import { snippetOffers } from './snippets.js';
import { kindOffers } from './things.js';
import { endsInNumber, unitOffers } from './units.js';
import { verbsIn } from './verb-order.js';
import { workSnippets } from './work-snippets.js';

/** What may open a line here. */
export function firstWordOffers(snapshot: Snapshot, cursor: Cursor, context: LineContext): Offer[] {
  if (context === 'file') return fileOffers(snapshot, cursor);
  const isWork = context === 'step' || context === 'work' || context === 'operation';
  return [
    ...(snapshot.client.snippets ? snippetOffers(snapshot, context, cursor.declares) : []),
    ...(isWork ? verbsIn(cursor.section).map(verbOffer) : []),
    ...(snapshot.client.snippets && context === 'step' ? workSnippets(snapshot, cursor) : []),
    ...headOffers(context),
  ];
}

function verbOffer(verb: VerbDef): Offer {
  const hasObject = verb.object !== 'none';
  return word(verb.word, verb.docs, {
    insert: hasObject ? `${verb.word} ` : verb.word,
    goesOn: hasObject,
    alsoSaid: wordsFor(verb.word),
  });
}

export function headOffers(context: LineContext): Offer[] {
  return [...(HEADS_IN.get(context)?.values() ?? [])].map((h) =>
    word(h.word, h.docs, { insert: h.bare ? `${h.word}: ` : `${h.word} ` }),
  );
}

/** What follows a head: imports, vehicles, operations, tests of `if`, codes. Undefined when the head is not one of these. */
export function behindHead(snapshot: Snapshot, cursor: Cursor): Offer[] | undefined {
  const { before } = cursor;
  const job = () => snapshot.job();
  if (/^use\s+$/.test(before)) return importOffers(snapshot);
  if (/^applies to\s+$/.test(before)) {
    const known = kindOffers(job(), ['vehicle']);
    return [...known, ...vehiclesElsewhere(snapshot, known)];
  }
  if (/^applies to\s+\S+\s+$/.test(before))
    return [
      word('from', snapshot.say.fromYear, { insert: 'from ' }),
      word('when', snapshot.say.lineOnlyFor, { insert: 'when ', goesOn: true }),
    ];
  const vehicle = /^applies to\s+(\S+)\s+from\s+$/.exec(before)?.[1];
  if (vehicle !== undefined) return yearsOf(snapshot, new Set([vehicle])).map((years) => value(years));
  if (/^sides\s+/.test(before))
    return ['left', 'right'].filter((s) => !before.includes(s)).map((s) => value(s));
  if (/^status\s+$/.test(before)) return STATUSES.map((s) => value(s));
  if (/^status\s+\S+\s+$/.test(before))
    return [word('by', snapshot.say.byWhom, { insert: 'by ', goesOn: true })];
  if (/^status\s+\S+\s+by\s+(?:\S+,\s*)*$/.test(before))
    return snapshot.shelf.settings.release.by.filter((who) => !before.includes(who)).map((who) => value(who));
  if (/^status\s+\S+\s+by\s+(?:\S+,\s*)*[^\s,]+\s+$/.test(before))
    return [word('on', snapshot.say.whatDay, { insert: 'on ' })];
  if (/^revision\s+$/.test(before)) return [revisionOffer(snapshot)];
  if (/^(?:revision\s+\S+|status\s+\S+\s+by\s.*)\s+on\s+$/.test(before)) return dayOffers(snapshot, 0);
  if (/^review\s+$/.test(before))
    return dayOffers(snapshot, snapshot.shelf.settings.release.reviewMonths ?? USUAL_REVIEW);
  if (/^labour\s+/.test(before) && endsInNumber(before)) return unitOffers(['time']);
  if (/^perform\s+\S+\s+from\s+$/.test(before))
    return proceduresWith(snapshot, /^perform\s+(\S+)/.exec(before)?.[1] ?? '').map(
      ({ number, title, withdrawn }) => ({ ...value(number, title), withdrawn }),
    );
  if (/^perform\s+\S+\s+$/.test(before))
    return [
      word('from', snapshot.say.fromProcedure, { insert: 'from ', goesOn: true }),
      word('when', snapshot.say.onlyForThese, { insert: 'when ' }),
    ];
  if (/^perform\s+$/.test(before)) return performOffers(snapshot);
  if (/^(?:only )?when\s/.test(before)) return guardOffers(snapshot, before.replace(/^(?:only )?when\s/, ''));
  if (/^if\s+(?:\S+\s+)?$/.test(before))
    return ifOffers(snapshot).concat(/^if\s+$/.test(before) ? kindOffers(job(), ['limit']) : []);
  if (/^accept\s+/.test(before)) return codeOffers(snapshot, cursor);
  if (/^(?:danger|warning|caution|notice)\s+$/.test(before)) {
    const known = kindOffers(job(), ['message']);
    return [...known, ...inTheHouse(snapshot, ['message'], known)];
  }
  return undefined;
}

/** The tests of `if`, a reading against its limit first. */
function ifOffers(snapshot: Snapshot): Offer[] {
  return Object.entries(IF_TESTS).map(([test, docs]) =>
    word(docs.endsWith('Limit') ? `${test} limit` : test, snapshot.say[docs]),
  );
}

/** Codes to accept: those found on the line below, those of the file, the rest. */
function codeOffers(snapshot: Snapshot, cursor: Cursor): Offer[] {
  const end = snapshot.positions.lineStart(snapshot.positions.position(cursor.lineStart).line + 2);
  const found = snapshot.lastFindings() ?? [];
  const below = new Set<string>(
    found.filter((f) => f.span.start >= cursor.lineStart && f.span.start < end).map((f) => f.code),
  );
  const own = new Set<string>(found.map((f) => f.code));
  const rank = (code: string): number => (below.has(code) ? 0 : own.has(code) ? 1 : 2);
  return DIAGNOSTICS.map((d) => ({ ...value(d.code, d.name), docs: d.why })).sort(
    (a, b) => rank(a.label) - rank(b.label),
  );
}

function revisionOffer(snapshot: Snapshot): Offer {
  const [today] = dayOffers(snapshot, 0);
  const begun = `${nextRevision(snapshot)} on ${today?.label ?? ''}`;
  return { ...value(begun), ...(today ? { insert: `${begun}: ` } : {}) };
}

/** The day that many months from today, where the day is known. */
function dayOffers({ shelf }: Snapshot, months: number): Offer[] {
  const today = shelf.library.host.today?.();
  return today === undefined ? [] : [value(monthsLater(today, months))];
}

/** Two years, in months; common practice, where the house has no rule of its own. */
const USUAL_REVIEW = 24;

function nextRevision(snapshot: Snapshot): number {
  const written = [...snapshot.text.matchAll(/^revision\s+(\d+)\s+on\b/gm)].map(([, n]) => Number(n));
  return Math.max(0, ...written) + 1;
}

/** Files of the library that are not used yet, by the path from here, in quotes. */
function importOffers(snapshot: Snapshot): Offer[] {
  const used = filesUsed(snapshot);
  return snapshot.shelf
    .paths()
    .filter((p) => p !== snapshot.path && !used.has(p) && !PROCEDURE.test(snapshot.file(p)?.text ?? ''))
    .map((p) => {
      const written = relative(snapshot.path, p);
      return { ...value(written, snapshot.library.model(p)?.title), insert: `"${written}"` };
    });
}

function performOffers(snapshot: Snapshot): Offer[] {
  const offers = snapshot.shelf.paths().flatMap((p) => {
    const has = /^\s*operation\b/m.test(snapshot.file(p)?.text ?? '');
    const model = has ? snapshot.library.model(p) : undefined;
    return (model?.operations ?? []).map((o) =>
      thingOffer(o, {
        insert:
          p === snapshot.path || model?.number === undefined ? o.name : `${o.name} from ${model.number}`,
        detail: `${o.title}${model?.number === undefined ? '' : `, ${model.number}`}`,
        withdrawn: model !== undefined && isWithdrawn(model),
      }),
    );
  });
  return offers.sort((a, b) => Number(a.withdrawn) - Number(b.withdrawn));
}
