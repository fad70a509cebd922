// Values from the tables: threads, classes, grades, head sizes, orders.
import { trade } from '@baywright/language';
import type { Texts } from '../../texts/index.js';
import { type Offer, value } from './answer.js';

/** Threads a shop meets: coarse and common fine series of ISO 261, UNC, UNF and pipe threads. */
export function threadOffers(say: Texts): Offer[] {
  return [
    ...THREADS.filter((t) => trade.isThread(trade.readThread(t))).map((t) => value(t, say.thread)),
    ...RETAINERS.map((t) => value(t, say.retainer)),
  ];
}

/** What holds without a thread. */
const RETAINERS = ['clip', 'circlip', 'clamp', 'split-pin', 'pin', 'rivet', 'band', 'strap'];

const THREADS = [
  'M4x0.7',
  'M5x0.8',
  'M6x1.0',
  'M8x1.25',
  'M8x1.0',
  'M10x1.5',
  'M10x1.25',
  'M12x1.75',
  'M12x1.5',
  'M12x1.25',
  'M14x2.0',
  'M14x1.5',
  'M16x2.0',
  'M16x1.5',
  'M18x1.5',
  'M20x1.5',
  'M22x1.5',
  'M24x1.5',
  '1/4-20 UNC',
  '5/16-18 UNC',
  '3/8-16 UNC',
  '7/16-14 UNC',
  '1/2-13 UNC',
  '1/4-28 UNF',
  '5/16-24 UNF',
  '3/8-24 UNF',
  '7/16-20 UNF',
  '1/2-20 UNF',
  '1/8-27 NPT',
  '1/4-18 NPT',
  '3/8-18 NPT',
  'G1/8',
  'G1/4',
  'G3/8',
];

export function rawOffers(clause: string): Offer[] {
  return (RAW[clause] ?? []).map((text) => value(text));
}

/** What is left of values of two words behind the first: `46` behind `VG `. */
export function restOffers(clause: string, begun: string): Offer[] {
  return (RAW[clause] ?? []).flatMap((text) =>
    begun !== '' && text.startsWith(begun) ? [value(text.slice(begun.length))] : [],
  );
}

/** Values that shops write most, by clause word; common practice. Each reads by its standard. */
export const RAW: Readonly<Record<string, readonly string[]>> = {
  class: ['8.8', '10.9', '12.9', 'A2-70', 'A4-80'],
  grade: ['2', '5', '8'],
  SAE: ['0W-20', '5W-30', '10W-40', '75W-80', '75W-90', '80W-90'],
  API: ['GL-4', 'GL-5', 'SP', 'CK-4'],
  DOT: ['3', '4', '5.1'],
  ACEA: ['A3/B4', 'C2', 'C3', 'E8'],
  ISO: ['VG 22', 'VG 32', 'VG 46', 'VG 68'],
  NLGI: ['1', '2'],
  refrigerant: ['R-134a', 'R-1234yf'],
  order: trade.ORDER_PATTERNS,
  layout: ['circle', '2 rows'],
  threadlocker: ['low', 'medium', 'high'],
  square: ['1/4 in', '3/8 in', '1/2 in', '8 mm', '10 mm'],
  hexalobular: ['T20', 'T25', 'T27', 'T30', 'T40', 'T45', 'T50', 'T55', 'E10', 'E12', 'E14', 'E18'],
};

/** Head sizes that the tables list for a thread, smallest first. */
export function headOffers(thread: string | undefined): Offer[] {
  const read = thread === undefined ? undefined : trade.readThread(thread);
  if (!read || !trade.isThread(read)) return [];
  const seen = new Set<string>();
  return trade.headSizes(read).flatMap((size) => {
    const label = headLabel(size.acrossFlatsMm, read.system === 'metric');
    if (seen.has(label)) return [];
    seen.add(label);
    return [value(label, thread)];
  });
}

function headLabel(mm: number, metric: boolean): string {
  return metric ? `${mm} mm` : trade.inchText(mm / 25.4);
}
