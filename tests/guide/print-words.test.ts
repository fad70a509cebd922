// What a line of print never parts or hides: units, heads to mark, the setting of a wrench, where a film is.
import { afterAll, expect, it } from 'vitest';
import { marksInRow } from '../../compiler/src/document/beside.js';
import { type Block, walkBlocks } from '../../compiler/src/document/blocks.js';
import type { GuideDocument } from '../../compiler/src/document/document.js';
import { plain } from '../../compiler/src/document/inline.js';
import { renderPdf } from '../../compiler/src/output.js';
import { openEngine } from '../../compiler/src/pdf/engine.js';
import { lettersKept } from '../../compiler/src/pdf/steps/boxes.js';
import { hex, newtonFeet, row, torque } from './fixtures/build.js';
import { fh12 } from './fixtures/fh-12.js';
import { HEAD, lower } from './lower-helper.js';
import { pdfText } from './support.js';

const engine = openEngine();
afterAll(engine.close);

/** The text of the guide with these lines as its only step, in reading order. */
async function printed(...items: readonly Block[]): Promise<string> {
  const base = fh12();
  const step: Block = {
    kind: 'step',
    id: 's1',
    number: '1',
    title: 'Work',
    phase: 'Installation',
    before: { off: 0, loose: 0 },
    items,
  };
  const document: GuideDocument = {
    ...base,
    bans: [],
    blocks: [...base.blocks.filter(({ kind }) => kind === 'masthead'), step],
  };
  const { pdf } = await renderPdf(document, {}, engine);
  return pdfText(pdf, '-raw').replace(/[\u00A0]/g, ' ');
}

const place = { line: 1, rail: [0, 0] } as const;

it('parts neither a value nor a unit at its hyphen, however narrow the box', async () => {
  const figures = [
    ['77.5 to 84.8', '105 to 115'],
    ['121.7 ±7.3', '165 ±10'],
    ['1106.3 ±107.3', '1500 ±145'],
  ] as const;
  const text = await printed(
    ...figures.map(([feet, newton], i) =>
      row(`1.${i + 1}`, 'Torque the **nuts**.', {
        ...place,
        rail: [0, 0],
        beside: [torque(hex('18'), 4, [{ figure: newtonFeet(newton, feet) }])],
      }),
    ),
  );
  expect(text).not.toMatch(/FOOT-\s/);
  for (const [feet] of figures) expect(text).toMatch(new RegExp(`${feet}\\s+FOOT-pounds`));
});

it('sets what the wrench is set to below the torque of the joint, with its words', async () => {
  const text = await printed(
    row('1.1', 'Torque the **nut**.', {
      ...place,
      rail: [0, 0],
      beside: [
        torque(hex('24'), 1, [
          {
            figure: newtonFeet('90', '66.4'),
            set: { label: 'Set the wrench to', joint: 'Joint', figure: newtonFeet('102', '75.2') },
          },
        ]),
      ],
    }),
  );
  expect(text).toMatch(/Joint\n90 ?N·m\n66\.4 FOOT-pounds\nSet the wrench to\n102 ?N·m\n75\.2 FOOT-pounds/);
});

it('keeps a letter of a picture with what it points at', () => {
  expect(lettersKept('The axle. A king pin, B bearing, C shims (D key).')).toBe(
    'The axle. A\u00A0king pin, B\u00A0bearing, C\u00A0shims (D\u00A0key).',
  );
});

it.for<[count: number, most: number, inRow: number]>([
  [6, 5, 3],
  [11, 10, 6],
  [5, 5, 5],
  [20, 12.9, 10],
  [3, 0.4, 1],
])('of %i heads where %d fit, %i stand in a row', ([count, most, inRow]) => {
  expect(marksInRow(count, most)).toBe(inRow);
});

it('says in print where a film is to be seen, and names a file only where the guide does not hold it', () => {
  const text = `${HEAD}
removal
  step: Off
    clip "films/key.webm" at 2 s: The key pushes the spring clip aside.
    remove wheel-nut
`;
  const said = (bytes: Record<string, Uint8Array>) =>
    [...walkBlocks(lower(text, { bytes }).document.blocks)].flatMap((block) =>
      block.kind === 'clip' ? [plain(block.onPaper ?? block.body).replace(/\u00A0/g, ' ')] : [],
    );
  // A film in Matroska begins so (RFC 9559).
  const film = new Uint8Array([0x1a, 0x45, 0xdf, 0xa3]);
  expect(said({ 'films/key.webm': film })).toEqual([
    'Film in the guide on screen, at 2 s: The key pushes the spring clip aside.',
  ]);
  expect(said({})).toEqual(['Film key.webm at 2 s: The key pushes the spring clip aside.']);
});
