// Blanks of the record that a line asks for: the road test, and the return visit after some distance.
import { type BoundItem, type BoundStatement, phrase, phraseText } from '@baywright/language';
import { plain, text } from '../inline.js';
import { quantityInline } from './measures.js';
import { capitalFirst } from './names.js';
import type { Print } from './print.js';
import { titleOf } from './texts.js';

export function noteFields(print: Print, statement: BoundStatement, objects: readonly BoundItem[]): void {
  const { language, uses } = print;
  const { word } = statement.verb;
  if (word !== 'road-test' && word !== 'recheck') return;
  const things = objects.flatMap(({ thing }) => (thing ? [thing] : []));
  const key = word === 'road-test' ? word : `recheck-${things.map(({ name }) => name).join('-')}`;
  if (uses.fields.some((field) => field.key === key)) return;
  const measure = (statement.clause('after') ?? statement.clause('bare'))?.spec?.stages[0]?.measure.measure;
  const amount = measure ? plain([quantityInline(measure, print)]) : '?';
  const label =
    word === 'road-test'
      ? `${phrase('road-test', language)}${measure ? `, ${amount}` : ''}`
      : phraseText('recheck-after', language, {
          object: things.map((thing) => capitalFirst(titleOf(print, thing))).join(', '),
          amount,
        });
  uses.fields.push({ key, label: [text(label)], lines: 2, input: 'text' });
}
