// Preview Beside: one panel for each document, brought back after a restart, following the text while it is typed.

import type { GuideKind } from '@baywright/server/protocol';
import {
  commands,
  type Disposable,
  type ExtensionContext,
  l10n,
  Uri,
  ViewColumn,
  type WebviewPanel,
  window,
  workspace,
} from 'vscode';
import { documentMeant } from '../commands/ask.js';
import { inWords } from '../commands/check.js';
import type { RememberedChoices } from '../commands/choose.js';
import type { Connection } from '../server/connection.js';
import { setting } from '../settings/read.js';
import type { FromPage, PageState, ToPage } from './messages.js';
import { previewPage } from './page.js';
import { follow } from './sync.js';

const VIEW_TYPE = 'baywright.preview';
/** Typing pauses this long, in milliseconds, before the guide is made again. */
const PAUSE = 80;

interface Services {
  readonly context: ExtensionContext;
  readonly connection: Connection;
  readonly choices: RememberedChoices;
}

export function registerPreview(
  context: ExtensionContext,
  connection: Connection,
  choices: RememberedChoices,
): Disposable {
  const services = { context, connection, choices };
  const open = new Map<string, WebviewPanel>();
  const show = (panel: WebviewPanel, state: PageState): void => {
    open.set(state.uri, panel);
    panel.onDidDispose(() => open.delete(state.uri));
    run(panel, state, services);
  };
  context.subscriptions.push(
    window.registerWebviewPanelSerializer(VIEW_TYPE, {
      deserializeWebviewPanel: async (panel, state: PageState | undefined) => {
        if (state?.uri) show(panel, state);
        else panel.dispose();
      },
    }),
  );
  return commands.registerCommand('baywright.preview', async (given?: unknown) => {
    const document = await documentMeant(given);
    if (!document) return;
    const uri = document.uri.toString();
    const present = open.get(uri);
    if (present) {
      present.reveal(undefined, true);
      return;
    }
    const name = document.uri.path.slice(document.uri.path.lastIndexOf('/') + 1);
    const column = { viewColumn: ViewColumn.Beside, preserveFocus: true };
    show(window.createWebviewPanel(VIEW_TYPE, l10n.t('Preview of {0}', name), column), {
      uri,
      kind: 'guide',
    });
  });
}

/** Keeps one panel up to date until it is closed. */
function run(panel: WebviewPanel, first: PageState, { context, connection, choices }: Services): void {
  const { uri } = first;
  let kind: GuideKind = first.kind;
  let asked = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const post = (message: ToPage): void => void panel.webview.postMessage(message);

  const refresh = async (): Promise<void> => {
    asked += 1;
    const turn = asked;
    try {
      // The server knows only open documents and files of the folder; opening keeps a restored panel alive.
      await workspace.openTextDocument(Uri.parse(uri));
      const options = choices.of(uri);
      const { html, findings } = await connection.ask('preview', { uri, kind, options });
      const { canMakePdf } = await connection.ask('choices', { uri });
      if (turn !== asked) return;
      post({
        type: 'show',
        html,
        kind,
        unitOrder: options.unitOrder ?? 'as written',
        findings,
        findingWords: inWords(findings),
        paper: setting('preview.paper'),
        canMakePdf,
      });
    } catch (error) {
      connection.log.warn(`preview: ${error instanceof Error ? error.message : String(error)}`);
      if (turn === asked)
        post({
          type: 'sorry',
          message: l10n.t('The guide cannot be shown yet. The Baywright log says why.'),
        });
    }
  };
  const refreshSoon = (): void => {
    clearTimeout(timer);
    timer = setTimeout(() => void refresh(), PAUSE);
  };

  const sync = follow(uri, post);
  const act = async (message: FromPage): Promise<void> => {
    switch (message.type) {
      case 'ready':
        await refresh();
        return sync.now();
      case 'kind':
        kind = message.kind;
        return refresh();
      case 'units':
        return choices.set(uri, { ...choices.of(uri), unitOrder: message.unitOrder });
      case 'goTo':
        return sync.goTo(message.line);
      case 'scrolled':
        return sync.scrolled(message.line);
      default:
        await commands.executeCommand(COMMANDS[message.type], Uri.parse(uri), kind);
    }
  };

  const subscriptions: Disposable[] = [
    panel.webview.onDidReceiveMessage((message: FromPage) => act(message)),
    workspace.onDidChangeTextDocument(({ document }) => document.uri.toString() === uri && refreshSoon()),
    workspace.onDidChangeConfiguration(
      (change) => change.affectsConfiguration('baywright.preview') && refreshSoon(),
    ),
    choices.onChanged((changed) => changed === uri && refreshSoon()),
    connection.onStale((stale) => stale.includes(uri) && refreshSoon()),
    sync,
  ];
  panel.onDidDispose(() => {
    clearTimeout(timer);
    for (const subscription of subscriptions) subscription.dispose();
  });
  panel.webview.options = {
    enableScripts: true,
    localResourceRoots: [
      Uri.joinPath(context.extensionUri, 'dist'),
      Uri.joinPath(context.extensionUri, 'media'),
    ],
  };
  panel.webview.html = previewPage(
    panel.webview,
    context.extensionUri,
    first,
    crypto.randomUUID().replaceAll('-', ''),
  );
}

const COMMANDS = {
  choose: 'baywright.choose',
  print: 'baywright.print',
  html: 'baywright.buildHtml',
  pdf: 'baywright.buildPdf',
} as const;
