// Builds the TextMate grammar from the tables of the language: sections, signals, clauses, verbs, units. It colours
// a file where no server runs (a viewer on the web, a diff, an untrusted folder); semantic tokens refine it.
import { ambiguousSpellings } from '../../language/src/quantity/ambiguous.js';
import { units } from '../../language/src/quantity/unit-table.js';
import { VERBS } from '../../language/src/verbs/index.js';
import { ENTRY_CLAUSES, STEP_CLAUSES } from '../../language/src/vocabulary/clauses.js';
import { SIGNALS } from '../../language/src/vocabulary/signals.js';
import * as heads from './heads.js';
import { CODE, COLON, COMMENT, NAME, NUMBER, oneOf, oneUnit } from './patterns.js';

export interface GrammarRule {
  readonly [key: string]: unknown;
}

/** The grammar as the object that `syntaxes/baywright.tmLanguage.json` holds. */
export function buildGrammar(): GrammarRule {
  return {
    $schema: 'https://raw.githubusercontent.com/martinring/tmlanguage/master/tmlanguage.json',
    name: 'Baywright',
    scopeName: 'source.baywright',
    fileTypes: ['bay'],
    patterns: includes(
      'comment',
      'declaring-section',
      'rules-section',
      'prerequisites-section',
      'work-section',
      'file-line',
    ),
    repository: { ...sections(), ...lines(), ...code(), ...prose() },
  };
}

/** Lines deeper than the line that began, and blank lines between them. */
const BELOW = '^(?:\\1[ \\t]+(?=\\S)|[ \\t]*$)';

/** A section runs from its word to the next line that starts at the margin and is no comment. */
function section(words: readonly string[], name: string, inside: readonly string[]): GrammarRule {
  return {
    name: `meta.section.${name}.baywright`,
    begin: `^(${words.join('|')})(?=[ \\t]*(?:${COLON}|$))`,
    beginCaptures: { 1: { name: 'keyword.control.section.baywright entity.name.section.baywright' } },
    end: '^(?=[^\\s#]|#[^ \\t#])',
    patterns: includes(...inside),
  };
}

function sections(): Record<string, GrammarRule> {
  return {
    'declaring-section': section(heads.DECLARING_SECTIONS, 'declarations', [
      'comment',
      'prose-head',
      'block-head',
      'entry',
      'remark-block',
      'clause-line',
    ]),
    'rules-section': section(['rules'], 'rules', ['comment', 'prose-head', 'entry', 'rule-line']),
    'prerequisites-section': section(['prerequisites'], 'prerequisites', [
      'comment',
      'prose-head',
      'block-head',
      'clause-line',
    ]),
    'work-section': section(heads.WORK_SECTIONS, 'work', [
      'comment',
      'titled-head',
      'prose-head',
      'block-head',
      'remark-block',
      'statement',
      'clause-line',
    ]),
  };
}

function lines(): Record<string, GrammarRule> {
  const verbs = VERBS.map((row) => row.word);
  const verb = oneOf([...verbs, ...heads.STEP_HEADS]);
  return {
    comment: { match: COMMENT, captures: { 1: { name: 'comment.line.number-sign.baywright' } } },
    'file-line': {
      patterns: [
        ...includes('titled-head', 'prose-head'),
        line(oneOf(heads.FILE_HEADS), 'keyword.control.file.baywright'),
        line(oneOf(heads.BLOCK_HEADS), 'keyword.control.guard.baywright'),
      ],
    },
    'titled-head': {
      begin: `^[ \\t]*(${oneOf(heads.TITLED_HEADS)})[ \\t]*(${CODE})[ \\t]*(${COLON})`,
      beginCaptures: {
        1: { name: 'keyword.control.title.baywright' },
        2: { name: 'entity.name.function.baywright' },
        3: { name: 'punctuation.separator.colon.baywright' },
      },
      end: '$',
      contentName: 'markup.heading.baywright',
      patterns: includes('reference'),
    },
    'prose-head': {
      name: 'meta.prose.baywright',
      begin: `^([ \\t]*)(?:${SIGNALS.map((signal) => `(${oneOf([signal])})`).join('|')}|(${oneOf(heads.PROSE_HEADS)}))(${CODE})(?:(${COLON})(.*))?$`,
      beginCaptures: Object.fromEntries([
        ...SIGNALS.map((signal, index) => [
          index + 2,
          { name: `keyword.control.signal.${signal}.baywright markup.bold.baywright` },
        ]),
        [SIGNALS.length + 2, { name: 'keyword.control.text.baywright' }],
        [SIGNALS.length + 3, { patterns: includes('code') }],
        [SIGNALS.length + 4, { name: 'punctuation.separator.colon.baywright' }],
        [SIGNALS.length + 5, { patterns: includes('prose-text') }],
      ]),
      while: BELOW,
      patterns: includes('comment', 'prose-text'),
    },
    'block-head': line(oneOf(heads.BLOCK_HEADS), 'keyword.control.guard.baywright'),
    entry: {
      // At the first level any name is an entry; deeper, under `when`, a clause word with a remark is not one.
      begin: `^(?:(?: {1,3}|\\t)(?=\\S)|[ \\t]+(?!${oneOf(ENTRY_CLAUSES.map((clause) => clause.word))}))(${NAME})[ \\t]*(${COLON})(?=[ \\t]*\\S)`,
      beginCaptures: {
        1: { name: 'entity.name.type.entry.baywright' },
        2: { name: 'punctuation.separator.colon.baywright' },
      },
      end: '$',
      contentName: 'markup.heading.entry.baywright',
      patterns: includes('reference'),
    },
    'remark-block': {
      name: 'meta.prose.baywright',
      begin: `^([ \\t]*)(${verb})?(${CODE})(${COLON})[ \\t]*$`,
      beginCaptures: {
        2: { name: 'support.function.verb.baywright' },
        3: { patterns: includes('code') },
        4: { name: 'punctuation.separator.colon.baywright' },
      },
      while: BELOW,
      patterns: includes('comment', 'prose-text'),
    },
    statement: line(verb, 'support.function.verb.baywright'),
    'rule-line': {
      begin: '^[ \\t]*(?=\\S)',
      end: '$',
      patterns: [
        { match: oneOf(heads.RULE_WORDS), name: 'keyword.control.rule.baywright' },
        {
          match: `(?<=(?:after|before|never|every|require|since|or)[ \\t])${oneOf(verbs)}`,
          name: 'support.function.verb.baywright',
        },
        ...includes('remark', 'code'),
      ],
    },
    'clause-line': { begin: '^[ \\t]*(?=\\S)', end: '$', patterns: includes('remark', 'code') },
  };
}

/** A line that starts with `word`: code up to the colon, a remark after it. */
function line(word: string, name: string): GrammarRule {
  return {
    begin: `^[ \\t]*(${word})`,
    beginCaptures: { 1: { name } },
    end: '$',
    patterns: includes('remark', 'code'),
  };
}

function code(): Record<string, GrammarRule> {
  const clauses = [...ENTRY_CLAUSES, ...STEP_CLAUSES].map((clause) => clause.word);
  const spellings = [...units, ...ambiguousSpellings].flatMap((row) => row.spellings);
  return {
    remark: {
      begin: COLON,
      beginCaptures: { 0: { name: 'punctuation.separator.colon.baywright' } },
      end: '$',
      contentName: 'meta.prose.baywright',
      patterns: includes('prose-text'),
    },
    code: {
      patterns: includes(
        'quoted',
        'day',
        'count',
        'hole',
        'thread',
        'quantity',
        'clause',
        'joiner',
        'name',
        'separator',
      ),
    },
    quoted: { match: '(?<![\\d½¼¾])"[^"\\n]*"', name: 'string.quoted.double.baywright' },
    hole: { match: '\\?', name: 'constant.language.hole.baywright' },
    day: { match: '\\b\\d{4}-\\d{2}-\\d{2}\\b', name: 'constant.numeric.day.baywright' },
    count: {
      match: '(\\d+|\\?)[ \\t]+(of)\\b',
      captures: {
        1: { name: 'constant.numeric.count.baywright' },
        2: { name: 'keyword.other.count.baywright' },
      },
    },
    thread: {
      match:
        '(?<![\\p{L}\\p{N}])(?:M\\d+(?:[.,]\\d+)?(?:[x×]\\d+(?:[.,]\\d+)?)?|(?:#\\d+|\\d+(?:[ -]\\d+/\\d+)?|\\d+/\\d+)-\\d+[ \\t]*(?:UN[CFSEJR]*|NPT[F]?|UNEF)|G\\d+(?:/\\d+)?|Rp?\\d+(?:/\\d+)?)(?![\\p{L}\\p{N}])',
      name: 'constant.other.thread.baywright',
    },
    quantity: {
      match: `((?:/?(?:\\+/-|[±+−-])[ \\t]*)?(?:${NUMBER}))(?:[ \\u00A0\\u202F]*(${oneUnit(spellings)}))?`,
      captures: {
        1: { name: 'constant.numeric.quantity.baywright' },
        2: { name: 'keyword.other.unit.baywright' },
      },
    },
    clause: { match: oneOf([...clauses, ...heads.GUARD_WORDS]), name: 'keyword.other.clause.baywright' },
    joiner: { match: oneOf(heads.JOINERS), name: 'keyword.operator.word.baywright' },
    name: { match: NAME, name: 'variable.other.name.baywright' },
    separator: { match: ',', name: 'punctuation.separator.comma.baywright' },
  };
}

function prose(): Record<string, GrammarRule> {
  return {
    'prose-text': {
      patterns: [
        ...includes('reference'),
        { match: '\\\\[{#*_\\\\]', name: 'constant.character.escape.baywright' },
        { match: '(\\*\\*|__)(?=\\S)(.+?)(?<=\\S)\\1', name: 'markup.bold.baywright' },
        {
          match: '(?<![\\p{L}\\p{N}*_])([*_])(?=\\S)([^*_]+?)(?<=\\S)\\1(?![\\p{L}\\p{N}*_])',
          name: 'markup.italic.baywright',
        },
        { match: '`[^`]+`', name: 'markup.inline.raw.baywright' },
        {
          match: '(?:^|\\G)[ \\t]*(-)(?=[ \\t])',
          captures: { 1: { name: 'punctuation.definition.list.begin.baywright' } },
        },
      ],
    },
    reference: {
      name: 'meta.reference.baywright',
      begin: '(?<!\\\\)\\{',
      beginCaptures: { 0: { name: 'punctuation.definition.reference.begin.baywright' } },
      end: '\\}|$',
      endCaptures: { 0: { name: 'punctuation.definition.reference.end.baywright' } },
      patterns: [
        { match: `(?<=\\{)[ \\t]*(${NAME})`, captures: { 1: { name: 'variable.other.name.baywright' } } },
        { match: '\\d+', name: 'constant.numeric.baywright' },
        { match: NAME, name: 'keyword.other.attribute.baywright' },
      ],
    },
  };
}

function includes(...names: readonly string[]): GrammarRule[] {
  return names.map((name) => ({ include: `#${name}` }));
}
