// The examples of the guide are true: `bay` is clean, `bay wrong CODE` has just that finding, `bay part` stands so in
// a whole example or in the samples; links lead to pages that exist.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { format } from '../../language/src/format/index.js';
import { SAMPLES, sampleLibrary } from '../samples/sample-library.js';
import { findingsOf, splitFiles } from '../suite-helper.js';
import { guideFiles, guidePages, ROOT } from './pages.js';

const pages = guidePages();
const examples = pages.flatMap((page) =>
  page.blocks
    .filter((block) => /^bay\b/.test(block.info))
    .map((block) => ({ ...block, title: `${page.name}:${block.line} ${block.info}` })),
);
const whole = examples.filter((block) => !/^bay part$/.test(block.info));

describe('whole examples of the guide', () => {
  it.each(whole.map((block) => [block.title, block] as const))('%s', (_title, { info, text }) => {
    const wanted = /\bwrong ((?:[A-Z]\d{3} ?)+)/.exec(info)?.[1]?.trim().split(' ') ?? [];
    const found = findingsOf(splitFiles(text));
    expect(found.map((finding) => `${finding.code} ${finding.message}`)).toEqual(
      wanted.map((code) => expect.stringContaining(code)),
    );
  });

  it.each(whole.map((block) => [block.title, block] as const))('%s is formatted', (_title, { text }) => {
    for (const [path, file] of splitFiles(text)) {
      if (path.endsWith('.bay')) expect(format(file, path).text.trim()).toBe(file.trim());
    }
  });
});

describe('parts of examples', () => {
  const { library, files } = sampleLibrary(SAMPLES);
  const sources = [
    ...whole.map((block) => block.text),
    ...files.map((path) => library.host.read(path) ?? ''),
  ];
  const parts = examples.filter((block) => !whole.includes(block));
  it.each(parts.map((block) => [block.title, block] as const))('%s', (_title, { text }) => {
    expect(sources.some((source) => source.includes(text))).toBe(true);
  });
});

describe.each(pages.map((page) => [page.name, page] as const))('%s', (_name, page) => {
  it('links to what exists', () => {
    const links = [...page.text.matchAll(/\]\(([^)#:]+)\)/g)].map(([, link = '']) => link);
    expect(links.filter((link) => !existsSync(join(ROOT, 'language/docs/guide', link)))).toEqual([]);
  });

  it('names files of the samples that exist', () => {
    if (!page.name.startsWith('samples')) return;
    const named = [...page.text.matchAll(/`((?:procedures|catalogue|house|us|faulty)\/[^`]*)`/g)];
    expect(named.length).toBeGreaterThan(5);
    expect(named.filter(([, path = '']) => !existsSync(join(SAMPLES, path))).map(([, path]) => path)).toEqual(
      [],
    );
  });
});

it('has no page that its contents leave out', () => {
  expect(guideFiles().sort()).toEqual(pages.map((page) => page.name).sort());
});

it('explains words that the tables know', () => {
  const text = pages.map((page) => page.text).join('\n');
  const codes = new Set([...text.matchAll(/\b[A-Z]\d{3}\b/g)].map(([code]) => code));
  const known = readFileSync(join(ROOT, 'language/docs/reference/findings/README.md'), 'utf8');
  expect([...codes].filter((code) => !known.includes(`[${code}]`))).toEqual([]);
});
