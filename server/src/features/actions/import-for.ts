// For a name that nothing in sight declares: the import of a file of the library that does, or the procedure that has
// the operation.
import { type Finding, pathAt } from '@baywright/language';
import { CodeActionKind } from 'vscode-languageserver';
import type { Snapshot } from '../../snapshot.js';
import { fromLanguage } from '../../workspace-edit.js';
import { diagnosticOf } from '../diagnostics.js';
import { filesUsed, relative, useLine } from '../import-lines.js';
import { proceduresWith } from '../numbered.js';
import type { ActionOffer } from './offer.js';

export function importFor(snapshot: Snapshot, finding: Finding): ActionOffer[] {
  if (PERFORMED.has(finding.code)) return performFrom(snapshot, finding);
  if (!UNKNOWN.has(finding.code)) return [];
  const name = snapshot.text.slice(finding.span.start, finding.span.end).replaceAll('"', '');
  const used = filesUsed(snapshot);
  return declaring(snapshot, name)
    .filter((path) => !used.has(path))
    .slice(0, MOST)
    .map((path) => ({
      title: snapshot.say.importFor(relative(snapshot.path, path), name),
      kind: CodeActionKind.QuickFix,
      diagnostics: [diagnosticOf(snapshot, finding)],
      edit: () => fromLanguage(snapshot, [useLine(snapshot, path)]),
    }));
}

/** A procedure that has the operation, where the line names none, another or a withdrawn one. */
function performFrom(snapshot: Snapshot, finding: Finding): ActionOffer[] {
  const line = pathAt(snapshot.tree, finding.span.start).pop();
  if (line?.kind !== 'perform' || !line.operation) return [];
  const { operation, from } = line;
  return proceduresWith(snapshot, operation.text)
    .filter(({ number, withdrawn }) => !withdrawn && number !== from?.text)
    .slice(0, MOST)
    .map(({ number }) => ({
      title: snapshot.say.performFrom(operation.text, number),
      kind: CodeActionKind.QuickFix,
      diagnostics: [diagnosticOf(snapshot, finding)],
      edit: () => {
        const edit = from
          ? { span: { start: from.start, end: from.end }, text: number }
          : { span: { start: operation.end, end: operation.end }, text: ` from ${number}` };
        return fromLanguage(snapshot, [{ file: snapshot.path, ...edit }]);
      },
    }));
}

/** Findings of an operation that is not there, or that nobody works by any more. */
const PERFORMED: ReadonlySet<string> = new Set(['N304', 'R112']);

/** Findings of a name that is not known: of things, vehicles and sheets. */
const UNKNOWN: ReadonlySet<string> = new Set(['N101', 'N306', 'N307']);
const MOST = 3;

/** Catalogues that declare a name: those whose text has it at the head of a line are read. */
function declaring(snapshot: Snapshot, name: string): string[] {
  return snapshot.shelf.paths().filter((path) => {
    const text = snapshot.file(path)?.text ?? '';
    if (path === snapshot.path || !text.includes(`\n  ${name}:`)) return false;
    const model = snapshot.library.model(path);
    return model?.kind === 'catalogue' && model.things.some((thing) => thing.name === name);
  });
}
