// Inputs for the fuzz targets: real files damaged step by step, so that a failure shrinks to the few damages it needs.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';

const SAMPLES = fileURLToPath(new URL('../../samples', import.meta.url));
/** Inputs that once failed, and odd ones worth keeping; a new failure is put here with its fix. */
const CORPUS_FOLDER = fileURLToPath(new URL('./corpus', import.meta.url));

function texts(folder: string, suffix: string): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(suffix))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort()
    .map((path) => readFileSync(path, 'utf8'));
}

export const CORPUS: readonly string[] = texts(CORPUS_FOLDER, '.bay');
export const PROCEDURES: readonly string[] = [...CORPUS, ...texts(join(SAMPLES, 'procedures'), '.bay')];
export const CATALOGUES: readonly string[] = [
  ...texts(join(SAMPLES, 'catalogue'), '.bay'),
  ...texts(join(SAMPLES, 'house'), '.bay'),
];
/** The libraries that show one finding each: small, and every check has something to say. */
export const FAULTY: readonly string[] = texts(join(SAMPLES, 'faulty'), '.bay');
export const PICTURES: readonly string[] = texts(join(SAMPLES, 'pictures'), '.svg');

const PIECES = [
  '',
  ' ',
  '  ',
  '\t',
  '\n',
  '\r',
  '\r\n',
  '\n\n',
  ':',
  ',',
  '?',
  '#',
  '# ',
  '"',
  '{',
  '}',
  '\\',
  '\0',
  '\uFEFF',
  '\u2028',
  '\uD800',
  '\u{1F527}',
  '車',
  'é',
  '-',
  '−',
  '·',
  '°',
  '±',
  '1/0',
  '1/2',
  '0',
  '-1',
  '99999999999999999999',
  '1e308',
  '1,5',
  'N·m',
  'lb',
  'of',
  'then',
  'back',
  'to',
  'at',
  'when',
  'only when',
  'if needed',
  'otherwise',
  'repeat 3',
  'step: X',
  'removal',
  'installation',
  'parts',
  'rules',
  'use "x.bay"',
  'use "../../../etc/passwd"',
  'perform a from A-1',
  'remove',
  'install',
  'torque',
  'held by',
  'behind',
  'sides left, right',
  'accept S301: because',
  'status released',
  'procedure A-1: A',
  'never turn it while vehicle raised',
  'require wait 10 min',
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
] as const;

export type Damage =
  | { readonly how: 'put' | 'over'; readonly at: number; readonly text: string }
  | { readonly how: 'cut' | 'twice' | 'move'; readonly at: number; readonly length: number }
  | { readonly how: 'line away' | 'line twice' | 'line swap' | 'deeper' | 'shallower'; readonly at: number };

const place = fc.double({ min: 0, max: 1, noNaN: true });
const damage: fc.Arbitrary<Damage> = fc.oneof(
  fc.record({
    how: fc.constantFrom('put' as const, 'over' as const),
    at: place,
    text: fc.oneof(fc.constantFrom(...PIECES), fc.string({ maxLength: 6, unit: 'binary' })),
  }),
  fc.record({
    how: fc.constantFrom('cut' as const, 'twice' as const, 'move' as const),
    at: place,
    length: fc.integer({ min: 1, max: 80 }),
  }),
  fc.record({
    how: fc.constantFrom(
      'line away' as const,
      'line twice' as const,
      'line swap' as const,
      'deeper' as const,
      'shallower' as const,
    ),
    at: place,
  }),
);

function damaged(text: string, damages: readonly Damage[]): string {
  return damages.reduce(one, text);
}

function one(text: string, change: Damage): string {
  const at = Math.floor(change.at * (text.length + 1));
  switch (change.how) {
    case 'put':
      return text.slice(0, at) + change.text + text.slice(at);
    case 'over':
      return text.slice(0, at) + change.text + text.slice(at + change.text.length);
    case 'cut':
      return text.slice(0, at) + text.slice(at + change.length);
    case 'twice':
      return text.slice(0, at + change.length) + text.slice(at);
    case 'move': {
      const piece = text.slice(at, at + change.length);
      const rest = text.slice(0, at) + text.slice(at + change.length);
      const to = Math.floor(change.at * 7919) % (rest.length + 1);
      return rest.slice(0, to) + piece + rest.slice(to);
    }
    default: {
      const lines = text.split('\n');
      const line = Math.min(lines.length - 1, Math.floor(change.at * lines.length));
      const old = lines[line] ?? '';
      if (change.how === 'line away') lines.splice(line, 1);
      else if (change.how === 'line twice') lines.splice(line, 0, old);
      else if (change.how === 'deeper') lines[line] = `  ${old}`;
      else if (change.how === 'shallower') lines[line] = old.replace(/^ {1,2}/, '');
      else lines.splice(line, 2, lines[line + 1] ?? '', old);
      return lines.join('\n');
    }
  }
}

/** One of the texts with up to that many damages. */
export const damagedText = (from: readonly string[], most = 8): fc.Arbitrary<string> =>
  fc
    .tuple(fc.nat({ max: from.length - 1 }), fc.array(damage, { maxLength: most }))
    .map(([i, damages]) => damaged(from[i] ?? '', damages));
