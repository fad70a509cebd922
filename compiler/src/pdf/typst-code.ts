// Typesetter source, built from values. Text only ever goes in as an escaped string literal, so nothing that a
// writer typed can become markup or code.

/** A piece of code of the typesetter, as distinct from a text. Only this file makes them. */
export interface Raw {
  readonly raw: string;
}

export type Argument =
  | Raw
  | string
  | number
  | boolean
  | undefined
  | readonly Argument[]
  | { readonly [name: string]: Argument };

/** Code as it is. Never for what a writer typed. */
export const raw = (code: string): Raw => ({ raw: code });

function literal(value: Argument): string {
  if (value === undefined) return 'none';
  if (typeof value === 'string') return stringLiteral(value);
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  if (Array.isArray(value)) return value.length === 0 ? '()' : `(${value.map(literal).join(', ')},)`;
  if (isRaw(value)) return value.raw;
  const entries = Object.entries(value as { readonly [name: string]: Argument });
  return entries.length === 0
    ? '(:)'
    : `(${entries.map(([name, item]) => `${name}: ${literal(item)}`).join(', ')})`;
}

/** A call of a template function: positional arguments, then named ones. */
export function call(
  name: string,
  positional: readonly Argument[],
  named: Readonly<Record<string, Argument>> = {},
): Raw {
  const parts = [
    ...positional.map(literal),
    ...Object.entries(named).map(([key, value]) => `${key}: ${literal(value)}`),
  ];
  return raw(`${name}(${parts.join(', ')})`);
}

/** Pieces one after the other, as content. */
export function sequence(pieces: readonly Raw[]): Raw {
  const [only] = pieces;
  if (only && pieces.length === 1) return only;
  return raw(pieces.length === 0 ? '[]' : `{${pieces.map((piece) => piece.raw).join(';')}}`);
}

export function stringLiteral(value: string): string {
  // Most texts hold nothing of the kind.
  if (!SPECIAL.test(value)) return `"${value}"`;
  const escaped = value.replace(ALL_SPECIAL, (character) =>
    character === '\\' || character === '"'
      ? `\\${character}`
      : `\\u{${(character.codePointAt(0) ?? 0).toString(16)}}`,
  );
  return `"${escaped}"`;
}

const SPECIAL = /[\\"\u0000-\u001F\u007F-\u009F]/;
const ALL_SPECIAL = new RegExp(SPECIAL, 'g');

function isRaw(value: object): value is Raw {
  return 'raw' in value;
}
