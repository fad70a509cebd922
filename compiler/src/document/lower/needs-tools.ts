// Tools that the rows ask for: sockets by drive, torque wrenches by range, what is named.
import {
  clausesOf,
  type Measure,
  numberOf,
  phrase,
  phraseText,
  type Thing,
  toSI,
  trade,
} from '@baywright/language';
import type { NeedRow } from '../blocks.js';
import { type Figure, type Prose, plainFigure, text } from '../inline.js';
import { figureOf, firstMeasure } from './measures.js';
import { capitalFirst } from './names.js';
import { listTitles, rowsProse, strong } from './need-words.js';
import type { Print } from './print.js';
import { partNumber, titleOf } from './texts.js';

interface Socket {
  /** `hex`, `six-lobe`: the words before the size. */
  readonly shape: string;
  readonly size: string;
  readonly sort: number;
  /** Across the flats, millimetres; 0 for recesses. */
  readonly mm: number;
  nm: number;
  readonly things: Set<Thing>;
}

/** Sockets by shape and drive: the smallest drive that takes the largest torque asked of that socket. */
export function socketRows(print: Print): NeedRow[] {
  const sizes = new Map<string, Socket>();
  for (const { head, thing, nm = 0 } of print.uses.heads) {
    const shape = head.size === '' ? head.label : head.label.slice(0, head.label.indexOf(head.size)).trim();
    const size = head.label.slice(shape.length).trim();
    const known = sizes.get(head.label) ?? {
      shape,
      size,
      sort: sizeNumber(head.size),
      mm: acrossFlats(thing),
      nm: 0,
      things: new Set<Thing>(),
    };
    known.nm = Math.max(known.nm, nm);
    known.things.add(thing);
    sizes.set(head.label, known);
  }
  const rows = new Map<string, Socket[]>();
  for (const socket of [...sizes.values()].sort((a, b) => a.sort - b.sort)) {
    const drive = socket.nm > 0 ? trade.drive(socket.nm, socket.mm).inch : '';
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

/** Size of a socket that goes over the head, millimetres. */
function acrossFlats(thing: Thing): number {
  for (const word of ['hex', 'square', 'twelve-point']) {
    const measure = clausesOf(thing, word)[0]?.clause.spec?.stages[0]?.measure.measure;
    const metres = measure && toSI(measure).nominal;
    if (metres) return numberOf(metres) * 1000;
  }
  return 0;
}

/** `mm` where all sizes end with it. */
function commonUnit(sizes: readonly string[]): string {
  // Behind the last space: `1 11/16 in` has two.
  const units = new Set(sizes.map((size) => /(?<=\u00a0)[^\u00a0]+$/.exec(size)?.[0] ?? ''));
  return units.size === 1 ? ([...units][0] ?? '') : '';
}

/** `9/16` and `18` as numbers, for sorting. */
function sizeNumber(size: string): number {
  const [, whole = '0', top, bottom] = /^(?:[A-Z]+)?(\d+)?(?:[ \u00a0-]?(\d+)\/(\d+))?/.exec(size) ?? [];
  const slash = /^(\d+)\/(\d+)$/.exec(size);
  if (slash) return Number(slash[1]) / Number(slash[2]);
  return Number(whole) + (top && bottom ? Number(top) / Number(bottom) : 0);
}

/** The wrenches to take, smallest first: those the lines name, else the one of the house list that suits best. */
export function wrenchRows(print: Print): NeedRow[] {
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
    torque.stages.forEach(({ figure, set }, i) => {
      const nm = torque.nm[i];
      if (nm === undefined || !figure || declared.length === 0) return;
      const named = declared.find(({ thing }) => thing === torque.tool);
      const suits = trade.chooseWrench(
        nm,
        declared.map(({ tool }) => tool),
      ).tool;
      const found = named ?? declared.find(({ tool }) => tool === suits);
      const key = found?.thing.id ?? '';
      const entry: WantedWrench = wanted.get(key) ?? {
        range: found?.range,
        highNm: found?.tool.highNm ?? Number.POSITIVE_INFINITY,
        thing: found?.thing,
        values: [],
      };
      const { primary } = figure;
      entry.values.push({
        nm,
        unit: primary.unit,
        value: unbroken(set ? dialled(print, primary, set.figure.primary) : primary.value),
      });
      wanted.set(key, entry);
    });
  }
  const bySize = [...wanted.values()].sort((a, b) => a.highNm - b.highNm);
  return bySize.map(({ range, thing, values }) => {
    const name = strong(
      thing ? capitalFirst(titleOf(print, thing)) : phrase('wrench-that-suits', print.language),
    );
    const sorted = [...values].sort((a, b) => a.nm - b.nm);
    const said = [...new Set(sorted.map(({ unit }) => unit))].map((unit) => {
      const figures = new Set(sorted.filter((figure) => figure.unit === unit).map(({ value }) => value));
      return `${[...figures].join(', ')}${unit === '' ? '' : `\u00a0${unit}`}`;
    });
    return {
      what: range ? [name, text(`, ${unbroken(firstFigure(print, range))}`)] : [name],
      for: [text(said.join('; '))],
    };
  });
}

/** `130 ±10 (set 122)`: the torque, and what is read on the wrench. */
const dialled = ({ language }: Print, torque: Figure, set: Figure): string =>
  phraseText('torque-set', language, {
    torque: torque.value,
    set: set.unit === torque.unit ? set.value : plainFigure(set),
  });

/** `20 to 250`: no line parts the ends of a range. */
const unbroken = (figure: string): string => figure.replaceAll(' ', '\u00a0');

interface WantedWrench {
  readonly range: Measure | undefined;
  /** The upper end of its range; none suits: last of all. */
  readonly highNm: number;
  readonly thing: Thing | undefined;
  /** The figures it is set to. */
  readonly values: { readonly nm: number; readonly value: string; readonly unit: string }[];
}

/** A row for each tool to fetch, those that carry a load first. */
export function toolRows(print: Print): NeedRow[] {
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
  return [...tools.filter(isRated), ...tools.filter((thing) => !isRated(thing))].map((thing) => ({
    what: name(thing),
    for: rowsProse(print.uses.tools.get(thing) ?? []),
  }));
}

/** The figure of the shop's own system alone, for lists. */
function firstFigure(print: Print, measure: Measure): string {
  return plainFigure(figureOf(firstMeasure(measure, print), print.language));
}
