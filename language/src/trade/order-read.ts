/** Reads an order as it is written in a clause (`inside-out, 2 rows`) or asked for at the bench (`grid 2x5`). */
import {
  ORDER_PATTERNS,
  type OrderInput,
  type OrderLayout,
  type OrderPattern,
  type OrderProblem,
} from './order.js';

const USAGE = `write ${ORDER_PATTERNS.join(', ')} or positions such as 1-3-5-2-4`;

/**
 * Reads an order clause: a pattern word, `inside-out, 2 rows`, or positions joined by hyphens or spaces
 * (`1-3-5-2-4`). The count is the caller's to give.
 */
export function readOrder(
  text: string,
): { pattern: OrderInput['pattern']; layout?: OrderLayout } | OrderProblem {
  const named = /^(star|cross|inside-out|outside-in)(?:\s*,?\s*(\d+)\s*rows?)?$/i.exec(text.trim());
  if (named?.[1]) {
    const pattern = named[1].toLowerCase() as OrderPattern;
    return named[2] ? { pattern, layout: { rows: Number(named[2]) } } : { pattern };
  }
  if (/^\d+(?:(?:\s*[-–]\s*|\s+)\d+)+$/.test(text.trim())) {
    return {
      pattern: text
        .trim()
        .split(/\s*[-–]\s*|\s+/)
        .map(Number),
    };
  }
  return { problem: `“${text.trim()}” is not an order; ${USAGE}` };
}

/**
 * Reads an order with its count, as asked for without a procedure: `star 5`, `cross 12`, `grid 2x5`,
 * `inside-out 11, 2 rows`, `outside-in 2x5`, `1-3-5-2-4`. A grid goes inside-out.
 */
export function readOrderAsked(text: string): OrderInput | OrderProblem {
  const words = text.trim().replace(/×/g, 'x');
  const grid = /^(grid|inside-out|outside-in)\s+(\d+)\s*x\s*(\d+)$/i.exec(words);
  if (grid?.[1]) {
    const [rows, columns] = [Number(grid[2]), Number(grid[3])];
    const pattern = grid[1].toLowerCase() === 'outside-in' ? 'outside-in' : 'inside-out';
    return { pattern, count: rows * columns, layout: { rows, columns } };
  }
  const counted = /^(star|cross|inside-out|outside-in)\s+(?:of\s+)?(\d+)(.*)$/i.exec(words);
  const read = readOrder(counted ? `${counted[1]}${counted[3]}` : words);
  if ('problem' in read)
    return { problem: `“${text.trim()}” is not an order; ask for star 5, cross 12, grid 2x5 or 1-3-5-2-4` };
  if (counted) return { ...read, count: Number(counted[2]) };
  if (typeof read.pattern === 'string') return { problem: `say how many: ${read.pattern} 8` };
  return { ...read, count: read.pattern.length };
}
