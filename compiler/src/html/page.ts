// A document as one file that needs no network: styles, type, drawings, pictures and script inside, and a policy that
// lets nothing else in. Pure: the files that go in are handed over.
import type { GuideDocument } from '../document/document.js';
import { say } from '../document/words.js';
import { blockMarkup } from './blocks.js';
import { type PageContext, railStyles } from './context.js';
import { el, join, type Markup, trusted } from './markup.js';
import { pageData } from './page-data.js';

/** The fixed parts of every page. */
export interface PageAssets {
  readonly styles: string;
  readonly script: string;
  /** WOFF2 files, base64: basic Latin, and the extension that is added when the text needs it. */
  readonly latin: string;
  readonly latinExtended: string;
  /** SHA-256 of a text in base64, for the content policy. */
  readonly hash: (text: string) => string;
}

export interface PageOptions {
  /** `training` tells why; `bay` and `walk` do not differ on the page. */
  readonly print: 'bay' | 'training' | 'walk';
}

export function pageHtml(document: GuideDocument, options: PageOptions, assets: PageAssets): string {
  const { identity, words } = document;
  const rails = new Set<string>();
  const context: PageContext = {
    document,
    words,
    title: identity.title.trim() || identity.number,
    training: options.print !== 'bay',
    rails,
    level: document.sheet === 'guide' ? 3 : 2,
  };
  const main = el(
    'main',
    { id: 'main' },
    document.blocks.map((block) => blockMarkup(block, context)),
  );
  const live = document.sheet === 'guide' || document.sheet === 'record';
  const styles = fontFaces(main.markup, assets) + assets.styles + railStyles(rails);
  const data = JSON.stringify(pageData(document))
    .replaceAll('<', '\\u003c')
    .replaceAll('\u2028', '\\u2028')
    .replaceAll('\u2029', '\\u2029');
  const page = el(
    'html',
    { lang: document.language },
    el(
      'head',
      {},
      el('meta', { charset: 'utf-8' }),
      el('meta', {
        'http-equiv': 'Content-Security-Policy',
        content: policy(styles, live ? assets.script : '', assets),
      }),
      el('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
      el('meta', { name: 'color-scheme', content: 'light dark' }),
      el('meta', { name: 'generator', content: 'Baywright' }),
      el('title', {}, [identity.number, context.title, identity.side].filter(Boolean).join(' ')),
      el('style', {}, trusted(styles)),
    ),
    el(
      'body',
      { class: `${document.sheet} ${identity.status}` },
      el('a', { class: 'skip', href: '#main' }, words.skip),
      el('div', { class: 'top' }, bar(context), el('div', { id: 'bans', role: 'status', class: 'bans' })),
      el(
        'div',
        { class: 'wrap' },
        contents(context),
        main,
        live && document.sheet === 'guide' && stateList(context),
      ),
      el('footer', {}, el('p', {}, document.standing)),
      live && [
        el('script', { type: 'application/json', id: 'data' }, trusted(data)),
        el('script', {}, trusted(assets.script)),
      ],
    ),
  );
  return `<!DOCTYPE html>\n${page.markup}\n`;
}

function policy(styles: string, script: string, { hash }: PageAssets): string {
  return [
    "default-src 'none'",
    'img-src data:',
    'font-src data:',
    `style-src 'sha256-${hash(styles)}'`,
    script === '' ? "script-src 'none'" : `script-src 'sha256-${hash(script)}'`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
}

/** Latin Extended-A and -B, and what comes with them: another 20 kB, only where the text needs it. */
const EXTENDED = /[\u0100-\u0130\u0132-\u0151\u0154-\u02BA\u1E00-\u1EFF]/;

function fontFaces(text: string, assets: PageAssets): string {
  const face = (data: string, range: string) =>
    `@font-face{font-family:"Atkinson Hyperlegible Next";font-weight:200 800;font-display:block;src:url(data:font/woff2;base64,${data}) format("woff2");unicode-range:${range}}`;
  const latin = face(
    assets.latin,
    'U+0000-00FF,U+0131,U+0152-0153,U+02BB-02BC,U+02C6,U+02DA,U+02DC,U+2000-206F,U+20AC,U+2122,U+2191,U+2193,U+2212,U+2215,U+FEFF,U+FFFD',
  );
  return EXTENDED.test(text)
    ? latin + face(assets.latinExtended, 'U+0100-02BA,U+1E00-1EFF,U+20A0-20C0')
    : latin;
}

function bar({ document: { identity, words, sheet } }: PageContext): Markup {
  const facts = [
    identity.side,
    ...identity.options,
    say(words.revision, { revision: identity.revision, date: identity.date }),
  ];
  return el(
    'header',
    { class: 'bar' },
    el('b', { class: 'no' }, identity.number),
    el('span', { class: 'who' }, facts.filter(Boolean).join(' · ')),
    identity.status !== 'released' && el('span', { class: 'status' }, identity.statusText),
    sheet === 'guide' && [
      el(
        'p',
        { class: 'counts', 'data-live': true },
        el('span', {}, el('b', { id: 'off' }, '0'), ' ', words.stillOff),
        el('span', {}, el('b', { id: 'loose' }, '0'), ' ', words.toTorque),
        el('span', {}, el('b', { id: 'done' }, '0'), ' ', el('span', { id: 'all' })),
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
            el('span', {}, step.title.trim() || step.number),
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
    { 'aria-label': words.jobState, 'data-live': true },
    part('list-off', words.stillOff),
    part('list-loose', words.toTorque),
    part('list-readings', words.readings),
    part('list-holds', words.holds),
    part('list-clocks', words.clocks),
  );
}
