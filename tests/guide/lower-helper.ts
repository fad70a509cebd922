// Lowers a small procedure written in a test, and reads the document back as lines.
import { createLibrary, DEFAULT_SETTINGS, type Settings } from '@baywright/language';
import { type Block, walkBlocks } from '../../compiler/src/document/blocks.js';
import type { GuideDocument } from '../../compiler/src/document/document.js';
import { plain, plainFigure, type Quantity } from '../../compiler/src/document/inline.js';
import { type GuideChoice, type GuideShelf, lowerGuide } from '../../compiler/src/document/lower/index.js';

export const CATALOGUE = `catalogue: Test van

vehicles
  van: Test van
    years 2018 to 2025
    option axle light, heavy

sources
  T-1: Test sheet

parts
  wheel: Road wheel
    held by wheel-nut
    marked wheel

fasteners
  wheel-nut: Wheel nuts
    5 of M14x1.5, hex 21 mm
    torque 160 N·m, order star, on ground, per "T-1"
    torque 180 N·m, per "T-1", when axle heavy

fluids
  axle-oil: Axle oil
    SAE 75W-90, API GL-5

places
  sills: Sill lifting points
  wheels-behind: Rear wheels

tools
  jack: Trolley jack
    rated 2000 kg
  wrench: Large torque wrench
    torque 60 to 300 N·m
`;

/** The head of a small procedure over the catalogue. */
export const HEAD = `procedure T-1: Wheel, change

use "catalogue.bay"

applies to van
`;
/** What both sides ask alike, and something that neither has to itself. */
export const BOTH = `${HEAD}sides left, right

limits
  run-out: Run-out
    at most 0.5 mm, per "T-1"

inspection
  step: Look
    inspect wheel
      reject: cracks
    measure run-out
    torque wheel-nut
  step: After
    recheck wheel-nut, after 50 km
`;
/** A wheel off and on. */
export const WHEEL = `${HEAD}
preparation
  step: Raise
    chock wheels-behind
    loosen wheel-nut, 1/2 turn
    raise vehicle with jack at sills

removal
  step: Take it off
    remove wheel-nut, wheel

installation
  step: Put it on
    install wheel, wheel-nut
    snug wheel-nut
    lower vehicle
    torque wheel-nut
`;

export interface Lowered {
  readonly document: GuideDocument;
  /** Rows, panels and headings of the steps, one a line: `1.2 Remove the wheel. {off 2, loose 0}`. */
  readonly lines: readonly string[];
  block<K extends Block['kind']>(kind: K): Extract<Block, { kind: K }>;
}

export interface LowerOptions extends Partial<GuideChoice> {
  readonly files?: Readonly<Record<string, string>>;
  readonly settings?: Partial<Settings>;
  readonly translations?: ReadonlyMap<string, string>;
  readonly issued?: NonNullable<GuideShelf['issued']>;
  /** Pictures and films by path. */
  readonly bytes?: Readonly<Record<string, Uint8Array>>;
}

/** The procedure stands in `main.bay` and may `use "catalogue.bay"`. */
export function lower(text: string, options: LowerOptions = {}): Lowered {
  const { files = {}, settings: own, translations, issued, bytes = {}, ...choice } = options;
  const all: Readonly<Record<string, string>> = { 'catalogue.bay': CATALOGUE, ...files, 'main.bay': text };
  const settings = { ...DEFAULT_SETTINGS, ...own };
  const library = createLibrary({ read: (path) => all[path], list: () => Object.keys(all) }, settings);
  const analysis = library.analyse('main.bay');
  if (!analysis) throw new Error('main.bay is not there');
  const { document } = lowerGuide(
    analysis,
    { sheet: 'guide', option: {}, units: settings.units, language: 'en', ...choice },
    {
      settings,
      bytes: (path) => bytes[path],
      ...(translations ? { translations: () => translations } : {}),
      ...(issued ? { issued } : {}),
    },
  );
  return { document, lines: linesOf(document).map(spaced), block: (kind) => blockOf(document, kind) };
}

/** The guide of a wheel whose nuts have their torque in other stages on each of two vehicles: one line, two boxes. */
export const twoVehicles = (): GuideDocument =>
  lower(WHEEL, { files: { 'catalogue.bay': CATALOGUE.replace('torque 180', 'torque 90 N·m then 180') } })
    .document;

/** Spaces that hold words together, as plain ones. */
export const spaced = (words: string): string => words.replaceAll('\u00a0', ' ');

function blockOf<K extends Block['kind']>(document: GuideDocument, kind: K): Extract<Block, { kind: K }> {
  for (const block of walkBlocks(document.blocks)) {
    if (block.kind === kind) return block as Extract<Block, { kind: K }>;
  }
  throw new Error(`the document has no ${kind}`);
}

function linesOf(document: GuideDocument): string[] {
  return [...walkBlocks(document.blocks)].flatMap((block): string[] => {
    switch (block.kind) {
      case 'step':
        return [`# ${block.number} ${block.title}`];
      case 'row': {
        const { off, loose } = block.rail;
        const condition = block.condition ? `${plain(block.condition)} ` : '';
        return [`${block.number} ${condition}${plain(block.body)} {${off} off, ${loose} to torque}`];
      }
      case 'stop':
        return [
          `${block.number} STOP ${block.condition ? `${plain(block.condition)} ` : ''}${plain(block.body)}`,
        ];
      case 'panel':
        return [`${block.word}: ${plain(block.body)}`];
      case 'banner':
        return [`[${block.edge}] ${plain(block.body)}`];
      case 'branch':
      case 'repeat':
        return [`> ${plain(block.heading)}`];
      case 'tally':
      case 'clip':
      case 'note':
        return [plain(block.body).trim()];
      default:
        return [];
    }
  });
}

/** The torque boxes of a guide: `5 × hex 21 mm: 160 N·m (118.0 FOOT-pounds)`. */
export function torques({ document }: Lowered): string[] {
  return [...walkBlocks(document.blocks)]
    .flatMap((block) => (block.kind === 'row' ? block.beside : []))
    .flatMap((box) => {
      if (box.kind !== 'torque') return [];
      const both = ({ primary, secondary }: Quantity) =>
        `${plainFigure(primary)}${secondary ? ` (${plainFigure(secondary)})` : ''}`;
      const stages = box.stages.map(({ label, figure, unit, set }) =>
        [
          ...(label === undefined ? [] : [label]),
          ...(set ? [set.joint] : []),
          figure ? both(figure) : `? ${unit}`,
          ...(set ? [`[${set.label} ${both(set.figure)}]`] : []),
        ].join(' '),
      );
      const more = box.conditions.map((words) => plain(words));
      return [
        [`${box.count} × ${box.head?.label ?? 'no head'}: ${stages.join(', ')}`, ...more].join('; '),
      ].map(spaced);
    });
}

/** Where the outcomes of readings and inspections lead, a list for each box. */
export function ways({ document }: Lowered): string[][] {
  return [...walkBlocks(document.blocks)]
    .flatMap((block) => (block.kind === 'row' ? block.beside : []))
    .flatMap((box) => {
      if (box.kind === 'reading') return [box.ways.map(plain)];
      return box.kind === 'inspection' ? [[plain(box.good), plain(box.bad)]] : [];
    });
}

/** The list of needs: `Supplies: Sealing paste, 10 mL | 1.1, 2.1`. */
export const needsOf = (job: Lowered): string[] =>
  job
    .block('needs')
    .groups.flatMap(({ title, rows }) =>
      rows.map((row) => spaced(`${title}: ${plain(row.what)} | ${plain(row.for)}`)),
    );
