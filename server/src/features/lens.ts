// Code lenses: what each phase leaves off, puts back and still owes; how many procedures use a catalogue or operation.
import { resolvePath, type Span, stateAt } from '@baywright/language';
import type { CodeLens, CodeLensParams } from 'vscode-languageserver';
import { mentionsOfThing } from '../locate.js';
import { SHOW_USES } from '../protocol.js';
import type { Snapshot } from '../snapshot.js';
import { documentFeature } from './feature.js';

export const lens = documentFeature<CodeLensParams>(
  'textDocument/codeLens',
  { codeLensProvider: {} },
  async (snapshot, _params, view): Promise<CodeLens[]> => {
    if (!snapshot.options.lens) return [];
    await view.analysed(snapshot);
    return [...phases(snapshot), ...uses(snapshot)];
  },
);

function phases(snapshot: Snapshot): CodeLens[] {
  const { run, model } = snapshot.analysis();
  const { say } = snapshot;
  if (!run) return [];
  const offAt = (offset: number): Set<string> =>
    new Set(
      stateAt(run, offset)
        .filter((f) => f.group === 'off' || f.group === 'hung' || f.group === 'disconnected')
        .map((f) => f.thing.id),
    );
  return model.work.map((section) => {
    const before = offAt(section.start);
    const facts = stateAt(run, section.end);
    const after = offAt(section.end);
    const taken = [...after].filter((id) => !before.has(id)).length;
    const back = [...before].filter((id) => !after.has(id)).length;
    const owed = new Set(facts.map((f) => f.thing.id)).size;
    const words = [taken > 0 ? say.off(taken) : '', back > 0 ? say.backOn(back) : '', say.owed(owed)].filter(
      (w) => w !== '',
    );
    return { range: snapshot.range(section.code), command: { title: words.join(' · '), command: '' } };
  });
}

/** Who uses the operations of a procedure, or a catalogue. */
function uses(snapshot: Snapshot): CodeLens[] {
  const model = snapshot.library.model(snapshot.path);
  if (!model?.head) return [];
  const lenses: CodeLens[] = [];
  for (const operation of model.operations) {
    if (!operation.line) continue;
    const users = [...mentionsOfThing(snapshot.shelf, operation, (p) => snapshot.file(p)?.text)].filter(
      (f) => f.path !== snapshot.path,
    );
    lenses.push(
      usedBy(
        snapshot,
        operation.line.code,
        users.map(({ path, mentions }) => ({ path, spans: mentions.map((m) => m.name) })),
      ),
    );
  }
  if (model.kind !== 'catalogue') return lenses;
  // Told by the lines alone: a lens must not read a whole library.
  const users = snapshot.shelf.paths().flatMap((path): Use[] => {
    const text = snapshot.file(path)?.text ?? '';
    if (!/^procedure\b/m.test(text)) return [];
    const line = [...text.matchAll(/^use\s+"?([^"\r\n]+)/gm)].find(
      ([, written = '']) => resolvePath(path, written.trim()) === snapshot.path,
    );
    return line ? [{ path, spans: [{ start: line.index, end: line.index + line[0].length }] }] : [];
  });
  return [...lenses, usedBy(snapshot, model.head.code, users)];
}

interface Use {
  readonly path: string;
  readonly spans: readonly Span[];
}

/** A lens that says how many files use something, and shows them where the client can. */
function usedBy(snapshot: Snapshot, at: Span, users: readonly Use[]): CodeLens {
  const range = snapshot.range(at);
  const title = snapshot.say.usedBy(users.length);
  if (!snapshot.client.showsUses || users.length === 0) return { range, command: { title, command: '' } };
  const places = users.flatMap(({ path, spans }) => spans.map((span) => snapshot.location(path, span)));
  return { range, command: { title, command: SHOW_USES, arguments: [snapshot.uri, range.start, places] } };
}
