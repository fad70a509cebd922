// The status item: how many errors, warnings and questions the open file has.

import type { FindingCounts } from '@baywright/server/protocol';
import { DiagnosticSeverity, type Disposable, l10n, languages, StatusBarAlignment, window } from 'vscode';
import { together } from './commands/ask.js';
import { inWords } from './commands/check.js';
import { LANGUAGE } from './server/client-options.js';

export function registerStatus(): Disposable {
  const item = window.createStatusBarItem('baywright.findings', StatusBarAlignment.Right, 100);
  item.name = l10n.t('Baywright findings');
  item.command = 'workbench.actions.view.problems';
  const refresh = (): void => {
    const document = window.activeTextEditor?.document;
    if (document?.languageId !== LANGUAGE) {
      item.hide();
      return;
    }
    const counts = countFindings(languages.getDiagnostics(document.uri).map((finding) => finding.severity));
    const words = inWords(counts);
    item.text =
      words === ''
        ? '$(check) Baywright'
        : `$(error) ${counts.errors} $(warning) ${counts.warnings} $(question) ${counts.questions}`;
    item.tooltip = words === '' ? l10n.t('Nothing found in this file') : words;
    item.accessibilityInformation = {
      label: `Baywright: ${words === '' ? l10n.t('Nothing found in this file') : words}`,
    };
    item.show();
  };
  refresh();
  return together(
    item,
    languages.onDidChangeDiagnostics(refresh),
    window.onDidChangeActiveTextEditor(refresh),
  );
}

/** Questions are findings of severity information. */
function countFindings(severities: readonly DiagnosticSeverity[]): FindingCounts {
  const count = (wanted: DiagnosticSeverity): number =>
    severities.filter((severity) => severity === wanted).length;
  return {
    errors: count(DiagnosticSeverity.Error),
    warnings: count(DiagnosticSeverity.Warning),
    questions: count(DiagnosticSeverity.Information),
  };
}
