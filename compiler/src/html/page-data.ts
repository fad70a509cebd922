// What the page's script needs to know of a guide: lines with what they change and ask for, limits, bans, clocks.
// Everything shown comes from the document; the script only counts, compares and keeps.

import { type BesideKinds, blanksOf } from '../document/beside.js';
import { type Block, type Depends, torqueIds, walkBlocks } from '../document/blocks.js';
import type { GuideDocument } from '../document/document.js';
import { plain, plainFigure } from '../document/inline.js';
import type { PageClock, PageData, PageReading, PageRow } from './page-types.js';

export function pageData(document: GuideDocument): PageData {
  const { identity } = document;
  const rows: PageRow[] = [];
  const steps: { id: string; number: string; rows: string[] }[] = [];
  collect(document.blocks, undefined, rows, steps);
  const told = toldOutcomes(document.blocks);
  return {
    guide: {
      number: identity.number,
      title: identity.title,
      revision: identity.revision,
      date: identity.date,
      status: identity.status,
      side: identity.side ?? '',
      options: identity.options,
      print: identity.print,
    },
    words: document.words,
    things: document.things,
    rows: rows.map((row) => {
      const own = told.filter((depends) => depends.row === row.id).map(({ result }) => result);
      return own.length > 0 ? { ...row, told: own } : row;
    }),
    steps,
    bans: document.bans.map(({ text, fromRow, untilRow }) => ({ text: plain(text), fromRow, untilRow })),
    torques: torqueRows(document.blocks),
  };
}

function collect(
  blocks: readonly Block[],
  depends: Depends | undefined,
  rows: PageRow[],
  steps: { id: string; number: string; rows: string[] }[],
): void {
  for (const block of blocks) {
    if (block.kind === 'step') steps.push({ id: block.id, number: block.number, rows: [] });
    if (block.kind === 'row' || block.kind === 'stop') {
      rows.push(pageRow(block, block.depends ?? depends));
      steps.at(-1)?.rows.push(block.id);
    }
    if ('items' in block)
      collect(block.items, block.kind === 'branch' ? (block.depends ?? depends) : depends, rows, steps);
  }
}

/** Branches that hold words and nothing to tick. */
function toldOutcomes(blocks: readonly Block[]): Depends[] {
  return [...walkBlocks(blocks)].flatMap((block) =>
    block.kind === 'branch' &&
    block.depends &&
    ![...walkBlocks(block.items)].some(({ kind }) => kind === 'row' || kind === 'stop')
      ? [block.depends]
      : [],
  );
}

function pageRow(block: Extract<Block, { kind: 'row' | 'stop' }>, depends: Depends | undefined): PageRow {
  const beside = block.kind === 'row' ? block.beside : [];
  const of = <K extends keyof BesideKinds>(kind: K) =>
    beside.filter((box): box is BesideKinds[K] => box.kind === kind);
  const inspections = of('inspection').map(({ id }) => id);
  return {
    id: block.id,
    number: block.number,
    ...(depends ? { depends } : {}),
    ...(block.kind === 'stop' ? { stop: true } : {}),
    ...(block.kind === 'row' && block.isLater ? { later: true } : {}),
    ...(block.kind === 'row' && block.variant !== undefined ? { variant: block.variant } : {}),
    changes: block.kind === 'row' ? block.changes : [],
    holds: of('hold').map(({ id }) => id),
    inspections,
    ...(block.kind === 'row' && inspections.length > 0
      ? { says: plain(block.body).trim().replace(/\.$/, '') }
      : {}),
    readings: of('reading').flatMap(pageReadings),
    clocks: of('clock').map(pageClock),
  };
}

function pageReadings(reading: BesideKinds['reading']): PageReading[] {
  return blanksOf(reading).map((id, i) => ({
    id,
    box: reading.id,
    name: reading.name,
    ...(reading.places > 1 ? { place: i + 1 } : {}),
    ...(reading.group === undefined ? {} : { group: reading.group }),
    units: reading.units,
    ...(reading.low === undefined ? {} : { low: reading.low }),
    ...(reading.high === undefined ? {} : { high: reading.high }),
  }));
}

function pageClock(clock: BesideKinds['clock']): PageClock {
  return {
    id: clock.id,
    name: `${clock.name}, ${plainFigure(clock.length)}`,
    sense: clock.sense,
    seconds: clock.seconds,
    ...(clock.from ? { fromRow: clock.from.row } : {}),
    ...(clock.until ? { untilRow: clock.until.row } : {}),
  };
}

function torqueRows(blocks: readonly Block[]): PageData['torques'] {
  return blocks.flatMap((block) => {
    if (block.kind === 'record') return torqueRows(block.items);
    if (block.kind !== 'record-torques') return [];
    const ids = torqueIds(block.rows);
    return block.rows.map(({ row, number, joint }, at) => ({ id: ids[at] ?? row, number, joint }));
  });
}
