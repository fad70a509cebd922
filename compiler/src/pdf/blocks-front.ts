// The blocks of the first page and the tables after the steps, in print.
import type { BlockOf, NeedRow } from '../document/blocks.js';
import { codeDrawing } from '../document/drawing/code.js';
import { asSvg, PRINT_INKS } from '../document/drawing/drawing.js';
import { markDrawing } from '../document/drawing/heads.js';
import { planDrawing } from '../document/drawing/plan.js';
import type { Prose } from '../document/inline.js';
import { say } from '../document/words.js';
import type { PrintContext } from './context.js';
import { proseCode, textCode } from './prose.js';
import { triangle } from './signal.js';
import { type Argument, call, type Raw } from './typst-code.js';

export const FRONT_KINDS = [
  'masthead',
  'heading',
  'dangers',
  'needs',
  'key',
  'statement',
  'sources',
  'revisions',
  'questions',
] as const;
export type FrontKind = (typeof FRONT_KINDS)[number];

const optional = (prose: Prose | undefined): Argument =>
  prose && prose.length > 0 ? proseCode(prose) : undefined;

export const FRONT: { readonly [K in FrontKind]: (block: BlockOf<K>, context: PrintContext) => Raw } = {
  masthead: (block, { words, title }) =>
    call('masthead', [], {
      title,
      applies: proseCode(block.appliesTo),
      times: block.times.map(({ label, value }) => ({ label, value })),
      before: block.before.map(proseCode),
      printed: block.printedFor && {
        title: block.printedFor.title,
        options: [...block.printedFor.options],
        others: optional(block.printedFor.others),
      },
      plan: block.plan && { source: asSvg(planDrawing(block.plan.corners, PRINT_INKS)), alt: block.plan.alt },
      code: asSvg(codeDrawing(block.code, PRINT_INKS)),
      'code-alt': say(words.codeAlt, { text: block.code }),
    }),
  heading: (block) => call('lead', [block.title, optional(block.lead)]),
  dangers: (block, context) =>
    call('dangers', [
      block.title,
      ...block.rows.map(({ signal, word, body, where }) => ({
        kind: signal,
        word,
        triangle: triangle(signal, context),
        body: proseCode(body),
        where: proseCode(where),
      })),
    ]),
  needs: (block) => (block.layout === 'list' ? needList(block) : pullList(block)),
  key: (block) =>
    call('key', [
      call('rail-sample', [5, 0]),
      call('rail-sample', [3, 2]),
      call('picture', [asSvg(markDrawing('hex', PRINT_INKS)), undefined], { width: { raw: '5.2mm' } }),
      proseCode(block.since),
    ]),
  statement: (block) => call('statement', [proseCode(block.body)]),
  sources: (block) =>
    call('sources', [
      block.rows.map(({ name, title, revised = false }) => ({ name, title: proseCode(title), revised })),
    ]),
  revisions: (block, { words }) => {
    // Mostly nobody says where: then there is no column for it.
    const places = block.rows.some(({ where }) => where !== undefined && where.length > 0);
    return call('plain-table', [
      words.revisions,
      [{ raw: '20mm' }, { raw: '28mm' }, { raw: '1fr' }, ...(places ? [{ raw: '40mm' }] : [])],
      [words.revisionHead, words.dateHead, words.changeHead, ...(places ? [words.whereHead] : [])],
      block.rows.map(({ revision, date, what, where }) => [
        textCode(revision),
        textCode(date),
        proseCode(what),
        ...(places ? [proseCode(where ?? [])] : []),
      ]),
    ]);
  },
  questions: (block) =>
    call('questions', [block.rows.map(({ where, ask }) => ({ where, ask: proseCode(ask) }))]),
};

const needRow = (row: NeedRow, kind: string): Argument => ({
  kind,
  what: proseCode(row.what),
  use: optional(row.for),
  number: row.number ?? '',
  amount: proseCode(row.amount ?? []),
  blank: row.blank,
  revised: row.revised ?? false,
});

/** The kind is printed once, at its first row. */
function needList(block: BlockOf<'needs'>): Raw {
  const rows = block.groups.flatMap((group) =>
    group.rows.map((row, i) => needRow(row, i === 0 ? group.title : '')),
  );
  return call('needs', [block.title, rows], { inset: { raw: 'row-inset' } });
}

function pullList(block: BlockOf<'needs'>): Raw {
  return call('pull', [
    block.groups.map(({ title, rows }) => ({ title, rows: rows.map((row) => needRow(row, title)) })),
  ]);
}
