// How findings are written: for people, as JSON, for GitHub, as SARIF.

import { createRequire } from 'node:module';
import Ajv from 'ajv';
import addFormats from 'ajv-formats';
import picocolors from 'picocolors';
import { describe, expect, it } from 'vitest';
import { githubReport } from '../../compiler/src/cli/report/github.js';
import { makeReport, sourceLines } from '../../compiler/src/cli/report/report.js';
import { sarifReport } from '../../compiler/src/cli/report/sarif.js';
import { reportSchema } from '../../compiler/src/cli/report/schema.js';
import { textReport } from '../../compiler/src/cli/report/text.js';
import { DIAGNOSTICS } from '../../language/src/diagnostics/index.js';
import { checkedOf } from './fake-library.js';

const FOLDER = '/shop';

describe('text', () => {
  const text = (files: Record<string, string>, limit = 0, columns = 100) =>
    textReport(checkedOf(files), { paint: picocolors.createColors(false), columns, folder: FOLDER, limit });

  it('an error has its place, source, related places, what to do and the fix', () => {
    expect(
      text({ 'a.bay': 'first line\n!error S101 never-put-back: left off here, see above, heavy, advice\n' }),
    ).toBe(
      `lib/a.bay:2:38 error S101 left off here, see above, heavy, advice
     2 | !error S101 never-put-back: left off here, see above, heavy, advice
       |                                      ^^^^
         taken off here:
     1 | first line
       | ^^^^^
         Holds on: axle heavy
         Do: Put it back
         Fix (--fix): Take the mark away

1 file checked: 1 error.
`,
    );
  });

  it('questions and hints take one line each', () => {
    expect(text({ 'a.bay': '!question F210 x: where from here\n!hint W201 y: long here\n' })).toBe(
      `lib/a.bay:1:20 question F210 where from here
lib/a.bay:2:20 hint W201 long here

1 file checked: 1 question, 1 hint.
`,
    );
  });

  it('the limit says how many are left out', () => {
    const shown = text(
      { 'a.bay': '!hint W201 y: one here\n!hint W201 y: two here\n!error S101 z: three here' },
      1,
    );
    expect(shown).toContain('2 more not shown; --limit 0 shows all.\n');
    expect(shown).toContain('1 file checked: 1 error, 2 hints.');
  });

  it.each([
    ['tabs', '!error S101 x: \tno\there', '       |                \t  \t^^^^'],
    ['wide characters', '!error S101 x: ホイール here', '       |                         ^^^^'],
  ])('carets stand under the word behind %s', (_, line, carets) => {
    expect(text({ 'a.bay': line }).split('\n')[2]).toBe(carets);
  });

  it('a very long line is cut around the place', () => {
    const [, source = '', carets = ''] = text(
      { 'a.bay': `!error S101 x: ${'y'.repeat(500)} here ${'z'.repeat(500)}` },
      0,
      80,
    ).split('\n');
    expect(source.length).toBeLessThan(90);
    expect(source.slice(carets.indexOf('^'), carets.lastIndexOf('^') + 1)).toBe('here');
  });

  it('control characters cannot reach the terminal', () => {
    expect(text({ 'a.bay': '!error S101 x: here \u001b[2J\u0007' }).split('\n')[1]).not.toMatch(
      /[\u001b\u0007]/,
    );
  });

  it('nothing found and nothing there are told apart', () => {
    expect(text({ 'a.bay': 'all well' })).toBe('1 file checked: no findings.\n');
    expect(text({})).toBe('No procedures here: nothing was checked.\n');
  });
});

describe('JSON', () => {
  it('has exactly these keys, with places from 1', () => {
    const report = makeReport(checkedOf({ 'a.bay': 'first\n!error S101 x: off here see\n' }), FOLDER);
    expect(report).toEqual({
      findings: [
        {
          code: 'S101',
          name: 'x',
          severity: 'error',
          message: 'off here see',
          file: 'lib/a.bay',
          range: { start: { line: 2, column: 20 }, end: { line: 2, column: 24 } },
          related: [
            {
              message: 'taken off here',
              file: 'lib/a.bay',
              range: { start: { line: 1, column: 1 }, end: { line: 1, column: 6 } },
            },
          ],
          fixes: [
            {
              title: 'Take the mark away',
              edits: [
                {
                  file: 'lib/a.bay',
                  range: { start: { line: 2, column: 1 }, end: { line: 2, column: 2 } },
                  text: '',
                },
              ],
            },
          ],
        },
      ],
      summary: { files: 1, errors: 1, warnings: 0, questions: 0, hints: 0, unread: 0 },
    });
    expect(reportSchema.safeParse(JSON.parse(JSON.stringify(report))).success).toBe(true);
  });
});

describe('GitHub', () => {
  it('escapes what the command syntax uses', () => {
    const report = makeReport(checkedOf({ 'odd, name.bay': '!warning W201 x: 5 %: here' }), FOLDER);
    expect(githubReport(report)).toBe(
      '::warning file=lib/odd%2C name.bay,line=1,endLine=1,col=23,endColumn=27,title=W201 x::5 %25: here\n',
    );
  });

  it('questions and hints are notices', () => {
    const report = makeReport(checkedOf({ 'a.bay': '!question F210 x: here\n!hint W201 x: here' }), FOLDER);
    expect(githubReport(report).match(/^::notice/gm)).toHaveLength(2);
  });
});

describe('SARIF', () => {
  const sarif = async (files: Record<string, string>) => {
    const checked = checkedOf(files);
    return JSON.parse(
      await sarifReport(makeReport(checked, FOLDER), DIAGNOSTICS, sourceLines(checked, FOLDER)),
    );
  };

  it('fits the published schema', async () => {
    // sarif-2.1.0-rtm.5.json, the schema of the OASIS Standard, as the package carries it.
    const require = createRequire(import.meta.url);
    const schema = require('@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json');
    const ajv = new Ajv.default({ strict: false, unicodeRegExp: false });
    addFormats.default(ajv);
    const fits = ajv.compile({ ...schema, id: undefined, $schema: undefined });
    const logs = [
      await sarif({}),
      await sarif({ 'my file.bay': '!error R802 setting-not-usable: wrong here see' }),
      await sarif({
        'a.bay': '!hint W102 long-sentence: \u0001 odd “here” <b>\n!question Q120 value-not-known: here',
      }),
    ];
    for (const log of logs) expect(fits(log), JSON.stringify(fits.errors)).toBe(true);
    expect(fits({ ...logs[1], version: '2.0.0' })).toBe(false);
  });

  it('has what code-scanning services ask for', async () => {
    const log = await sarif({ 'my file.bay': '!error R802 setting-not-usable: wrong here see' });
    expect(log).toMatchObject({
      version: '2.1.0',
      runs: [
        {
          tool: {
            driver: {
              name: 'Baywright',
              rules: [{ id: 'R802', shortDescription: { text: 'Setting not usable' } }],
            },
          },
          results: [
            {
              ruleId: 'R802',
              ruleIndex: 0,
              level: 'error',
              locations: [
                {
                  physicalLocation: {
                    artifactLocation: { uri: 'lib/my%20file.bay' },
                    region: { startLine: 1, startColumn: 39, endLine: 1, endColumn: 43 },
                  },
                },
              ],
              relatedLocations: [{ message: { text: 'taken off here' } }],
              fixes: [{ artifactChanges: [{ replacements: [{ insertedContent: { text: '' } }] }] }],
            },
          ],
        },
      ],
    });
    const [rule] = log.runs[0].tool.driver.rules;
    expect(rule.fullDescription.text.length).toBeLessThanOrEqual(1024);
    expect(rule.help.text).not.toBe('');
  });

  it('fingerprints stay when lines above move, and differ for equal lines', async () => {
    const prints = async (text: string): Promise<string[]> =>
      (await sarif({ 'a.bay': text })).runs[0].results.map(
        (one: { partialFingerprints: Record<string, string> }) =>
          one.partialFingerprints.primaryLocationLineHash,
      );
    const before = await prints('!error S101 x: here\n!error S101 x: here\n');
    expect(new Set(before).size).toBe(2);
    expect(await prints('a new line\n\n!error S101 x: here\n!error S101 x: here\n')).toEqual(before);
  });
});
