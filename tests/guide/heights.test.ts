// What is worked out before a guide is set is what the typesetter makes of it: heights of texts and of tables. The
// typesetter is asked itself, by assertions in a source.
import fc from 'fast-check';
import { afterAll, expect, test } from 'vitest';
import { walkBlocks } from '../../compiler/src/document/blocks.js';
import type { GuideDocument } from '../../compiler/src/document/document.js';
import type { Prose } from '../../compiler/src/document/inline.js';
import { sectionsOf } from '../../compiler/src/pdf/blocks.js';
import type { PrintContext } from '../../compiler/src/pdf/context.js';
import { openEngine } from '../../compiler/src/pdf/engine.js';
import type { Item } from '../../compiler/src/pdf/front/items.js';
import { RECORD_LOOKS } from '../../compiler/src/pdf/front/record-pages.js';
import { recordParts } from '../../compiler/src/pdf/front/record-parts.js';
import { proseCode } from '../../compiler/src/pdf/prose.js';
import { printSource } from '../../compiler/src/pdf/source.js';
import { besidePart } from '../../compiler/src/pdf/steps/boxes.js';
import { frameOf } from '../../compiler/src/pdf/steps/frame.js';
import { linesHigh } from '../../compiler/src/pdf/type/faces.js';
import { fill } from '../../compiler/src/pdf/type/lines.js';
import { proseRuns, type Style } from '../../compiler/src/pdf/type/runs.js';
import { DEFAULT_PRINT } from '../../compiler/src/print-options.js';
import { everyKind } from './fixtures/every-kind.js';
import { fh12 } from './fixtures/fh-12.js';
import { openSamples } from './sample-guides.js';

const engine = openEngine();
afterAll(engine.close);

/** Sets assertions, with the templates and settings of a guide around them. */
async function hold(document: GuideDocument, assertions: readonly string[]): Promise<void> {
  const { main, settings } = printSource(document, DEFAULT_PRINT);
  const imports = main.slice(0, main.indexOf('#show: dress'));
  await engine.typeset({
    main: `${imports}#show: dress\n#heading(level: 1)[Heights]\n#context {\n${assertions.join('\n')}\n}`,
    settings,
    pictures: [],
    standard: 'ua-1',
    timestamp: 0,
  });
}

const contextOf = (document: GuideDocument): PrintContext => ({
  words: document.words,
  title: document.identity.title,
  training: false,
  safetyColours: false,
  frame: frameOf(document, DEFAULT_PRINT),
  column: 178,
  isPart: true,
  addPicture: () => undefined,
});

const heightOf = (prose: Prose, style: Style, width: number): number =>
  linesHigh(fill(proseRuns(prose, style), width).count, style.size);

const set = (prose: Prose, { size, weight = 400 }: Style, width: number): string =>
  `measure(block(width: ${width}mm, text(size: ${size}pt, weight: ${weight}, par(${proseCode(prose).raw})))).height / 1mm`;

const text = (value: string): Prose => [{ kind: 'text', text: value }];

test('the texts of a guide take just the room that is kept for them', async () => {
  const proses = [fh12(), everyKind()].flatMap((document) =>
    [...walkBlocks(document.blocks)].flatMap((block): Prose[] => {
      if (block.kind === 'row') return [block.body, ...block.notes, ...block.reasons];
      return 'body' in block ? [block.body] : [];
    }),
  );
  expect(proses.length).toBeGreaterThan(60);
  await hold(
    fh12(),
    proses.flatMap((prose) =>
      [45, 88.5, 137].map((width) => {
        const style = { size: 11, weight: width > 100 ? 600 : 400 };
        const room = heightOf(prose, style, width);
        return `{ let is = ${set(prose, style, width)}; assert(calc.abs(is - ${room}) < 0.01, message: repr((is, ${room}, ${proseCode(prose).raw}))) }`;
      }),
    ),
  );
});

test('the unit of a torque that is not known yet stands below its blank where it does not fit behind it', () => {
  const boxHeight = (unit: string): number =>
    besidePart({ kind: 'torque', count: 2, stages: [{ unit }], conditions: [] }, contextOf(fh12())).height;
  expect(boxHeight('FOOT-pounds') - boxHeight('N·m')).toBeGreaterThanOrEqual(linesHigh(1, 12));
});

test('no text takes more room than is kept for it', async () => {
  const word = fc.stringMatching(/^[A-Za-zäéß]{1,12}$|^\d{1,4}([.,/]\d{1,3})?$|^[A-Z]{1,3}-\d{1,4}$/);
  const between = fc.constantFrom(
    ' ',
    ' ',
    ' ',
    ' ',
    '-',
    '/',
    ' – ',
    '—',
    ', ',
    '. ',
    ' (',
    ') ',
    ' “',
    '” ',
    ': ',
    '\u00A0',
  );
  const texts = fc.sample(
    fc
      .array(fc.tuple(word, between), { minLength: 1, maxLength: 30 })
      .map((parts) => parts.flat().join('').trim()),
    { numRuns: 400, seed: 12 },
  );
  await hold(
    fh12(),
    texts.map((value, i) => {
      const style = { size: [8.5, 9.5, 10.5, 11][i % 4] ?? 11, weight: [400, 600, 700, 800][i % 3] ?? 400 };
      const width = 28 + ((i * 7) % 110);
      const room = heightOf(text(value), style, width);
      return `{ let is = ${set(text(value), style, width)}; assert(is <= ${room} + 0.01, message: repr((is, ${room}, ${width}, ${proseCode(text(value)).raw}))) }`;
    }),
  );
});

test('the first page and the tables are as high as was worked out', async () => {
  for (const document of [fh12(), everyKind()]) {
    const context = contextOf(document);
    for (const inset of [1.35, 0.7, 0.5]) {
      const sections = sectionsOf(document.blocks, context, inset).map(({ rows, high, code }) => ({
        height: high(0, rows),
        code: code(0, rows),
      }));
      expect(sections.length).toBeGreaterThan(6);
      await hold(document, sections.filter(({ height }) => height > 0).map(highAs(1.6)));
    }
  }
});

/** Says that an item is set as high as it was worked out to be. */
const highAs =
  (inset: number) =>
  ({ height, code }: Pick<Item, 'height' | 'code'>): string =>
    `{ let is = measure(width: W, { set table(inset: (x: 1.8mm, y: ${inset}mm)); ${code.raw} }).height / 1mm; assert(calc.abs(is - ${height}) < 0.1, message: repr((is, ${height}, ${JSON.stringify(code.raw.slice(0, 60))}))) }`;

/** Documents with a record; the last are of both sides, one of them with readings at several places. */
const RECORDS: readonly GuideDocument[] = [
  fh12(),
  everyKind(),
  openSamples().lower('procedures/LC-06-lift-chains.bay', { sheet: 'record' }).document,
  openSamples().lower('procedures/RD-04-rear-door.bay', { sheet: 'record' }).document,
];

test.for(RECORD_LOOKS)(
  'the record set in $size pt with $inset mm over its lines is as high as was worked out',
  async (look) => {
    for (const document of RECORDS) {
      const context = contextOf(document);
      const parts = document.blocks.flatMap((block) =>
        block.kind === 'record' ? recordParts(block, context, look) : [],
      );
      expect(parts.length).toBeGreaterThan(3);
      const whole = parts.map(({ rows, high, code }) => ({ height: high(0, rows), code: code(0, rows) }));
      await hold(document, whole.map(highAs(look.inset)));
    }
  },
);

test.for(RECORD_LOOKS)(
  'every line to write on is as high as a hand needs, with $inset mm over the lines of the record',
  (look) => {
    expect(look.hand).toBeGreaterThan(7);
    for (const document of RECORDS)
      for (const block of document.blocks)
        if (block.kind === 'record')
          for (const { title, rows, high } of recordParts(block, contextOf(document), look))
            for (let i = 0; i < rows; i++) {
              // What is looked at only is ticked.
              const least = title === document.words.recordReadings ? 5 + 2 * 0.85 : look.hand;
              expect(high(i, i + 1) - (rows > 1 ? high(i, i) : 0)).toBeGreaterThan(least - 0.001);
            }
  },
);

test('where something is measured, the record leaves a hand its room', () => {
  for (const look of RECORD_LOOKS)
    for (const document of RECORDS)
      for (const block of document.blocks)
        if (block.kind === 'record') {
          const items = block.items.map((item) =>
            item.kind === 'record-readings'
              ? { ...item, rows: item.rows.filter(({ reading }) => reading !== undefined) }
              : item,
          );
          const parts = recordParts({ ...block, items }, contextOf(document), look);
          const readings = parts.find(({ title }) => title === document.words.recordReadings);
          for (let i = 0; i < (readings?.rows ?? 0); i++)
            expect((readings?.high(i, i + 1) ?? 0) - (readings?.high(i, i) ?? 0)).toBeGreaterThan(
              look.hand - 0.001,
            );
        }
});
