// A document as one file that needs no network: styles, type, drawings, pictures and script inside, and a policy that
// lets nothing else in. Pure: the files that go in are handed over.

import type { GuideDocument } from '../document/document.js';
import { factsOf } from '../document/revision.js';
import { blockMarkup } from './blocks.js';
import { type PageContext, railStyles } from './context.js';
import { drawHtml, type PageAssets } from './frame.js';
import { el, join, type Markup } from './markup.js';
import { pageData } from './page-data.js';
import { languageOf } from './prose.js';
import { safetyStyles } from './signal.js';

export interface PageOptions {
  /** `training` tells why; `bay` and `walk` do not differ on the page. */
  readonly print: 'bay' | 'training' | 'walk';
  readonly safetyColours: boolean;
  readonly twoSided: boolean;
}

/** On paper printed on both sides the binding edge alternates; browsers without page selectors print as before. */
const MIRRORED =
  '@page:left{margin-left:12mm;margin-right:20mm}@page:right{margin-left:20mm;margin-right:12mm}@media print{section.record{break-before:right}}';

export function pageHtml(document: GuideDocument, options: PageOptions, assets: PageAssets): string {
  const { identity, words } = document;
  const context: PageContext = {
    document,
    words,
    title: identity.title.trim() || identity.number,
    training: options.print !== 'bay',
    safetyColours: options.safetyColours,
    rails: new Set(),
    widest: { rail: 0 },
    level: document.sheet === 'guide' ? 3 : 2,
  };
  const main = el(
    'main',
    { id: 'main' },
    document.blocks.map((block) => blockMarkup(block, context)),
  );
  const live = document.sheet === 'guide' || document.sheet === 'record';
  return drawHtml({
    language: document.language,
    title: [identity.number, context.title, identity.side].filter(Boolean).join(' '),
    words,
    name: `${document.sheet} ${identity.status}`,
    body: [
      el('div', { class: 'top' }, bar(context), el('div', { id: 'bans', role: 'status', class: 'bans' })),
      el('div', { class: 'wrap' }, contents(context), main, document.sheet === 'guide' && stateList(context)),
    ],
    standing: document.standing,
    styles:
      railStyles(context) +
      (options.safetyColours ? safetyStyles() : '') +
      (options.twoSided ? MIRRORED : ''),
    script: live ? assets.script : '',
    data: pageData(document),
    assets,
  });
}

function bar({ document }: PageContext): Markup {
  const { identity, words, sheet } = document;
  return el(
    'header',
    { class: 'bar' },
    el('b', { class: 'no' }, identity.number),
    el(
      'span',
      { class: 'who' },
      factsOf(document).map((fact, i) => [i > 0 && ' · ', el('span', { class: 'fig' }, fact)]),
    ),
    identity.status !== 'released' && el('span', { class: 'status' }, identity.statusText),
    sheet === 'guide' && [
      el(
        'p',
        { class: 'counts', 'data-live': true },
        el('a', { href: '#list-off' }, el('b', { id: 'off' }, '0'), ' ', words.stillOff),
        el('a', { href: '#list-loose' }, el('b', { id: 'loose' }, '0'), ' ', words.toTorque),
        el('a', { id: 'next', href: '#main' }, el('b', { id: 'done' }, '0'), ' ', el('span', { id: 'all' })),
      ),
      el('button', { type: 'button', id: 'undo', 'data-live': true, disabled: true }, words.undo),
    ],
  );
}

function contents({ document: { blocks, words } }: PageContext): Markup {
  const steps = blocks.flatMap((block) => (block.kind === 'step' ? [block] : []));
  if (steps.length === 0) return join();
  return el(
    'nav',
    { 'aria-label': words.steps },
    el(
      'ol',
      { role: 'list' },
      steps.map((step) =>
        el(
          'li',
          {},
          el(
            'a',
            { href: `#${step.id}` },
            el('b', {}, step.number),
            el('span', languageOf({ language: step.titleLanguage }), step.title.trim() || step.number),
            el('small', { id: `p-${step.id}` }),
          ),
        ),
      ),
    ),
  );
}

function stateList({ words }: PageContext): Markup {
  const part = (id: string, title: string) => [el('h2', {}, title), el('ul', { id, role: 'list' })];
  return el(
    'aside',
    // It scrolls where it is longer than the screen.
    { 'aria-label': words.jobState, 'data-live': true, tabindex: 0 },
    part('list-off', words.stillOff),
    part('list-loose', words.toTorque),
    part('list-readings', words.readings),
    part('list-holds', words.holds),
    part('list-clocks', words.clocks),
  );
}
