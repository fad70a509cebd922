// Settings: what is read, what is refused, and where the finding stands.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../language/src/diagnostics/define.js';
import { SETTINGS_DIAGNOSTICS } from '../../language/src/diagnostics/settings.js';
import {
  DEFAULT_SETTINGS,
  globMatcher,
  type KnownCode,
  readSettings,
  severityOf,
} from '../../language/src/settings/index.js';

const CODES: readonly KnownCode[] = [
  { code: 'W201', name: 'long-sentence', severity: 'hint' },
  { code: 'S101', name: 'never-put-back', severity: 'error' },
  { code: 'F210', name: 'torque-without-source', severity: 'question' },
];

const read = (text: string) => readSettings('baywright.json', text, CODES);
/** Each finding as `code at "text under it": message`. */
const told = (text: string) =>
  read(text).findings.map((f) => `${f.code} at ${text.slice(f.span.start, f.span.end)}: ${f.message}`);

describe('settings that are right', () => {
  it('an empty group of keys means the defaults', () => {
    expect(read('{}')).toEqual({ settings: DEFAULT_SETTINGS, findings: [] });
  });

  it('keeps what is given and fills in the rest', () => {
    const { settings, findings } = read(`{
      // Comments may stand here, and a comma behind the last entry.
      "shop": { "name": "Saltmarsh Depot", "logo": "house/logo.svg" },
      "page": "Letter",
      "units": "US first",
      "languages": ["en", "es"],
      "severity": { "W": "off", "long-sentence": "hint", "F210": "warning" },
      "severityFor": [{ "files": ["drafts/**"], "severity": { "F210": "off" } }],
      "starterRulesOff": [{ "rule": "usual-caps", "because": "Our vans have no open lines." }],
      "release": { "by": ["RS", "MT"], "twoInitials": true, "reviewMonths": 24 },
      "output": "guides",
      "url": "https://guides.saltmarsh.example/",
      "ignore": ["old/**"],
    }`);
    expect(findings).toEqual([]);
    expect(settings).toMatchObject({
      shop: { name: 'Saltmarsh Depot', logo: 'house/logo.svg' },
      page: 'Letter',
      wording: true,
      release: { by: ['RS', 'MT'], twoInitials: true, partNumbers: false, reviewMonths: 24 },
    });
  });

  it('a byte order mark is no fault', () => {
    expect(read('\uFEFF{ "page": "Letter" }').settings.page).toBe('Letter');
  });
});

describe('settings that are wrong', () => {
  it.each<[string, string, string[]]>([
    ['an empty file', '', ['R801 at : the settings are not JSON: the file holds no value']],
    ['a missing brace', '{ "page": "A4"', ['R801 at : the settings are not JSON: a closing } is missing']],
    [
      'bare words',
      '{ "output": guides }',
      ['R801 at guides: the settings are not JSON: text stands in double quotes'],
    ],
    [
      'a list in place of keys',
      '[]',
      ['R802 at []: the whole file: expected a group of keys in { }, found an empty list'],
    ],
    [
      'a page nobody prints',
      '{ "page": "A3" }',
      ['R802 at "A3": page: expected "A4" or "Letter", found "A3"'],
    ],
    ['a number for a name', '{ "shop": { "name": 12 } }', ['R802 at 12: shop.name: expected text, found 12']],
    [
      'a language that is not made',
      '{ "languages": ["en", "xx"] }',
      ['R802 at "xx": languages[1]: expected "en", "es", "fr" or "de", found "xx"'],
    ],
    [
      'a bad entry before another fault',
      '{ "languages": [1, "es"], "severityFor": [5, { "files": ["a"], "severity": { "W": "of" } }] }',
      [
        'R802 at 1: languages[0]: expected "en", "es", "fr" or "de", found 1',
        'R802 at 5: severityFor[0]: expected a group of keys in { }, found 5',
        'R802 at "of": severityFor[1].severity.W: expected "off", "hint", "question", "warning" or "error", found "of"',
      ],
    ],
    [
      'no language at all',
      '{ "languages": [] }',
      ['R802 at []: languages: expected at least one entry, found an empty list'],
    ],
    [
      'a rule switched off without a reason',
      '{ "starterRulesOff": [{ "rule": "hoist" }] }',
      ['R802 at { "rule": "hoist" }: starterRulesOff[0].because: expected text, found nothing'],
    ],
    [
      'an address of another kind',
      '{ "url": "ftp://x.example" }',
      [
        'R802 at "ftp://x.example": url: expected an address that starts with https:// or http://, found "ftp://x.example"',
      ],
    ],
    [
      'half a month',
      '{ "release": { "reviewMonths": 0.5 } }',
      ['R802 at 0.5: release.reviewMonths: expected a whole number, found 0.5'],
    ],
    [
      'a key misspelt',
      '{ "outptu": "guides" }',
      ['R803 at "outptu": there is no setting outptu; did you mean “output”?'],
    ],
    [
      'a key misspelt further in',
      '{ "release": { "twoInitial": true } }',
      ['R803 at "twoInitial": there is no setting release.twoInitial; did you mean “twoInitials”?'],
    ],
    [
      'a code that does not exist',
      '{ "severity": { "W202": "off" } }',
      ['R804 at "W202": severity of “W202”: no finding has this code, name or letter; near it: W201'],
    ],
    [
      'an error made harmless',
      '{ "severity": { "S101": "hint" } }',
      [
        'R804 at "S101": severity of “S101”: an error stays an error; where a line is known to be right, write `accept CODE: reason` above it',
      ],
    ],
    [
      'two faults at once',
      '{ "page": 1, "wording": "no" }',
      [
        'R802 at 1: page: expected "A4" or "Letter", found 1',
        'R802 at "no": wording: expected true or false, found "no"',
      ],
    ],
  ])('%s', (_, text, expected) => {
    expect(told(text)).toEqual(expected);
  });

  it('one fault leaves the other settings standing', () => {
    const { settings } = read('{ "page": "A3", "languages": ["fr", "xx"], "output": "guides" }');
    expect(settings).toMatchObject({ page: 'A4', languages: ['fr'], output: 'guides' });
  });

  it('any text at all is read without an exception', () => {
    const pieces = fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      '"page"',
      '"shop"',
      ':',
      ',',
      '1',
      '"A4"',
      'null',
      '"severity"',
      '"',
      '\\',
      ' ',
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(pieces).map((all) => all.join('')),
          fc.json(),
        ),
        (text) => {
          for (const finding of read(text).findings) {
            expect(finding.span.start).toBeGreaterThanOrEqual(0);
            expect(finding.span.end).toBeLessThanOrEqual(text.length);
          }
        },
      ),
    );
  });
});

describe('pages of the settings findings', () => {
  it.each(SETTINGS_DIAGNOSTICS.map((def) => [def.code, def] as const))(
    '%s: the wrong example has it, the right one has none',
    (code, def) => {
      const lines = def.wrong.split('\n').slice(1);
      const mark = lines.findIndex((line) => line.startsWith('#'));
      const column = lines[mark]?.indexOf('^') ?? -1;
      const text = lines.filter((line) => !line.startsWith('#')).join('\n');
      const [only, ...more] = read(text).findings;
      expect(more).toEqual([]);
      expect(only).toMatchObject({ code });
      const start = lines.slice(0, mark - 1).join('\n').length + 1 + column;
      expect(only?.span.start).toBe(start);
      expect(read(def.right.split('\n').slice(1).join('\n')).findings).toEqual([]);
    },
  );
});

describe('severities', () => {
  const finding = (
    code: Finding['code'],
    name: string,
    severity: Finding['severity'],
    file = 'a.bay',
  ): Finding => ({
    code,
    name,
    severity,
    file,
    message: '',
    span: { start: 0, end: 0 },
    related: [],
    fixes: [],
  });
  const all = [
    finding('W201', 'long-sentence', 'hint'),
    finding('F210', 'torque-without-source', 'question', 'drafts/b.bay'),
    finding('S101', 'never-put-back', 'error'),
  ];
  const after = (text: string) =>
    all.flatMap((f) => severityOf(f, read(text).settings) ?? []).map((f) => `${f.code} ${f.severity}`);

  it.each<[string, string, string[]]>([
    ['nothing set', '{}', ['W201 hint', 'F210 question', 'S101 error']],
    ['by letter', '{ "severity": { "W": "off" } }', ['F210 question', 'S101 error']],
    [
      'a code wins over its letter',
      '{ "severity": { "W": "off", "W201": "warning" } }',
      ['W201 warning', 'F210 question', 'S101 error'],
    ],
    [
      'for some files',
      '{ "severityFor": [{ "files": ["drafts"], "severity": { "F": "off" } }] }',
      ['W201 hint', 'S101 error'],
    ],
    ['the wording left alone', '{ "wording": false }', ['F210 question', 'S101 error']],
    [
      'an error stays',
      '{ "severity": { "S": "off", "S101": "hint" } }',
      ['W201 hint', 'F210 question', 'S101 error'],
    ],
  ])('%s', (_, text, expected) => {
    expect(after(text)).toEqual(expected);
  });

  it.each([
    ['drafts', 'drafts/a/b.bay', true],
    ['drafts/', 'drafts/a.bay', true],
    ['./drafts/**', 'drafts/a.bay', true],
    ['**/old.bay', 'x/y/old.bay', true],
    ['*.bay', 'x/a.bay', false],
    ['drafts', 'draftsman/a.bay', false],
  ])('the glob %s on %s: %s', (glob, path, holds) => {
    expect(globMatcher([glob])(path)).toBe(holds);
  });
});
