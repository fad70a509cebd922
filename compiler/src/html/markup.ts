// HTML, built from elements. Text is escaped when it goes in; only this file and the drawings make markup.

export interface Markup {
  readonly markup: string;
}

export type Child = Markup | string | undefined | false | readonly Child[];
export type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/** An element. Attributes that are undefined or false are left out; true gives a bare attribute. */
export function el(name: string, attributes: Attributes, ...children: readonly Child[]): Markup {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined && value !== false)
    .map(([key, value]) => (value === true ? ` ${key}` : ` ${key}="${escapeText(String(value))}"`))
    .join('');
  if (VOID.has(name)) return { markup: `<${name}${written}>` };
  return { markup: `<${name}${written}>${write(children)}</${name}>` };
}

/** Several pieces one after the other. */
export function join(...children: readonly Child[]): Markup {
  return { markup: write(children) };
}

/** Markup made elsewhere in this project: drawings, styles. Never for what a writer typed. */
export const trusted = (markup: string): Markup => ({ markup });

export function escapeText(value: string): string {
  return value.replace(/[&<>"']/g, (character) => ENTITIES[character] ?? character);
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};
const VOID = new Set(['input', 'img', 'br', 'meta', 'link', 'hr', 'col']);

function write(child: Child): string {
  if (child === undefined || child === false) return '';
  if (typeof child === 'string') return escapeText(child);
  return 'markup' in child ? child.markup : child.map(write).join('');
}
