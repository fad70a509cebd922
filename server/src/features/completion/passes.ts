// The usual passes of a flange, offered behind a torque of many bolts.
import {
  type Amount,
  digitsFor,
  formatMeasure,
  magnitude,
  parseQuantity,
  rational,
  roundTo,
  tighteningCount,
  trade,
} from '@baywright/language';
import { CompletionItemKind } from 'vscode-languageserver';
import type { Snapshot } from '../../snapshot.js';
import type { Offer } from './answer.js';
import { type Cursor, entryOf } from './cursor.js';

/**
 * Behind `torque 90 N·m ` of eight bolts: `27 N·m then 54 N·m then 90 N·m`. None where the torque is more than one
 * figure, or where the set has no flange's count of bolts.
 */
export function passesOffers(snapshot: Snapshot, cursor: Cursor, behindWord: string): Offer[] {
  const { say, text } = snapshot;
  const written = behindWord.trim();
  const start = cursor.replaces.start - behindWord.trimStart().length;
  const entry = entryOf(cursor);
  const set = entry && snapshot.job().scope.resolve(entry.head.text);
  const usual = set && trade.usualStages(tighteningCount(set));
  const read = usual && parseQuantity(written, { expected: ['torque'] });
  if (!read || !('measure' in read) || !text.startsWith(written, start)) return [];
  const { measure: last } = read;
  if (last.form !== 'amount' || last.plus !== undefined || last.unit.kind !== 'torque') return [];
  const [first = written, ...more] = usual.percent.map((percent) =>
    percent === 100 ? written : formatMeasure(shareOf(last, percent)),
  );
  return [
    {
      label: [first, ...more].join(' then '),
      kind: CompletionItemKind.Value,
      docs: say.inPasses(usual.percent.length, usual.source),
      insert: more.map((stage) => `then ${stage}`).join(' '),
      also: [{ file: snapshot.path, span: { start, end: start + written.length }, text: first }],
    },
  ];
}

/** Two digits are as near as a wrench is set for a pass that is not the last. */
function shareOf({ unit, value }: Amount, percent: number): Amount {
  const exact = value.mul(rational(BigInt(percent), 100n));
  const rounded = roundTo(exact, 1 - magnitude(exact));
  return { form: 'amount', value: rounded, unit, digits: digitsFor(rounded) };
}
