// HTML, built from elements. Text is escaped when it goes in; only this file and the drawings make markup.

export interface Markup {
  readonly markup: string;
}

export type Child = Markup | string | undefined | false | readonly Child[];
export type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/** An element. Attributes that are undefined or false are left out; true gives a bare attribute. */
export function el(name: string, attributes: Attributes, ...children: readonly Child[]): Markup {
  let out = `<${name}`;
  for (const key in attributes) {
    const value = attributes[key];
    if (value === undefined || value === false) continue;
    out += value === true ? ` ${key}` : ` ${key}="${escapeText(String(value))}"`;
  }
  return { markup: VOID.has(name) ? `${out}>` : `${out}>${write(children)}</${name}>` };
}

/** Several pieces one after the other. */
export function join(...children: readonly Child[]): Markup {
  return { markup: write(children) };
}

/** Markup made elsewhere in this project: drawings, styles. Never for what a writer typed. */
export const trusted = (markup: string): Markup => ({ markup });

export function escapeText(value: string): string {
  if (!/[&<>"']/.test(value)) return value;
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
  if ('markup' in child) return child.markup;
  let out = '';
  for (const inner of child) out += write(inner);
  return out;
}
