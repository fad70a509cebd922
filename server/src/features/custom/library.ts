// `baywright/library`: procedures with their findings, and every figure with a source and where it is used.
import {
  clausesOf,
  ENTRY_CLAUSE_BY_WORD,
  type FileModel,
  type Finding,
  mentionsIn,
  type Span,
  STATUSES,
  type Status,
  scopeOf,
  type Thing,
} from '@baywright/language';
import {
  type FindingCounts,
  type Library,
  type LibraryProcedure,
  type LibrarySpec,
  METHODS,
} from '../../protocol.js';
import type { Shelf } from '../../shelf.js';
import type { Snapshot } from '../../snapshot.js';
import type { View } from '../../view.js';
import { libraryFeature } from '../feature.js';

export const library = libraryFeature<unknown>(METHODS.library, {}, async (view): Promise<Library> => {
  const procedures: LibraryProcedure[] = [];
  const specs: LibrarySpec[] = [];
  for (const shelf of view.shelves()) {
    const paths = shelf.paths();
    const uses = new Map<string, Use[]>();
    const withFigures: (() => LibrarySpec[])[] = [];
    for (const [i, path] of paths.entries()) {
      if (view.isCancelled()) return { procedures: [], specs: [] };
      if (i % 20 === 19) {
        view.progress(i, paths.length, view.say.readingLibrary);
        await view.pause();
      }
      const model = shelf.library.model(path);
      const snapshot = model && view.file(shelf, path);
      if (!model || !snapshot) continue;
      if (model.kind === 'procedure' && model.head)
        procedures.push(procedureOf(view, shelf, snapshot, model));
      noteUses(uses, snapshot, model);
      const things = model.things.filter((thing) => clausesOf(thing, 'per').length > 0);
      if (things.length > 0)
        withFigures.push(() => things.flatMap((thing) => specsOf(uses, snapshot, thing)));
    }
    for (const [i, figures] of withFigures.entries()) {
      specs.push(...figures());
      if (i % 50 === 49) await view.pause();
    }
    for (const path of paths) view.looked(shelf, path);
  }
  procedures.sort((a, b) => a.number.localeCompare(b.number, 'en', { numeric: true }));
  return { procedures, specs };
});

function procedureOf(view: View, shelf: Shelf, snapshot: Snapshot, model: FileModel): LibraryProcedure {
  const revision = Math.max(
    0,
    ...model.revisions.map((r) => Number(snapshot.text.slice(r.number?.start ?? 0, r.number?.end ?? 0)) || 0),
  );
  const scope = scopeOf(model, shelf.library);
  const title = (name: string): string => {
    const vehicle = scope.resolve(name);
    return vehicle?.kind === 'vehicle' ? vehicle.title : name;
  };
  const outOfDate =
    model.number === undefined
      ? undefined
      : view.renderers.outOfDate?.({
          number: model.number,
          settings: shelf.settings,
          rootUri: shelf.root,
          analysis: () => snapshot.analysis(),
        });
  return {
    uri: snapshot.uri,
    number: model.number ?? '?',
    title: model.title,
    vehicles: model.applies.flatMap((l) =>
      l.vehicle ? [{ name: l.vehicle.text, title: title(l.vehicle.text) }] : [],
    ),
    status: statusOf(model),
    ...(revision > 0 ? { revision } : {}),
    findings: countsOf(view.findings(shelf, model.path)),
    ...(outOfDate === undefined ? {} : { outOfDate }),
  };
}

/** Figures of a thing that say which sheet they come from. */
function specsOf(uses: ReadonlyMap<string, readonly Use[]>, snapshot: Snapshot, thing: Thing): LibrarySpec[] {
  const found: LibrarySpec[] = [];
  for (const [word, list] of thing.clauses) {
    if (word === 'per') continue;
    for (const { clause, line } of list) {
      const source = line.clauses.find((c) => c.word === 'per')?.raw?.text;
      if (!clause.spec || source === undefined || clause.spec.stages.some((s) => s.measure.hole)) continue;
      found.push({
        name: `${thing.name} ${word}`,
        title: thing.title,
        figure: text(snapshot, clause.spec),
        source,
        location: snapshot.location(thing.file, clause),
        uses: usesOf(uses, thing, word),
      });
    }
  }
  return found;
}

interface Use {
  readonly word: string | undefined;
  readonly verb: string | undefined;
  readonly label: string;
  readonly location: LibrarySpec['location'];
}

/** Where each thing is mentioned, found in one walk over a file; things by their id. */
function noteUses(uses: Map<string, Use[]>, snapshot: Snapshot, model: FileModel): void {
  const scope = scopeOf(model, snapshot.library);
  for (const { name, way, verb, attribute, line, operation } of mentionsIn(model.tree)) {
    if (operation || way === 'declares') continue;
    const thing = scope.resolve(name.text);
    if (!thing || (attribute === undefined && !isFigure(verb))) continue;
    const own = uses.get(thing.id) ?? [];
    if (own.length === 0) uses.set(thing.id, own);
    const label = model.number ?? model.path;
    own.push({ word: attribute, verb, label, location: snapshot.location(model.path, line.code) });
  }
}

/** Verbs that print a figure of what they act on: those that share their word with it, and `recheck`. */
function isFigure(verb: string | undefined): boolean {
  return verb !== undefined && (verb === 'recheck' || ENTRY_CLAUSE_BY_WORD.has(verb));
}

/** Lines that act on the thing by the word of the figure, or refer to the figure in text. */
function usesOf(uses: ReadonlyMap<string, readonly Use[]>, thing: Thing, word: string): LibrarySpec['uses'] {
  return (uses.get(thing.id) ?? [])
    .filter((use) => use.verb === word || use.word === word || use.verb === 'recheck')
    .map(({ label, location }) => ({ label, location }));
}

function text(snapshot: Snapshot, span: Span): string {
  return snapshot.text.slice(span.start, span.end);
}

export function statusOf(model: FileModel): Status {
  return STATUSES.find((status) => status === model.status?.status?.text) ?? 'draft';
}

export function countsOf(findings: readonly Finding[]): FindingCounts {
  const of = (severity: Finding['severity']): number =>
    findings.filter((f) => f.severity === severity).length;
  return { errors: of('error'), warnings: of('warning'), questions: of('question') };
}
