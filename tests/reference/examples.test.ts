// Every example of the reference reads as the page says: without a finding of grammar, as the word it stands for.
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { bindFile } from '../../language/src/names/bind.js';
import { everyLine } from '../../language/src/names/job.js';
import { parseQuantity } from '../../language/src/quantity/parse-quantity.js';
import { referencePages } from '../../language/src/reference/index.js';
import { QUANTITY_EXAMPLES } from '../../language/src/reference/quantities.js';
import { readRule } from '../../language/src/rules/rule-model.js';
import { parse } from '../../language/src/syntax/index.js';
import type { Line } from '../../language/src/syntax/tree.js';
import { VERBS } from '../../language/src/verbs/index.js';
import { ENTRY_CLAUSES, STEP_CLAUSES } from '../../language/src/vocabulary/clauses.js';
import {
  ENTRY_CLAUSE_EXAMPLES,
  HEAD_EXAMPLES,
  SECTION_EXAMPLES,
  STEP_CLAUSE_EXAMPLES,
} from '../../language/src/vocabulary/examples.js';
import { HEADS, type LineContext } from '../../language/src/vocabulary/heads.js';
import { RULE_WORDS } from '../../language/src/vocabulary/rule-words.js';
import { SECTIONS } from '../../language/src/vocabulary/sections.js';
import { GENERATED_FILES, REFERENCE_FOLDER } from '../generated/files.js';
import { findingsOf } from '../suite-helper.js';

const TITLE = 'procedure A-1: Hub\n\n';
const inStep = (line: string): string => `${TITLE}removal\n  step: Work\n    ${line}\n`;
const linesOf = (text: string): Line[] => {
  const { tree, findings } = parse(text, 'a.bay');
  expect(
    findings.map((each) => `${each.code} ${each.message}`),
    text,
  ).toEqual([]);
  return [...everyLine(tree.lines)];
};

/** What a statement has that its verb does not take, or the other way round. */
const MISUSED = /^(?:G|Q|N203|N204|N207|N208|N209|N21)/;

describe('examples of verbs', () => {
  it.each(VERBS.map((verb) => [verb.word, verb.example] as const))('%s', (word, example) => {
    const statement = linesOf(inStep(example)).find((line) => line.kind === 'statement');
    expect(statement?.verb.text).toBe(word);
    // Its things are not declared here; that it has what the verb asks for can be told without them.
    const found = findingsOf(new Map([['a.bay', inStep(example)]]));
    expect(found.filter((each) => MISUSED.test(each.code)).map((each) => each.message)).toEqual([]);
  });
});

describe('examples of clauses', () => {
  it.each(ENTRY_CLAUSES.map((clause) => [clause.word, clause] as const))('of entries: %s', (word, clause) => {
    const example = ENTRY_CLAUSE_EXAMPLES[word] ?? '(none)';
    for (const kind of clause.on) {
      const section = SECTIONS.find((each) => each.declares === kind)?.word ?? '(none)';
      const lines = linesOf(`${TITLE}${section}\n  thing: Thing\n    ${example}\n`);
      expect(
        lines.flatMap((line) => (line.kind === 'clauses' ? line.clauses.map((c) => c.word) : [])),
      ).toContain(word);
    }
  });

  it.each(STEP_CLAUSES.map((clause) => clause.word))('of statements: %s', (word) => {
    const lines = linesOf(inStep(STEP_CLAUSE_EXAMPLES[word] ?? '(none)'));
    const words = lines.flatMap((line) => (line.kind === 'statement' ? line.clauses.map((c) => c.word) : []));
    const sides = lines.flatMap((line) => (line.kind === 'perform' && line.side ? ['side'] : []));
    expect([...words, ...sides]).toContain(word);
    const found = findingsOf(new Map([['a.bay', inStep(STEP_CLAUSE_EXAMPLES[word] ?? '(none)')]]));
    expect(found.filter(({ code }) => MISUSED.test(code)).map(({ message }) => message)).toEqual([]);
  });
});

describe('examples of lines', () => {
  it.each(HEADS.map((head) => [head.word, head] as const))('%s', (word, head) => {
    const [context = 'file'] = head.contexts;
    const text = around(context, HEAD_EXAMPLES[word] ?? '(none)', head.class === 'block', word);
    expect(linesOf(text).some((line) => line.head.text === word)).toBe(true);
  });

  it.each(SECTIONS.map((section) => section.word))('section %s', (word) => {
    const lines = linesOf(`${TITLE}${SECTION_EXAMPLES[word] ?? ''}\n`);
    expect(lines.some((line) => line.kind === 'section' && line.word === word)).toBe(true);
  });
});

describe('examples of rules', () => {
  it.each(RULE_WORDS.map((each) => [each.word, each] as const))('%s', (word, { example }) => {
    const text = `catalogue: Rules\n\nrules\n  rule: A rule.\n${example.map((line) => `    ${line}\n`).join('')}`;
    linesOf(text);
    expect(example.join('\n')).toMatch(new RegExp(`\\b${word}\\b`));
    const [thing] = bindFile('a.bay', parse(text, 'a.bay').tree).things;
    expect(thing && readRule(thing, false)).toBeDefined();
  });
});

it('quantities of the page are read', () => {
  const unread = QUANTITY_EXAMPLES.filter(([written]) => 'problem' in parseQuantity(written));
  expect(unread).toEqual([]);
});

it('has no page that nothing makes', () => {
  const made = GENERATED_FILES.map((file) => file.path);
  const there = readdirSync(new URL(`../../${REFERENCE_FOLDER}`, import.meta.url), {
    recursive: true,
    encoding: 'utf8',
  }).filter((name) => name.endsWith('.md'));
  expect(there.filter((name) => !made.includes(`${REFERENCE_FOLDER}/${name.replaceAll('\\', '/')}`))).toEqual(
    [],
  );
});

it('links only to pages that exist', () => {
  const pages = referencePages();
  const paths = new Set(pages.map((page) => page.path));
  for (const { path, text } of pages) {
    for (const [, link = ''] of text.matchAll(/\]\(([^)#]+\.md)/g)) {
      if (link.startsWith('../')) continue;
      const target = new URL(link, `http://a/${path}`).pathname.slice(1);
      expect(paths.has(target), `${path} links to ${link}`).toBe(true);
    }
  }
});

/** An example where its words may stand, with a line below it if it holds a block. */
function around(context: LineContext, example: string, isBlock: boolean, word: string): string {
  const at = (indent: string): string => `${indent}${example}${isBlock ? `\n${indent}  wait 1 min` : ''}\n`;
  switch (context) {
    case 'file':
      return word === 'procedure' || word === 'catalogue' ? at('') : `${TITLE}${at('')}`;
    case 'prerequisites':
      return isBlock
        ? `${TITLE}prerequisites\n  ${example}\n    item: Level floor.\n`
        : `${TITLE}prerequisites\n${at('  ')}`;
    case 'entry':
      return `${TITLE}parts\n  thing: Thing\n${at('    ')}`;
    case 'work':
    case 'operation':
      if (word === 'operation') return `${TITLE}removal\n${at('  ')}    step: Work\n      wait 1 min\n`;
      return word === 'step'
        ? `${TITLE}removal\n${at('  ')}    wait 1 min\n`
        : `${TITLE}removal\n  step: Work\n${at('    ')}`;
    case 'statement':
      return `${TITLE}removal\n  step: Work\n    inspect hub\n${at('      ')}`;
    default: {
      const before = word === 'otherwise' ? '    inspect hub\n    if rejected\n      wait 1 min\n' : '';
      return `${TITLE}removal\n  step: Work\n${before}${at('    ')}`;
    }
  }
}
