// The running server as the rest of the client sees it: ask a question, hear of changes, start again.

import type * as protocol from '@baywright/server/protocol';
import { METHODS } from '@baywright/server/protocol';
import type { Disposable, LogOutputChannel } from 'vscode';
import type { BaseLanguageClient, LanguageClientOptions } from 'vscode-languageclient';

/** Questions the client asks, by the name of their method, with their answers. */
interface Questions {
  choices: (question: protocol.ChoicesQuestion) => protocol.Choices;
  state: (question: protocol.StateQuestion) => protocol.VehicleState;
  preview: (question: protocol.PreviewQuestion) => protocol.PreviewAnswer;
  order: (question: protocol.OrderQuestion) => protocol.OrderAnswer;
  library: (question: undefined) => protocol.Library;
  check: (question: protocol.CheckQuestion) => protocol.CheckAnswer;
  explain: (question: protocol.ExplainQuestion) => protocol.ExplainAnswer;
  print: (question: protocol.PrintQuestion) => protocol.PrintAnswer;
  sign: (question: protocol.SignQuestion) => protocol.SignAnswer;
  issue: (question: protocol.IssueQuestion) => protocol.IssueAnswer;
}

export interface Connection extends Disposable {
  /** The server's answer. Rejects when the server is not running or refuses. */
  ask<Name extends keyof Questions>(
    name: Name,
    question: Parameters<Questions[Name]>[0],
  ): Promise<ReturnType<Questions[Name]>>;
  /** Calls back whenever procedures, findings or kept guides change. */
  onLibraryChanged(listener: () => void): Disposable;
  /** Calls back with the documents whose guide or state may look different now. */
  onStale(listener: (uris: readonly string[]) => void): Disposable;
  restart(): Promise<void>;
  readonly log: LogOutputChannel;
}

/** Makes the client of one platform: Node on the desktop, a worker in the browser. */
export type MakeClient = (options: LanguageClientOptions) => BaseLanguageClient;

export function connect(client: BaseLanguageClient, log: LogOutputChannel): Connection {
  return {
    // The method table and the types of questions and answers are one contract, kept in protocol.ts.
    ask: (name, question) => client.sendRequest(METHODS[name], question),
    onLibraryChanged: (listener) => client.onNotification(METHODS.libraryChanged, listener),
    onStale: (listener) =>
      client.onNotification(METHODS.previewStale, (stale: protocol.PreviewStale) => listener(stale.uris)),
    restart: async () => {
      if (client.isRunning()) await client.stop();
      await client.start();
    },
    log,
    dispose: () => void client.dispose(),
  };
}
