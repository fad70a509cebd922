// The order in which clauses of an entry are offered: what the entries of a shop say most stands first; common practice.
// The rest follows in the order of the table.
import { ENTRY_CLAUSES, type ThingKind } from '@baywright/language';

/** Where a clause word stands in the list for a kind: the smaller, the earlier. */
export function clauseRank(kind: ThingKind): (word: string) => number {
  const usual = USUAL[kind] ?? [];
  return (word) => {
    const i = usual.indexOf(word);
    return i >= 0 ? i : usual.length + TABLE.indexOf(word);
  };
}

const TABLE = ENTRY_CLAUSES.map((clause) => clause.word);

const USUAL: Readonly<Partial<Record<ThingKind, readonly string[]>>> = {
  part: ['held by', 'behind', 'number', 'renew', 'clamped by', 'count', 'marked', 'mass'],
  fastener: [
    'class',
    'hex',
    'torque',
    'per',
    'order',
    'renew',
    'number',
    'behind',
    'threadlocker',
    'no torque',
  ],
  connection: ['on', 'held by', 'behind', 'in', 'clamped by', 'marked', 'closes'],
  fluid: ['in', 'SAE', 'API', 'fill', 'until level at', 'per', 'fill at', 'drain at', 'number'],
  limit: ['at least', 'at most', 'new', 'per', 'wear', 'behind'],
  supply: ['number', 'amount', 'container', 'sealant', 'grease', 'cleaner', 'marked'],
  tool: ['rated', 'torque', 'length', 'offset', 'number', 'marked'],
  vehicle: ['years', 'option', 'vin', 'mass'],
  circuit: ['uses', 'bleed at', 'marked', 'behind'],
  adjustment: ['disturbed by', 'limit', 'per', 'behind'],
};
