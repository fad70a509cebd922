// Running text and figures of a guide, ready to show: no markup, no units left to convert, no names left to
// resolve. Renderers turn these into HTML or typesetter source; nothing else in the project knows either.
import type { Language } from '@baywright/language';

/** The line of a source file that something on the page came from. Lines count from 1. */
export interface SourceRef {
  readonly file: string;
  readonly line: number;
}

/** One number with its unit, as printed: `115` `N·m`, `85` `FOOT-pounds`, `105 to 115` `N·m`. */
export interface Figure {
  readonly value: string;
  /** Empty for a bare number. */
  readonly unit: string;
  /** The part of `unit` set in heavy capitals, so that nobody takes inch for foot: `FOOT` of `FOOT-pounds`. */
  readonly loud?: string;
}

/** A figure in the shop's unit and, when there is one, in the other system. */
export interface Quantity {
  readonly primary: Figure;
  readonly secondary?: Figure;
}

/** A piece of running text. */
export type Inline =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'strong'; readonly children: readonly Inline[] }
  | { readonly kind: 'emphasis'; readonly children: readonly Inline[] }
  | { readonly kind: 'code'; readonly text: string }
  /** The thing a line acts on; set bold so that the eye finds it. */
  | { readonly kind: 'thing'; readonly text: string; readonly language?: Language }
  | { readonly kind: 'quantity'; readonly quantity: Quantity }
  /** A reference to a numbered line of the guide. */
  | { readonly kind: 'line'; readonly text: string; readonly row: string }
  /** A link out of the guide. `href` starts with `http:`, `https:` or `mailto:`. */
  | { readonly kind: 'link'; readonly href: string; readonly children: readonly Inline[] }
  /** In another language than the rest of the guide, for want of a translation: a screen reader changes its voice. */
  | { readonly kind: 'foreign'; readonly language: Language; readonly children: readonly Inline[] };

export type Prose = readonly Inline[];

/** A table of renderers over the kinds of running text: a new kind does not compile until each output has it. */
export type InlineRenderers<R> = {
  readonly [K in Inline['kind']]: (inline: Extract<Inline, { kind: K }>) => R;
};

/** Renders one piece with a table. */
export function renderInline<R>(table: InlineRenderers<R>, inline: Inline): R {
  // The table is indexed by the piece's own kind, which the type system cannot follow through the union.
  return (table[inline.kind] as (piece: Inline) => R)(inline);
}

export const text = (value: string): Inline => ({ kind: 'text', text: value });

/** The words of a prose alone, for alternative texts, bookmarks and search. */
export function plain(prose: Prose): string {
  return prose.map((inline) => renderInline(PLAIN, inline)).join('');
}

export function plainFigure(figure: Figure): string {
  return figure.unit === '' ? figure.value : `${figure.value} ${figure.unit}`;
}

const PLAIN: InlineRenderers<string> = {
  text: (inline) => inline.text,
  strong: (inline) => plain(inline.children),
  emphasis: (inline) => plain(inline.children),
  code: (inline) => inline.text,
  thing: (inline) => inline.text,
  quantity: ({ quantity }) =>
    plainFigure(quantity.primary) + (quantity.secondary ? ` (${plainFigure(quantity.secondary)})` : ''),
  line: (inline) => inline.text,
  link: (inline) => plain(inline.children),
  foreign: (inline) => plain(inline.children),
};
