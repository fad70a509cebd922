// What a guide says in another language than its source: values, options, limits and the texts of the record too.
import { expect, it } from 'vitest';
import { plain } from '../../compiler/src/document/inline.js';
import { lower, spaced } from './lower-helper.js';

const TEXT = `procedure T-1: Test

use "catalogue.bay"

applies to van

conditions
  brake: Hand brake
    applied, released
  selector: Selector
    park, drive

parts
  cover: Cover

limits
  gap: Gap
    0.2 to 0.5 mm, per "T-1"

temporary
  pan: Pan

inspection
  step: Look
    set brake released
    set selector drive
    place pan
    remove pan
    set brake applied
    set selector park
    inspect cover
      reject: cracks
      if rejected
        stop: Tell the shop lead.
    measure gap
      if below limit
        note: Too tight.
      if outside limit
        stop: Tell the shop lead.
    when axle heavy
      clean cover
`;

const GERMAN = new Map([
  ['park', 'P'],
  ['drive', 'D'],
  ['cracks', 'Risse'],
  ['axle', 'Achse'],
  ['heavy', 'schwer'],
]);

const german = lower(TEXT, { language: 'de', translations: GERMAN });

it('says values of conditions and options in the language of the print', () => {
  expect(german.lines).toContain('1.2 Selector auf D stellen. {0 off, 0 to torque}');
  expect(german.lines.join('\n')).toContain('Achse schwer');
});

it('has verbs of their own for values that the trade has one for', () => {
  const said = (lines: readonly string[]): string[] =>
    lines.filter((line) => line.includes('brake')).map((line) => line.replace(/ \{.*$/, ''));
  expect(said(german.lines)).toEqual(['1.1 Hand brake lösen.', '1.5 Hand brake betätigen.']);
  expect(said(lower(TEXT).lines)).toEqual(['1.1 Release the hand brake.', '1.5 Apply the hand brake.']);
});

it('has a sentence of its own for what is only placed', () => {
  expect(german.lines).toContain('1.4 Pan entfernen. {0 off, 0 to torque}');
});

it('tells limits in branches with the decimal sign of the language', () => {
  const said = german.lines.join('\n');
  expect(said).toContain('unter 0,2 mm');
  expect(said).toContain('außerhalb von 0,2 bis 0,5 mm');
});

it('names the unit of a reading as its limit does', () => {
  const job = TEXT.replace('0.2 to 0.5 mm', '780 to 860 rpm');
  const said = JSON.stringify(lower(job, { language: 'de' }).document);
  expect(spaced(said)).toContain('780 bis 860 U/min');
  expect(said).toContain('U/min');
  expect(said).not.toContain('rpm');
});

it('asks in the record what the step asks', () => {
  const rows = JSON.stringify(german.block('record'));
  expect(spaced(rows)).toContain('Risse');
  expect(spaced(rows)).not.toContain('cracks');
});

it('heads the sheets with the chosen option in the language of the print', () => {
  const card = lower(TEXT, {
    sheet: 'pull-sheet',
    option: { axle: 'heavy' },
    language: 'de',
    translations: GERMAN,
  });
  expect(plain(card.block('heading').lead ?? [])).toMatch(/, Achse schwer$/);
});

it('writes the pitch of a thread with the decimal sign of the language', () => {
  const job = `procedure T-2: Threads

use "catalogue.bay"

applies to van

fasteners
  stay-bolt: Stay bolts
    2 of M10x1.25, class 10.9, hex 16 mm
    torque 45 N·m, per "T-1"

preparation
  step: Tighten
    torque stay-bolt
`;
  const detail = (language: 'en' | 'de'): string =>
    spaced(
      lower(job, { sheet: 'torque-card', language })
        .block('torque-table')
        .rows.map((row) => plain(row.detail))
        .join(),
    );
  expect([detail('en'), detail('de')]).toEqual([
    'M10 × 1.25, class 10.9, per T-1',
    'M10 × 1,25, Festigkeitsklasse 10.9, laut T-1',
  ]);
});
