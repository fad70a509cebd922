// Completion of the first word of a line, and behind the heads that are not verbs.
import { DIAGNOSTICS, HEADS_IN, type LineContext, resolvePath, SECTIONS, VERBS } from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import { type Offer, thingOffer, value, word } from './answer.js';
import type { Cursor } from './cursor.js';
import { guardOffers } from './guards.js';
import { snippetOffers } from './snippets.js';
import { kindOffers } from './things.js';
import { endsInNumber, unitOffers } from './values.js';

/** What may open a line here. */
export function firstWordOffers(snapshot: Snapshot, context: LineContext): Offer[] {
  const heads = [...(HEADS_IN.get(context)?.values() ?? [])].map((h) =>
    word(h.word, h.docs, { insert: h.bare ? `${h.word}: ` : `${h.word} ` }),
  );
  const sections = context === 'file' ? SECTIONS.map((s) => word(s.word, s.docs)) : [];
  const verbs =
    context === 'step' || context === 'work' || context === 'operation'
      ? VERBS.map((v) =>
          word(v.word, v.docs, {
            insert: v.object === 'none' ? v.word : `${v.word} `,
            goesOn: v.object !== 'none',
          }),
        )
      : [];
  return [
    ...(snapshot.client.snippets ? snippetOffers(snapshot.say, context) : []),
    ...verbs,
    ...heads,
    ...sections,
  ];
}

/** What follows a head: imports, vehicles, operations, tests of `if`, codes. Undefined when the head is not one of these. */
export function behindHead(snapshot: Snapshot, cursor: Cursor): Offer[] | undefined {
  const { before } = cursor;
  const job = () => snapshot.job();
  if (/^use\s+"?$/.test(before) || /^use\s+"[^"]*$/.test(before)) return importOffers(snapshot, before);
  if (/^applies to\s+$/.test(before)) return kindOffers(job(), ['vehicle']);
  if (/^sides\s+/.test(before))
    return ['left', 'right'].filter((s) => !before.includes(s)).map((s) => value(s));
  if (/^status\s+$/.test(before)) return ['draft', 'proved', 'released', 'withdrawn'].map((s) => value(s));
  if (/^labour\s+/.test(before) && endsInNumber(before)) return unitOffers(['time']);
  if (/^perform\s+\S+\s+from\s+$/.test(before))
    return numbered(snapshot).map(({ number, title }) => value(number, title));
  if (/^perform\s+\S+\s+$/.test(before))
    return [
      word('from', snapshot.say.fromProcedure, { insert: 'from ', goesOn: true }),
      word('when', snapshot.say.onlyForThese, { insert: 'when ' }),
    ];
  if (/^perform\s+$/.test(before)) return performOffers(snapshot);
  if (/^(?:only )?when\s/.test(before)) return guardOffers(snapshot, before.replace(/^(?:only )?when\s/, ''));
  if (/^if\s+(?:\S+\s+)?$/.test(before))
    return IF_TESTS.map(([test, docs]) => word(test, snapshot.say[docs])).concat(
      /^if\s+$/.test(before) ? kindOffers(job(), ['limit']) : [],
    );
  if (/^accept\s+/.test(before)) return DIAGNOSTICS.map((d) => ({ ...value(d.code, d.name), docs: d.why }));
  if (/^(?:danger|warning|caution|notice)\s+$/.test(before)) return kindOffers(job(), ['message']);
  return undefined;
}

const IF_TESTS = [
  ['below limit', 'belowLimit'],
  ['above limit', 'aboveLimit'],
  ['outside limit', 'outsideLimit'],
  ['rejected', 'isRejected'],
  ['needed', 'isNeeded'],
] as const;

/** Files of the library that are not used yet, by the path from here. */
function importOffers(snapshot: Snapshot, before: string): Offer[] {
  const used = new Set(
    snapshot.library
      .model(snapshot.path)
      ?.uses.map((u) => (u.path ? resolvePath(snapshot.path, u.path.text) : undefined)),
  );
  const quote = before.includes('"') ? '' : '"';
  return snapshot.shelf
    .paths()
    .filter((p) => p !== snapshot.path && !used.has(p) && !PROCEDURE.test(snapshot.file(p)?.text ?? ''))
    .map((p) => {
      const written = relative(snapshot.path, p);
      return { ...value(written, snapshot.library.model(p)?.title), insert: `${quote}${written}${quote}` };
    });
}

export function relative(from: string, to: string): string {
  const a = from.split('/').slice(0, -1);
  const b = to.split('/');
  let same = 0;
  while (same < a.length && same < b.length - 1 && a[same] === b[same]) same++;
  return [...a.slice(same).map(() => '..'), ...b.slice(same)].join('/');
}

/** The opening line of a procedure: told by its text, so that a list does not read a whole library. */
const PROCEDURE = /^procedure\b[ \t]*([^\s:]*)[ \t]*:?[ \t]*(.*)$/m;

function numbered(snapshot: Snapshot): { number: string; title: string }[] {
  return snapshot.shelf.paths().flatMap((p) => {
    const [, number = '', title = ''] = PROCEDURE.exec(snapshot.file(p)?.text ?? '') ?? [];
    return number === '' || number === '?' ? [] : [{ number, title: title.trim() }];
  });
}

function performOffers(snapshot: Snapshot): Offer[] {
  return snapshot.shelf.paths().flatMap((p) => {
    const has = /^\s*operation\b/m.test(snapshot.file(p)?.text ?? '');
    const model = has ? snapshot.library.model(p) : undefined;
    return (model?.operations ?? []).map((o) =>
      thingOffer(o, {
        insert:
          p === snapshot.path || model?.number === undefined ? o.name : `${o.name} from ${model.number}`,
        detail: `${o.title}${model?.number === undefined ? '' : `, ${model.number}`}`,
      }),
    );
  });
}
