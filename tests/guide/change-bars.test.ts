// Change bars: on what is printed otherwise than in the edition before, and nowhere else.
import type { IssuedEdition } from '@baywright/language';
import { describe, expect, it } from 'vitest';
import { type Block, walkBlocks } from '../../compiler/src/document/blocks.js';
import { plain } from '../../compiler/src/document/inline.js';
import { CATALOGUE, type Lowered, type LowerOptions, lower, spaced } from './lower-helper.js';

const HEAD = 'procedure T-1: Wheel, change';
const FIRST = `${HEAD}

use "catalogue.bay"

applies to van
status released by AB, CD on 2026-02-01
revision 1 on 2026-01-31: First issue.

preparation
  step: Raise
    chock wheels-behind
    caution: The van rolls.
    loosen wheel-nut, 1/2 turn
    raise vehicle with jack at sills

removal
  step: Take it off
    remove wheel-nut, wheel
    inspect wheel
      reject: cuts
      if rejected
        stop: Tag the van.

installation
  step: Put it on
    install wheel, wheel-nut
    snug wheel-nut
    lower vehicle
    torque wheel-nut
    unchock wheels-behind
`;

/** The procedure with its next revision opened and some of its text replaced. */
const second = (...edits: readonly (readonly [was: string, is: string])[]): string =>
  edits.reduce(
    (text, [was, is]) => {
      expect(text).toContain(was);
      return text.replace(was, is);
    },
    FIRST.replace('revision 1', 'revision 2 on 2026-05-01: Second thoughts.\nrevision 1'),
  );

const editionOf = (revision: number, text: string, catalogue = CATALOGUE): IssuedEdition => ({
  revision,
  path: 'main.bay',
  files: new Map([
    ['main.bay', text],
    ['catalogue.bay', catalogue],
  ]),
});

const issuedFrom =
  (...editions: readonly IssuedEdition[]): NonNullable<LowerOptions['issued']> =>
  (_number, below = Number.POSITIVE_INFINITY) =>
    editions.findLast(({ revision }) => revision < below);

const compared = (text: string, options: LowerOptions = {}): Lowered =>
  lower(text, { issued: issuedFrom(editionOf(1, FIRST)), ...options });

/** What carries a bar, by what it says. */
const bars = ({ document }: Lowered): string[] =>
  [...walkBlocks(document.blocks)]
    .flatMap((block) => [
      ...(block.revised ? [nameOf(block)] : []),
      ...(block.kind === 'needs'
        ? block.groups.flatMap(({ rows }) =>
            rows.filter(({ revised }) => revised).map((row) => `needs ${plain(row.what)}`),
          )
        : []),
      ...(block.kind === 'torque-table'
        ? block.rows.filter(({ revised }) => revised).map((row) => `card ${row.joint}`)
        : []),
    ])
    .map(spaced);

function nameOf(block: Block): string {
  if (block.kind === 'row' || block.kind === 'stop') return `${block.number} ${plain(block.body)}`;
  if (block.kind === 'step') return `# ${block.number} ${block.title}`;
  return block.kind === 'panel' ? `${block.word}: ${plain(block.body)}` : block.kind;
}

const where = (job: Lowered): string[] => job.block('revisions').rows.map((row) => plain(row.where ?? []));

describe('bars', () => {
  it('are nowhere without an earlier issue', () => {
    expect(bars(lower(FIRST))).toEqual([]);
    expect(where(lower(FIRST))).toEqual(['']);
  });

  it('are nowhere when the first issue is printed again', () => {
    expect(bars(compared(FIRST))).toEqual([]);
  });

  it('are on the lines that were changed or added, though every number behind them moves', () => {
    const now = compared(
      second(
        ['    chock wheels-behind\n', '    set selector park\n    chock wheels-behind\n'],
        ['wheel-nut, 1/2 turn', 'wheel-nut, 1 turn'],
        ['The van rolls.', 'The van rolls back.'],
        ['reject: cuts', 'reject: cuts, nails'],
        ['applies to van', 'applies to van\n\nconditions\n  selector: Gear selector\n    park, neutral'],
      ),
    );
    expect(bars(now)).toEqual([
      '1.1 Set the gear selector to park.',
      'CAUTION: The van rolls back.',
      '1.3 Loosen the wheel nuts (5) by 1 turn.',
      '2.3 Inspect the road wheel.',
    ]);
    expect(where(now)).toEqual(['1.1, 1.3, 2.3', '']);
    expect(plain(now.block('key').since)).toBe('Compared with revision 1.');
  });

  it('are at the head of a step that a line is gone from', () => {
    const now = compared(second(['    snug wheel-nut\n', '']));
    expect(bars(now)).toEqual(['# 3 Put it on']);
    expect(where(now)).toEqual(['step 3', '']);
  });

  it('are on the lines that use a figure changed in the catalogue, and on its row of the list', () => {
    const catalogue = CATALOGUE.replace('torque 160 N·m', 'torque 165 N·m');
    const now = compared(second(), { files: { 'catalogue.bay': catalogue } });
    expect(bars(now)).toEqual(['needs Large torque wrench, 60 to 300 N·m', '3.5 Torque the wheel nuts (5).']);
    const card = compared(second(), { files: { 'catalogue.bay': catalogue }, sheet: 'torque-card' });
    expect(bars(card)).toEqual(['card Wheel nuts']);
    // A print for the vehicles whose figure stands says that nothing changed.
    expect(
      bars(compared(second(), { files: { 'catalogue.bay': catalogue }, option: { axle: 'heavy' } })),
    ).toEqual([]);
  });

  it('are in the same places in another language', () => {
    const now = compared(second(['wheel-nut, 1/2 turn', 'wheel-nut, 1 turn']), { language: 'de' });
    expect(bars(now)).toEqual(['1.2 Wheel nuts (5) um 1 Umdrehung lösen.']);
  });

  it('compare with the edition before the one that is printed', () => {
    const text = second(['wheel-nut, 1/2 turn', 'wheel-nut, 1 turn']);
    const issued = issuedFrom(editionOf(1, FIRST), editionOf(2, text));
    expect(bars(lower(text, { issued }))).toEqual(['1.2 Loosen the wheel nuts (5) by 1 turn.']);
    // Changed since without a new revision: what the workshop has in hand is what it is compared with.
    const later = lower(text.replace('The van rolls.', 'It rolls.'), { issued });
    expect(bars(later)).toEqual(['CAUTION: It rolls.']);
    expect(where(later)).toEqual(['', '']);
  });
});
