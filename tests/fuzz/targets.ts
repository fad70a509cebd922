// What is fuzzed, and the law that must hold for any input. A target throws when it does not.
import fc from 'fast-check';
import { applyEdits } from '../../compiler/src/cli/fix.js';
import { readSpecs, withEntries } from '../../compiler/src/desk/spec-import.js';
import { cleanSvg } from '../../compiler/src/document/clean-svg.js';
import { createLibrary } from '../../language/src/analysis.js';
import { DIAGNOSTICS } from '../../language/src/diagnostics/index.js';
import { format } from '../../language/src/format/index.js';
import { jobOf } from '../../language/src/names/job.js';
import { parseQuantity } from '../../language/src/quantity/index.js';
import { changesBetween, changeText, importsFrom, shopFacts } from '../../language/src/register/index.js';
import { DEFAULT_SETTINGS, readSettings } from '../../language/src/settings/index.js';
import { parse, walkLines } from '../../language/src/syntax/index.js';
import { baywright } from '../cli/fake-shell.js';
import { CATALOGUES, damagedText, FAULTY, PICTURES, PROCEDURES } from './inputs.js';

export interface Target<Input = unknown> {
  readonly name: string;
  readonly law: string;
  /** How many inputs one round of the tests takes; a round is to end within seconds. */
  readonly runs: number;
  readonly input: fc.Arbitrary<Input>;
  run(input: Input): void | Promise<void>;
}

const target = <Input>(one: Target<Input>): Target => one as Target;

const ANY_FILE = [...PROCEDURES, ...CATALOGUES, ...FAULTY];

export const TARGETS: readonly Target[] = [
  target({
    name: 'lexer and parser',
    law: 'every text gives a tree; spans lie in the text and lines do not overlap',
    runs: 400,
    input: fc.oneof(
      { weight: 4, arbitrary: damagedText(ANY_FILE, 12) },
      { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 400 }) },
    ),
    run(text) {
      const { tree, findings } = parse(text, 'a.bay');
      for (const { span } of findings) inside(text, span);
      let last = 0;
      walkLines(tree, (line) => {
        inside(text, line);
        inside(text, line.code);
        for (const token of line.tokens) {
          inside(text, token);
          if (text.slice(token.start, token.end) === '' && token.kind !== 'junk')
            throw new Error('an empty token');
        }
        if (line.start < last) throw new Error('lines out of order');
        last = line.start;
        return undefined;
      });
    },
  }),
  target({
    name: 'formatter',
    law: 'formatting twice is formatting once',
    runs: 250,
    input: damagedText(ANY_FILE, 8),
    run(text) {
      const once = format(text, 'a.bay').text;
      const twice = format(once, 'a.bay').text;
      if (once !== twice) throw new Error(`changes again:\n${firstDifference(once, twice)}`);
    },
  }),
  target({
    name: 'checker',
    law: 'every library gives findings, with places and fixes that lie in its files',
    runs: 120,
    input: fc.tuple(damagedText([...FAULTY, ...PROCEDURES], 5), damagedText(CATALOGUES, 4)),
    run([procedure, catalogue]) {
      const files = libraryOf(procedure, catalogue);
      for (const path of files.keys()) {
        for (const found of analyse(files, path)) {
          inside(files.get(found.file) ?? '', found.span);
          for (const related of found.related) inside(files.get(related.file) ?? '', related.span);
          for (const fix of found.fixes)
            for (const edit of fix.edits) inside(files.get(edit.file) ?? '', edit.span);
        }
      }
    },
  }),
  target({
    name: 'fixes',
    law: 'a file with any one fix made can be checked again',
    runs: 60,
    input: damagedText(FAULTY, 3),
    run(text) {
      const files = new Map([['main.bay', text]]);
      const fixes = analyse(files, 'main.bay').flatMap(({ fixes: all }) => all);
      for (const fix of fixes.slice(0, 4)) {
        const own = fix.edits.filter(({ file }) => file === 'main.bay');
        analyse(new Map([['main.bay', applyEdits(text, own)]]), 'main.bay');
      }
    },
  }),
  target({
    name: 'compare',
    law: 'a file does not differ from itself, and any two can be compared',
    runs: 150,
    input: fc.tuple(damagedText(ANY_FILE, 4), damagedText(ANY_FILE, 4)),
    run([old, now]) {
      const [first, second] = [old, now].map((text) => {
        const imports = importsFrom(new Map([['a.bay', text]]));
        const model = imports.model('a.bay');
        return model && shopFacts(jobOf(model, imports));
      });
      if (!first || !second) throw new Error('no model');
      if (changesBetween(first, first).length > 0) throw new Error('differs from itself');
      for (const change of changesBetween(first, second)) changeText(change);
    },
  }),
  target({
    name: 'quantities',
    law: 'any text is a quantity or a problem in words',
    runs: 2000,
    input: fc.oneof(
      fc.string({ maxLength: 30 }),
      fc
        .array(
          fc.constantFrom(
            '1',
            '0',
            '.',
            ',',
            '/',
            '-',
            '±',
            ' ',
            'to',
            'then',
            'N·m',
            'Nm',
            'ft-lb',
            '°',
            '%',
            'h',
            'min',
            'at least',
            '1/0',
            '9'.repeat(60),
          ),
          { maxLength: 10 },
        )
        .map((parts) => parts.join('')),
    ),
    run(text) {
      const read = parseQuantity(text);
      if ('problem' in read && read.problem === '') throw new Error('a problem without words');
    },
  }),
  target({
    name: 'settings',
    law: 'any text gives settings, and findings with places in it',
    runs: 600,
    input: damagedText(
      [
        '{ "shop": { "name": "X" }, "release": { "by": ["A"], "reviewMonths": 24 }, "severity": { "W": "off" }, "severityFor": [{ "files": ["a/**"], "severity": { "Q120": "error" } }] }',
      ],
      6,
    ),
    run(text) {
      for (const { span } of readSettings('baywright.json', text, DIAGNOSTICS).findings) inside(text, span);
    },
  }),
  target({
    name: 'tables',
    law: 'any table gives rows, bad rows or a problem; entries never reach outside their section',
    runs: 300,
    input: damagedText(
      [
        'section,name,title,count,thread,torque,per\nfasteners,a-bolt,A bolt,4,M6x1.0,9 N·m,HS-1\nparts,lid,Lid,,,,\n',
      ],
      6,
    ),
    run(csv) {
      const { rows } = readSpecs(csv, {}, 'fasteners');
      const head = 'catalogue: A\n\nplaces\n  door: Door\n';
      const whole = withEntries(head, rows);
      if (!whole.startsWith(head)) throw new Error('what was there is changed');
      const { tree } = parse(whole, 'a.bay');
      const odd = tree.lines.find((line) => line.kind !== 'catalogue' && line.kind !== 'section');
      if (odd !== undefined)
        throw new Error(`a row became a line of its own: ${whole.slice(odd.start, odd.end)}`);
    },
  }),
  target({
    name: 'pictures',
    law: 'no SVG brings script, handlers or addresses into a guide',
    runs: 300,
    input: damagedText([...PICTURES, HOSTILE()], 6),
    run(svg) {
      const clean = cleanSvg(svg);
      const text = 'svg' in clean ? clean.svg : '';
      if (/<\s*(?:script|foreignObject|iframe|animate|set|handler)\b/i.test(text))
        throw new Error('an element that acts');
      if (/<[^>]*\son[a-z]+\s*=/i.test(text)) throw new Error('a handler');
      if (/(?:href|src)\s*=\s*\\?["']?\s*(?:javascript|data:(?!image)|https?|file|\/\/)/i.test(text))
        throw new Error('an address');
    },
  }),
  target({
    name: 'command line',
    law: 'every command line ends with 0, 1 or 2 and in words',
    runs: 60,
    input: fc.tuple(
      fc.constantFrom(
        'check',
        'check --strict --format json',
        'check --format sarif',
        'check --format github',
        'format',
        'format --check',
        'check --fix',
        'where-used hub-bolt',
        'export',
        'export --what specs',
        'master-list',
        'compare a.bay b.bay',
        'reissue',
        'issue --trial',
        'explain',
        'check nothing',
        'convert x y',
        'import a.bay --into c.bay',
        '--help',
        'check --only S',
      ),
      damagedText(FAULTY, 4),
      damagedText(CATALOGUES, 4),
      fc.constantFrom('{}', '{ "release": { "twoInitials": false } }', '{', ''),
    ),
    async run([line, procedure, catalogue, settings]) {
      const { code, err } = await baywright(line, {
        files: { 'a.bay': procedure, 'b.bay': catalogue, 'baywright.json': settings },
      });
      if (![0, 1, 2].includes(code)) throw new Error(`exit code ${code}`);
      if (err.includes('a fault of Baywright itself')) throw new Error(err);
    },
  }),
];

function HOSTILE(): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="0 0 9 9" onload="alert(1)"><script>alert(1)</script><a xlink:href="javascript:alert(1)"><path d="M0 0h9" style="fill:url(https://a.example/x)"/></a><image href="https://a.example/x.png"/><use href="data:text/html,x"/><foreignObject><iframe src="//a.example"/></foreignObject><set attributeName="onclick" to="alert(1)"/></svg>`;
}

function libraryOf(procedure: string, catalogue: string): Map<string, string> {
  const linked = procedure.replace(/^use "[^"\n]*"$/m, 'use "catalogue/c.bay"');
  return new Map([
    ['main.bay', linked],
    ['catalogue/c.bay', catalogue],
  ]);
}

function analyse(files: ReadonlyMap<string, string>, path: string) {
  const library = createLibrary(
    { read: (name) => files.get(name), list: () => [...files.keys()] },
    DEFAULT_SETTINGS,
  );
  return library.analyse(path)?.findings ?? [];
}

function inside(text: string, { start, end }: { readonly start: number; readonly end: number }): void {
  if (!(start >= 0 && start <= end && end <= text.length))
    throw new Error(`a place outside the text: ${start} to ${end} of ${text.length}`);
}

function firstDifference(a: string, b: string): string {
  const [first, second] = [a.split('\n'), b.split('\n')];
  const at = first.findIndex((line, i) => line !== second[i]);
  return `line ${at + 1}: ${JSON.stringify(first[at])} becomes ${JSON.stringify(second[at])}`;
}
