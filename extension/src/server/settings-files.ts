// Tells the server of settings files that are open, so that its findings follow what is being written. They are not among
// the documents that it answers for: the editor's own JSON support does that, by the schema.
import { Disposable, type TextDocument, workspace } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

export function followSettingsFiles(client: BaseLanguageClient): Disposable {
  const tell = (method: string, params: object): void => {
    if (client.isRunning()) void client.sendNotification(method, params);
  };
  const identify = (document: TextDocument) => ({
    uri: client.code2ProtocolConverter.asUri(document.uri),
    version: document.version,
  });
  const opened = (document: TextDocument): void => {
    if (isSettings(document))
      tell('textDocument/didOpen', {
        textDocument: { ...identify(document), languageId: document.languageId, text: document.getText() },
      });
  };
  workspace.textDocuments.forEach(opened);
  return Disposable.from(
    workspace.onDidOpenTextDocument(opened),
    workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
      if (isSettings(document) && contentChanges.length > 0)
        tell('textDocument/didChange', {
          textDocument: identify(document),
          contentChanges: [{ text: document.getText() }],
        });
    }),
    workspace.onDidCloseTextDocument((document) => {
      if (isSettings(document)) tell('textDocument/didClose', { textDocument: identify(document) });
    }),
    // A server that was started again has heard of none of them.
    client.onDidChangeState(({ newState }) => {
      if (newState === RUNNING) workspace.textDocuments.forEach(opened);
    }),
  );
}

/** The state of a client whose server answers. */
const RUNNING = 2;

function isSettings({ uri }: TextDocument): boolean {
  return uri.path.endsWith('/baywright.json');
}
