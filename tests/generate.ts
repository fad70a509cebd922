// Random procedures made from the language's own tables: every section, clause, verb and head comes up. They read
// without a finding of grammar; what they say need not make sense. For laws over files.
import fc from 'fast-check';
import { VERBS } from '../language/src/verbs/index.js';
import { ENTRY_CLAUSES, STEP_CLAUSES } from '../language/src/vocabulary/clauses.js';
import type { ThingKind } from '../language/src/vocabulary/kinds.js';
import { SECTIONS } from '../language/src/vocabulary/sections.js';
import { SIGNALS } from '../language/src/vocabulary/signals.js';

/** How a file is laid out: as the formatter would, or as people type. */
export interface Style {
  /** Blanks too many, commas left out before prepositions, quantities in shop spelling, lists over several lines. */
  readonly untidy: boolean;
}

type Lines = readonly string[];

/** The text of a whole procedure. */
export function procedureText(style: Style = { untidy: true }): fc.Arbitrary<string> {
  const parts = partsOf(style);
  const file = fc
    .tuple(
      parts.heads,
      fc.array(parts.declarations, { maxLength: 5 }),
      fc.array(parts.work, { minLength: 1, maxLength: 3 }),
    )
    .map(([heads, declarations, work]) => [
      ...heads,
      ...[...declarations, ...work].flatMap((lines) => (style.untidy ? lines : ['', ...lines])),
    ]);
  return file.chain((lines) => (style.untidy ? untidied(lines) : fc.constant(`${lines.join('\n')}\n`)));
}

/** A name of a thing, in several scripts, some of them words of the language that may be names. */
export const name: fc.Arbitrary<string> = fc.constantFrom(
  'wheel',
  'wheel-nut',
  'cap',
  'bar',
  'hub-bolt',
  'drive-oil',
  'étrier',
  'bremse-vorn',
  'タイヤ',
  'm6-screw',
  'parts',
  'plug',
  'pump',
);

const prose = fc.constantFrom(
  'Left by hand.',
  'Use {hub-bolt torque} and no more.',
  'See sheet 3: page 7.',
  '**Mind** the \\{ edge.',
  'A second person presses.',
  '#10 screw goes here.',
);
const title = fc.constantFrom('Front hub', 'Take the wheel off', 'Brake: front, left', 'Öl ablassen');

/** Each quantity as the formatter writes it, and as a workshop may. */
const QUANTITIES: readonly (readonly [string, string])[] = [
  ['115 N·m', '115 Nm'],
  ['85 in·lbf', '85 in-lbf'],
  ['22.0 mm', '22.0mm'],
  ['1 h 40 min', '1 h  40 min'],
  ['1 1/2 turns', '1 1/2 turn'],
  ['115 ±10 N·m', '115 +/- 10 Nm'],
  ['100 +10/-5 N·m', '100 +10/-5 N-m'],
  ['105 to 115 N·m', '105-115 N·m'],
  ['at least 5 mm', 'at least  5 mm'],
  ['60 N·m then 90°', '60 Nm then 90 deg'],
  ['20 N·m then back 180°', '20 Nm then back 180°'],
  ['-40 °C', '-40 °C'],
  ['?', '?'],
  ['14 300 lb', '14 300 lb'],
  ['3/4 in', '3/4"'],
  ['115 N·m ±5 %', '115 N·m ± 5%'],
  ['0.5 L', '.5 l'],
];

interface Parts {
  readonly heads: fc.Arbitrary<Lines>;
  readonly declarations: fc.Arbitrary<Lines>;
  readonly work: fc.Arbitrary<Lines>;
}

function partsOf({ untidy }: Style): Parts {
  const quantity = fc.constantFrom(...QUANTITIES).map(([tidy, shop]) => (untidy ? shop : tidy));
  const single = quantity.filter((text) => !text.includes('then') && !text.startsWith('at'));
  const names = fc.array(name, { minLength: 1, maxLength: 3 }).map((list) => list.join(', '));
  const guard = fc.constantFrom(
    'axle heavy',
    'engine petrol or diesel',
    'year 2021 to 2025',
    'side left and axle light',
    'year at least 2022',
  );
  const when = fc.option(
    guard.map((text) => `, when ${text}`),
    { nil: '' },
  );

  const raw: Readonly<Record<string, string>> = {
    per: '"HL-114"',
    class: '10.9',
    grade: '5',
    SAE: '75W-90',
    API: 'GL-5',
    DOT: '4',
    order: 'inside-out',
    number: '"MA-3"',
    layout: '2 rows',
    vin: 'AB1 to AB9',
    stage: '2',
  };
  const entryClause = (kind: ThingKind) => {
    const fitting = ENTRY_CLAUSES.filter(
      ({ on, word }) => on.includes(kind) && word !== 'at least' && word !== 'at most',
    );
    if (fitting.length === 0) return undefined;
    return fc.constantFrom(...fitting).chain(({ word, shape }): fc.Arbitrary<string> => {
      if (shape === 'names') return names.map((list) => `${word} ${list}`);
      if (shape === 'spec') return quantity.map((text) => `${word} ${text}`);
      if (shape === 'raw') return fc.constant(`${word} ${raw[word] ?? 'medium'}`);
      if (shape === 'words')
        return fc.constantFrom('critical', 'seated, pushed-in').map((text) => `${word} ${text}`);
      if (shape === 'option') return fc.constant(`${word} axle light, heavy`);
      return fc.constant(word);
    });
  };
  const entryLine = (kind: ThingKind): fc.Arbitrary<Lines> => {
    const clause = entryClause(kind);
    if (clause === undefined) return fc.constant([]);
    const clauses = fc
      .tuple(fc.uniqueArray(clause, { minLength: 1, maxLength: 3 }), when)
      .map(([list, tail]) => [`    ${list.join(', ')}${tail}`]);
    const identity = fc.constantFrom(
      '4 of M12x1.5, class 10.9, hex 18 mm',
      '? of hex 13 mm',
      '1 of 3/4-14 NPT, square 1/2 in',
      '3 of clip',
    );
    const own: fc.Arbitrary<Lines>[] = [clauses, guard.map((text) => [`    only when ${text}`])];
    if (kind === 'fastener') own.push(identity.map((text) => [`    ${text}`]));
    if (kind === 'limit')
      own.push(
        single.map((text) => [`    ${text}, per "HL-130"`]),
        fc.constant(['    at least 3 mm, new 5 mm']),
      );
    own.push(
      prose.map((text) => [`    note: ${text}`]),
      prose.map((text) => [`    because:`, `      ${text}`, '', `      - ${text}`]),
    );
    return fc.oneof(...own);
  };
  const entry = (kind: ThingKind) => {
    const below =
      kind === 'rule'
        ? ruleLines
        : kind === 'condition'
          ? fc.constant(['    off, on'])
          : kind === 'message'
            ? fc.constantFrom(...SIGNALS).map((s) => [`    ${s}`])
            : fc.array(entryLine(kind), { maxLength: 3 }).map((all) => all.flat());
    return fc.tuple(name, title, below).map(([own, text, lines]): Lines => [`  ${own}: ${text}`, ...lines]);
  };
  const declarations = fc
    .constantFrom(...SECTIONS.filter(({ work }) => work !== true))
    .chain(({ word, declares }): fc.Arbitrary<Lines> => {
      if (declares === undefined)
        return fc.constant([
          word,
          '  ignition on',
          '  lift, rated 2500 kg',
          '  item: A second person is free.',
        ]);
      return fc.array(entry(declares), { maxLength: 3 }).map((all) => [word, ...all.flat()]);
    });

  const stepClause = fc.constantFrom(...STEP_CLAUSES).chain(({ word, shape }): fc.Arbitrary<string> => {
    if (shape === 'names')
      return fc.constantFrom(`${word} wheel`, `${word} wheel or cap`, `${word} cap, bar`);
    if (shape === 'names or spec') return fc.constantFrom(`${word} sill-points`);
    if (shape === 'spec') return single.map((text) => `, ${word} ${text}`);
    if (shape === 'raw') return fc.constant(`, ${word} ${raw[word] ?? 'x'}`);
    if (shape === 'words') return fc.constant(`, ${word} left`);
    if (shape === 'event') return fc.constant(`, ${word} disconnect battery-negative`);
    return fc.constant(`, ${word}`);
  });
  const statement = fc
    .record({
      verb: fc.constantFrom(...VERBS.filter(({ object }) => object !== 'none')),
      list: names,
      count: fc.constantFrom('', '2 of ', '? of '),
      bare: fc.option(
        single.map((text) => `, ${text}`),
        { nil: '' },
      ),
      clauses: fc.uniqueArray(stepClause, {
        maxLength: 2,
        selector: (text) => text.replace(/^, /, '').split(' ')[0],
      }),
      tail: when,
      text: fc.option(
        prose.map((text) => `: ${text}`),
        { nil: '' },
      ),
    })
    .map(({ verb, list, count, bare, clauses, tail, text }) => {
      // After names a preposition goes without a comma.
      const joined = clauses
        .map((clause, i) => {
          const isAfterNames = i === 0 ? bare === '' : clauses[i - 1]?.startsWith(',') === false;
          return clause.startsWith(',') ? clause : `${isAfterNames ? '' : ','} ${clause}`;
        })
        .join('');
      return `${verb.word} ${count}${list}${verb.takesValue === true ? ' park' : ''}${bare}${joined}${tail}${text}`;
    });
  const below = fc.oneof(
    fc.constant([] as Lines),
    prose.map((text) => [`reject: ${text}`]),
    fc.constant(['if below limit', '  stop: Call the shop lead.', 'otherwise', '  wait 10 min']),
    fc.constant(['picture "a.jpg": The hub.', 'clip "hub.mp4" at 5 min 36 s: The pull.']),
  );
  const stepLine = fc.oneof(
    fc
      .tuple(statement, below)
      .map(([code, lines]) => [`    ${code}`, ...lines.map((line) => `      ${line}`)]),
    fc
      .tuple(fc.constantFrom(...SIGNALS), prose)
      .map(([signal, text]) => [`    ${signal}:`, `      ${text}`, `      ${text}`]),
    prose.map((text) => [`    hold: ${text}`]),
    guard.map((text) => [`    when ${text}`, '      scan vehicle']),
    fc.constant(['    if needed: It will not come off.', '      do: Warm it.']),
    fc.constant(['    repeat 2 times', '      wait 1 min']),
    fc.constant(['    perform wheel-off from WH-01, side left, when axle heavy']),
    fc.constant(['    # A remark for the next writer.', '    do: Look at it.']),
  );
  const step = fc
    .tuple(title, fc.array(stepLine, { maxLength: 5 }))
    .map(([text, lines]): Lines => [`  step: ${text}`, ...lines.flat()]);
  const work = fc
    .tuple(
      fc.constantFrom(...SECTIONS.filter((section) => section.work === true)),
      fc.array(step, { maxLength: 3 }),
    )
    .map(([{ word }, steps]): Lines => [word, ...steps.flat()]);

  const heads = fc
    .shuffledSubarray([
      'use "../catalogue/van.bay"',
      'applies to van-3 from 2018 to 2025, when axle heavy',
      'sides left, right',
      'labour 1 h 40 min',
      'labour 2 h, when engine diesel',
      'crew 2: One at the pedal.',
      'status released by KM, TR on 2026-10-05',
      'review 2027-10-05',
      'revision 4 on 2026-10-05: Torque raised.',
      'accept F203, Q101: Book value.',
    ])
    .map(
      (lines): Lines => ['procedure A-1: Front hub, replace', ...(lines.length === 0 ? [] : ['', ...lines])],
    );
  return { heads, declarations, work };
}

const ruleLines: fc.Arbitrary<Lines> = fc.constantFrom<Lines>(
  ['    before raise vehicle', '    require chock any place'],
  ['    after disconnect any connection marked hydraulic, require cap it', '    before next'],
  ['    never remove or loosen any part', '    while vehicle raised'],
  ['    never run engine', '    while any temporary placed'],
  ['    every remove any part over 25 kg', '    needs with hoist'],
  [
    '    before disconnect battery-negative or battery-positive',
    '    require wait 10 min, since set ignition off',
  ],
  ['    after torque any fastener marked critical', '    require hold', '    before step ends'],
  ['    every torque any fastener marked stretch', '    at most once'],
  ['    never disconnect plug', '    while battery-negative not disconnected'],
);

/** The same lines as people leave them: blanks too many, lists carried over, levels of four, comments between. */
function untidied(lines: Lines): fc.Arbitrary<string> {
  const hand = fc.record({
    blanks: fc.constantFrom('', '', ' ', '  '),
    carry: fc.boolean(),
    comment: fc.constantFrom('', '', '', '# checked'),
    gap: fc.constantFrom('', '', '\n', '\n\n'),
  });
  return fc
    .tuple(
      fc.array(hand, { minLength: lines.length, maxLength: lines.length }),
      fc.boolean(),
      fc.constantFrom('\n', '\r\n'),
    )
    .map(([hands, wide, lineEnd]) => {
      const out: string[] = [];
      for (const [i, line] of lines.entries()) {
        const { blanks = '', carry = false, comment = '', gap = '' } = hands[i] ?? {};
        const indent = line.length - line.trimStart().length;
        const column = wide ? indent * 2 : indent;
        const [code = '', ...text] = line.trimStart().split(/(?=:)/);
        const carried =
          carry && text.length === 0 && !code.startsWith('- ')
            ? code.replace(', ', `,\n${' '.repeat(column + 3)}`)
            : code;
        if (comment !== '') out.push(' '.repeat(column) + comment);
        out.push(
          `${' '.repeat(column)}${carried.replace(/, /g, `,${blanks} `)}${text.join('')}${blanks}${gap}`,
        );
      }
      return out.join('\n').replaceAll('\n', lineEnd) + lineEnd;
    });
}
