// Pull diagnostics of one document, for clients that ask instead of listening.
import { type DocumentDiagnosticParams, DocumentDiagnosticReportKind } from 'vscode-languageserver';
import { diagnosticsOf } from './diagnostics.js';
import { documentFeature } from './feature.js';

export const pullDiagnostics = documentFeature<DocumentDiagnosticParams>(
  'textDocument/diagnostic',
  {
    diagnosticProvider: { identifier: 'baywright', interFileDependencies: true, workspaceDiagnostics: false },
  },
  async (snapshot, { previousResultId }, view) => {
    const { findings } = await view.analysed(snapshot);
    const all = [...findings, ...view.wide(snapshot)].sort((a, b) => a.span.start - b.span.start);
    const items = diagnosticsOf(snapshot, all);
    const resultId = hash(JSON.stringify(items));
    return resultId === previousResultId
      ? { kind: DocumentDiagnosticReportKind.Unchanged, resultId }
      : { kind: DocumentDiagnosticReportKind.Full, resultId, items };
  },
);

/** A short name for a text: equal texts, equal names. FNV-1a, 32 bits, with the length. */
function hash(text: string): string {
  let h = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
  return `${(h >>> 0).toString(16)}-${text.length}`;
}
