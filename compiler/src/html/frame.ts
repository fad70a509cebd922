// The frame of every page: head with its policy, skip link, foot, data and script.
import type { Language } from '@baywright/language';
import type { Words } from '../document/words.js';
import { type Child, el, join, trusted } from './markup.js';

/** The fixed parts of every page. */
export interface PageAssets {
  readonly styles: string;
  /** Script of guides and records, and of the list of guides. */
  readonly script: string;
  readonly libraryScript: string;
  /**
   * WOFF2 files, base64: basic Latin, and the extension that is added when the text needs it. Empty where the extension is
   * too heavy to carry along: such letters then come from the type of the reader's machine.
   */
  readonly latin: string;
  readonly latinExtended: string;
  /** SHA-256 of a text in base64, for the content policy. */
  readonly hash: (text: string) => string;
}

export interface Frame {
  readonly language: Language;
  readonly title: string;
  readonly words: Words;
  /** Class names of the body. */
  readonly name: string;
  readonly body: readonly Child[];
  readonly standing: string;
  /** Styles of this page alone. */
  readonly styles: string;
  /** Empty for a page that does nothing. */
  readonly script: string;
  /** What the script reads. */
  readonly data: unknown;
  readonly assets: PageAssets;
}

/** The whole page as text. Nothing outside the file is let in: not by the page and not by its policy. */
export function drawHtml(frame: Frame): string {
  const { assets, script } = frame;
  const body = join(frame.body);
  const fixed = fixedParts(assets, EXTENDED.test(body.markup));
  const page = el(
    'html',
    { lang: frame.language },
    el(
      'head',
      {},
      el('meta', { charset: 'utf-8' }),
      el('meta', { 'http-equiv': 'Content-Security-Policy', content: policy(frame, fixed) }),
      el('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
      el('meta', { name: 'color-scheme', content: 'light dark' }),
      el('meta', { name: 'generator', content: 'Baywright' }),
      el('title', {}, frame.title),
      el('style', {}, trusted(fixed.styles)),
      frame.styles !== '' && el('style', {}, trusted(frame.styles)),
    ),
    el(
      'body',
      { class: frame.name },
      el('a', { class: 'skip', href: '#main' }, frame.words.skip),
      body,
      el('footer', {}, el('p', {}, frame.standing)),
      script !== '' && [
        el('script', { type: 'application/json', id: 'data' }, trusted(dataText(frame.data))),
        el('script', {}, trusted(script)),
      ],
    ),
  );
  return `<!DOCTYPE html>\n${page.markup}\n`;
}

/** JSON that cannot end its element. */
function dataText(data: unknown): string {
  return JSON.stringify(data)
    .replaceAll('<', '\\u003c')
    .replaceAll('\u2028', '\\u2028')
    .replaceAll('\u2029', '\\u2029');
}

function policy({ styles, script, assets }: Frame, fixed: FixedParts): string {
  const own = styles === '' ? '' : ` 'sha256-${assets.hash(styles)}'`;
  return [
    "default-src 'none'",
    'img-src data:',
    'media-src data:',
    'font-src data:',
    `style-src 'sha256-${fixed.stylesHash}'${own}`,
    script === '' ? "script-src 'none'" : `script-src 'sha256-${fixed.hashOf(script)}'`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
}

/** What is alike in all pages: type and styles, with their hash, and the hashes of scripts. */
interface FixedParts {
  readonly styles: string;
  readonly stylesHash: string;
  readonly hashOf: (script: string) => string;
}

/** Made once for each choice of type: put together for each page, it takes as long as the rest of the page. */
const made = new WeakMap<PageAssets, Map<boolean, FixedParts>>();

function fixedParts(assets: PageAssets, isExtended: boolean): FixedParts {
  const both = made.get(assets) ?? new Map<boolean, FixedParts>();
  made.set(assets, both);
  const known = both.get(isExtended);
  if (known) return known;
  const styles = fontFaces(isExtended, assets) + assets.styles;
  const hashes = new Map<string, string>();
  const hashOf = (script: string): string => {
    const hash = hashes.get(script) ?? assets.hash(script);
    hashes.set(script, hash);
    return hash;
  };
  const fixed = { styles, stylesHash: assets.hash(styles), hashOf };
  both.set(isExtended, fixed);
  return fixed;
}

/** Latin Extended-A and -B, and what comes with them: another 20 kB, only where the text needs it. */
const EXTENDED = /[\u0100-\u0130\u0132-\u0151\u0154-\u02BA\u1E00-\u1EFF]/;
const LATIN =
  'U+0000-00FF,U+0131,U+0152-0153,U+02BB-02BC,U+02C6,U+02DA,U+02DC,U+2000-206F,U+20AC,U+2122,U+2212,U+2215,U+FFFD';

function fontFaces(isExtended: boolean, assets: PageAssets): string {
  const face = (data: string, range: string) =>
    `@font-face{font-family:"Atkinson Hyperlegible Next";font-weight:200 800;font-display:block;src:url(data:font/woff2;base64,${data}) format("woff2");unicode-range:${range}}`;
  const latin = face(assets.latin, LATIN);
  return isExtended && assets.latinExtended !== ''
    ? latin + face(assets.latinExtended, 'U+0100-02BA,U+1E00-1EFF,U+20A0-20C0')
    : latin;
}
