// `baywright/library`: procedures with their findings, and every figure with a source and where it is used.
import {
  clausesOf,
  type FileModel,
  type Finding,
  type Span,
  STATUSES,
  type Status,
  type Thing,
} from '@baywright/language';
import { mentionsOfThing } from '../../locate.js';
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
      for (const thing of model.things) specs.push(...specsOf(snapshot, thing));
    }
  }
  procedures.sort((a, b) => a.number.localeCompare(b.number, 'en', { numeric: true }));
  return { procedures, specs };
});

function procedureOf(view: View, shelf: Shelf, snapshot: Snapshot, model: FileModel): LibraryProcedure {
  const revision = Math.max(
    0,
    ...model.revisions.map((r) => Number(snapshot.text.slice(r.number?.start ?? 0, r.number?.end ?? 0)) || 0),
  );
  const title = (name: string): string =>
    shelf
      .paths()
      .map((p) => shelf.library.model(p)?.things.find((t) => t.kind === 'vehicle' && t.name === name)?.title)
      .find((t) => t !== undefined) ?? name;
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
function specsOf(snapshot: Snapshot, thing: Thing): LibrarySpec[] {
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
        uses: usesOf(snapshot, thing, word),
      });
    }
  }
  return found;
}

/** Lines that act on the thing, or refer to the figure in text. */
function usesOf(snapshot: Snapshot, thing: Thing, word: string): LibrarySpec['uses'] {
  const uses: LibrarySpec['uses'][number][] = [];
  for (const { path, mentions } of mentionsOfThing(snapshot.shelf, thing, (p) => snapshot.file(p)?.text)) {
    const number = snapshot.library.model(path)?.number ?? path;
    for (const m of mentions) {
      if (
        m.verb === word ||
        m.attribute === word ||
        (m.way === 'acts on' && clausesOf(thing, word).length > 0 && m.verb === 'recheck')
      )
        uses.push({ label: number, location: snapshot.location(path, m.line.code) });
    }
  }
  return uses;
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
