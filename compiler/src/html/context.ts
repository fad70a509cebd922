// What the page renderers share while one document is turned into a page.
import type { Rail } from '../document/blocks.js';
import type { GuideDocument } from '../document/document.js';
import type { Words } from '../document/words.js';

export interface PageContext {
  readonly document: GuideDocument;
  readonly words: Words;
  readonly title: string;
  readonly training: boolean;
  readonly safetyColours: boolean;
  /** Rail states met so far, for the style sheet. */
  readonly rails: Set<string>;
  /** The widest rail so far: things off and things loose stand beside each other. */
  readonly widest: { rail: number };
  /** Heading level of the sections inside the sheet. */
  readonly level: number;
}

/** Class names that give a row its rail: without inline styles, which the page's policy forbids. */
export function railClass(rail: Rail, context: PageContext): string {
  const names = [`o${rail.off}`, `l${rail.loose}`];
  for (const name of names) context.rails.add(name);
  context.widest.rail = Math.max(context.widest.rail, rail.off + rail.loose);
  return names.join(' ');
}

/** The rules behind the rail's class names. */
export function railStyles({ rails, widest }: PageContext): string {
  const rules = [...rails].sort().map((name) => `.${name}{--${name[0]}:${name.slice(1)}}`);
  return `:root{--most:${Math.max(1, widest.rail)}}${rules.join('')}`;
}
