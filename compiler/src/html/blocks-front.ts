// The blocks before and after the steps, on the page.

import type { BlockOf, NeedRow } from '../document/blocks.js';
import { codeDrawing } from '../document/drawing/code.js';
import { PRINT_INKS } from '../document/drawing/drawing.js';
import { planDrawing } from '../document/drawing/plan.js';
import { revisionText } from '../document/revision.js';
import { say } from '../document/words.js';
import type { PageContext } from './context.js';
import { drawn, PAGE_INKS } from './drawn.js';
import { type Child, el, join, type Markup } from './markup.js';
import { languageOf, proseMarkup } from './prose.js';
import { panelMarkup } from './signal.js';
import { rowAttributes, sourceLine } from './steps.js';
import { table, tr } from './table.js';

export type FrontKind =
  | 'masthead'
  | 'heading'
  | 'dangers'
  | 'needs'
  | 'key'
  | 'statement'
  | 'sources'
  | 'revisions'
  | 'questions';

const titled = (title: string, ...children: readonly Child[]): Markup =>
  el('section', { class: 'part' }, el('h2', {}, title), children);

export const FRONT: { readonly [K in FrontKind]: (block: BlockOf<K>, context: PageContext) => Markup } = {
  masthead: (block, { words, title, document }) =>
    el(
      'div',
      { class: block.printedFor || block.plan ? 'masthead' : 'masthead bare' },
      el('h1', languageOf({ language: document.identity.titleLanguage }), title),
      el('p', { class: 'applies' }, proseMarkup(block.appliesTo)),
      el(
        'p',
        { class: 'issue' },
        revisionText(document),
        document.identity.status !== 'released' &&
          el('span', { class: 'status' }, document.identity.statusText),
      ),
      el(
        'div',
        { class: block.printedFor ? 'for' : 'for all' },
        block.plan && drawn(planDrawing(block.plan.corners, PAGE_INKS), 'plan', block.plan.alt),
        block.printedFor &&
          el(
            'p',
            {},
            el('small', {}, words.printedFor),
            el('b', {}, block.printedFor.title),
            block.printedFor.options.map((option) => el('span', {}, option)),
            block.printedFor.others && el('small', {}, proseMarkup(block.printedFor.others)),
          ),
        drawn(codeDrawing(block.code, PRINT_INKS), 'code', say(words.codeAlt, { text: block.code })),
      ),
      el(
        'dl',
        {},
        block.times.map(({ label, value }) => el('div', {}, el('dt', {}, label), el('dd', {}, value))),
      ),
      block.before.length > 0 &&
        titled(
          words.beforeYouStart,
          el(
            'ul',
            { class: 'checks', role: 'list' },
            block.before.map((item, i) => el('li', {}, checkbox(`before-${i}`, proseMarkup(item)))),
          ),
        ),
    ),
  heading: (block, { title, document: { identity } }) =>
    el(
      'div',
      { class: 'masthead' },
      el('h1', {}, block.title),
      el('p', { class: 'applies' }, el('b', languageOf({ language: identity.titleLanguage }), title)),
      block.lead && el('p', { class: 'applies' }, proseMarkup(block.lead)),
    ),
  dangers: (block, context) =>
    titled(
      block.title,
      block.rows.map(({ signal, word, body, where }) =>
        panelMarkup(signal, word, context, proseMarkup(body), proseMarkup(where)),
      ),
    ),
  needs: (block, context) => (block.layout === 'list' ? needList(block, context) : pullList(block, context)),
  key: (block, { words }) =>
    el(
      'details',
      { class: 'part fold key' },
      el('summary', {}, words.keyTitle),
      el('p', {}, el('b', {}, words.band), ' ', words.keyBand),
      el('p', {}, el('b', {}, words.brokenLine), ' ', words.keyBroken),
      el('p', {}, el('b', {}, words.smallHeads), ' ', words.keyHeads),
      el('p', {}, el('b', {}, words.edgeBar), ' ', words.keyBar, ' ', proseMarkup(block.since)),
    ),
  statement: (block, { words }) =>
    el('p', { class: 'part statement' }, el('b', {}, words.statement), ' ', proseMarkup(block.body)),
  sources: (block, { words }) =>
    titled(
      words.sources,
      el(
        'ul',
        {},
        block.rows.map((row) =>
          el('li', rowAttributes(row), el('b', {}, row.name), words.colon, ' ', proseMarkup(row.title)),
        ),
      ),
    ),
  revisions: (block, { words }) => {
    // Mostly nobody says where: then there is no column for it.
    const places = block.rows.some(({ where }) => where !== undefined && where.length > 0);
    return titled(
      words.revisions,
      table(
        words.revisions,
        'revisions',
        [words.revisionHead, words.dateHead, words.changeHead, ...(places ? [words.whereHead] : [])],
        block.rows.map(({ revision, date, what, where }) =>
          tr(revision, date, proseMarkup(what), ...(places ? [proseMarkup(where ?? [])] : [])),
        ),
      ),
    );
  },
  questions: (block, { words }) =>
    titled(
      words.questions,
      table(
        words.questions,
        'questions',
        [words.at, words.what, words.found],
        block.rows.map((row, i) => ({
          attributes: sourceLine(row),
          cells: [
            row.where,
            el('span', { id: `ask-${i}` }, proseMarkup(row.ask)),
            el('input', {
              type: 'text',
              id: `answer-${i}`,
              'aria-labelledby': `ask-${i}`,
              autocomplete: 'off',
            }),
          ],
        })),
      ),
    ),
};

function checkbox(id: string, body: Markup): Markup {
  return el('label', { class: 'check' }, el('input', { type: 'checkbox', id }), el('span', {}, body));
}

const blank = (row: NeedRow, id: string): Child =>
  row.blank !== undefined &&
  el(
    'label',
    { class: 'field' },
    el('span', {}, row.blank, ' ?'),
    el('input', { type: 'text', id, autocomplete: 'off' }),
  );

function needList(block: BlockOf<'needs'>, { words }: PageContext): Markup {
  const body = block.groups.flatMap((group, g) =>
    group.rows.map((row, i) => {
      const id = `need-${g}-${i}`;
      return {
        attributes: rowAttributes(row),
        cells: [
          i === 0 && group.title,
          checkbox(id, proseMarkup(row.what)),
          [proseMarkup(row.for), blank(row, `${id}-blank`)],
        ],
      };
    }),
  );
  return titled(
    block.title,
    table(block.title, 'needs', [words.needKind, words.needWhat, words.needFor], body),
  );
}

function pullList(block: BlockOf<'needs'>, { words }: PageContext): Markup {
  return join(
    block.groups.map((group, g) =>
      titled(
        group.title,
        table(
          group.title,
          'pull',
          [words.needWhat, words.needNumber, words.needAmount, words.needBin],
          group.rows.map((row, i) => ({
            attributes: rowAttributes(row),
            cells: [
              [checkbox(`pull-${g}-${i}`, proseMarkup(row.what)), el('small', {}, proseMarkup(row.for))],
              row.number ??
                (row.blank !== undefined &&
                  el('input', { type: 'text', id: `pull-${g}-${i}-number`, 'aria-label': words.needNumber })),
              row.amount !== undefined && row.amount.length > 0 && el('b', {}, proseMarkup(row.amount)),
              el('input', { type: 'text', id: `pull-${g}-${i}-bin`, 'aria-label': words.needBin, size: 6 }),
            ],
          })),
        ),
      ),
    ),
  );
}
