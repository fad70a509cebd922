// Issue: runs the release rules; when they hold, makes the guides and keeps what was printed beside its source.
import {
  commands,
  type Disposable,
  type ExtensionContext,
  l10n,
  ProgressLocation,
  type QuickPickItem,
  Range,
  Uri,
  window,
} from 'vscode';
import type { IssueAnswer, Location } from '../protocol.js';
import type { Connection } from '../server/connection.js';
import { documentMeant, reporting } from './ask.js';
import type { RememberedChoices } from './choose.js';
import { keepFile, offerFile } from './made-file.js';
import { trusted } from './print.js';

const INITIALS_KEY = 'baywright.initials';

export function registerIssue(
  context: ExtensionContext,
  connection: Connection,
  choices: RememberedChoices,
): Disposable {
  return commands.registerCommand('baywright.issue', async (given?: unknown) => {
    if (!(await trusted())) return;
    const document = await documentMeant(given);
    const options = document && (await choices.ask(document.uri.toString()));
    const initials = options && (await askInitials(context));
    if (!document || !options || !initials) return;
    if (document.isDirty && !(await document.save())) return;
    const answer = await window.withProgress(
      { location: ProgressLocation.Window, title: l10n.t('Issuing') },
      () =>
        reporting(connection, l10n.t('The procedure could not be issued.'), () =>
          connection.ask('issue', { uri: document.uri.toString(), options, initials }),
        ),
    );
    if (!answer) return;
    if (!answer.issued) {
      await showBlockers(answer);
      return;
    }
    const [guide] = answer.files;
    const kept = guide && (await keepFile(guide, document.uri));
    if (kept) await offerFile(kept, undefined);
  });
}

async function askInitials(context: ExtensionContext): Promise<string | undefined> {
  const initials = await window.showInputBox({
    title: l10n.t('Issue'),
    prompt: l10n.t('Initials of the person who releases it'),
    value: context.globalState.get(INITIALS_KEY, ''),
    validateInput: (text) => (/^\p{L}{1,5}$/u.test(text.trim()) ? undefined : l10n.t('One to five letters.')),
  });
  if (initials === undefined) return undefined;
  await context.globalState.update(INITIALS_KEY, initials.trim());
  return initials.trim();
}

async function showBlockers({ blockers }: Extract<IssueAnswer, { issued: false }>): Promise<void> {
  const items = blockers.map((blocker): QuickPickItem & { location: Location | undefined } => ({
    label: blocker.message,
    location: blocker.location,
  }));
  const chosen = await window.showQuickPick(items, {
    title: l10n.t('Not issued yet'),
    placeHolder: l10n.t('What stands in the way; choose one to go to its line'),
  });
  if (chosen?.location) await goTo(chosen.location);
}

/** Opens the file of a location with its range selected. */
export async function goTo({ uri, range }: Location): Promise<void> {
  const selection = new Range(range.start.line, range.start.character, range.end.line, range.end.character);
  await window.showTextDocument(Uri.parse(uri), { selection });
}
