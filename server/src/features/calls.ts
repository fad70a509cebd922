// The call hierarchy over `perform`: which operations a procedure performs, and which procedures perform an operation.
import {
  everyLine,
  type FileModel,
  type Line,
  type OperationLine,
  type PerformLine,
  type Thing,
} from '@baywright/language';
import {
  type CallHierarchyIncomingCall,
  type CallHierarchyItem,
  type CallHierarchyOutgoingCall,
  type CallHierarchyPrepareParams,
  SymbolKind,
} from 'vscode-languageserver';
import { lineAround, meantAt } from '../locate.js';
import type { Snapshot } from '../snapshot.js';
import { documentFeature, libraryFeature } from './feature.js';
import { tagsOf } from './symbols.js';

/** What an item stands for, handed back by the client. */
interface Called {
  readonly uri: string;
  /** Absent for a procedure as a whole. */
  readonly operation?: string;
}

export const prepareCalls = documentFeature<CallHierarchyPrepareParams>(
  'textDocument/prepareCallHierarchy',
  { callHierarchyProvider: true },
  (snapshot, { position }) => {
    const offset = snapshot.positions.offset(position);
    const meant = meantAt(snapshot, offset);
    if (meant?.thing.kind === 'operation') return [operationItem(snapshot, meant.thing)];
    const model = snapshot.library.model(snapshot.path);
    return lineAround(snapshot, offset)?.kind === 'procedure' && model?.head
      ? [procedureItem(snapshot, model)]
      : null;
  },
);

export const incomingCalls = libraryFeature<{ item: CallHierarchyItem }>(
  'callHierarchy/incomingCalls',
  {},
  (view, { item }) => {
    const called = item.data as Called | undefined;
    const home = called && view.snapshot(called.uri);
    if (!called || !home) return null;
    const calls: CallHierarchyIncomingCall[] = [];
    for (const path of home.shelf.paths()) {
      if (!home.file(path)?.text.includes('perform')) continue;
      const model = home.library.model(path);
      const snapshot = model && view.file(home.shelf, path);
      if (!model || !snapshot) continue;
      const lines = performs(model.work).filter(
        (l) =>
          homeOf(home, model, l)?.path === home.path &&
          (called.operation === undefined || l.operation?.text === called.operation),
      );
      for (const [from, own] of grouped(model, lines)) {
        calls.push({
          from: from ? operationItem(snapshot, from) : procedureItem(snapshot, model),
          fromRanges: own.map((l) => snapshot.range(l.code)),
        });
      }
    }
    return calls;
  },
);

export const outgoingCalls = libraryFeature<{ item: CallHierarchyItem }>(
  'callHierarchy/outgoingCalls',
  {},
  (view, { item }) => {
    const called = item.data as Called | undefined;
    const home = called && view.snapshot(called.uri);
    const model = home?.library.model(home.path);
    if (!called || !home || !model) return null;
    const within: readonly Line[] =
      called.operation === undefined
        ? model.work
        : (model.operations.find((o) => o.name === called.operation)?.line?.children ?? []);
    const calls: CallHierarchyOutgoingCall[] = [];
    for (const line of performs(within)) {
      const callee = homeOf(home, model, line);
      const operation = callee?.operations.find((o) => o.name === line.operation?.text);
      const snapshot = callee && view.file(home.shelf, callee.path);
      if (operation && snapshot)
        calls.push({ to: operationItem(snapshot, operation), fromRanges: [home.range(line.code)] });
    }
    return calls;
  },
);

function performs(lines: readonly Line[]): PerformLine[] {
  return [...everyLine(lines)].filter((l) => l.kind === 'perform');
}

function homeOf(snapshot: Snapshot, model: FileModel, line: PerformLine): FileModel | undefined {
  return line.from && !line.from.hole ? snapshot.library.numbered(line.from.text) : model;
}

/** Lines by the operation they stand in; undefined for those in the procedure itself. */
function grouped(model: FileModel, lines: readonly PerformLine[]): Map<Thing | undefined, PerformLine[]> {
  const groups = new Map<Thing | undefined, PerformLine[]>();
  for (const line of lines) {
    const own = model.operations.find((o) => o.line && o.line.start <= line.start && o.line.end >= line.end);
    groups.set(own, [...(groups.get(own) ?? []), line]);
  }
  return groups;
}

function operationItem(snapshot: Snapshot, operation: Thing): CallHierarchyItem {
  const line = operation.line as OperationLine;
  const home = snapshot.library.model(operation.file);
  const at = operation.file === snapshot.path ? snapshot : undefined;
  const range = at?.range(line) ?? snapshot.location(operation.file, line).range;
  const uri = snapshot.location(operation.file, line).uri;
  return {
    name: operation.name,
    detail: operation.title,
    kind: SymbolKind.Function,
    ...(home ? tagsOf(home) : {}),
    uri,
    range,
    selectionRange: snapshot.location(operation.file, line.name ?? line.code).range,
    data: { uri, operation: operation.name } satisfies Called,
  };
}

function procedureItem(snapshot: Snapshot, model: FileModel): CallHierarchyItem {
  const span = model.head ?? { start: 0, end: 0 };
  const code = model.head?.code ?? span;
  return {
    name: model.number ?? model.title,
    detail: model.title,
    kind: SymbolKind.Module,
    ...tagsOf(model),
    uri: snapshot.uri,
    range: snapshot.range(span),
    selectionRange: snapshot.range(code),
    data: { uri: snapshot.uri } satisfies Called,
  };
}
