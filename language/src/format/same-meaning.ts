// Whether two trees say the same: everything but where things stand, how many blanks part them, and the order of
// clauses, which means nothing. The law of the formatter is held to this.
import type { Line, Tree } from '../syntax/tree.js';
import { nodeFields, walkLines } from '../syntax/walk.js';

export function sameMeaning(a: Tree, b: Tree): boolean {
  const first = meaningOf(a);
  const second = meaningOf(b);
  return first.length === second.length && first.every((row, i) => row === second[i]);
}

/** One row a line, in the order of the file. */
export function meaningOf(tree: Tree): string[] {
  const rows: string[] = [];
  walkLines(tree, (line) => {
    rows.push(
      `${line.depth} ${line.kind} ${line.broken ? 'broken' : ''} ${codeOf(tree, line)} | ${line.prose?.text ?? ''}`,
    );
    return undefined;
  });
  return rows;
}

function codeOf(tree: Tree, line: Line): string {
  if (line.broken || line.kind === 'unread') return line.tokens.map(({ image }) => image).join(' ');
  const fields = line as unknown as Readonly<Record<string, unknown>>;
  const words = ['word', 'signal', 'test'].map((key) => String(fields[key] ?? ''));
  return [...words, ...nodeFields(line).map((field) => `${field}=${plain(tree, fields[field], field)}`)].join(
    ' ',
  );
}

/** A node without its spans. It is as deep as the grammar of one line, not as the file. */
function plain(tree: Tree, node: unknown, key: string): string {
  if (node === undefined || node === null) return '';
  if (Array.isArray(node)) {
    const all = node.map((each) => plain(tree, each, ''));
    return `[${(key === 'clauses' ? all.sort() : all).join(', ')}]`;
  }
  if (typeof node !== 'object') return String(node);
  if ('measure' in node && 'amounts' in node && node.measure !== undefined) return measurePlain(node.measure);
  if ('spelling' in node && 'unit' in node) return unitPlain(node.unit, String(node.spelling));
  if ('d' in node && 'n' in node) return String(node);
  const entries = Object.entries(node).filter(([name]) => !IGNORED.has(name));
  return `{${entries.map(([name, value]) => `${name}:${plain(tree, value, name)}`).join(' ')}}`;
}

function unitPlain(unit: unknown, spelling: string): string {
  return typeof unit === 'object' && unit !== null && 'id' in unit
    ? String(unit.id)
    : spelling.replace(/\s+/g, ' ');
}

/** Two ways to write a measure mean the same when value and unit do. */
function measurePlain(measure: unknown): string {
  return JSON.stringify(measure, (key, value: unknown) => {
    if (key === 'unit') return (value as { id: string }).id;
    if (typeof value === 'bigint') return value.toString();
    return key.toLowerCase().includes('digits') ? undefined : value;
  });
}

/** Places, and how text was quoted. */
const IGNORED = new Set(['start', 'end', 'wordSpan', 'quoted', 'digits']);
