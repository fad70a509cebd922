// Fills the sentence templates of verbs and fixed phrases. Format-neutral: guides turn pieces into HTML or PDF.

/** A run of a sentence. A thing acted on is printed strong; a quantity never parts from its unit. */
export type Piece =
  | { readonly text: string }
  | { readonly thing: string; readonly text: string; readonly strong: true }
  | { readonly quantity: string; readonly text: string };

/** What fills each slot, by the slot's name; an absent or empty one drops the bracketed part it stands in. */
export type Slots = Readonly<Record<string, readonly Piece[] | undefined>>;

/** A template taken apart: plain text, a slot, or a part that falls away with its slots. */
export type TemplatePart =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'slot'; readonly name: string }
  | { readonly kind: 'group'; readonly parts: readonly TemplatePart[] };

/**
 * The sentence of a template such as `Remove {object}[ from {from}]`. Groups may nest: the outer one falls away
 * when one of its own slots is empty, whatever the inner ones hold. A comma that a dropped part leaves at the end
 * goes with it and neighbouring plain pieces become one. A template that opens with a slot or a bracket gets a
 * capital letter; one that opens with text keeps the letter it has.
 * @throws {Error} when brackets or braces of the template do not pair; templates are ours, so this is a defect.
 */
export function renderPhrase(template: string, slots: Slots): Piece[] {
  const parts = parsePhrase(template);
  const pieces: Piece[] = [];
  append(parts, slots, pieces);
  const sentence = tidied(joined(pieces));
  return parts[0]?.kind === 'text' ? sentence : capitalised(sentence);
}

/** The words of pieces as plain text. */
export function textOf(pieces: readonly Piece[]): string {
  return pieces.map((piece) => piece.text).join('');
}

/** The names of a template's slots in reading order, those in brackets included. */
export function slotsOf(template: string): string[] {
  const names = (parts: readonly TemplatePart[]): string[] =>
    parts.flatMap((part) =>
      part.kind === 'slot' ? [part.name] : part.kind === 'group' ? names(part.parts) : [],
    );
  return names(parsePhrase(template));
}

const parsed = new Map<string, readonly TemplatePart[]>();

/** Takes a template apart; each template once. @throws {Error} see `renderPhrase`. */
export function parsePhrase(template: string): readonly TemplatePart[] {
  let parts = parsed.get(template);
  if (!parts) {
    parts = parse(template);
    parsed.set(template, parts);
  }
  return parts;
}

function parse(template: string): TemplatePart[] {
  const open: TemplatePart[][] = [[]];
  for (const [token] of template.matchAll(/\{[^{}[\]]+\}|[[\]]|[^{}[\]]+|[{}]/g)) {
    const top = open.at(-1) ?? [];
    if (token === '[') open.push([]);
    else if (token === ']') {
      open.pop();
      const outer = open.at(-1);
      if (!outer) throw new Error(`phrase closes a bracket it did not open: ${template}`);
      outer.push({ kind: 'group', parts: top });
    } else if (token === '{' || token === '}') throw new Error(`phrase has a brace alone: ${template}`);
    else if (token.startsWith('{')) top.push({ kind: 'slot', name: token.slice(1, -1) });
    else top.push({ kind: 'text', text: token });
  }
  const [whole = [], ...unclosed] = open;
  if (unclosed.length > 0) throw new Error(`phrase leaves a bracket open: ${template}`);
  return whole;
}

function append(parts: readonly TemplatePart[], slots: Slots, into: Piece[]): void {
  for (const part of parts) {
    if (part.kind === 'text') into.push({ text: part.text });
    else if (part.kind === 'slot') into.push(...(slots[part.name] ?? []));
    else if (part.parts.every((inner) => inner.kind !== 'slot' || slots[inner.name]?.length)) {
      append(part.parts, slots, into);
    }
  }
}

function isPlain(piece: Piece): boolean {
  return !('thing' in piece) && !('quantity' in piece);
}

function joined(pieces: readonly Piece[]): Piece[] {
  const out: Piece[] = [];
  for (const piece of pieces) {
    const before = out.at(-1);
    if (before && isPlain(before) && isPlain(piece)) out[out.length - 1] = { text: before.text + piece.text };
    else if (piece.text !== '') out.push(piece);
  }
  return out;
}

/**
 * Mends what dropped parts leave behind: `a, , b`, a comma before a colon, a comma or space at either end. The
 * space that French sets before a colon must not break the line there.
 */
function tidied(pieces: readonly Piece[]): Piece[] {
  const last = pieces.length - 1;
  return pieces.flatMap((piece, at) => {
    if (!isPlain(piece)) return [piece];
    let text = piece.text.replace(/,(?=\s*[,:;)])/g, '').replace(/ {2,}/g, ' ');
    text = text.replace(/ (?=[:;?!])/g, '\u00a0');
    if (at === 0) text = text.replace(/^[\s,]+/, '');
    if (at === last) text = text.replace(/[\s,]+$/, '');
    return text === '' ? [] : [{ text }];
  });
}

function capitalised(pieces: readonly Piece[]): Piece[] {
  const [first, ...rest] = pieces;
  if (!first) return [];
  const letter = String.fromCodePoint(first.text.codePointAt(0) ?? 0);
  return [{ ...first, text: letter.toUpperCase() + first.text.slice(letter.length) }, ...rest];
}
