// Short ways to quote a file, to place a finding in it and to change it, for the checks of written quantities.
import type { Fix } from '../diagnostics/define.js';
import { type QuantityKind, quantityKinds, rational, unitText, usualUnits } from '../quantity/index.js';
import type { MeasureNode, UnitNode } from '../syntax/tree.js';
import type { Span } from '../text/span.js';

export interface Writer {
  readonly file: string;
  quote(span: Span): string;
  place(span: Span, fixes?: readonly Fix[]): { file: string; span: Span; fixes: readonly Fix[] };
  /** A fix that writes `text` at `span`; its title shows `whole`, the quantity, as it will stand. */
  write(span: Span, text: string, preferred?: boolean, whole?: Span): Fix;
  /** The same at several places of a quantity. */
  writeAll(spans: readonly Span[], text: string, whole: Span): Fix;
}

export function writerOf(file: string, source: string): Writer {
  return {
    file,
    quote: (span) => source.slice(span.start, span.end).replace(/\s+/g, ' '),
    place: (span, fixes = []) => ({ file, span: { start: span.start, end: span.end }, fixes }),
    write(span, text, preferred = false, whole = span) {
      const mended = source.slice(whole.start, span.start) + text + source.slice(span.end, whole.end);
      const edits = [{ file, span: { start: span.start, end: span.end }, text }];
      const fix: Fix = { title: `Write \`${mended.trim()}\``, edits };
      return preferred ? { ...fix, preferred: true } : fix;
    },
    writeAll(spans, text, whole) {
      let mended = '';
      let from = whole.start;
      for (const { start, end } of spans) {
        mended += source.slice(from, start) + text;
        from = end;
      }
      mended += source.slice(from, whole.end);
      const edits = spans.map(({ start, end }) => ({ file, span: { start, end }, text }));
      return { title: `Write \`${mended.trim()}\``, edits };
    },
  };
}

export function unitsIn(node: MeasureNode): UnitNode[] {
  return node.amounts.map((each) => each.unit).filter((unit) => unit !== undefined);
}

/** One fix for each unit that fits the place, in the place of the one written. */
export function kindFixes(node: MeasureNode, kinds: readonly QuantityKind[], at: Writer): Fix[] {
  const [amount] = node.amounts.filter((each) => each.unit);
  if (!amount?.unit || unitsIn(node).length > 1) return [];
  const before = {
    start:
      amount.unit.start > (amount.tolerance?.end ?? 0)
        ? (amount.tolerance?.numberEnd ?? amount.number.end)
        : amount.number.end,
    end: amount.unit.end,
  };
  return usualUnits(kinds).map((unit) =>
    at.write(before, unitText(unit, amount.number.value ?? rational(0)), false, node),
  );
}

export function wanted(kinds: readonly QuantityKind[]): { wanted: string; example: string } {
  return { wanted: phrases(kinds), example: quantityKinds[kinds[0] ?? 'length'].example };
}

/** `a torque or an angle`. */
export function phrases(kinds: readonly QuantityKind[]): string {
  const words = kinds.map((kind) => quantityKinds[kind].phrase);
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}
