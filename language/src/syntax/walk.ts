// Walking the tree: one table says which fields of each kind of line hold nodes. Nothing recurses over depth.
import { touches } from '../text/span.js';
import type { Line, LineBase, LineKind, Name, Tree } from './tree.js';

type NodeField<K extends LineKind> = Exclude<
  keyof Extract<Line, { kind: K }>,
  keyof LineBase | 'kind' | 'word' | 'signal' | 'test'
>;

/**
 * The fields of each kind of line that hold nodes, in the order written. A kind or a field left out does not
 * compile; see `allFields`.
 */
const FIELDS = {
  procedure: ['number'],
  catalogue: [],
  use: ['path'],
  applies: ['vehicle', 'from', 'to', 'guard'],
  sides: ['sides'],
  labour: ['time', 'guard'],
  crew: ['count'],
  revision: ['number', 'day'],
  status: ['status', 'by', 'day'],
  review: ['day'],
  section: [],
  entry: ['name'],
  clauses: ['clauses', 'guard'],
  values: ['values'],
  prerequisite: ['name', 'value', 'clauses', 'guard'],
  operation: ['name'],
  step: [],
  message: ['reference'],
  statement: ['verb', 'items', 'clauses', 'guard'],
  perform: ['operation', 'from', 'side', 'guard'],
  when: ['guard'],
  if: ['subject'],
  otherwise: [],
  repeat: ['times'],
  text: [],
  picture: ['path'],
  clip: ['path', 'at'],
  accept: ['codes'],
  rule: ['clauses'],
  unread: [],
} as const satisfies { readonly [K in LineKind]: readonly NodeField<K>[] };

type Missing = { [K in LineKind]: Exclude<NodeField<K>, (typeof FIELDS)[K][number]> }[LineKind];
/** Compiles only while no field is left out of the table. */
const allFields: [Missing] extends [never] ? true : Missing = true;

/** The fields of a line that hold nodes, in the order written. */
export function nodeFields(line: Line): readonly string[] {
  return allFields ? FIELDS[line.kind] : [];
}

/** Visits every line, a line before its block. `visit` may return false to pass over a line's block. */
export function walkLines(
  tree: Tree,
  visit: (line: Line, parent: Line | undefined) => boolean | undefined,
): void {
  const waiting: { line: Line; parent: Line | undefined }[] = [];
  const push = (lines: readonly Line[], parent: Line | undefined) => {
    for (let i = lines.length - 1; i >= 0; i--) {
      const line = lines[i];
      if (line !== undefined) waiting.push({ line, parent });
    }
  };
  push(tree.lines, undefined);
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (visit(next.line, next.parent) !== false) push(next.line.children, next.line);
  }
}

/** The lines around an offset, the outermost first: each holds the next. */
export function pathAt(tree: Tree, offset: number): Line[] {
  const path: Line[] = [];
  for (let lines = tree.lines; ; ) {
    const line = lineBefore(lines, offset);
    if (line === undefined || !touches(line, offset)) return path;
    path.push(line);
    lines = line.children;
  }
}

/** The innermost line whose code or text holds the offset, its end included. */
export function lineAt(tree: Tree, offset: number): Line | undefined {
  const line = pathAt(tree, offset).pop();
  if (line === undefined) return undefined;
  const end = Math.max(line.code.end, line.prose?.end ?? 0);
  return offset <= end || line.children.length === 0 ? line : undefined;
}

/** Every name on a line: of its code, in the order written, then those referred to in its text. */
export function namesOf(line: Line): Name[] {
  const names: Name[] = [];
  const fields = line as unknown as Readonly<Record<string, unknown>>;
  const waiting: unknown[] = nodeFields(line)
    .map((field) => fields[field])
    .reverse();
  for (let node = waiting.pop(); node !== undefined || waiting.length > 0; node = waiting.pop()) {
    if (isName(node)) names.push(node);
    else if (typeof node === 'object' && node !== null && !isQuantity(node))
      waiting.push(...Object.values(node).reverse());
  }
  for (const { name } of line.prose?.references ?? []) names.push(name);
  return names.sort((a, b) => a.start - b.start);
}

/** The last line that starts at or before an offset. */
function lineBefore(lines: readonly Line[], offset: number): Line | undefined {
  let low = 0;
  let high = lines.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((lines[middle]?.start ?? 0) <= offset) low = middle + 1;
    else high = middle;
  }
  return lines[low - 1];
}

/** Names and raw text have a text; of these only names have no `quoted`. */
function isName(node: unknown): node is Name {
  return (
    typeof node === 'object' &&
    node !== null &&
    'text' in node &&
    'start' in node &&
    !('quoted' in node) &&
    (node as Name).text !== ''
  );
}

function isQuantity(node: object): boolean {
  return 'amounts' in node || 'stages' in node || 'hole' in node;
}
