// Sign: takes a procedure from draft to proved, released or withdrawn by the rules of the house. The answer is a status
// line, written into the text and saved, so that it can be taken back like anything typed.

import type { Status } from '@baywright/server/protocol';
import {
  commands,
  type Disposable,
  type ExtensionContext,
  l10n,
  type QuickPickItem,
  Range,
  type TextDocument,
  WorkspaceEdit,
  window,
  workspace,
} from 'vscode';
import type { Connection } from '../server/connection.js';
import { documentMeant, reporting } from './ask.js';

export function registerSign(context: ExtensionContext, connection: Connection): Disposable {
  return commands.registerCommand('baywright.sign', async (given?: unknown) => {
    const document = await documentMeant(given);
    const there = document && (await statusOf(connection, document));
    if (!document || !there) return;
    const to = await pickStatus(there.next);
    if (to && (await sign(context, connection, document, to)))
      window.setStatusBarMessage(l10n.t('{0} is {1} now.', there.number, statusWord(to)), 8000);
  });
}

/** How far the procedure has come, and where it can go from there. */
export async function statusOf(
  connection: Connection,
  document: TextDocument,
): Promise<
  { readonly number: string; readonly status: Status; readonly next: readonly Status[] } | undefined
> {
  const choices = await reporting(connection, l10n.t('This procedure could not be read.'), () =>
    connection.ask('choices', { uri: document.uri.toString() }),
  );
  return choices && { number: choices.number, status: choices.status, next: choices.nextStatuses };
}

/** Asks who signs and writes the status line. False when the user gives up or the rules refuse it. */
export async function sign(
  context: ExtensionContext,
  connection: Connection,
  document: TextDocument,
  to: Status,
): Promise<boolean> {
  const initials = to === 'draft' ? '' : await askInitials(context, to);
  if (initials === undefined) return false;
  const note = to === 'draft' ? '' : await askNote(to);
  if (note === undefined) return false;
  const answer = await reporting(connection, l10n.t('The procedure could not be signed.'), () =>
    connection.ask('sign', { uri: document.uri.toString(), to, initials, ...(note !== '' && { note }) }),
  );
  if (!answer) return false;
  if (!answer.signed) {
    await showReasons(l10n.t('Not signed'), answer.reasons);
    return false;
  }
  const { start, end } = answer.edit.range;
  const edit = new WorkspaceEdit();
  edit.replace(
    document.uri,
    new Range(start.line, start.character, end.line, end.character),
    answer.edit.newText,
  );
  return (await workspace.applyEdit(edit)) && document.save();
}

/** What stands in the way, as a list to read; nothing happens on a choice. */
export async function showReasons(title: string, reasons: readonly string[]): Promise<void> {
  await window.showQuickPick([...reasons], { title, placeHolder: l10n.t('What stands in the way') });
}

async function pickStatus(next: readonly Status[]): Promise<Status | undefined> {
  const items = next.map((status): QuickPickItem & { status: Status } => ({
    label: statusWord(status),
    detail: statusMeaning(status),
    status,
  }));
  const placeHolder = l10n.t('Sign the procedure as');
  return (await window.showQuickPick(items, { title: l10n.t('Sign'), placeHolder, ignoreFocusOut: true }))
    ?.status;
}

async function askInitials(context: ExtensionContext, to: Status): Promise<string | undefined> {
  // Two people sign: each status remembers its own.
  const key = `baywright.initials.${to}`;
  const initials = await window.showInputBox({
    title: l10n.t('Sign'),
    prompt: l10n.t('Initials of the person who signs it as {0}', statusWord(to)),
    value: context.globalState.get(key, ''),
    ignoreFocusOut: true,
    validateInput: (text) =>
      /^\p{L}[\p{L}\p{N}-]{0,15}$/u.test(text.trim()) ? undefined : l10n.t('Initials, as RB.'),
  });
  if (initials === undefined) return undefined;
  await context.globalState.update(key, initials.trim());
  return initials.trim();
}

async function askNote(to: Status): Promise<string | undefined> {
  return window.showInputBox({
    title: l10n.t('Sign'),
    prompt:
      to === 'withdrawn'
        ? l10n.t('Why is it withdrawn?')
        : l10n.t('A note, printed with the status. Leave it empty for none.'),
    ignoreFocusOut: true,
  });
}

function statusWord(status: Status): string {
  switch (status) {
    case 'draft':
      return l10n.t('draft');
    case 'proved':
      return l10n.t('proved');
    case 'released':
      return l10n.t('released');
    case 'withdrawn':
      return l10n.t('withdrawn');
  }
}

function statusMeaning(status: Status): string {
  switch (status) {
    case 'draft':
      return l10n.t('Under work again.');
    case 'proved':
      return l10n.t('Worked through on a vehicle.');
    case 'released':
      return l10n.t('May be issued. No errors and no questions are left.');
    case 'withdrawn':
      return l10n.t('Not to be used any more; a note says why.');
  }
}
