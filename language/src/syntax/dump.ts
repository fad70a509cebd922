// Prints a tree as text, for tests and for looking at what was read: one row a line with its fields, spans left out.
import { formatMeasure } from '../quantity/index.js';
import type { Line, MeasureNode, Tree } from './tree.js';
import { nodeFields, walkLines } from './walk.js';

/** The tree as indented rows: `statement verb=remove items=[wheel-nut, wheel]`. */
export function dump(tree: Tree): string {
  const rows: string[] = [];
  walkLines(tree, (line) => {
    rows.push('  '.repeat(line.depth) + row(line));
  });
  return rows.join('\n');
}

function row(line: Line): string {
  const fields = line as unknown as Readonly<Record<string, unknown>>;
  const parts: string[] = [line.kind];
  for (const key of ['word', 'signal', 'test', ...nodeFields(line)]) {
    const text = shown(fields[key]);
    if (text !== '') parts.push(`${key}=${text}`);
  }
  if (line.broken) parts.push('broken');
  if (line.prose !== undefined)
    parts.push(`${line.prose.below ? 'below' : 'text'}=${JSON.stringify(line.prose.text)}`);
  return parts.join(' ');
}

/** A node in short; its depth is that of the grammar of one line, not of the file. */
function shown(node: unknown): string {
  if (node === undefined || node === null || node === false) return '';
  if (Array.isArray(node)) return node.length === 0 ? '' : `[${node.map(shown).join(', ')}]`;
  if (typeof node !== 'object') return String(node);
  if ('amounts' in node) return measure(node as unknown as MeasureNode);
  if ('text' in node && 'start' in node)
    return 'quoted' in node && node.quoted === true ? JSON.stringify(node.text) : String(node.text);
  if ('value' in node && 'hole' in node) return node.hole === true ? '?' : String(node.value);
  const parts = Object.entries(node)
    .filter(([key]) => !PASSED_OVER.has(key))
    .map(([key, value]) => [key, shown(value)] as const)
    .filter(([, text]) => text !== '');
  const [only] = parts;
  if (only !== undefined && parts.length === 1 && (only[0] === 'name' || only[0] === 'stages'))
    return only[1];
  const word = 'wordSpan' in node && 'word' in node ? [String(node.word)] : [];
  return `(${[...word, ...parts.map(([key, text]) => `${key}=${text}`)].join(' ')})`;
}

/** Places, and the word of a clause, which stands first. */
const PASSED_OVER = new Set(['start', 'end', 'wordSpan', 'word']);

function measure(node: MeasureNode): string {
  if (node.measure !== undefined) return `<${formatMeasure(node.measure)}>`;
  const amounts = node.amounts.map(
    ({ number, unit }) =>
      `${number.hole ? '?' : String(number.value)}${unit === undefined ? '' : ` ${unit.spelling}`}`,
  );
  return `<${node.bound === undefined ? '' : `at ${node.bound} `}${amounts.join(node.form === 'range' ? ' to ' : ' ')}>`;
}
