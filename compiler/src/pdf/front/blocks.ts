// The blocks of the first page and the tables after the steps, in print.
import type { BlockOf } from '../../document/blocks.js';
import { PRINT_INKS } from '../../document/drawing/drawing.js';
import { markDrawing } from '../../document/drawing/heads.js';
import type { Prose } from '../../document/inline.js';
import type { PrintContext } from '../context.js';
import { optional, proseCode, textCode } from '../prose.js';
import { HAND, RAIL, WIDTH } from '../steps/frame.js';
import { signalRow } from '../steps/panels.js';
import { drawRails } from '../steps/rails.js';
import { drawing, drawn, high, moved, type Part, prose, stacked, together, words } from '../steps/set.js';
import { call } from '../typst-code.js';
import {
  type Item,
  partItem,
  proseHigh,
  rowHigh,
  rowsHigh,
  tableItem,
  textHigh,
  titleItem,
} from './items.js';
import { mastheadPart } from './masthead.js';

const FRONT_KINDS = [
  'masthead',
  'heading',
  'dangers',
  'key',
  'statement',
  'sources',
  'revisions',
  'questions',
] as const;
export type FrontKind = (typeof FRONT_KINDS)[number];

type Renderer<K extends FrontKind> = (block: BlockOf<K>, context: PrintContext) => readonly Item[];

export const FRONT: { readonly [K in FrontKind]: Renderer<K> } = {
  masthead: (block, context) => [partItem(mastheadPart(block, context), 0)],
  heading: ({ title, lead }) => [
    {
      above: 2,
      below: 3,
      height:
        textHigh(title, { size: 26, weight: 800 }, WIDTH) +
        (lead ? 4 + proseHigh(lead, { size: 10.5 }, WIDTH) : 0),
      code: call('lead', [title, optional(lead)]),
    },
  ],
  dangers: (block, context) => [
    titleItem(block.title, WIDTH),
    partItem(
      stacked(
        0,
        block.rows.map((row) => signalRow(row, context)),
      ),
      2,
    ),
  ],
  key: ({ since }, context) => [
    titleItem(context.words.keyTitle, context.column),
    partItem(keyPart(since, context), 2),
  ],
  statement: ({ body }, { words: said, column }) => {
    const all: Prose = [
      { kind: 'strong', children: [{ kind: 'text', text: said.statement }] },
      { kind: 'text', text: ' ' },
      ...body,
    ];
    const text = prose(all, { size: 9.5 }, column - 3);
    const height = text.height + 1;
    const bar = drawn(height, (art, x, y) => art.line(x, y, x, y + height, 2));
    return [partItem(together(bar, moved(text, 3, 0.5)), 4)];
  },
  sources: ({ rows }, { words: said, column }) => {
    const lines = rows.map(({ name, title, revised }) => {
      const line = prose(
        [
          { kind: 'strong', children: [{ kind: 'text', text: name }] },
          { kind: 'text', text: ': ' },
          ...title,
        ],
        { size: 9.5 },
        column,
      );
      const bar = drawn(0, (art, x, y) => art.line(x + column + 4, y, x + column + 4, y + line.height, 2));
      return revised ? together(line, bar) : line;
    });
    return [titleItem(said.sources, column), partItem(stacked(1.74, lines), 2)];
  },
  revisions: (block, { words: said, column }) => {
    // Mostly nobody says where: then there is no column for it.
    const places = block.rows.some(({ where }) => where !== undefined && where.length > 0);
    const what = column - 48 - (places ? 40 : 0) - 3;
    const style = { size: 9.5, tabular: true };
    const heights = block.rows.map((row) => [
      textHigh(row.revision, style, 17),
      proseHigh(row.what, style, what),
      proseHigh(row.where ?? [], style, 37),
    ]);
    return [
      titleItem(said.revisions, column),
      tableItem(
        rowsHigh([[textHigh(said.whereHead, { size: 9.5, weight: 700 }, 17)], ...heights], 1.3),
        'plain-table',
        [
          [{ raw: '20mm' }, { raw: '28mm' }, { raw: '1fr' }, ...(places ? [{ raw: '40mm' }] : [])],
          [said.revisionHead, said.dateHead, said.changeHead, ...(places ? [said.whereHead] : [])],
          block.rows.map(({ revision, date, what: change, where }) => [
            textCode(revision),
            textCode(date),
            proseCode(change),
            ...(places ? [proseCode(where ?? [])] : []),
          ]),
        ],
      ),
    ];
  },
  questions: (block, { words: said, column }) => {
    const heights = block.rows.map(({ ask }) =>
      Math.max(HAND, rowHigh([proseHigh(ask, { size: 10, tabular: true }, column - 79)], 2.2)),
    );
    const head = rowHigh([textHigh(said.what, { size: 10, weight: 700 }, 50)], 2.2);
    return [
      titleItem(said.questions, column),
      tableItem([head, ...heights], 'questions', [
        block.rows.map(({ where, ask }) => ({ where, ask: proseCode(ask) })),
      ]),
    ];
  },
};

/** How to read the pages: two entries beside each other. */
function keyPart(since: Prose, context: PrintContext): Part {
  const { words: said, frame, column } = context;
  const rail = (off: number, loose: number): Part =>
    together(
      drawn(9, (art, x, y) => drawRails([{ from: y, to: y + 9, rail: { off, loose } }], art, frame, x)),
      moved(words(String(off), { size: 9, weight: 700, tabular: true }, RAIL, { silent: true }), 0, 2),
    );
  const mark = drawing(markDrawing('hex', PRINT_INKS), 5.2);
  const bar = drawn(8, (art, x, y) => art.line(x + 4, y, x + 4, y + 8, 2));
  const entry = (picture: Part, title: string, body: Prose): Part => {
    const text = prose(
      [{ kind: 'strong', children: [{ kind: 'text', text: title }] }, { kind: 'text', text: ' ' }, ...body],
      { size: 9.5 },
      (column - 6) / 2 - 14,
    );
    return high(Math.max(9, text.height), together(picture, moved(text, 14, 0)));
  };
  const text = (value: string): Prose => [{ kind: 'text', text: value }];
  const beside = (left: Part, right: Part): Part => together(left, moved(right, (column + 6) / 2, 0));
  return stacked(2, [
    beside(
      entry(rail(5, 0), said.band, text(said.keyBand)),
      entry(rail(3, 2), said.brokenLine, text(said.keyBroken)),
    ),
    beside(
      entry(together(mark, moved(mark, 6.2, 0)), said.smallHeads, text(said.keyHeads)),
      entry(bar, said.edgeBar, [...text(`${said.keyBar} `), ...since]),
    ),
  ]);
}
