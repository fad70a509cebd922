// Declares every name that steps use and nothing declares, with the kind read from how each is used.
import { type TextEdit, THING_KINDS, type ThingKind } from '@baywright/language';
import { type CodeAction, CodeActionKind } from 'vscode-languageserver';
import type { Snapshot } from '../../snapshot.js';
import { fromLanguage } from '../../workspace-edit.js';
import { undeclaredIn } from '../completion/things.js';
import { entryInsertion } from './text.js';

export function declareAll(snapshot: Snapshot): CodeAction | undefined {
  const missing = undeclaredIn(snapshot);
  if (missing.length === 0) return undefined;
  const edits: TextEdit[] = [];
  for (const kind of THING_KINDS) {
    const names = missing.filter((m) => m.kind === kind).map((m) => m.name);
    const edit =
      names.length > 0
        ? entryInsertion(
            snapshot.path,
            snapshot.text,
            snapshot.tree.lines,
            kind,
            names.map((n) => entry(n, kind)).join(''),
          )
        : undefined;
    if (edit) edits.push(edit);
  }
  const title =
    missing.length === 1
      ? `Declare ${missing[0]?.name ?? ''} as a ${missing[0]?.kind ?? ''}`
      : `Declare all ${missing.length} names that are used and not declared`;
  return { title, kind: CodeActionKind.QuickFix, edit: fromLanguage(snapshot, edits) };
}

/** A draft may have holes: what the name alone does not tell is asked for with `?`. */
function entry(name: string, kind: ThingKind): string {
  const title = name.slice(0, 1).toUpperCase() + name.slice(1).replaceAll('-', ' ');
  return `  ${name}: ${title}\n${kind === 'fastener' ? '    torque ?\n' : ''}`;
}
