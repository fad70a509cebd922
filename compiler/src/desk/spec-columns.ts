// The columns in which specifications go out to a spreadsheet and come back: clause words, and count and thread apart.
import { ENTRY_CLAUSES, SECTIONS, type ThingKind } from '@baywright/language';

/** Kinds whose entries are specifications; the others are sentences or lists. */
const KINDS: readonly ThingKind[] = [
  'part',
  'fastener',
  'connection',
  'fluid',
  'adjustment',
  'limit',
  'supply',
  'tool',
];

/** The column of the condition of a row: `axle heavy`. */
export const WHEN = 'when';

const WORDS = ENTRY_CLAUSES.filter(
  ({ shape, on }) => shape !== 'reason' && shape !== 'option' && on.some((kind) => KINDS.includes(kind)),
).map(({ word }) => word);

export const COLUMN_WORDS = {
  kinds: KINDS as readonly string[],
  clauses: [...new Set(['count', 'thread', ...WORDS.filter((word) => word !== 'of')])] as readonly string[],
  sections: SECTIONS.filter(({ declares }) => declares !== undefined && KINDS.includes(declares)).map(
    ({ word }) => word,
  ),
  sectionOf: (kind: string): string => SECTIONS.find(({ declares }) => declares === kind)?.word ?? '',
  shapeOf: (word: string): string | undefined => ENTRY_CLAUSES.find((clause) => clause.word === word)?.shape,
};
