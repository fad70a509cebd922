/** Reads an order as it is written in a clause: `inside-out, 2 rows`. */
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
