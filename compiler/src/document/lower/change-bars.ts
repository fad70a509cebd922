// Change bars: what a guide says otherwise than the edition before it. The earlier edition is read again with today's
// program and printed for the same vehicle, and the two prints are compared as a reader would, without the numbers of
// lines: so whatever changed, here or in a catalogue, is marked where it is printed, and nothing else.
import {
  type Analysis,
  changedPlaces,
  changesBetween,
  createLibrary,
  factsOfEdition,
  type IssuedEdition,
  newestRevision,
  phraseText,
  type Settings,
  shopFacts,
} from '@baywright/language';
import { type Block, type BlockOf, walkBlocks } from '../blocks.js';
import type { GuideDocument } from '../document.js';
import { type Inline, type Prose, plain, text } from '../inline.js';
import type { Picture } from '../picture.js';
import type { AsIssued, GuideShelf } from './print.js';

export interface Earlier {
  readonly analysis: Analysis;
  readonly revision: number;
  /** What it was printed from, where that is known. */
  readonly asIssued: AsIssued | undefined;
}

/** The edition to compare with: the last one issued that says something else; undefined where there is none. */
export function earlierEdition(analysis: Analysis, shelf: GuideShelf): Earlier | undefined {
  const { number } = analysis.model;
  const newest = number === undefined ? undefined : shelf.issued?.(number);
  if (number === undefined || !newest) return undefined;
  const revision = newestRevision(analysis.model)?.number;
  const isOlder =
    revision === undefined ||
    newest.revision < revision ||
    (newest.revision === revision && isChanged(newest, analysis, shelf));
  const edition = isOlder ? newest : shelf.issued?.(number, revision);
  const read = edition && readAgain(edition, shelf.settings);
  return edition && read
    ? { analysis: read, revision: edition.revision, asIssued: shelf.asIssued?.(edition, analysis) }
    : undefined;
}

function isChanged(edition: IssuedEdition, analysis: Analysis, shelf: GuideShelf): boolean {
  const issued = shelf.asIssued?.(edition, analysis);
  if (issued) return issued.isChanged();
  const old = factsOfEdition(edition);
  return old === undefined || changesBetween(old, shopFacts(analysis.job)).length > 0;
}

const known = new WeakMap<IssuedEdition, Analysis | undefined>();

function readAgain(edition: IssuedEdition, settings: Settings): Analysis | undefined {
  if (!known.has(edition)) {
    const { files } = edition;
    const library = createLibrary(
      { read: (path) => files.get(path), list: () => [...files.keys()] },
      settings,
    );
    known.set(edition, library.analyse(edition.path));
  }
  return known.get(edition);
}

/** Which blocks of a document are new or changed, by their place in it, with the changed rows of its tables. */
export interface Changed {
  readonly blocks: ReadonlySet<number>;
  readonly rows: ReadonlyMap<number, ReadonlySet<number>>;
}

/** Both in one language, for the same vehicle and side. */
export function changedBlocks(was: GuideDocument, now: GuideDocument): Changed {
  const [old, all] = [was, now].map(({ blocks }) => [...walkBlocks(blocks)]) as [Block[], Block[]];
  const places = all.flatMap((block, i) => (BARRED.has(block.kind) ? [i] : []));
  const { changed, gone } = changedPlaces(
    old.filter(({ kind }) => BARRED.has(kind)).map(said),
    places.map((place) => said(all[place])),
  );
  // Something went from a step: its head is marked, for nothing else is left to mark.
  const heads = gone.flatMap((at) => {
    const head = places.slice(0, Math.max(1, at)).findLast((place) => all[place]?.kind === 'step');
    return head === undefined ? [] : [head];
  });
  const rowsBefore = new Map<Block['kind'], Set<string>>();
  for (const block of old) {
    const known = rowsBefore.get(block.kind) ?? new Set<string>();
    for (const row of tableRows(block)) known.add(said(row));
    rowsBefore.set(block.kind, known);
  }
  const rows = all.flatMap((block, i): [number, ReadonlySet<number>][] => {
    const before = rowsBefore.get(block.kind) ?? new Set();
    const here = tableRows(block).flatMap((row, at) => (before.has(said(row)) ? [] : [at]));
    return here.length > 0 ? [[i, new Set(here)]] : [];
  });
  return {
    blocks: new Set([...changed.flatMap((at) => places[at] ?? []), ...heads]),
    rows: new Map(rows),
  };
}

/** Kinds that stand in the steps and carry a bar. */
const BARRED: ReadonlySet<Block['kind']> = new Set<Block['kind']>([
  'step',
  'row',
  'stop',
  'panel',
  'wear',
  'branch',
  'repeat',
  'note',
  'reason',
  'figure',
  'clip',
]);

function tableRows(block: Block): readonly object[] {
  if (block.kind === 'needs') return block.groups.flatMap(({ rows }) => rows);
  return block.kind === 'torque-table' || block.kind === 'sources' ? block.rows : [];
}

/** What says where something stands, not what it says. */
const PLACE: ReadonlySet<string> = new Set([
  'id',
  'row',
  'number',
  'rail',
  'before',
  'changes',
  'source',
  'depends',
  'from',
  'group',
  'items',
]);

/** What a reader finds in a block, without the numbers of lines and what is inside it. */
function said(block: object | undefined): string {
  return JSON.stringify(block, (key, value: unknown) => {
    if (value instanceof Uint8Array) return value.length;
    // A picture goes by what it shows: folders print nowhere.
    if (isPicture(value)) return { ...value, name: undefined };
    // The part number of a row of needs is what it says; that of a line is where it stands.
    const isPartNumber = key === 'number' && block !== undefined && 'what' in block;
    if (PLACE.has(key) && !isPartNumber) return undefined;
    if (key === 'for') return withoutLines(value as Prose);
    return isLink(value) ? '' : value;
  });
}

/** What a row of needs is for: joints and figures, not how many lines ask for it. */
const withoutLines = (prose: Prose): string =>
  plain(prose.filter((inline) => !isLink(inline))).replace(/^[,\s]*$/, '');

const isPicture = (value: unknown): value is Picture =>
  typeof value === 'object' && value !== null && (value as Partial<Picture>).data instanceof Uint8Array;

const isLink = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && (value as Partial<Inline>).kind === 'line';

/** The document with its bars, and where they are in the table of revisions. */
export function withBars(document: GuideDocument, changed: Changed, earlier: Earlier): GuideDocument {
  let place = -1;
  const marked: Block[] = [];
  const mark = (block: Block): Block => {
    place++;
    const rows = changed.rows.get(place);
    const isChanged = changed.blocks.has(place);
    const whole = rows ? withRows(block, rows) : block;
    const inside = 'items' in whole ? ({ ...whole, items: whole.items.map(mark) } as Block) : whole;
    const done = isChanged ? { ...inside, revised: true } : inside;
    if (isChanged) marked.push(done);
    return done;
  };
  const blocks = document.blocks.map(mark);
  const steps = blocks.filter((block) => block.kind === 'step');
  const where = whereProse(document, steps);
  const since: Prose = [
    text(phraseText('since-revision', document.language, { number: String(earlier.revision) })),
  ];
  // A text that was changed without raising its revision has no line in the table yet.
  const isRaised = document.identity.revision !== String(earlier.revision);
  return {
    ...document,
    blocks: blocks.map((block) => {
      if (block.kind === 'key') return { ...block, since };
      if (block.kind !== 'revisions' || !isRaised || where.length === 0) return block;
      return { ...block, rows: block.rows.map((row, i) => (i === 0 ? { ...row, where } : row)) };
    }),
  };
}

function withRows(block: Block, rows: ReadonlySet<number>): Block {
  let at = -1;
  const mark = <T extends object>(row: T): T => {
    at++;
    return rows.has(at) ? { ...row, revised: true } : row;
  };
  if (block.kind === 'needs')
    return { ...block, groups: block.groups.map((group) => ({ ...group, rows: group.rows.map(mark) })) };
  if (block.kind === 'torque-table') return { ...block, rows: block.rows.map(mark) };
  return block.kind === 'sources' ? { ...block, rows: block.rows.map(mark) } : block;
}

/** More lines than this are told by their steps. */
const MOST_LINES = 8;

/** `5.3, 7.1`: the lines with bars; a step where the bar is on something without a number. */
function whereProse({ language }: GuideDocument, steps: readonly BlockOf<'step'>[]): Prose {
  const found = steps.flatMap((step) => {
    const inside = [...walkBlocks([step])].filter(({ revised }) => revised);
    const lines = inside.flatMap((block): Inline[] =>
      block.kind === 'row' || block.kind === 'stop'
        ? [{ kind: 'line', text: block.number, row: block.id }]
        : [],
    );
    const whole: Inline = { kind: 'line', text: stepName(language, step.number), row: step.id };
    return inside.length === 0 ? [] : [{ step: whole, lines: lines.length > 0 ? lines : [whole] }];
  });
  const lines = found.flatMap((one) => one.lines);
  const told = lines.length > MOST_LINES ? found.map(({ step }) => step) : lines;
  return told.flatMap((inline, i): Prose => (i === 0 ? [inline] : [text(', '), inline]));
}

const stepName = (language: GuideDocument['language'], number: string): string =>
  phraseText('step-number', language, { number });
