// Writes the code of a line in its one form.
import type { Line } from '../syntax/tree.js';
import {
  clausePieces,
  guardTermsText,
  guardText,
  itemPieces,
  type Piece,
  rawText,
  ruleText,
} from './clause-text.js';
import { asWritten, measureText, numberText } from './quantity-text.js';

/** The code of a line as pieces. The line must have no finding of its own. */
export function linePieces(text: string, line: Line): Piece[] {
  const whole = (code: string): Piece[] => [{ text: code, start: line.code.start, join: ' ' }];
  const guarded = (code: string, guard: Parameters<typeof guardText>[1] | undefined) =>
    whole(guard === undefined ? code : `${code}, ${guardText(text, guard)}`);
  const raw = (value: Parameters<typeof rawText>[1] | undefined) =>
    value === undefined ? '' : ` ${rawText(text, value)}`;
  switch (line.kind) {
    case 'procedure':
      return whole(`procedure${raw(line.number)}`);
    case 'use':
      return whole(`use${raw(line.path)}`);
    case 'applies': {
      const from = line.from === undefined ? '' : ` from ${numberText(text, line.from)}`;
      const to = line.to === undefined ? '' : ` to ${numberText(text, line.to)}`;
      return guarded(`applies to ${line.vehicle?.text ?? ''}${from}${to}`, line.guard);
    }
    case 'sides':
      return listed('sides', line.sides, line.code.start);
    case 'values':
      return listed('', line.values, line.code.start);
    case 'accept':
      return listed('accept', line.codes, line.code.start);
    case 'labour':
      return guarded(`labour ${line.time === undefined ? '' : measureText(text, line.time)}`, line.guard);
    case 'repeat':
      return whole(`repeat${line.times === undefined ? '' : ` ${measureText(text, line.times)}`}`);
    case 'clip':
      return whole(
        `clip${raw(line.path)}${line.at === undefined ? '' : ` at ${measureText(text, line.at)}`}`,
      );
    case 'perform': {
      const side = line.side === undefined ? '' : `, side ${line.side.text}`;
      const from = line.from === undefined ? '' : ` from${raw(line.from)}`;
      return guarded(`perform ${line.operation?.text ?? ''}${from}${side}`, line.guard);
    }
    case 'when':
      return whole(`when ${line.guard === undefined ? '' : guardTermsText(text, line.guard)}`);
    case 'clauses':
      return clausePieces(text, line.clauses, line.guard, 'nothing');
    case 'prerequisite': {
      const head = `${line.name.text}${line.value === undefined ? '' : ` ${line.value.text}`}`;
      return [...whole(head), ...clausePieces(text, line.clauses, line.guard, 'words')];
    }
    case 'statement': {
      const items = itemPieces(text, line.items);
      const clauses = clausePieces(text, line.clauses, line.guard, items.length > 0 ? 'names' : 'verb');
      return [...whole(line.verb.text), ...items, ...clauses];
    }
    case 'rule':
      return line.clauses.map((clause, i) => ({
        text: ruleText(text, clause),
        start: clause.start,
        join: i === 0 ? ' ' : ', ',
      }));
    default:
      // These hold words and numbers in a fixed order: only their blanks can differ.
      return whole(asWritten(text, line.code).trim().replace(/ ?, ?/g, ', '));
  }
}

function listed(
  head: string,
  names: readonly { readonly text: string; readonly start: number }[],
  start: number,
): Piece[] {
  const list: Piece[] = names.map((name, i) => ({
    text: name.text,
    start: name.start,
    join: i === 0 ? ' ' : ', ',
  }));
  return head === '' ? list : [{ text: head, start, join: ' ' }, ...list];
}
