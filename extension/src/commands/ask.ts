// Common to the commands: which document is meant, and how a server that fails is reported.
import { type Disposable, l10n, type TextDocument, Uri, window, workspace } from 'vscode';
import { LANGUAGE } from '../server/client-options.js';
import type { Connection } from '../server/connection.js';

/** The document a command is about: the one given by a menu, else the one in the active editor. Says so when there is none. */
export async function documentMeant(given?: unknown): Promise<TextDocument | undefined> {
  const document =
    given instanceof Uri ? await workspace.openTextDocument(given) : window.activeTextEditor?.document;
  if (document?.languageId === LANGUAGE) return document;
  const open = window.visibleTextEditors.find((editor) => editor.document.languageId === LANGUAGE);
  if (open) return open.document;
  await window.showInformationMessage(l10n.t('Open a procedure first.'));
  return undefined;
}

/** Runs `act`; what goes wrong is told in a sentence, with the log one click away. */
export async function reporting<T>(
  connection: Connection,
  what: string,
  act: () => Promise<T>,
): Promise<T | undefined> {
  try {
    return await act();
  } catch (error) {
    connection.log.error(`${what}: ${error instanceof Error ? error.message : String(error)}`);
    const show = l10n.t('Show Log');
    const chosen = await window.showErrorMessage(what, show);
    if (chosen === show) connection.log.show();
    return undefined;
  }
}

/** One disposable of several. */
export function together(...parts: readonly Disposable[]): Disposable {
  return { dispose: () => parts.forEach((part) => void part.dispose()) };
}
