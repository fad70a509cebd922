// Code lenses: what each phase leaves off, puts back and still owes; how many procedures use a catalogue or operation.
import { resolvePath, stateAt } from '@baywright/language';
import type { CodeLens, CodeLensParams } from 'vscode-languageserver';
import { mentionsOfThing } from '../locate.js';
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

function uses(snapshot: Snapshot): CodeLens[] {
  const model = snapshot.library.model(snapshot.path);
  if (!model?.head) return [];
  const lenses: CodeLens[] = [];
  for (const operation of model.operations) {
    const users = [...mentionsOfThing(snapshot.shelf, operation, (p) => snapshot.file(p)?.text)].filter(
      (f) => f.path !== snapshot.path,
    );
    if (operation.line)
      lenses.push({
        range: snapshot.range(operation.line.code),
        command: { title: snapshot.say.usedBy(users.length), command: '' },
      });
  }
  if (model.kind !== 'catalogue') return lenses;
  const users = snapshot.shelf.paths().filter((p) => {
    const text = snapshot.file(p)?.text ?? '';
    // Told by the lines alone: a lens must not read a whole library.
    return (
      /^procedure\b/m.test(text) &&
      [...text.matchAll(/^use\s+"?([^"\r\n]+)/gm)].some(
        ([, path = '']) => resolvePath(p, path.trim()) === snapshot.path,
      )
    );
  });
  return [
    ...lenses,
    {
      range: snapshot.range(model.head.code),
      command: { title: snapshot.say.usedBy(users.length), command: '' },
    },
  ];
}
