// The editor grammar: each kind of line, and each word of the tables where it belongs.
import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import type { IGrammar } from 'vscode-textmate';
import { VERBS } from '../../language/src/verbs/index.js';
import { ENTRY_CLAUSES, STEP_CLAUSES } from '../../language/src/vocabulary/clauses.js';
import { HEADS } from '../../language/src/vocabulary/heads.js';
import { SECTIONS } from '../../language/src/vocabulary/sections.js';
import { loadGrammar, type Piece, tokenize } from './tokenize.js';

let grammar: IGrammar;
beforeAll(async () => {
  grammar = await loadGrammar();
});

const SHORT: Readonly<Record<string, string>> = {
  'keyword.control.section entity.name.section': 'section',
  'keyword.control.title': 'head',
  'keyword.control.file': 'head',
  'keyword.control.guard': 'guard',
  'keyword.control.text': 'text head',
  'keyword.control.rule': 'rule word',
  'support.function.verb': 'verb',
  'keyword.other.clause': 'clause',
  'keyword.other.count': 'clause',
  'keyword.other.unit': 'unit',
  'keyword.operator.word': 'joiner',
  'constant.numeric.quantity': 'number',
  'constant.numeric.count': 'count',
  'constant.numeric.day': 'day',
  'constant.other.thread': 'thread',
  'constant.language.hole': 'hole',
  'string.quoted.double': 'quoted',
  'variable.other.name': 'name',
  'entity.name.function': 'number of procedure',
  'entity.name.type.entry': 'entry',
  'markup.heading': 'title',
  'markup.heading.entry': 'title',
  'comment.line.number-sign': 'comment',
  'markup.bold': 'bold',
  'keyword.other.attribute': 'attribute',
  prose: 'prose',
};

/** The line of `text` that starts with `line`, as `piece = kind` pairs; punctuation and spaces left away. */
function colours(text: string, line: string): string[] {
  const index = text.split('\n').findIndex((candidate) => candidate.trim().startsWith(line));
  return tokenize(grammar, text)
    .filter(
      (piece) => piece.line === index && piece.text.trim() !== '' && !piece.scopes.includes('punctuation'),
    )
    .map((piece) => `${piece.text.trim()} = ${kindOf(piece)}`);
}

function kindOf(piece: Piece): string {
  const own = piece.scopes.replace(/\bmeta\.(section\.\w+|reference)\b ?/g, '').trim();
  if (own === 'meta.prose') return 'prose';
  const scope = own
    .replace(/^meta\.prose /, '')
    .replace(/^markup\.heading(\.entry)? (?=variable|keyword)/, '');
  const signal = /^keyword\.control\.signal\.(\w+) markup\.bold$/.exec(scope);
  return signal?.[1] ?? SHORT[scope] ?? (scope === '' ? 'uncoloured' : scope);
}

const TEXT = `procedure FD-05: Final-drive cover, reseal
catalogue: House rules
use "../catalogue/corrow-y40.bay"
applies to corrow-y40 from 2015 to 2024
sides left, right
labour 2 h 30 min, when axle heavy
crew 2
status released by KM on 2026-09-02
revision 5 on 2026-08-31: Torque of {cover-bolt torque 2} raised.
# a comment
vehicles
  corrow-y40: Corrow Y40 yard tractor
    option ratio low, high
conditions
  selector: Gear selector
    park, neutral
prerequisites
  axle-stands, rated 1500 kg
  item: Axle is warm: not hot.
parts
  drive-cover: Final-drive cover
    held by 1 of cover-bolt, axle-nut
    sealed with axle-sealant on cover-face
    renew: never twice
  when ratio high
    cover-tag: Ratio tag
fasteners
  cover-bolt: Cover bolts
    10 of 7/16-14 UNC, grade 5, hex 5/8 in
    ? of M12x1.5
    torque 15 ±2 ft·lbf then 90°, order cross, per "YT-12"
    torque ?
    no torque: Hand tight.
removal
  step: Drain the axle
    warning hot-oil
    danger: It can roll.
    notice:
      Sealant in a **bolt hole** cracks it.
      # a comment in text
      #10 screws too
    remove 8 of cover-bolt: Leave two in.
    road-test vehicle, 1.5 mi
    if below limit
      stop: Report it.
    wait 10 min, since drain drive-oil
    inspect magnet
      reject: chips, blue metal
    bleed clutch-circuit with bleed-bottle:
      One person works the pedal; remove nothing.
    picture "a.jpg": The bead at 6:30.
    perform wheel-off from WH-01
    repeat: Until clear.
rules
  chocks-first: Chock the wheels.
    before raise vehicle
    require wait 10 min, since disconnect battery-negative
    never remove any part over 25 kg
`;

describe('each kind of line', () => {
  const cases: readonly (readonly [kind: string, line: string, expected: readonly string[]])[] = [
    [
      'the title of a procedure',
      'procedure',
      ['procedure = head', 'FD-05 = number of procedure', 'Final-drive cover, reseal = title'],
    ],
    ['the title of a catalogue', 'catalogue', ['catalogue = head', 'House rules = title']],
    ['use', 'use', ['use = head', '"../catalogue/corrow-y40.bay" = quoted']],
    [
      'applies to',
      'applies',
      [
        'applies to = head',
        'corrow-y40 = name',
        'from = clause',
        '2015 = number',
        'to = clause',
        '2024 = number',
      ],
    ],
    ['sides', 'sides', ['sides = head', 'left = name', 'right = name']],
    [
      'labour with a guard',
      'labour',
      [
        'labour = head',
        '2 = number',
        'h = unit',
        '30 = number',
        'min = unit',
        'when = clause',
        'axle = name',
        'heavy = name',
      ],
    ],
    ['crew', 'crew', ['crew = head', '2 = number']],
    [
      'status',
      'status',
      ['status = head', 'released = name', 'by = clause', 'KM = name', 'on = clause', '2026-09-02 = day'],
    ],
    [
      'a revision with a reference',
      'revision',
      [
        'revision = text head',
        '5 = number',
        'on = clause',
        '2026-08-31 = day',
        'Torque of = prose',
        'cover-bolt = name',
        'torque = attribute',
        '2 = constant.numeric',
        'raised. = prose',
      ],
    ],
    ['a comment', '# a comment', ['# a comment = comment']],
    ['a section', 'vehicles', ['vehicles = section']],
    ['an entry', 'corrow-y40:', ['corrow-y40 = entry', 'Corrow Y40 yard tractor = title']],
    ['an option', 'option', ['option = clause', 'ratio = name', 'low = name', 'high = name']],
    ['values of a condition', 'park', ['park = name', 'neutral = name']],
    ['a prerequisite', 'axle-stands', ['axle-stands = name', 'rated = clause', '1500 = number', 'kg = unit']],
    ['a prerequisite in words', 'item', ['item = text head', 'Axle is warm: not hot. = prose']],
    [
      'a clause with a count',
      'held by',
      ['held by = clause', '1 = count', 'of = clause', 'cover-bolt = name', 'axle-nut = name'],
    ],
    [
      'two clauses',
      'sealed with',
      ['sealed with = clause', 'axle-sealant = name', 'on = clause', 'cover-face = name'],
    ],
    ['a flag with a remark', 'renew:', ['renew = clause', 'never twice = prose']],
    ['a guard over entries', 'when ratio', ['when = guard', 'ratio = name', 'high = name']],
    ['an entry under a guard', 'cover-tag', ['cover-tag = entry', 'Ratio tag = title']],
    [
      'thread, grade and head',
      '10 of',
      [
        '10 = count',
        'of = clause',
        '7/16-14 UNC = thread',
        'grade = clause',
        '5 = number',
        'hex = clause',
        '5/8 = number',
        'in = unit',
      ],
    ],
    ['a count not known', '? of', ['? = count', 'of = clause', 'M12x1.5 = thread']],
    [
      'a staged torque',
      'torque 15',
      [
        'torque = clause',
        '15 = number',
        '±2 = number',
        'ft·lbf = unit',
        'then = joiner',
        '90 = number',
        '° = unit',
        'order = clause',
        'cross = name',
        'per = clause',
        '"YT-12" = quoted',
      ],
    ],
    ['a hole', 'torque ?', ['torque = clause', '? = hole']],
    ['a reason', 'no torque', ['no torque = clause', 'Hand tight. = prose']],
    ['a step', 'step', ['step = head', 'Drain the axle = title']],
    ['a shared message', 'warning', ['warning = warning', 'hot-oil = name']],
    ['a message', 'danger', ['danger = danger', 'It can roll. = prose']],
    ['a message with its text below', 'notice', ['notice = notice']],
    [
      'text below a message',
      'Sealant',
      ['Sealant in a = prose', '**bolt hole** = bold', 'cracks it. = prose'],
    ],
    ['a comment in text', '# a comment in', ['# a comment in text = comment']],
    ['a number sign that is text', '#10', ['#10 screws too = prose']],
    [
      'a statement with a count and a remark',
      'remove 8',
      ['remove = verb', '8 = count', 'of = clause', 'cover-bolt = name', 'Leave two in. = prose'],
    ],
    [
      'a statement with a bare amount',
      'road-test',
      ['road-test = verb', 'vehicle = name', '1.5 = number', 'mi = unit'],
    ],
    ['a branch', 'if below', ['if = guard', 'below = clause', 'limit = clause']],
    ['the end of a job', 'stop', ['stop = text head', 'Report it. = prose']],
    [
      'a wait counted from an action',
      'wait',
      ['wait = verb', '10 = number', 'min = unit', 'since = clause', 'drain = name', 'drive-oil = name'],
    ],
    ['what to reject', 'reject', ['reject = text head', 'chips, blue metal = prose']],
    [
      'a statement with its remark below',
      'bleed',
      ['bleed = verb', 'clutch-circuit = name', 'with = clause', 'bleed-bottle = name'],
    ],
    ['the remark below a statement', 'One person', ['One person works the pedal; remove nothing. = prose']],
    ['a picture', 'picture', ['picture = text head', '"a.jpg" = quoted', 'The bead at 6:30. = prose']],
    [
      'a borrowed operation',
      'perform',
      ['perform = verb', 'wheel-off = name', 'from = clause', 'WH-01 = name'],
    ],
    ['a repeated block', 'repeat', ['repeat = guard', 'Until clear. = prose']],
    ['a rule', 'before', ['before = rule word', 'raise = verb', 'vehicle = name']],
    [
      'a rule with a wait',
      'require',
      [
        'require = rule word',
        'wait = verb',
        '10 = number',
        'min = unit',
        'since = rule word',
        'disconnect = verb',
        'battery-negative = name',
      ],
    ],
    [
      'a ban by kind',
      'never',
      [
        'never = rule word',
        'remove = verb',
        'any = clause',
        'part = name',
        'over = clause',
        '25 = number',
        'kg = unit',
      ],
    ],
  ];
  test.each(cases)('%s', (_kind, line, expected) => {
    expect(colours(TEXT, line)).toEqual(expected);
  });
});

describe('each word of the tables', () => {
  test('a verb in a step', () => {
    for (const { word } of VERBS)
      expect(colours(`removal\n  step: A\n    ${word} it-all`, word)[0]).toBe(`${word} = verb`);
  });
  test('a clause word under an entry', () => {
    for (const { word } of ENTRY_CLAUSES)
      expect(colours(`parts\n  a: A\n    ${word} x-y`, word)[0]).toBe(`${word} = clause`);
  });
  test('a clause word in a statement', () => {
    for (const { word } of STEP_CLAUSES) {
      expect(colours(`removal\n  step: A\n    remove a-b ${word} x-y`, 'remove')).toContain(
        `${word} = clause`,
      );
    }
  });
  test('a section', () => {
    for (const { word } of SECTIONS) expect(colours(word, word)).toEqual([`${word} = section`]);
  });
  test('a head where it stands', () => {
    for (const { word, contexts } of HEADS) {
      const text = contexts.includes('file')
        ? `${word} a: B`
        : contexts.includes('prerequisites')
          ? `prerequisites\n  ${word} a: B`
          : `removal\n  step: A\n    ${word} a: B`;
      expect(colours(text, `${word} a`)[0], word).toMatch(
        new RegExp(`^${word} = (head|text head|guard|verb|${word})$`),
      );
    }
  });
});

describe('each line of the samples', () => {
  const samples = new URL('../../samples/', import.meta.url);
  // Samples of what cannot be read have no form to colour.
  const names = readdirSync(samples, { recursive: true, encoding: 'utf8' }).filter(
    (name) => name.endsWith('.bay') && !name.startsWith('faulty/G'),
  );
  test.each(names)('%s leaves no code without a colour', (name) => {
    const bare = tokenize(grammar, readFileSync(new URL(name, samples), 'utf8')).filter(
      (piece) => /\S/.test(piece.text) && /^(meta\.section\.\w+)?$/.test(piece.scopes),
    );
    expect(bare).toEqual([]);
  });
});

describe('what stays a name', () => {
  test('a name that starts with a clause word', () => {
    expect(colours('removal\n  step: A\n    remove on-board-unit, to-do', 'remove')).toEqual([
      'remove = verb',
      'on-board-unit = name',
      'to-do = name',
    ]);
  });
  test('names in any script', () => {
    expect(colours('removal\n  step: A\n    remove écrou-de-moyeu, гайка', 'remove')).toEqual([
      'remove = verb',
      'écrou-de-moyeu = name',
      'гайка = name',
    ]);
  });
  test('a verb as the name of a part', () => {
    expect(colours('parts\n  plug: Drain plug\n', 'plug')).toEqual(['plug = entry', 'Drain plug = title']);
  });
});
