// Print: the guide as PDF, opened in the machine's own viewer; as HTML where the PDF engine is not carried.

import type { GuideKind, GuideOptions, PrintAnswer } from '@baywright/server/protocol';
import {
  commands,
  type Disposable,
  env,
  l10n,
  ProgressLocation,
  type TextDocument,
  UIKind,
  type Uri,
  window,
  workspace,
} from 'vscode';
import type { Connection } from '../server/connection.js';
import { documentMeant, reporting, together } from './ask.js';
import type { RememberedChoices } from './choose.js';
import { keepFile, offerMade, openFile } from './made-file.js';

type Format = 'pdf' | 'html';

export function registerPrint(connection: Connection, choices: RememberedChoices): Disposable {
  const command = (
    id: string,
    run: (document: TextDocument, options: GuideOptions, kind: GuideKind) => Promise<void>,
  ): Disposable =>
    commands.registerCommand(id, async (given?: unknown, kind: GuideKind = 'guide') => {
      if (!(await trusted())) return;
      const document = await documentMeant(given);
      const options = document && (await choices.ask(document.uri.toString()));
      if (document && options) await run(document, options, kind);
    });
  return together(
    command('baywright.print', async (document, options, kind) => {
      const format = (await canMakePdf(connection, document.uri)) ? 'pdf' : 'html';
      const made = await make(connection, document, options, kind, format);
      if (!made) return;
      // A browser has no printing program to start: it says where the guide is.
      if (env.uiKind === UIKind.Desktop) await openFile(made.file);
      else await offerMade(made.file, made.pages);
    }),
    command('baywright.buildPdf', (document, options, kind) =>
      build(connection, document, options, kind, 'pdf'),
    ),
    command('baywright.buildHtml', (document, options, kind) =>
      build(connection, document, options, kind, 'html'),
    ),
  );
}

/** Files are written where baywright.json says, so the folder must be trusted; says so when it is not. */
export async function trusted(): Promise<boolean> {
  if (workspace.isTrusted) return true;
  const manage = l10n.t('Manage Trust');
  const chosen = await window.showWarningMessage(
    l10n.t('Guides are written once this folder is trusted.'),
    manage,
  );
  if (chosen === manage) await commands.executeCommand('workbench.trust.manage');
  return false;
}

async function build(
  connection: Connection,
  document: TextDocument,
  options: GuideOptions,
  kind: GuideKind,
  format: Format,
): Promise<void> {
  const made = await make(connection, document, options, kind, format);
  if (made) await offerMade(made.file, made.pages);
}

async function canMakePdf(connection: Connection, uri: Uri): Promise<boolean> {
  const choices = await connection.ask('choices', { uri: uri.toString() });
  return choices.canMakePdf;
}

interface Made {
  readonly file: Uri;
  readonly pages?: number;
}

async function make(
  connection: Connection,
  document: TextDocument,
  options: GuideOptions,
  kind: GuideKind,
  format: Format,
): Promise<Made | undefined> {
  const answer = await window.withProgress(
    { location: ProgressLocation.Window, title: l10n.t('Making the guide') },
    () =>
      reporting(
        connection,
        l10n.t('The guide could not be made.'),
        (): Promise<PrintAnswer> =>
          connection.ask('print', { uri: document.uri.toString(), kind, options, format }),
      ),
  );
  if (!answer) return undefined;
  if (!answer.made) {
    await window.showErrorMessage(answer.reason);
    return undefined;
  }
  const file = await keepFile(answer.file, document.uri);
  return file && { file, ...(answer.pages !== undefined && { pages: answer.pages }) };
}
