// "You will need": worked out from the rows, not written by hand.
import { phrase } from '@baywright/language';
import type { NeedRow } from '../blocks.js';
import { text } from '../inline.js';
import { capitalFirst } from './names.js';
import { rowsProse, strong } from './need-words.js';
import { amountRows } from './needs-amounts.js';
import { freshRows, lockerRows, type StockRow } from './needs-stock.js';
import { socketRows, toolRows, wrenchRows } from './needs-tools.js';
import { wasteRows } from './needs-waste.js';
import type { Print } from './print.js';
import { titleOf } from './texts.js';

export interface NeedGroup {
  readonly title: string;
  readonly rows: readonly StockRow[];
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
    ...fromCounter(print),
    { title: phrase('drained-off', language), rows: wasteRows(print) },
  ];
  return groups.filter(({ rows }) => rows.length > 0);
}

/** The groups of the pull sheet, which has a column for amounts. */
export function stockGroups(print: Print): { readonly title: string; readonly rows: readonly NeedRow[] }[] {
  return fromCounter(print).map(({ title, rows }) => ({
    title,
    rows: rows.map(({ pieces, ...row }) =>
      pieces === undefined ? row : { ...row, amount: [text(String(pieces))] },
    ),
  }));
}

/** What comes from the parts counter. */
function fromCounter(print: Print): NeedGroup[] {
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

function wornRows(print: Print): NeedRow[] {
  const names = [...print.uses.worn.keys()].map((thing) => capitalFirst(titleOf(print, thing)));
  return names.length === 0 ? [] : [{ what: [strong(names.join(', '))], for: [] }];
}

function placedRows(print: Print): NeedRow[] {
  return [...print.uses.placed].map(([thing, at]) => ({
    what: [strong(capitalFirst(titleOf(print, thing)))],
    for: rowsProse(at),
  }));
}
