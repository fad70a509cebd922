// The record, the torque card and the hand-over page in print.
import type { BlockOf } from '../document/blocks.js';
import { asSvg, PRINT_INKS } from '../document/drawing/drawing.js';
import { markDrawing } from '../document/drawing/heads.js';
import { plainFigure } from '../document/inline.js';
import { say } from '../document/words.js';
import { headSource, orderArgument, stageArgument } from './beside.js';
import type { PrintContext } from './context.js';
import { proseCode, quantityCode } from './prose.js';
import { call, type Raw } from './typst-code.js';

export type RecordKind =
  | 'torque-table'
  | 'fields'
  | 'record-readings'
  | 'record-torques'
  | 'record-holds'
  | 'off-now';

export const RECORD: { readonly [K in RecordKind]: (block: BlockOf<K>, context: PrintContext) => Raw } = {
  'torque-table': (block) =>
    call('card', [
      block.rows.map((row) => ({
        number: row.number,
        joint: row.joint,
        detail: proseCode(row.detail),
        head: row.head && { source: headSource(row.head), alt: row.head.label },
        count: row.count,
        stage: stageArgument(row.stage),
        how: proseCode(row.how),
        mark: asSvg(markDrawing(row.head?.shape ?? 'round', PRINT_INKS)),
        order: orderArgument(row.order, 30),
        revised: row.revised ?? false,
      })),
    ]),
  fields: (block) =>
    call('fields', [
      block.title,
      block.columns,
      ...block.fields.map((field) => ({ label: proseCode(field.label), lines: field.lines })),
    ]),
  'record-readings': (block) =>
    call('readings', [
      block.rows.map(({ number, what, limit, unit, places }) => ({
        number,
        what,
        limit: proseCode(limit),
        unit: unit ?? '',
        places,
      })),
    ]),
  'record-torques': (block) =>
    call('torques', [
      block.rows.map(({ number, joint, count, torque }) => ({
        number,
        joint,
        count: String(count),
        torque: proseCode(torque),
      })),
    ]),
  'record-holds': (block) =>
    call('holds', [block.rows.map(({ number, what }) => ({ number, what: proseCode(what) }))]),
  'off-now': (block, { words }) =>
    call('off-now', [
      block.at,
      `${say(words.offCount, { count: block.rail.off })}, ${say(words.torqueCount, { count: block.rail.loose })}`,
      block.groups.map(({ title, rows }) => ({
        title,
        rows: rows.map(({ what, since, next }) => ({
          what: proseCode(what),
          since,
          next: proseCode(next ?? []),
        })),
      })),
      block.torques.map(({ number, joint, figure }) => ({ number, joint, figure: quantityCode(figure) })),
      block.clocks.map(({ name, length, from, next }) => ({
        name,
        length: plainFigure(length),
        since: from,
        next: proseCode(next),
      })),
      block.bans.map(proseCode),
    ]),
};
