// Common to the commands: which document is meant, and how a server that fails is reported.
import { type Disposable, l10n, TabInputText, type TextDocument, Uri, window, workspace } from 'vscode';
import { LANGUAGE } from '../server/client-options.js';
import type { Connection } from '../server/connection.js';

let lastActive: Uri | undefined;

/** Remembers the procedure that was active last, for {@link documentMeant}. */
export function followActiveDocument(): Disposable {
  return window.onDidChangeActiveTextEditor((editor) => {
    if (editor?.document.languageId === LANGUAGE) lastActive = editor.document.uri;
  });
}

/**
 * The document a command is about: the one given by a menu, else the one in the active editor, else one in sight, else
 * the last one that was active and is open behind something else (the walkthrough, say), which is then shown. Says so
 * when there is none.
 */
export async function documentMeant(given?: unknown): Promise<TextDocument | undefined> {
  const document =
    given instanceof Uri ? await workspace.openTextDocument(given) : window.activeTextEditor?.document;
  if (document?.languageId === LANGUAGE) return document;
  const inSight = window.visibleTextEditors.find((editor) => editor.document.languageId === LANGUAGE);
  if (inSight) return inSight.document;
  const tabs = window.tabGroups.all.flatMap((group) => group.tabs.map((tab) => tab.input));
  const isOpen = tabs.some(
    (input) => input instanceof TabInputText && input.uri.toString() === lastActive?.toString(),
  );
  if (lastActive && isOpen) return (await window.showTextDocument(lastActive)).document;
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
