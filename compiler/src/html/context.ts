// What the page renderers share while one document is turned into a page.
import type { Rail } from '../document/blocks.js';
import type { GuideDocument } from '../document/document.js';
import type { Words } from '../document/words.js';

export interface PageContext {
  readonly document: GuideDocument;
  readonly words: Words;
  readonly title: string;
  readonly training: boolean;
  /** Rail states met so far, for the style sheet. */
  readonly rails: Set<string>;
  /** Heading level of the sections inside the sheet. */
  readonly level: number;
}

/** Class names that give a row its rail: without inline styles, which the page's policy forbids. */
export function railClass(rail: Rail, context: PageContext): string {
  const names = [`o${rail.off}`, `l${rail.loose}`];
  for (const name of names) context.rails.add(name);
  return names.join(' ');
}

/** The rules behind the rail's class names. */
export function railStyles(rails: ReadonlySet<string>): string {
  const counts = [...rails].map((name) => Number(name.slice(1)));
  const rules = [...rails].sort().map((name) => `.${name}{--${name[0]}:${name.slice(1)}}`);
  return `:root{--most:${Math.max(1, ...counts)}}${rules.join('')}`;
}
