// Blanks of the record that a line asks for: the road test, the return visit, what is weighed or written down.
import { type BoundItem, type BoundStatement, phrase, phraseText, type Thing } from '@baywright/language';
import { plain, text } from '../inline.js';
import { quantityInline } from './measures.js';
import { capitalFirst } from './names.js';
import type { Print } from './print.js';
import { titleOf } from './texts.js';

export function noteFields(print: Print, statement: BoundStatement, objects: readonly BoundItem[]): void {
  const { language } = print;
  const { records, later } = statement.verb;
  const things = objects.flatMap(({ thing }) => (thing ? [thing] : []));
  if (records === 'objects') {
    // Limits are recorded where they are measured, the odometer at the head of the record.
    for (const thing of things)
      if (thing.kind !== 'limit' && thing.name !== 'odometer')
        addField(print, `record-${thing.name}`, recordLabel(print, thing));
    return;
  }
  if (records !== 'drive' && !later) return;
  const measure = (statement.clause('after') ?? statement.clause('bare'))?.spec?.stages[0]?.measure.measure;
  const amount = measure && plain([quantityInline(measure, print)]);
  const object = things.map((thing) => capitalFirst(titleOf(print, thing))).join(', ');
  const key = records === 'drive' ? 'road-test' : `recheck-${things.map(({ name }) => name).join('-')}`;
  const label =
    records === 'drive'
      ? [phrase('road-test', language), amount].filter((words) => words !== undefined).join(', ')
      : amount === undefined
        ? phraseText('recheck-of', language, { object })
        : phraseText('recheck-after', language, { object, amount });
  addField(print, key, label);
}

/** Of stuff it is the amount that is written down. */
function recordLabel(print: Print, thing: Thing): string {
  const title = capitalFirst(titleOf(print, thing));
  return thing.kind === 'fluid' || thing.kind === 'supply'
    ? phraseText('amount-of', print.language, { object: title })
    : title;
}

function addField({ uses }: Print, key: string, label: string): void {
  const alike = uses.fields.filter((field) => field.key === key || field.key.startsWith(`${key}-again-`));
  if (alike.some((field) => plain(field.label) === label)) return;
  // A second drive, or a second visit, has a blank of its own.
  const own = alike.length === 0 ? key : `${key}-again-${alike.length}`;
  uses.fields.push({ key: own, label: [text(label)], lines: 2, input: 'text' });
}
