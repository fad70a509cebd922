// The head of a fastener, as declared, and the order its set is taken in.
import {
  type BoundStatement,
  clausesOf,
  formatMeasure,
  type Language,
  type Measure,
  numberOf,
  type PhraseId,
  phrase,
  phraseText,
  type Thing,
  threadText,
  tighteningCount,
  toSI,
  trade,
} from '@baywright/language';
import type { Head, HeadShape, OrderDiagram } from '../beside.js';
import type { Print } from './print.js';

const SIZED = ['hex', 'square', 'twelve-point'] as const;
const NAMED = { hexalobular: 'hexalobular', 'cross-slot': 'cross' } as const;
const PHRASE_OF: Readonly<Record<string, PhraseId>> = {
  hex: 'head-hex',
  'hex-key': 'head-hex-key',
  square: 'head-square',
  'twelve-point': 'head-twelve-point',
  hexalobular: 'head-hexalobular',
  'cross-slot': 'head-cross-slot',
};

/** Undefined where the entry says nothing of a head, as for clips. */
export function headOf(print: Print, thing: Thing): Head | undefined {
  const { language } = print;
  for (const word of SIZED) {
    const clause = clausesOf(thing, word)[0]?.clause;
    if (!clause) continue;
    const measure = clause.spec?.stages[0]?.measure.measure;
    const size = measure ? formatMeasure(measure, { language, style: 'print' }) : '?';
    const isInside = word === 'hex' && measure !== undefined && takesKey(thing, measure);
    const inside = measure ? (size.split('\u00a0')[0] ?? size) : '';
    return head(
      isInside ? 'hex-socket' : word,
      measure?.unit.symbol === 'in' ? size.replace(/\u00a0in$/, '') : inside,
      isInside ? 'hex-key' : word,
      size,
      language,
    );
  }
  for (const [word, shape] of Object.entries(NAMED)) {
    const raw = clausesOf(thing, word)[0]?.clause.raw;
    if (raw) return head(shape, raw.hole ? '' : raw.text, word, raw.hole ? '?' : raw.text, language);
  }
  if (clausesOf(thing, 'slot').length > 0)
    return { shape: 'slot', size: '', label: phrase('head-slot', language) };
  return undefined;
}

/** Whether the hexagon lies inside the head. */
function takesKey(thing: Thing, measure: Measure): boolean {
  const raw = threadText(thing)?.text;
  const thread = raw === undefined ? undefined : trade.readThread(raw);
  const { nominal } = toSI(measure);
  return (
    thread !== undefined &&
    nominal !== undefined &&
    trade.isThread(thread) &&
    trade.isKey(thread, numberOf(nominal) * 1000)
  );
}

function head(shape: HeadShape, inside: string, word: string, size: string, language: Language): Head {
  return { shape, size: inside, label: phraseText(PHRASE_OF[word] ?? 'head-hex', language, { size }) };
}

export interface Order {
  readonly diagram: OrderDiagram;
  /** The named pattern: `star`, or the positions. */
  readonly written: string;
}

/** The order of a set at a line; undefined where none is asked for or it cannot be worked out. */
export function orderOf(print: Print, thing: Thing, statement: BoundStatement): Order | undefined {
  const makes = statement.verb.on.fastener?.makes ?? [];
  const isTightening = makes.some((make) => make === 'torqued' || make === 'snug' || make === 'tight');
  const own = statement.clause('order')?.raw;
  const declared = clausesOf(thing, 'order').map(({ clause }) => clause.raw)[0];
  const raw = own ?? (isTightening ? declared : undefined);
  if (!raw || raw.hole) return undefined;
  const read = trade.readOrder(raw.text);
  if ('problem' in read) return undefined;
  const count = tighteningCount(thing);
  const layout = read.layout ?? layoutOf(thing);
  const order = trade.tighteningOrder({ pattern: read.pattern, count, ...(layout ? { layout } : {}) });
  if (!trade.isOrder(order)) return undefined;
  const alt = trade.orderSentence(order, print.language, { loosen: !isTightening });
  return { written: raw.text, diagram: diagramOf(order, headOf(print, thing)?.shape ?? 'hex', alt) };
}

/** `layout 2 rows`, `layout 3 columns`; a circle needs no words. */
function layoutOf(thing: Thing): trade.OrderLayout | undefined {
  const raw = clausesOf(thing, 'layout')[0]?.clause.raw?.text ?? '';
  const [, figure, word] = /(\d+)\s*(row|column)/.exec(raw) ?? [];
  if (figure === undefined) return undefined;
  const number = Number(figure);
  return word === 'row'
    ? { rows: number }
    : { rows: Math.ceil(tighteningCount(thing) / number), columns: number };
}

/** Broad enough for a row of heads, and never a strip. */
const WIDEST = 2.6;

function diagramOf(order: trade.TighteningOrder, shape: HeadShape, alt: string): OrderDiagram {
  const [xs, ys] = [order.positions.map(({ x }) => x), order.positions.map(({ y }) => y)];
  const turn = (place: number): number => order.order.indexOf(place + 1) + 1;
  if (order.shape === 'circle') {
    const heads = order.positions.map(({ x, y }, i) => ({ x, y, turn: turn(i) }));
    return { outline: 'circle', aspect: 1, shape, heads, alt };
  }
  const spread = (values: readonly number[]) => (value: number) => {
    const [low, high] = [Math.min(...values), Math.max(...values)];
    return high - low < 1e-9 ? 0.5 : (value - low) / (high - low);
  };
  const [left, down] = [spread(xs), spread(ys)];
  const heads = order.positions.map(({ x, y }, i) => ({ x: left(x), y: down(y), turn: turn(i) }));
  const levels = (values: readonly number[]): number => new Set(values.map((value) => value.toFixed(4))).size;
  const across = Math.ceil(order.count / Math.max(1, levels(ys)));
  const aspect = Math.min(WIDEST, Math.max(1, across / Math.max(1, levels(ys))));
  return { outline: 'plate', aspect, shape, heads, alt };
}
