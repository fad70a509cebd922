// Organises imports: each once, in order, those that lend no name left out.
import { mentionsIn, resolvePath, scopeOf, type UseLine, wholeLines } from '@baywright/language';
import { CodeActionKind } from 'vscode-languageserver';
import type { Snapshot } from '../../snapshot.js';
import { fromLanguage } from '../../workspace-edit.js';
import type { ActionOffer } from './offer.js';

export function organiseImports(snapshot: Snapshot): ActionOffer | undefined {
  const uses = snapshot.tree.lines.filter((l): l is UseLine => l.kind === 'use');
  const first = uses[0];
  const last = uses.at(-1);
  if (!first || !last) return undefined;
  const block = wholeLines(snapshot.text, { start: first.start, end: last.end });
  const between = snapshot.text.slice(block.start, block.end);
  // Comments and other lines among the imports belong to where they are: leave such a block alone.
  if (between.split('\n').some((l) => l.trim() !== '' && !l.startsWith('use '))) return undefined;
  const needed = neededBy(snapshot);
  const paths = [...new Set(uses.filter((u) => needed(u)).map((u) => u.path?.text ?? ''))].sort();
  const written = paths.map((p) => `use "${p}"\n`).join('');
  if (written === between) return undefined;
  return {
    title: snapshot.say.organiseImports,
    kind: CodeActionKind.SourceOrganizeImports,
    edit: () => fromLanguage(snapshot, [{ file: snapshot.path, span: block, text: written }]),
  };
}

/** Whether an import lends a name or a rule, itself or through what it uses. */
function neededBy(snapshot: Snapshot): (use: UseLine) => boolean {
  const { library, path } = snapshot;
  const model = library.model(path);
  const scope = model && scopeOf(model, library);
  const named = new Set(mentionsIn(snapshot.tree).map((m) => scope?.resolve(m.name.text)?.file));
  return (use) => {
    const target = use.path && !use.path.hole ? resolvePath(path, use.path.text) : undefined;
    const other = target === undefined ? undefined : library.model(target);
    if (!other) return true;
    return scopeOf(other, library).files.some(
      (f) => named.has(f.path) || f.things.some((t) => t.kind === 'rule'),
    );
  };
}
