// Check: asks for the findings of the open procedure, or of the whole library, and opens the list of them.

import type { CheckAnswer, FindingCounts } from '@baywright/server/protocol';
import { commands, type Disposable, l10n, window } from 'vscode';
import type { Connection } from '../server/connection.js';
import { documentMeant, reporting, together } from './ask.js';

export function registerCheck(connection: Connection): Disposable {
  return together(
    commands.registerCommand('baywright.check', async (given?: unknown) => {
      const document = await documentMeant(given);
      if (document) await check(connection, document.uri.toString());
    }),
    commands.registerCommand('baywright.checkLibrary', () => check(connection)),
  );
}

async function check(connection: Connection, uri?: string): Promise<void> {
  const answer = await reporting(connection, l10n.t('The check did not finish.'), () =>
    connection.ask('check', uri === undefined ? {} : { uri }),
  );
  if (!answer) return;
  const { errors, warnings, questions } = answer.findings;
  window.setStatusBarMessage(summary(answer), 8000);
  if (errors + warnings + questions > 0) await commands.executeCommand('workbench.actions.view.problems');
}

function summary({ files, findings }: CheckAnswer): string {
  const counts = inWords(findings);
  if (counts === '')
    return files > 1 ? l10n.t('{0} files checked: nothing found.', files) : l10n.t('Checked: nothing found.');
  return files > 1 ? l10n.t('{0} files checked: {1}.', files, counts) : l10n.t('Checked: {0}.', counts);
}

/** `1 error, 2 questions`; empty when there is nothing. */
export function inWords({ errors, warnings, questions }: FindingCounts): string {
  return [
    errors === 1 ? l10n.t('1 error') : errors > 1 ? l10n.t('{0} errors', errors) : '',
    warnings === 1 ? l10n.t('1 warning') : warnings > 1 ? l10n.t('{0} warnings', warnings) : '',
    questions === 1 ? l10n.t('1 question') : questions > 1 ? l10n.t('{0} questions', questions) : '',
  ]
    .filter((words) => words !== '')
    .join(', ');
}
