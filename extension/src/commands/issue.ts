// Issue: makes the guides of a released procedure and keeps what was handed out. One that is proved is released first.

import type { IssueAnswer } from '@baywright/server/protocol';
import {
  commands,
  type Disposable,
  type ExtensionContext,
  l10n,
  ProgressLocation,
  type TextDocument,
  Uri,
  window,
} from 'vscode';
import type { Connection } from '../server/connection.js';
import { documentMeant, reporting } from './ask.js';
import { offerFile } from './made-file.js';
import { trusted } from './print.js';
import { showReasons, sign, statusOf } from './sign.js';

const COPIES_KEY = 'baywright.copies';

export function registerIssue(context: ExtensionContext, connection: Connection): Disposable {
  return commands.registerCommand('baywright.issue', async (given?: unknown) => {
    if (!(await trusted())) return;
    const document = await documentMeant(given);
    const there = document && (await statusOf(connection, document));
    if (!document || !there) return;
    if (there.status === 'draft') {
      await sayDraft(document, there.number);
      return;
    }
    if (there.status === 'proved' && !(await sign(context, connection, document, 'released'))) return;
    if (document.isDirty && !(await document.save())) return;
    const copies = there.status === 'withdrawn' ? [] : await askCopies(context);
    if (!copies) return;
    const answer = await window.withProgress(
      { location: ProgressLocation.Window, title: l10n.t('Issuing') },
      () =>
        reporting(connection, l10n.t('The procedure could not be issued.'), () =>
          connection.ask('issue', { uri: document.uri.toString(), copies }),
        ),
    );
    if (answer) await show(answer);
  });
}

async function sayDraft(document: TextDocument, number: string): Promise<void> {
  const signIt = l10n.t('Sign');
  const chosen = await window.showInformationMessage(
    l10n.t(
      '{0} is a draft. The one who worked through it on a vehicle signs it as proved, another releases it, then it is issued.',
      number,
    ),
    signIt,
  );
  if (chosen === signIt) await commands.executeCommand('baywright.sign', document.uri);
}

/** Places of printed copies; undefined when the user gives up. */
async function askCopies(context: ExtensionContext): Promise<string[] | undefined> {
  const places = await window.showInputBox({
    title: l10n.t('Issue'),
    prompt: l10n.t('Where printed copies will hang, with commas between. Leave it empty for none.'),
    placeHolder: l10n.t('bay 1, bay 2'),
    value: context.workspaceState.get(COPIES_KEY, ''),
    ignoreFocusOut: true,
  });
  if (places === undefined) return undefined;
  await context.workspaceState.update(COPIES_KEY, places.trim());
  return places
    .split(',')
    .map((place) => place.trim())
    .filter((place) => place !== '');
}

async function show(answer: IssueAnswer): Promise<void> {
  switch (answer.state) {
    case 'refused':
      return showReasons(l10n.t('Not issued yet'), answer.reasons);
    case 'current':
      return void window.showInformationMessage(
        l10n.t('Revision {0} is issued already, and nothing changed since.', answer.revision),
      );
    case 'issued': {
      const said = l10n.t('Revision {0} is issued. {1}', answer.revision, answer.change);
      const uri = answer.files[0]?.uri;
      if (uri === undefined) await window.showInformationMessage(said);
      else await offerFile(Uri.parse(uri), said);
    }
  }
}
