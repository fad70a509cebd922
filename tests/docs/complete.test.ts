// Nothing of the language is without a page in the reference, a sample that shows it, and words in every output
// language. That the sample libraries use every word is asked in tests/samples/samples.test.ts.
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { findingFile } from '../../language/src/diagnostics/finding-file.js';
import { DIAGNOSTICS } from '../../language/src/diagnostics/index.js';
import { quantityKinds } from '../../language/src/quantity/dimension.js';
import { units } from '../../language/src/quantity/unit-table.js';
import { referencePages } from '../../language/src/reference/index.js';
import { STARTER_TEXT, starterRules } from '../../language/src/rules/starter.js';
import { VERBS } from '../../language/src/verbs/index.js';
import { ENTRY_CLAUSES, STEP_CLAUSES } from '../../language/src/vocabulary/clauses.js';
import {
  ENTRY_CLAUSE_EXAMPLES,
  HEAD_EXAMPLES,
  SECTION_EXAMPLES,
  STEP_CLAUSE_EXAMPLES,
} from '../../language/src/vocabulary/examples.js';
import { HAZARDS } from '../../language/src/vocabulary/hazards.js';
import { HEADS } from '../../language/src/vocabulary/heads.js';
import { LANGUAGES } from '../../language/src/vocabulary/kinds.js';
import { MAKES, NEEDS } from '../../language/src/vocabulary/needs.js';
import { PHRASES } from '../../language/src/vocabulary/phrases.js';
import { SECTIONS } from '../../language/src/vocabulary/sections.js';
import { SIGNAL_WORDS, SIGNALS } from '../../language/src/vocabulary/signals.js';
import { faultyName } from '../generated/faulty.js';
import { SAMPLES } from '../samples/sample-library.js';
import { sources } from '../tidy/sources.js';

const pages = new Map(referencePages().map((page) => [page.path, page.text]));
const page = (path: string): string => pages.get(path) ?? '';
const missing = (words: readonly string[], has: (word: string) => boolean): string[] =>
  words.filter((word) => !has(word));

describe('the reference has', () => {
  it('a page for every verb', () => {
    expect(
      missing(
        VERBS.map((verb) => verb.word),
        (word) => page(`verbs/${word}.md`).includes('## In print'),
      ),
    ).toEqual([]);
  });

  it('every clause of entries and statements, with an example', () => {
    const words = [...ENTRY_CLAUSES, ...STEP_CLAUSES].map((clause) => clause.word);
    expect(missing(words, (word) => page('clauses.md').includes(`| \`${word}\` |`))).toEqual([]);
    expect(Object.keys(ENTRY_CLAUSE_EXAMPLES).sort()).toEqual(
      ENTRY_CLAUSES.map((clause) => clause.word).sort(),
    );
    expect(Object.keys(STEP_CLAUSE_EXAMPLES).sort()).toEqual(
      STEP_CLAUSES.map((clause) => clause.word).sort(),
    );
  });

  it('every section and every word that opens a line, with an example', () => {
    expect(
      missing(
        SECTIONS.map((section) => section.word),
        (word) => page('sections.md').includes(`### ${word}\n`),
      ),
    ).toEqual([]);
    expect(
      missing(
        HEADS.map((head) => head.word),
        (word) => page('lines.md').includes(`| \`${word}\` |`),
      ),
    ).toEqual([]);
    expect(Object.keys(SECTION_EXAMPLES).sort()).toEqual(SECTIONS.map((section) => section.word).sort());
    expect(Object.keys(HEAD_EXAMPLES).sort()).toEqual(HEADS.map((head) => head.word).sort());
  });

  it('every kind of quantity and every unit', () => {
    const text = page('quantities.md');
    expect(missing(Object.keys(quantityKinds), (kind) => text.includes(`### ${kind}\n`))).toEqual([]);
    expect(missing(Object.keys(quantityKinds), (kind) => units.some((unit) => unit.kind === kind))).toEqual(
      [],
    );
    expect(
      missing(
        units.map((unit) => unit.symbol),
        (symbol) => text.includes(`| \`${symbol}\` |`),
      ),
    ).toEqual([]);
  });

  it('a page for every code', () => {
    const files = DIAGNOSTICS.map((def) => `findings/${findingFile(def)}`);
    expect(missing(files, (path) => page(path).includes('## Right'))).toEqual([]);
  });

  it('every need and every change of a verb, every usual caution, every starter rule', () => {
    const verbs = VERBS.map((verb) => page(`verbs/${verb.word}.md`)).join('\n');
    expect(
      missing([...Object.values(NEEDS), ...Object.values(MAKES)], (docs) => verbs.includes(docs)),
    ).toEqual([]);
    expect(
      missing(
        HAZARDS.map((hazard) => hazard.title),
        (title) => page('cautions.md').includes(title),
      ),
    ).toEqual([]);
    expect(
      missing(
        starterRules().map((rule) => rule.thing.name),
        (name) => page('rules.md').includes(`  ${name}:`),
      ),
    ).toEqual([]);
  });
});

it('the reference has every mark that a check asks for by name', () => {
  const asked = sources()
    .filter(({ path }) => path.startsWith('language/src/'))
    .flatMap(({ text }) => [...text.matchAll(/marks\.(?:includes\(|some\(\(\w+\) => \w+ === )'([\w-]+)'/g)])
    .map(([, mark = '']) => mark);
  const marked = [...STARTER_TEXT.matchAll(/marked ([\w-]+)/g)].map(([, mark = '']) => mark);
  expect(asked.length).toBeGreaterThan(3);
  expect(missing([...asked, ...marked], (mark) => page('marks.md').includes(`| \`${mark}\` |`))).toEqual([]);
});

it('the faulty samples show every code', () => {
  const folders = readdirSync(join(SAMPLES, 'faulty'));
  const shown = DIAGNOSTICS.filter((def) => def.wrong !== '');
  expect(
    missing(
      shown.map(faultyName),
      (name) => folders.includes(name) && existsSync(join(SAMPLES, 'faulty', name)),
    ),
  ).toEqual([]);
});

describe.each(LANGUAGES)('in %s there are words for', (language) => {
  const empty = (words: readonly (readonly [string, string | undefined])[]): string[] =>
    words.filter(([, text]) => (text ?? '').trim() === '').map(([name]) => name);

  it('every verb', () => {
    expect(empty(VERBS.map((verb) => [verb.word, verb.phrase[language]]))).toEqual([]);
  });

  it('every section, signal word and usual caution', () => {
    expect(empty(SECTIONS.map((section) => [section.word, section.heading[language]]))).toEqual([]);
    expect(empty(SIGNALS.map((signal) => [signal, SIGNAL_WORDS[signal][language]]))).toEqual([]);
    expect(empty(HAZARDS.map((hazard) => [hazard.id, hazard.text[language]]))).toEqual([]);
  });

  it('every fixed phrase', () => {
    expect(Object.keys(PHRASES[language]).sort()).toEqual(Object.keys(PHRASES.en).sort());
    // A phrase may be a mere joiner, but not nothing.
    expect(
      Object.entries(PHRASES[language])
        .filter(([, text]) => text === '')
        .map(([id]) => id),
    ).toEqual([]);
  });

  it('every unit', () => {
    expect(empty(units.map((unit) => [unit.id, unit.names[language].one]))).toEqual([]);
  });
});
