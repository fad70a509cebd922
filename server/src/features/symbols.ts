// The outline of a document, and things and procedures of all libraries by name.
import { type FileModel, type Line, SECTION_BY_WORD, type ThingKind } from '@baywright/language';
import {
  type DocumentSymbol,
  type DocumentSymbolParams,
  type SymbolInformation,
  SymbolKind,
  SymbolTag,
  type WorkspaceSymbolParams,
} from 'vscode-languageserver';
import type { Snapshot } from '../snapshot.js';
import { documentFeature, libraryFeature } from './feature.js';
import { isWithdrawn } from './numbered.js';

export const documentSymbols = documentFeature<DocumentSymbolParams>(
  'textDocument/documentSymbol',
  { documentSymbolProvider: true },
  (snapshot) => {
    const out: DocumentSymbol[] = [];
    const model = snapshot.library.model(snapshot.path);
    for (const line of snapshot.tree.lines) {
      const symbol = symbolOf(snapshot, line, undefined);
      if (symbol) out.push(line === model?.head ? { ...symbol, ...tagsOf(model) } : symbol);
    }
    return out;
  },
);

/** Sections, entries, operations and steps; the depth is that of the language, which is small. */
function symbolOf(snapshot: Snapshot, line: Line, kind: ThingKind | undefined): DocumentSymbol | undefined {
  const own = SHOWN[line.kind];
  if (own === undefined) return undefined;
  const declares = line.kind === 'section' ? SECTION_BY_WORD.get(line.word)?.declares : kind;
  const title = line.prose?.text.trim().replace(/\s+/g, ' ') ?? '';
  const name =
    line.kind === 'step'
      ? title || 'step'
      : line.kind === 'procedure'
        ? (line.number?.text ?? 'procedure')
        : line.kind === 'operation'
          ? (line.name?.text ?? 'operation')
          : line.head.text;
  const children: DocumentSymbol[] = [];
  for (const child of line.kind === 'entry' || line.kind === 'step' ? [] : line.children) {
    if (child.kind === 'when')
      children.push(...child.children.flatMap((c) => symbolOf(snapshot, c, declares) ?? []));
    else children.push(...[symbolOf(snapshot, child, declares)].filter((s) => s !== undefined));
  }
  return {
    name: name || line.kind,
    ...(line.kind !== 'step' && title !== '' ? { detail: title } : {}),
    kind: line.kind === 'entry' && kind ? KINDS[kind] : own,
    range: snapshot.range(line),
    selectionRange: snapshot.range({ start: line.code.start, end: Math.min(line.code.end, line.end) }),
    ...(children.length > 0 ? { children } : {}),
  };
}

const SHOWN: Readonly<Partial<Record<Line['kind'], SymbolKind>>> = {
  procedure: SymbolKind.Module,
  catalogue: SymbolKind.Package,
  section: SymbolKind.Namespace,
  entry: SymbolKind.Field,
  operation: SymbolKind.Function,
  step: SymbolKind.Event,
};

const KINDS: Readonly<Record<ThingKind, SymbolKind>> = {
  part: SymbolKind.Class,
  fastener: SymbolKind.Field,
  connection: SymbolKind.Interface,
  circuit: SymbolKind.Interface,
  fluid: SymbolKind.Property,
  adjustment: SymbolKind.Property,
  condition: SymbolKind.Enum,
  limit: SymbolKind.Number,
  supply: SymbolKind.Property,
  temporary: SymbolKind.Object,
  place: SymbolKind.Key,
  tool: SymbolKind.Struct,
  vehicle: SymbolKind.Module,
  source: SymbolKind.File,
  message: SymbolKind.String,
  rule: SymbolKind.Operator,
  operation: SymbolKind.Function,
  machine: SymbolKind.Object,
};

/** Struck out in lists: nobody works by it any more. */
export function tagsOf(model: FileModel): { tags?: SymbolTag[] } {
  return isWithdrawn(model) ? { tags: [SymbolTag.Deprecated] } : {};
}

const MOST = 500;

/** Names and titles that hold all the letters asked for in their order; the closest names first. */
export const workspaceSymbols = libraryFeature<WorkspaceSymbolParams>(
  'workspace/symbol',
  { workspaceSymbolProvider: true },
  async (view, { query }) => {
    const found: { rank: number; symbol: SymbolInformation }[] = [];
    const wanted = query.toLowerCase();
    for (const shelf of view.shelves()) {
      for (const [i, path] of shelf.paths().entries()) {
        if (view.isCancelled()) return [];
        if (i % 50 === 49) await view.pause();
        const model = shelf.library.model(path);
        const snapshot = model && view.file(shelf, path);
        if (!model || !snapshot) continue;
        const add = (
          name: string,
          title: string,
          kind: SymbolKind,
          span: { start: number; end: number },
        ): void => {
          const rank = rankOf(wanted, name.toLowerCase(), title.toLowerCase());
          if (rank !== undefined)
            found.push({
              rank,
              symbol: {
                name,
                kind,
                containerName: title,
                location: snapshot.location(path, span),
                ...tagsOf(model),
              },
            });
        };
        if (model.head && model.number !== undefined)
          add(model.number, model.title, SymbolKind.Module, model.head.code);
        else if (model.head)
          add(path.split('/').pop() ?? path, model.title, SymbolKind.Package, model.head.code);
        for (const thing of [...model.things, ...model.operations])
          if (thing.line) add(thing.name, thing.title, KINDS[thing.kind], thing.line.name ?? thing.line.code);
        view.looked(shelf, path);
      }
    }
    return found
      .sort((a, b) => a.rank - b.rank)
      .slice(0, MOST)
      .map((f) => f.symbol);
  },
);

function rankOf(wanted: string, name: string, title: string): number | undefined {
  if (wanted === '' || name === wanted) return 0;
  if (name.startsWith(wanted)) return 1;
  if (name.includes(wanted)) return 2;
  if (title.includes(wanted)) return 3;
  let at = 0;
  for (const letter of wanted) {
    at = name.indexOf(letter, at) + 1;
    if (at === 0) return undefined;
  }
  return 4;
}
