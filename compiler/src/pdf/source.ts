// A document as typesetter source: one main file of calls into the templates, the settings as JSON, the pictures as
// files. Pure: the engine does the rest.

import type { GuideDocument } from '../document/document.js';
import type { Picture } from '../document/picture.js';
import type { PrintOptions } from '../print-options.js';
import { openArt } from './art.js';
import type { PrintContext } from './context.js';
import { pagesOf } from './pages.js';
import { artArgument, drawRunning } from './running.js';
import { type Frame, frameOf, WIDTH } from './steps/frame.js';

export interface PrintSource {
  readonly main: string;
  /** Settings for `sys.inputs`. */
  readonly settings: string;
  readonly pictures: readonly { readonly path: string; readonly data: Uint8Array }[];
  /** How many pages it must come to, where their numbers were worked out and stand in it. */
  readonly pages?: number;
}

const TEMPLATES = ['base', 'page', 'step', 'front', 'record'] as const;

/**
 * `refused` are the pictures that the typesetter cannot read: a note stands in their place. `counted` leaves the counting
 * of pages to the typesetter, which takes it longer.
 */
export function printSource(
  document: GuideDocument,
  options: PrintOptions,
  { refused = new Set(), counted = false }: { refused?: ReadonlySet<Uint8Array>; counted?: boolean } = {},
): PrintSource {
  const pictures: { path: string; data: Uint8Array }[] = [];
  const { identity } = document;
  const context: PrintContext = {
    words: document.words,
    title: identity.title.trim() || identity.number,
    titleLanguage: identity.titleLanguage,
    training: options.print !== 'bay',
    safetyColours: options.safetyColours,
    frame: frameOf(document, options),
    column: WIDTH,
    isPart: document.sheet === 'guide',
    addPicture: (picture) => (refused.has(picture.data) ? undefined : addPicture(pictures, picture)),
  };
  const imports = TEMPLATES.map((name) => `#import "/pdf/${name}.typ": *`).join('\n');
  const { code, count: pages } = pagesOf(document, context, { twoSided: options.twoSided, counted });
  return {
    main: `${imports}\n#show: dress\n${code.map((page) => `#${page.raw}\n`).join('')}`,
    settings: JSON.stringify(settings(document, options, context.frame, pages)),
    pictures,
    ...(pages === undefined ? {} : { pages }),
  };
}

function addPicture(pictures: { path: string; data: Uint8Array }[], picture: Picture): string {
  const path = `/pictures/${pictures.length + 1}.${picture.type}`;
  pictures.push({ path, data: picture.data });
  return path;
}

/** What is drawn on every page. */
function still(document: GuideDocument, frame: Frame) {
  const canvas = openArt();
  drawRunning(canvas, document, frame);
  return artArgument(canvas, frame);
}

function settings(document: GuideDocument, options: PrintOptions, frame: Frame, pages: number | undefined) {
  const { identity, words } = document;
  const [paper, width, height] = frame.paper;
  return {
    sheet: document.sheet,
    words,
    shop: identity.shop,
    still: still(document, frame),
    title: [identity.number, identity.title, identity.side].filter(Boolean).join(' '),
    language: document.language,
    region: document.language === 'en' ? 'GB' : null,
    pages: pages ?? null,
    'label-width': frame.label,
    paper,
    'paper-width': width,
    'paper-height': height,
    'two-sided': options.twoSided,
    colour: options.colour,
    walk: frame.walk,
  };
}
