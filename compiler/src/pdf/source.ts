// A document as typesetter source: one main file of calls into the templates, the settings as JSON, the pictures as
// files. Pure: the engine does the rest.

import { type Block, walkBlocks } from '../document/blocks.js';
import type { GuideDocument } from '../document/document.js';
import { plain } from '../document/inline.js';
import type { Picture } from '../document/picture.js';
import { revisionText } from '../document/revision.js';
import type { PrintOptions } from '../print-options.js';
import { SAFETY_COLOURS } from '../safety-colours.js';
import type { PrintContext } from './context.js';
import { pageCalls } from './pages.js';

export interface PrintSource {
  readonly main: string;
  /** Settings for `sys.inputs`. */
  readonly settings: string;
  readonly pictures: readonly { readonly path: string; readonly data: Uint8Array }[];
}

export const TEMPLATES = ['base', 'page', 'step', 'front', 'flow', 'record'] as const;

/** `refused` are the pictures that the typesetter cannot read: a note stands in their place. */
export function printSource(
  document: GuideDocument,
  options: PrintOptions,
  refused: ReadonlySet<Uint8Array> = new Set(),
): PrintSource {
  const pictures: { path: string; data: Uint8Array }[] = [];
  const { identity } = document;
  const context: PrintContext = {
    words: document.words,
    title: identity.title.trim() || identity.number,
    training: options.print !== 'bay',
    safetyColours: options.safetyColours,
    addPicture: (picture) => (refused.has(picture.data) ? undefined : addPicture(pictures, picture)),
  };
  const imports = TEMPLATES.map((name) => `#import "/pdf/${name}.typ": *`).join('\n');
  return {
    main: `${imports}\n#show: dress\n${pageCalls(document.blocks, context)
      .map((page) => `#${page.raw}\n`)
      .join('')}`,
    settings: JSON.stringify(settings(document, options)),
    pictures,
  };
}

function addPicture(pictures: { path: string; data: Uint8Array }[], picture: Picture): string {
  const path = `/pictures/${pictures.length + 1}.${picture.type}`;
  pictures.push({ path, data: picture.data });
  return path;
}

/** Name, width and height in millimetres (ISO 216, ANSI/ASME Y14.1). */
const PAPER = { a4: ['a4', 210, 297], letter: ['us-letter', 215.9, 279.4] } as const;

function settings(document: GuideDocument, options: PrintOptions) {
  const { identity, words } = document;
  const [paper, width, height] = PAPER[options.paper];
  const rails = [...walkBlocks(document.blocks)].flatMap((block) =>
    'rail' in block ? [block.rail.off + block.rail.loose] : [],
  );
  const across = { draft: words.draft, proved: words.draft, withdrawn: words.withdrawn, released: undefined }[
    identity.status
  ];
  return {
    sheet: document.sheet,
    words,
    identity: {
      number: identity.number,
      title: identity.title,
      'revision-text': revisionText(document),
      'status-text': identity.statusText,
      options: identity.options,
      shop: identity.shop,
      ...(identity.side === undefined ? {} : { side: identity.side }),
    },
    title: [identity.number, identity.title, identity.side].filter(Boolean).join(' '),
    language: document.language,
    region: document.language === 'en' ? 'GB' : null,
    standing: document.standing,
    across: across ?? null,
    bans: document.bans.map(({ id, text }) => ({ id, text: plain(text) })),
    'most-bans': Math.max(1, document.bans.length === 0 ? 1 : mostBans(document.blocks)),
    'most-off': Math.max(1, ...rails),
    paper,
    'paper-width': width,
    'paper-height': height,
    'two-sided': options.twoSided,
    'number-length': numberLength(document.blocks),
    colour: options.colour,
    'safety-colours': options.safetyColours ? SAFETY_COLOURS : null,
    print: options.print,
  };
}

/** Bans in force at once, at most: the running head gets a line for each. A page may also see one end and one begin. */
function mostBans(blocks: readonly Block[]): number {
  const live = new Set<string>();
  let most = 0;
  for (const block of walkBlocks(blocks)) {
    if (block.kind !== 'banner') continue;
    if (block.edge === 'start') live.add(block.ban);
    most = Math.max(most, live.size);
    if (block.edge === 'end') live.delete(block.ban);
  }
  return most;
}

/** Characters of the longest line number: the column of the boxes is as wide as it asks. */
function numberLength(blocks: readonly Block[]): number {
  let longest = 0;
  for (const block of walkBlocks(blocks))
    if (block.kind === 'row' || block.kind === 'stop') longest = Math.max(longest, block.number.length);
  return longest;
}
