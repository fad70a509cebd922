// What the record is made of in print: frames to write in, and tables whose rows may be dealt to several pages.
import type { Block, BlockOf } from '../../document/blocks.js';
import { type Prose, text } from '../../document/inline.js';
import type { PrintContext } from '../context.js';
import { proseCode } from '../prose.js';
import { WIDTH } from '../steps/frame.js';
import { fill } from '../type/lines.js';
import { proseRuns } from '../type/runs.js';
import { call, type Raw, sequence } from '../typst-code.js';
import { proseHigh, USUAL_GAP } from './items.js';
import { readingsPart } from './record-readings.js';
import { sidedHolds, sidedReadings, sidedTorques } from './record-sides.js';
import { AT, millimetres, type RecordLook, tablePart } from './record-table.js';
import { torquesPart } from './record-torques.js';
import type { Section } from './sections.js';

export type RecordPartKind = 'fields' | 'record-readings' | 'record-torques' | 'record-holds';

type Renderer<K extends RecordPartKind> = (
  block: BlockOf<K>,
  context: PrintContext,
  look: RecordLook,
) => Section;

const RECORD_PARTS: { readonly [K in RecordPartKind]: Renderer<K> } = {
  fields: (block, _context, look) => framesPart([block], look),
  'record-readings': (block, context, look) =>
    lower(readingsPart(block, context, look), look.sided && sidedReadings(block.rows, context, look)),
  'record-torques': (block, context, look) =>
    lower(torquesPart(block, context, look), look.sided && sidedTorques(block.rows, context, look)),
  'record-holds': (block, context, look) =>
    lower(holdsPart(block, context, look), look.sided && sidedHolds(block.rows, context, look)),
};

export function recordParts(
  { items }: BlockOf<'record'>,
  context: PrintContext,
  look: RecordLook,
): readonly Section[] {
  const parts = items.filter(isRecordPart);
  const frames = look.joined ? parts.slice(parts.findLastIndex(({ kind }) => kind !== 'fields') + 1) : [];
  const isJoined = (block: Block): boolean => frames.some((one) => one === block);
  return [
    ...parts.filter((block) => !isJoined(block)).map((block) => recordPart(block, context, look)),
    ...(frames.length > 0 ? [framesPart(frames.filter(isFields), look)] : []),
  ];
}

const isRecordPart = (block: Block): block is BlockOf<RecordPartKind> => block.kind in RECORD_PARTS;
const isFields = (block: Block): block is BlockOf<'fields'> => block.kind === 'fields';

function recordPart<K extends RecordPartKind>(
  block: BlockOf<K>,
  context: PrintContext,
  look: RecordLook,
): Section {
  return (RECORD_PARTS[block.kind] as Renderer<K>)(block, context, look);
}

/** The other where it takes less room. */
const lower = (part: Section, other: Section | false | undefined): Section =>
  other && other.high(0, other.rows) < part.high(0, part.rows) ? other : part;

/** Of both sides one says what the other does: each names its own. */
const holdsPart: Renderer<'record-holds'> = ({ rows }, { words }, look) =>
  tablePart(words.recordHolds, look, {
    name: 'holds',
    widths: [AT, WIDTH - AT - 80, 40, 40],
    heads: [words.at, words.checked, words.signature, words.time],
    rows: rows.map(({ number, what, of }) => {
      const said = of
        ? [{ kind: 'strong', children: [text(of.side)] } as const, text(`${words.colon} `), ...what]
        : what;
      return {
        code: () => ({ number, what: proseCode(said) }),
        texts: [[said, WIDTH - AT - 80]],
        least: 0,
      };
    }),
  });

/** Between two frames, and what a frame keeps beside its label. */
const [FRAMES_APART, BESIDE_LABEL] = [2, 2.4];

/** Frames to write in below each other, under the last of their headings; never parted. */
function framesPart(blocks: readonly BlockOf<'fields'>[], look: RecordLook): Section {
  const all = blocks.map((block) => frameRows(block, look));
  const rows = all.flatMap(({ heights }) => heights);
  const height = sum(rows) + FRAMES_APART * Math.max(0, rows.length - 1);
  const title = blocks.at(-1)?.title;
  return {
    ...(title === undefined ? {} : { title }),
    above: 2,
    below: USUAL_GAP,
    rows: 1,
    high: () => height,
    code: () => sequence(all.map(({ code }) => code())),
  };
}

function frameRows(
  { fields, ...block }: BlockOf<'fields'>,
  look: RecordLook,
): { readonly heights: readonly number[]; readonly code: () => Raw } {
  const columns = fields.length <= look.row ? fields.length : block.columns;
  const all = WIDTH - FRAMES_APART * (columns - 1);
  const high = (i: number, width: number): number => {
    const { label, lines } = fields[i] ?? { label: [], lines: 1 };
    const least = lines === 1 ? Math.min(12.5, look.field - 1) : look.field;
    return Math.max(least, proseHigh(label, { size: 8.5 }, width - BESIDE_LABEL) + look.hand + 2.2);
  };
  const rows = Array.from({ length: Math.ceil(fields.length / columns) }, (_, row) =>
    fields.slice(row * columns, (row + 1) * columns).map((_, i) => row * columns + i),
  );
  const at = (shares: readonly number[]): readonly number[] =>
    rows.map((row) => Math.max(...row.map((i) => high(i, all * (shares[i % columns] ?? 0)))));
  const even = Array.from({ length: columns }, () => 1 / columns);
  // Wider where that saves a line: what a label lacks, or most of two.
  const natural = even.map((_, column) =>
    Math.max(...rows.map((row) => labelWide(fields[row[column] ?? -1]?.label ?? []))),
  );
  const spare = all - sum(natural);
  const fitted = spare < 0 ? even : natural.map((wide) => (wide + spare / columns) / all);
  const shares = [fitted, ...(columns === 2 ? [UNEVEN] : [])].reduce(
    (best, one) => (sum(at(one)) < sum(at(best)) ? one : best),
    even,
  );
  const heights = at(shares);
  const widths = shares.map((share) => all * share);
  const code = () =>
    call('fields', [
      millimetres(widths),
      millimetres(heights),
      ...fields.map(({ label }) => proseCode(label)),
    ]);
  return { heights, code };
}

const UNEVEN: readonly number[] = [0.64, 0.36];

const labelWide = (label: Prose): number =>
  fill(proseRuns(label, { size: 8.5 }), 1000).width + BESIDE_LABEL + 0.2;

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);
