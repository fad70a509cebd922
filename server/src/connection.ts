// The protocol around workspace, checker and features: start, documents, settings, files, requests. It is the same for
// Node and for a worker; both hand in a connection, a way to files and a clock.
import { VERSION } from '@baywright/language';
import {
  type CancellationToken,
  type Connection,
  DidChangeConfigurationNotification,
  DidChangeWatchedFilesNotification,
  ErrorCodes,
  type InitializeParams,
  type InitializeResult,
  LSPErrorCodes,
  PositionEncodingKind,
  ResponseError,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import { Checker } from './checker.js';
import { checkerHost } from './checker-host.js';
import { clientFacts } from './client-facts.js';
import { SHOWN_BY_CLIENT } from './explain-page.js';
import type { Feature } from './features/feature.js';
import { capabilities, FEATURES } from './features/index.js';
import { type Files, PICTURES } from './files.js';
import { politely, SLICE } from './manners.js';
import { type Options, readOptions } from './options.js';
import type { StartOptions } from './protocol.js';
import { quiet } from './quiet.js';
import { refreshViews } from './refresh.js';
import { renderers } from './renderers.js';
import { positionsFor } from './snapshot.js';
import { TEXTS } from './texts/index.js';
import type { View } from './view.js';
import { Workspace } from './workspace.js';

export interface ServerHost {
  /** Files for the start options the client sent. */
  files(options: Partial<StartOptions>): Files;
  now(): number;
  /** The day it is, `2026-10-05`. */
  today(): string;
  /** Runs work after the messages that wait and at least this long; gives a way to take it back. */
  later(milliseconds: number, work: () => void): () => void;
}

const WATCHED = `**/{*.bay,baywright.json,${PICTURES.map((ending) => `*${ending}`).join(',')}}`;

export function serve(connection: Connection, host: ServerHost): void {
  let workspace: Workspace | undefined;
  let checker: Checker | undefined;
  let params: InitializeParams | undefined;
  /** Tokens of work whose bar the user has closed. */
  const takenBack = new Set<string | number>();

  connection.onInitialize((sent): InitializeResult => {
    params = sent;
    const start = (sent.initializationOptions ?? {}) as Partial<StartOptions>;
    const made = new Workspace(host.files(start), host.today);
    workspace = made;
    made.client = clientFacts(sent);
    made.options = optionsFrom(made, undefined);
    checker = new Checker(made, checkerHost(connection, host, sent));
    const folders = sent.workspaceFolders ?? (sent.rootUri ? [{ uri: sent.rootUri, name: '' }] : []);
    for (const folder of folders) made.addFolder(folder.uri);
    const { diagnosticProvider, codeActionProvider, ...answers } = capabilities();
    // A client that listens to findings and asks for them too would show each of them twice.
    const listens = sent.capabilities.textDocument?.publishDiagnostics !== undefined;
    return {
      serverInfo: { name: 'baywright', version: VERSION },
      capabilities: {
        ...answers,
        ...(listens || !diagnosticProvider ? {} : { diagnosticProvider }),
        ...(typeof codeActionProvider === 'object'
          ? { codeActionProvider: { ...codeActionProvider, resolveProvider: made.client.resolvesEdits } }
          : {}),
        positionEncoding:
          made.client.encoding === 'utf-8' ? PositionEncodingKind.UTF8 : PositionEncodingKind.UTF16,
        textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental, save: false },
        workspace: {
          ...answers.workspace,
          workspaceFolders: { supported: true, changeNotifications: true },
        },
      },
    };
  });

  connection.onInitialized(async () => {
    if (!workspace || !checker || !params) return;
    const { workspace: can } = params.capabilities;
    // A client that takes no registrations is left as it is: it tells of changes by other ways, or not at all.
    if (can?.didChangeConfiguration?.dynamicRegistration)
      await connection.client
        .register(DidChangeConfigurationNotification.type, { section: 'baywright' })
        .catch(() => undefined);
    if (can?.didChangeWatchedFiles?.dynamicRegistration)
      await connection.client
        .register(DidChangeWatchedFilesNotification.type, { watchers: [{ globPattern: WATCHED }] })
        .catch(() => undefined);
    if (can?.workspaceFolders)
      connection.workspace.onDidChangeWorkspaceFolders(({ added, removed }) => {
        for (const folder of removed) workspace?.removeFolder(folder.uri);
        for (const folder of added) workspace?.addFolder(folder.uri);
        checkEverything();
      });
    connection.onNotification('window/workDoneProgress/cancel', (closed: { token: string | number }) => {
      takenBack.add(closed.token);
    });
    await pullOptions();
    checkEverything();
  });

  const checkEverything = (): void => {
    void workspace?.ready.then(() => checker?.everything());
  };

  const pullOptions = async (): Promise<void> => {
    if (!workspace || !params?.capabilities.workspace?.configuration) return;
    const sent: unknown = await connection.workspace.getConfiguration('baywright').catch(() => undefined);
    workspace.options = optionsFrom(workspace, sent);
  };

  connection.onDidChangeConfiguration(async ({ settings }) => {
    if (!workspace) return;
    if (params?.capabilities.workspace?.configuration) await pullOptions();
    else workspace.options = optionsFrom(workspace, settings);
    checkEverything();
    if (params) refreshViews(connection, params);
  });

  connection.onDidChangeWatchedFiles(({ changes }) => {
    for (const { uri } of changes) workspace?.fileChanged(uri);
    checkEverything();
  });

  connection.onDidOpenTextDocument(({ textDocument }) => {
    workspace?.open(textDocument.uri, textDocument.version, textDocument.text);
    void workspace?.ready.then(() => checker?.edited(textDocument.uri));
  });
  connection.onDidChangeTextDocument(({ textDocument, contentChanges }) => {
    if (workspace?.change(textDocument.uri, textDocument.version, contentChanges))
      checker?.edited(textDocument.uri);
  });
  connection.onDidCloseTextDocument(({ textDocument }) => {
    const { uri } = textDocument;
    if (workspace?.close(uri)) checker?.closed(uri);
    else quiet(connection.sendDiagnostics({ uri, diagnostics: [] }));
  });

  for (const feature of FEATURES) {
    connection.onRequest(feature.method, async (asked: unknown, token: CancellationToken) => {
      if (!workspace || !checker)
        throw new ResponseError(ErrorCodes.ServerNotInitialized, TEXTS.en.notStarted);
      await workspace.ready;
      if (token.isCancellationRequested)
        throw new ResponseError(LSPErrorCodes.RequestCancelled, 'taken back');
      const view = viewOf(connection, host, workspace, checker, token, asked, takenBack);
      try {
        return await answer(feature, asked, view);
      } finally {
        view.end();
      }
    });
  }

  connection.onShutdown(() => undefined);
  connection.listen();
}

/** Answers one request. A document that is not known has no answer; a fault in one answer must not end the server. */
async function answer(feature: Feature, asked: unknown, view: View): Promise<unknown> {
  if (feature.about === 'library') return (await feature.run(view, asked as never)) ?? null;
  const uri = uriIn(asked);
  const settings = uri === undefined ? undefined : view.settingsFile(uri);
  if (settings && feature.inSettings) return feature.inSettings(settings, asked as never) ?? null;
  const snapshot = uri === undefined ? undefined : view.snapshot(uri);
  if (!snapshot) {
    if (feature.method.startsWith('baywright/'))
      throw new ResponseError(ErrorCodes.InvalidParams, view.say.notOurs(uri));
    return null;
  }
  const result = (await feature.run(snapshot, asked as never, view)) ?? null;
  const now = view.snapshot(snapshot.uri);
  // An answer that took so long that the text was edited meanwhile would point at the wrong places.
  if (now && now.text !== snapshot.text)
    throw new ResponseError(LSPErrorCodes.ContentModified, 'edited meanwhile');
  return result;
}

function uriIn(asked: unknown): string | undefined {
  if (typeof asked !== 'object' || asked === null) return undefined;
  const { textDocument, uri } = asked as { textDocument?: { uri?: unknown }; uri?: unknown };
  const found = textDocument?.uri ?? uri;
  return typeof found === 'string' ? found : undefined;
}

function viewOf(
  connection: Connection,
  host: ServerHost,
  workspace: Workspace,
  checker: Checker,
  token: CancellationToken,
  asked: unknown,
  takenBack: Set<string | number>,
): View & { end(): void } {
  const { workDoneToken: workDone, partialResultToken: partial } = (asked ?? {}) as {
    workDoneToken?: string | number;
    partialResultToken?: string | number;
  };
  let begun = false;
  const isCancelled = (): boolean =>
    token.isCancellationRequested || (workDone !== undefined && takenBack.has(workDone));
  const say = TEXTS[workspace.client.language];
  const pause = (): Promise<void> => new Promise((resolve) => politely(host.later, resolve));
  return {
    client: workspace.client,
    say,
    snapshot: (uri) => workspace.snapshot(uri),
    settingsFile(uri) {
      const text = workspace.settingsText(uri);
      if (text === undefined || workspace.client.readsSettings) return undefined;
      const { encoding, snippets } = workspace.client;
      return { text, positions: positionsFor(text, encoding), snippets, say };
    },
    file: (shelf, path) => workspace.snapshot(shelf.uri(path)),
    shelves: () => workspace.shelves(),
    looked(shelf, path) {
      if (workspace.document(shelf.uri(path)) || shelf.library.model(path)?.kind !== 'procedure') return;
      shelf.library.release(path);
    },
    async analysed(snapshot) {
      for (let begin = host.now(); !snapshot.library.advance(snapshot.path); ) {
        if (host.now() - begin < SLICE) continue;
        await pause();
        begin = host.now();
        if (isCancelled()) throw new ResponseError(LSPErrorCodes.RequestCancelled, 'taken back');
        if (workspace.snapshot(snapshot.uri)?.text !== snapshot.text)
          throw new ResponseError(LSPErrorCodes.ContentModified, 'edited meanwhile');
      }
      return snapshot.analysis();
    },
    wide: ({ shelf, path }) => checker.wideOf(shelf, path),
    findings: (shelf, path) => checker.findingsOf(shelf, path),
    readBase64: (uri) => workspace.readBase64(uri),
    renderers: renderers(),
    isCancelled,
    progress(done, all, what) {
      if (workDone === undefined) return;
      const percentage = Math.round((100 * done) / Math.max(1, all));
      const message = say.counted(done, all);
      const value = begun
        ? { kind: 'report', percentage, message }
        : { kind: 'begin', title: what, cancellable: true, percentage, message };
      begun = true;
      quiet(connection.sendNotification('$/progress', { token: workDone, value }));
    },
    end() {
      if (workDone !== undefined) takenBack.delete(workDone);
      if (begun)
        quiet(connection.sendNotification('$/progress', { token: workDone, value: { kind: 'end' } }));
    },
    partial(items) {
      if (partial === undefined) return false;
      if (items.length > 0)
        quiet(connection.sendNotification('$/progress', { token: partial, value: items }));
      return true;
    },
    pause,
  };
}

/** What the client sends, on top of what follows from the client itself. */
function optionsFrom({ client }: Workspace, sent: unknown): Options {
  return readOptions(sent, client.showsPages ? SHOWN_BY_CLIENT : '');
}
