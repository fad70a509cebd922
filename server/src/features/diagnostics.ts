// Findings as diagnostics of the protocol: severity, tag, link to the page that explains the code, related places.
import type { Finding } from '@baywright/language';
import { type Diagnostic, DiagnosticSeverity, DiagnosticTag } from 'vscode-languageserver';
import { explainPage } from '../explain-page.js';
import type { Snapshot } from '../snapshot.js';
import { suppressed } from '../suppression.js';

/** What a diagnostic needs of a document; settings files have it too. */
export type DiagnosticSite = Pick<Snapshot, 'path' | 'shelf' | 'options' | 'range' | 'location'>;

/** Findings of a document that its own text answers for, those that the editor's settings leave out not among them. */
export function diagnosticsOf(snapshot: DiagnosticSite, findings: readonly Finding[]): Diagnostic[] {
  const own = findings.filter((f) => f.file === snapshot.path);
  return suppressed(snapshot, own).map((f) => diagnosticOf(snapshot, f));
}

export function diagnosticOf(snapshot: DiagnosticSite, finding: Finding): Diagnostic {
  const related = finding.related.map((r) => ({
    location: snapshot.location(r.file, r.span),
    message: r.message,
  }));
  const href = explainPage(snapshot.options.reference, finding);
  return {
    range: snapshot.range(finding.span),
    severity: SEVERITIES[finding.severity],
    code: finding.code,
    ...(href === undefined ? {} : { codeDescription: { href } }),
    source: 'baywright',
    message: messageOf(finding),
    ...(finding.tag === undefined
      ? {}
      : { tags: [finding.tag === 'unused' ? DiagnosticTag.Unnecessary : DiagnosticTag.Deprecated] }),
    ...(related.length === 0 ? {} : { relatedInformation: related }),
    data: { name: finding.name, severity: finding.severity },
  };
}

/** The message with where it holds and what to do. */
export function messageOf(finding: Finding): string {
  const where = finding.variants === undefined ? '' : ` (when ${finding.variants})`;
  return `${finding.message}${where}${finding.advice === undefined ? '' : `\n${finding.advice}`}`;
}

/** A question of a draft is information: it blocks a release, not the work on the text. */
const SEVERITIES = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  question: DiagnosticSeverity.Information,
  hint: DiagnosticSeverity.Hint,
} as const;
