// The words that start a line, by what their colon means, for the editor grammar; all from the tables of the language.
import { HEADS, type HeadClass, type HeadDef } from '../../language/src/vocabulary/heads.js';
import { RULE_WORDS as RULES } from '../../language/src/vocabulary/rule-words.js';
import { SECTIONS } from '../../language/src/vocabulary/sections.js';

const words = (fits: (head: HeadDef) => boolean): string[] => HEADS.filter(fits).map((head) => head.word);
const ofClass = (wanted: HeadClass): string[] => words((head) => head.class === wanted);

/** Heads that carry a title and hold code below. */
export const TITLED_HEADS = ofClass('titled');

/** Heads whose text is for the technician; deeper lines are text too. Signal words stand apart. */
export const PROSE_HEADS = words((head) => head.class === 'prose' && head.kind !== 'message');

/** Heads that guard the block below them. */
export const BLOCK_HEADS = ofClass('block');

/** Lines at the top of a file that are neither titles nor sections. */
export const FILE_HEADS = words((head) => head.class === 'plain' && head.contexts.includes('file'));

/** Statements that are not verbs on things. */
export const STEP_HEADS = words((head) => head.class === 'plain' && head.contexts.includes('step'));

/** Forms and clauses of house rules. */
export const RULE_WORDS = RULES.filter(
  (rule) => rule.part !== 'pattern' && !['next', 'step ends'].includes(rule.word),
).map((rule) => rule.word);

/** Words of rule patterns, of guards and of file lines. */
export const GUARD_WORDS = [
  'any',
  'it',
  'over',
  'not',
  'only when',
  'when',
  'limit',
  'below',
  'above',
  'outside',
  'within',
  'rejected',
  'needed',
  'next',
  'step ends',
  'by',
  'on',
  'from',
];

export const JOINERS = ['then', 'and', 'or', 'back', 'to'];

export const DECLARING_SECTIONS = SECTIONS.filter(
  (s) => s.declares !== undefined && s.declares !== 'rule',
).map((s) => s.word);
export const WORK_SECTIONS = SECTIONS.filter((s) => s.work === true).map((s) => s.word);
