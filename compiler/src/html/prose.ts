// Running text and figures on the page.
import type { Language } from '@baywright/language';
import {
  type Figure,
  type InlineRenderers,
  type Prose,
  type Quantity,
  renderInline,
} from '../document/inline.js';
import { runsOf } from '../keep-together.js';
import { el, join, type Markup } from './markup.js';

export function proseMarkup(prose: Prose): Markup {
  return join(prose.map((inline) => renderInline(INLINE, inline)));
}

/** A name or title as it is, its numbers with their units kept whole. */
export function nameMarkup(name: string): Markup {
  return join(runsOf(name).map(({ text, whole }) => (whole ? el('span', { class: 'fig' }, text) : text)));
}

/** A value and its unit, which never part. */
export function figureMarkup(figure: Figure): Markup {
  return el('span', { class: 'fig' }, figure.value, figure.unit !== '' && ['\u00A0', unitMarkup(figure)]);
}

/** The unit; the part that tells inch from foot is in heavy capitals. */
export function unitMarkup({ unit, loud }: Figure): Markup {
  const at = loud ? unit.indexOf(loud) : -1;
  if (!loud || at < 0) return join(unit);
  // FOOT-pounds would break at its hyphen.
  return el('span', { class: 'whole' }, unit.slice(0, at), el('b', {}, loud), unit.slice(at + loud.length));
}

function quantityMarkup(quantity: Quantity): Markup {
  return join(
    el('strong', {}, figureMarkup(quantity.primary)),
    quantity.secondary && [' (', figureMarkup(quantity.secondary), ')'],
  );
}

/** The attribute of what is in another language than the page (WCAG 3.1.2). */
export const languageOf = ({
  language,
}: {
  readonly language?: Language | undefined;
}): { readonly lang?: Language } => (language === undefined ? {} : { lang: language });

const INLINE: InlineRenderers<Markup> = {
  text: (inline) => nameMarkup(inline.text),
  strong: (inline) => el('strong', {}, proseMarkup(inline.children)),
  emphasis: (inline) => el('em', {}, proseMarkup(inline.children)),
  code: (inline) => el('code', {}, inline.text),
  thing: (inline) => el('strong', languageOf(inline), nameMarkup(inline.text)),
  quantity: (inline) => quantityMarkup(inline.quantity),
  line: (inline) => el('a', { href: `#${inline.row}` }, inline.text),
  link: (inline) => el('a', { href: inline.href, rel: 'noopener noreferrer' }, proseMarkup(inline.children)),
  foreign: (inline) => el('span', languageOf(inline), proseMarkup(inline.children)),
};
