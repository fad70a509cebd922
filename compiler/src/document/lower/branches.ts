// The condition of a branch in words, with the line it asks about, and what the page needs to strike it out.
import { type Line, type PhraseId, phrase } from '@baywright/language';
import type { Depends } from '../blocks.js';
import { type Prose, plain, text } from '../inline.js';
import { lineProse } from './line-words.js';
import type { RowAt } from './uses.js';
import type { Asked, Walk } from './walk.js';

type IfLine = Extract<Line, { kind: 'if' }>;

const PHRASE_OF: Readonly<Record<NonNullable<IfLine['test']>, PhraseId>> = {
  below: 'if-below',
  above: 'if-above',
  outside: 'if-outside',
  within: 'if-within',
  rejected: 'if-rejected',
  needed: 'if-needed',
};

/** `If 2.6 is below 22.0 mm:` */
export function branchHeading(walk: Walk, line: IfLine, row: RowAt | undefined): Prose {
  const { language } = walk.print;
  const asked = askedBy(walk, line, row);
  const test = line.test ?? 'needed';
  if (test === 'needed' || !asked)
    return [text(`${phrase('if-needed', language)}${phrase('colon', language)}`)];
  const bound = boundOf(asked, test) ?? phrase('the-limit', language);
  const id = isLevel(asked, test)
    ? test === 'below'
      ? 'if-level-below'
      : 'if-level-above'
    : PHRASE_OF[test];
  return [...lineProse(id, language, { object: asked, limit: bound }), text(phrase('colon', language))];
}

function askedBy(walk: Walk, line: IfLine, row: RowAt | undefined): Asked | undefined {
  if (line.subject) return walk.asked.get(line.subject.text);
  const found = [...walk.asked.values()].find((asked) => asked.row === row?.row);
  return found ?? (row ? { ...row, limits: [] } : undefined);
}

/** The end of the limit that the test is about; undefined where it differs by vehicle or is not known. */
function boundOf(asked: Asked, test: NonNullable<IfLine['test']>): string | undefined {
  const [limit, ...others] = asked.limits;
  if (!limit || others.length > 0) return undefined;
  if (test === 'below') return limit.ends.low;
  if (test === 'above') return limit.ends.high;
  return limit.low !== undefined && limit.high !== undefined ? plain(limit.limit) : undefined;
}

/** Which outcome the branch waits for; undefined where no row decides. */
export function dependsOf(walk: Walk, line: IfLine, row: RowAt | undefined): Depends | undefined {
  const asked = askedBy(walk, line, row);
  const test = line.test ?? 'needed';
  if (!asked || test === 'needed') return undefined;
  return { row: asked.row, result: isLevel(asked, test) ? 'bad' : (RESULT_OF[test] ?? 'bad') };
}

/** A level is looked at and not measured: it is at its mark or not. */
const isLevel = ({ limits }: Asked, test: NonNullable<IfLine['test']>): boolean =>
  limits.length === 0 && (test === 'below' || test === 'above');

const RESULT_OF: Readonly<Partial<Record<NonNullable<IfLine['test']>, Depends['result']>>> = {
  within: 'good',
  below: 'low',
  above: 'high',
};
