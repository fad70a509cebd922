// "You will need": worked out from the rows, not written by hand.
import {
  clausesOf,
  digitsFor,
  type Measure,
  numberOf,
  phrase,
  phraseText,
  type Rational,
  rational,
  type Thing,
  threadText,
  toSI,
  trade,
} from '@baywright/language';
import type { NeedRow } from '../blocks.js';
import { type Inline, type Prose, plainFigure, text } from '../inline.js';
import { gradeText } from './grades.js';
import { figureOf, firstMeasure, measureProse, quantityInline } from './measures.js';
import { capitalFirst, sideWord, smallFirst } from './names.js';
import type { Print } from './print.js';
import { partNumber, titleOf } from './texts.js';
import type { RowAt, UsedAmount } from './uses.js';

export interface NeedGroup {
  readonly title: string;
  readonly rows: readonly NeedRow[];
}

/** All groups that have something in them, for the first page. */
export function needGroups(print: Print): NeedGroup[] {
  const { language } = print;
  const groups: NeedGroup[] = [
    { title: phrase('protective-equipment', language), rows: wornRows(print) },
    { title: phrase('sockets', language), rows: socketRows(print) },
    { title: phrase('torque-wrenches', language), rows: wrenchRows(print) },
    { title: phrase('tools', language), rows: toolRows(print) },
    { title: phrase('placed-for-the-job', language), rows: placedRows(print) },
    ...stockGroups(print),
  ];
  return groups.filter(({ rows }) => rows.length > 0);
}

/** What comes from the parts counter: also the pull sheet. */
export function stockGroups(print: Print): NeedGroup[] {
  const { language } = print;
  return [
    { title: phrase('parts-to-renew', language), rows: freshRows(print, false) },
    { title: phrase('only-if-asked', language), rows: freshRows(print, true) },
    {
      title: phrase('supplies', language),
      rows: [...amountRows(print, print.uses.supplies), ...lockerRows(print)],
    },
    { title: phrase('fluids', language), rows: amountRows(print, print.uses.fluids) },
  ].filter(({ rows }) => rows.length > 0);
}

const strong = (words: string): Inline => ({ kind: 'strong', children: [text(words)] });

function wornRows(print: Print): NeedRow[] {
  const names = [...print.uses.worn.keys()].map((thing) => capitalFirst(titleOf(print, thing)));
  return names.length === 0 ? [] : [{ what: [strong(names.join(', '))], for: [] }];
}

interface Socket {
  /** `hex`, `six-lobe`: the words before the size. */
  readonly shape: string;
  readonly size: string;
  readonly sort: number;
  nm: number;
  readonly things: Set<Thing>;
}

/** Sockets by shape and drive: the smallest drive that takes the largest torque asked of that socket. */
function socketRows(print: Print): NeedRow[] {
  const sizes = new Map<string, Socket>();
  for (const { head, thing, nm = 0 } of print.uses.heads) {
    const shape = head.size === '' ? head.label : head.label.slice(0, head.label.indexOf(head.size)).trim();
    const size = head.label.slice(shape.length).trim();
    const known = sizes.get(head.label) ?? {
      shape,
      size,
      sort: sizeNumber(head.size),
      nm: 0,
      things: new Set<Thing>(),
    };
    known.nm = Math.max(known.nm, nm);
    known.things.add(thing);
    sizes.set(head.label, known);
  }
  const rows = new Map<string, Socket[]>();
  for (const socket of [...sizes.values()].sort((a, b) => a.sort - b.sort)) {
    const drive = socket.nm > 0 ? trade.drive(socket.nm).inch : '';
    const key = `${socket.shape}\u0000${drive}`;
    rows.set(key, [...(rows.get(key) ?? []), socket]);
  }
  return [...rows].map(([key, sockets]) => {
    const [shape = '', drive = ''] = key.split('\u0000');
    const unit = commonUnit(sockets.map(({ size }) => size));
    const list = sockets
      .map(({ size }) => (unit === '' ? size : size.slice(0, -unit.length).trim()))
      .join(', ');
    const named = `${capitalFirst(shape)} ${list}${unit === '' ? '' : `\u00a0${unit}`}`;
    const driven =
      drive === '' ? [] : [text(`, ${phraseText('drive', print.language, { size: `${drive}\u00a0in` })}`)];
    return {
      what: [strong(named.trim()), ...driven],
      for: [text(listTitles(print, [...new Set(sockets.flatMap(({ things }) => [...things]))]))],
    };
  });
}

/** `mm` where all sizes end with it. */
function commonUnit(sizes: readonly string[]): string {
  const units = new Set(sizes.map((size) => size.split('\u00a0').at(1) ?? ''));
  return units.size === 1 ? ([...units][0] ?? '') : '';
}

/** `9/16` and `18` as numbers, for sorting. */
function sizeNumber(size: string): number {
  const [, whole = '0', top, bottom] = /^(?:[A-Z]+)?(\d+)?(?:[ \u00a0-]?(\d+)\/(\d+))?/.exec(size) ?? [];
  const slash = /^(\d+)\/(\d+)$/.exec(size);
  if (slash) return Number(slash[1]) / Number(slash[2]);
  return Number(whole) + (top && bottom ? Number(top) / Number(bottom) : 0);
}

const listTitles = (print: Print, things: readonly Thing[]): string =>
  capitalFirst(
    things
      .map((thing) => (print.language === 'de' ? titleOf(print, thing) : smallFirst(titleOf(print, thing))))
      .join('; '),
  );

/** The wrenches to take: those the lines name, else the one of the house list that suits each torque best. */
function wrenchRows(print: Print): NeedRow[] {
  const declared = [...print.job.scope.names.values()].flatMap((thing) => {
    const range =
      thing.kind === 'tool'
        ? clausesOf(thing, 'torque')[0]?.clause.spec?.stages[0]?.measure.measure
        : undefined;
    const { low, high } = range ? toSI(range) : {};
    if (!range || !low || !high) return [];
    return [{ thing, range, tool: { name: thing.name, lowNm: numberOf(low), highNm: numberOf(high) } }];
  });
  const wanted = new Map<string, WantedWrench>();
  for (const torque of print.uses.torques) {
    const figures = torque.stages.flatMap(({ figure }) =>
      figure && !figure.primary.value.endsWith('°') ? [figure.primary] : [],
    );
    torque.nm.forEach((nm, i) => {
      const named = declared.find(({ thing }) => thing === torque.tool);
      const suits = trade.chooseWrench(
        nm,
        declared.map(({ tool }) => tool),
      ).tool;
      const found = named ?? declared.find(({ tool }) => tool === suits);
      const key = found?.thing.id ?? '';
      const entry = wanted.get(key) ?? {
        range: found?.range,
        thing: found?.thing,
        values: new Map<string, Set<string>>(),
      };
      const figure = figures[i];
      if (figure)
        entry.values.set(figure.unit, (entry.values.get(figure.unit) ?? new Set()).add(figure.value));
      wanted.set(key, entry);
    });
  }
  return [...wanted.values()].map(({ range, thing, values }) => {
    const name = strong(
      thing ? capitalFirst(titleOf(print, thing)) : phrase('wrench-that-suits', print.language),
    );
    const said = [...values].map(
      ([unit, figures]) => `${[...figures].join(', ')}${unit === '' ? '' : `\u00a0${unit}`}`,
    );
    return {
      what: range ? [name, text(`, ${firstFigure(print, range)}`)] : [name],
      for: [text(said.join('; '))],
    };
  });
}

interface WantedWrench {
  readonly range: Measure | undefined;
  readonly thing: Thing | undefined;
  /** The figures it is set to, by unit. */
  readonly values: Map<string, Set<string>>;
}

function toolRows(print: Print): NeedRow[] {
  const rated = new Map<Thing, Measure | undefined>();
  for (const line of print.analysis.model.prerequisites) {
    if (line.kind !== 'prerequisite') continue;
    const thing = print.job.scope.resolve(line.name.text);
    if (thing?.kind === 'tool')
      rated.set(
        thing,
        line.clauses.find((clause) => clause.word === 'rated')?.spec?.stages[0]?.measure.measure,
      );
  }
  const wrenches = new Set(print.uses.torques.map(({ tool }) => tool));
  const tools = [...new Set([...rated.keys(), ...print.uses.tools.keys()])].filter(
    (thing) => clausesOf(thing, 'torque').length === 0 || !wrenches.has(thing),
  );
  const name = (thing: Thing): Prose => {
    const measure = rated.get(thing) ?? clausesOf(thing, 'rated')[0]?.clause.spec?.stages[0]?.measure.measure;
    const number = partNumber(print, thing, print.when);
    const more = [
      ...(number === undefined ? [] : [number]),
      ...(measure ? [firstFigure(print, measure)] : []),
    ];
    return [
      strong(capitalFirst(titleOf(print, thing))),
      ...(more.length === 0 ? [] : [text(`, ${more.join(', ')}`)]),
    ];
  };
  const isRated = (thing: Thing): boolean => rated.has(thing) || clausesOf(thing, 'rated').length > 0;
  return [tools.filter(isRated), tools.filter((thing) => !isRated(thing))].flatMap((some): NeedRow[] =>
    some.length === 0
      ? []
      : [
          {
            what: some.flatMap((thing, i) => [...(i === 0 ? [] : [text('; ')]), ...name(thing)]),
            for: rowsProse(some.flatMap((thing) => print.uses.tools.get(thing) ?? [])),
          },
        ],
  );
}

/** The figure of the shop's own system alone, for lists. */
function firstFigure(print: Print, measure: Measure): string {
  return plainFigure(figureOf(firstMeasure(measure, print), print.language));
}

function placedRows(print: Print): NeedRow[] {
  const names = [...print.uses.placed.keys()].map((thing) => capitalFirst(titleOf(print, thing)));
  const at = [...print.uses.placed.values()].flat();
  return names.length === 0 ? [] : [{ what: [strong(names.join('; '))], for: rowsProse(at) }];
}

/** Numbers of rows as links: `2.6, 4.1`. */
function rowsProse(at: readonly RowAt[]): Prose {
  const rows = [...new Map(at.map((row) => [row.row, row])).values()];
  return rows.flatMap(
    ({ row, number }, i): Prose => [...(i === 0 ? [] : [text(', ')]), { kind: 'line', text: number, row }],
  );
}

/** Parts fitted new, with numbers by side and how many for the sides of this print. */
function freshRows(print: Print, maybe: boolean): NeedRow[] {
  const { fresh } = print.uses;
  const always = new Set(fresh.filter((use) => !use.maybe).map(({ thing }) => thing));
  const things = [
    ...new Set(
      fresh
        .filter((use) => use.maybe === maybe && (!maybe || !always.has(use.thing)))
        .map(({ thing }) => thing),
    ),
  ];
  return things.flatMap((thing): NeedRow[] => {
    const uses = fresh.filter((use) => use.thing === thing && use.maybe === maybe);
    const bySide = new Map<string, typeof uses>();
    for (const use of uses) {
      const when = print.sides.find(({ word }) => word === use.side)?.when ?? print.when;
      const number = partNumber(print, thing, when) ?? '';
      bySide.set(number, [...(bySide.get(number) ?? []), use]);
    }
    return [...bySide].map(([number, own]) => {
      // A set that goes on twice on one side is the same new set.
      const perSide = new Map(own.map((use) => [use.side, use.count]));
      const count = [...perSide.values()].reduce((sum, one) => sum + one, 0);
      const sides =
        bySide.size > 1 ? [...perSide.keys()].map((side) => sideWord(print, side)).join(', ') : '';
      const isAsked = number === '?' || (number === '' && print.shelf.settings.release.partNumbers);
      const thread = threadText(thing);
      const detail =
        thread && !thread.hole && thing.kind === 'fastener'
          ? ` ${thread.text.replace('x', '\u00a0×\u00a0')}`
          : '';
      return {
        what: [
          strong(capitalFirst(titleOf(print, thing))),
          text(`${detail}${sides === '' ? '' : `, ${sides}`}`),
        ],
        for: rowsProse(own),
        amount: [text(String(count))],
        ...(number !== '' && number !== '?' ? { number } : {}),
        ...(isAsked ? { blank: phrase('part-number', print.language) } : {}),
      };
    });
  });
}

/** Supplies and fluids with what they take: what the lines say, else what is declared for one job. */
function amountRows(print: Print, uses: readonly UsedAmount[]): NeedRow[] {
  const things = [...new Set(uses.map(({ thing }) => thing))];
  return things.map((thing) => {
    const own = uses.filter((use) => use.thing === thing);
    const declared = clausesOf(thing, 'amount')[0] ?? clausesOf(thing, 'fill')[0];
    const summed = sum(own.flatMap(({ amount }) => (amount ? [amount] : [])));
    const node = declared?.clause.spec?.stages[0]?.measure;
    const amount: Prose | undefined = summed
      ? [quantityInline(summed, print)]
      : node
        ? measureProse(node, print)
        : undefined;
    const number = partNumber(print, thing, print.when);
    const grade = gradeText(thing);
    return {
      what: [strong(capitalFirst(titleOf(print, thing))), ...(grade === '' ? [] : [text(`, ${grade}`)])],
      for: rowsProse(own),
      ...(number === undefined || number === '?' ? {} : { number }),
      ...(amount === undefined ? {} : { amount }),
      ...(number === '?' ? { blank: phrase('part-number', print.language) } : {}),
    };
  });
}

/** The total of plain amounts of one unit; undefined where they cannot be added. Variants that exclude each other are not told apart: the larger holds. */
function sum(amounts: readonly Measure[]): Measure | undefined {
  const plain = amounts.filter((amount) => amount.form === 'amount');
  const [first] = plain;
  if (!first || plain.length < amounts.length || plain.some(({ unit }) => unit !== first.unit))
    return undefined;
  if (plain.length === 1) return first;
  const value = plain.reduce<Rational>((all, amount) => all.add(amount.value), rational(0n));
  return { form: 'amount', value, unit: first.unit, digits: digitsFor(value) };
}

/** Threadlocker that torque lines ask for by its strength. */
function lockerRows(print: Print): NeedRow[] {
  const found = new Map<string, Set<Thing>>();
  for (const { thing } of print.uses.torques) {
    const raw = clausesOf(thing, 'threadlocker')[0]?.clause.raw;
    if (!raw || raw.hole) continue;
    found.set(raw.text, (found.get(raw.text) ?? new Set()).add(thing));
  }
  return [...found].map(([strength, things]) => {
    const id =
      strength === 'low'
        ? 'threadlocker-low'
        : strength === 'high'
          ? 'threadlocker-high'
          : strength === 'medium'
            ? 'threadlocker-medium'
            : undefined;
    const supply = print.job.scope.resolve(strength);
    const named = id
      ? phraseText('threadlocker', print.language, { grade: phrase(id, print.language) })
      : supply
        ? titleOf(print, supply)
        : strength;
    return { what: [strong(capitalFirst(named))], for: [text(listTitles(print, [...things]))] };
  });
}
