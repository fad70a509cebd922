// Q119: figures in the text that the file should say once: torques, and values that a thing on the line declares.
import { type Finding, finding } from '../diagnostics/define.js';
import { numberInText } from '../diagnostics/quantities.js';
import type { Thing } from '../names/model.js';
import {
  isSpace,
  type Rational,
  readNumber,
  readUnit,
  resolveUnit,
  toSI,
  type Unit,
  valueToSI,
} from '../quantity/index.js';
import type { Prose } from '../syntax/tree.js';
import type { Check } from './check.js';
import { workLines } from './own-lines.js';

export const numbersInText: Check = ({ job }) => {
  const { file } = job;
  const found: Finding[] = [];
  for (const { line, statement } of workLines(job)) {
    if (!line.prose || line.broken || line.kind === 'step' || line.kind === 'operation') continue;
    const things = statement
      ? [...statement.objects, ...statement.clauses.flatMap((c) => statement.named(c.word))].flatMap(
          ({ thing }) => (thing ? [thing] : []),
        )
      : [];
    for (const figure of figuresIn(line.prose, file.tree.text)) {
      const reference = referenceTo(figure, things);
      if (reference === undefined && figure.unit.kind !== 'torque') continue;
      const span = { start: figure.start, end: figure.end };
      const fixes =
        reference === undefined
          ? []
          : [
              {
                title: `Write {${reference}}`,
                edits: [{ file: file.path, span, text: `{${reference}}` }],
                preferred: true as const,
              },
            ];
      found.push(
        finding(
          numberInText,
          { file: file.path, span, fixes },
          { written: file.tree.text.slice(figure.start, figure.end), reference },
        ),
      );
    }
  }
  return found;
};

interface Figure {
  readonly start: number;
  readonly end: number;
  readonly value: Rational;
  readonly unit: Unit;
}

/** Numbers with a unit in a text. */
function figuresIn(prose: Prose, text: string): Figure[] {
  const found: Figure[] = [];
  for (const line of prose.lines) {
    for (let at = line.start; at < line.end; ) {
      const before = text.charCodeAt(at - 1);
      const starts =
        isDigit(text.charCodeAt(at)) && (isSpace(before) || at === line.start || text[at - 1] === '(');
      const number = starts ? readNumber(text, at) : undefined;
      if (!number) {
        at += 1;
        continue;
      }
      const read = number.end <= line.end ? readUnit(text, number.end) : undefined;
      const unit = read && read.end <= line.end ? resolveUnit(read) : undefined;
      if (read && unit) found.push({ start: at, end: read.end, value: number.value, unit });
      at = Math.max(read && unit ? read.end : number.end, at + 1);
    }
  }
  return found;
}

/** `hub-bolt torque`, when a thing on the line declares just this value. */
function referenceTo({ value, unit }: Figure, things: readonly Thing[]): string | undefined {
  const wanted = valueToSI(value, unit);
  for (const thing of things) {
    for (const [word, clauses] of thing.clauses) {
      const stages = clauses.flatMap(({ clause }) => clause.spec?.stages ?? []);
      const is = stages.some(
        ({ measure: { measure } }) =>
          measure?.unit.kind === unit.kind && toSI(measure).nominal?.compare(wanted) === 0,
      );
      if (is) return word === 'bare' ? thing.name : `${thing.name} ${word.replaceAll(' ', '-')}`;
    }
  }
  return undefined;
}

function isDigit(code: number): boolean {
  return code >= 0x30 && code <= 0x39;
}
