// A guide that the server made: where it is, or, when it only handed the bytes over, where the user wants it.

import type { MadeFile } from '@baywright/server/protocol';
import { commands, env, l10n, UIKind, Uri, window, workspace } from 'vscode';
import { fromBase64 } from '../server/base64.js';

/** The file on disk, saved first if need be. Undefined when the user gives up. */
export async function keepFile(file: MadeFile, beside: Uri): Promise<Uri | undefined> {
  if (file.uri !== undefined) return Uri.parse(file.uri);
  if (file.base64 === undefined) return undefined;
  const target = await window.showSaveDialog({ defaultUri: Uri.joinPath(beside, '..', file.name) });
  if (target) await workspace.fs.writeFile(target, fromBase64(file.base64));
  return target;
}

/**
 * Opens the guide in the program that this machine prints such files with. An editor in a browser cannot start
 * programs: there the file is shown where it lies, to be downloaded.
 */
export async function openFile(file: Uri): Promise<void> {
  if (env.uiKind === UIKind.Desktop) await env.openExternal(file);
  else await commands.executeCommand('revealInExplorer', file);
}

/** Says that the guide is made and offers to open it or show where it lies. */
export async function offerMade(file: Uri, pages: number | undefined): Promise<void> {
  const name = file.path.slice(file.path.lastIndexOf('/') + 1);
  await offerFile(
    file,
    pages === undefined ? l10n.t('{0} is ready.', name) : l10n.t('{0} is ready, {1} pages.', name, pages),
  );
}

/** Says something about a guide and offers to open it or show where it lies. */
export async function offerFile(file: Uri, said: string): Promise<void> {
  const open = l10n.t('Open');
  const reveal = l10n.t('Show in Folder');
  const chosen = await window.showInformationMessage(
    said,
    ...(env.uiKind === UIKind.Desktop ? [open, reveal] : [open]),
  );
  if (chosen === open) await openFile(file);
  if (chosen === reveal) await commands.executeCommand('revealFileInOS', file);
}
