// The server in a web worker of a browser. It has no disk: it asks the client for files (`baywright/readFile`,
// `baywright/listFiles`); a client that answers neither still has the open documents.
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { clientFiles } from './client-files.js';
import { serve } from './connection.js';
import { dayOf } from './day.js';

export { type GuideSource, type Renderers, registerRenderers } from './renderers.js';

/** The channel of a worker, as far as messages need it; the types of browsers are not among those of Node. */
type Channel = ConstructorParameters<typeof BrowserMessageReader>[0];

/** Starts the server on the messages of the worker that it runs in. */
export function startWorkerServer(): void {
  const channel = globalThis as unknown as Channel;
  const connection = createConnection(new BrowserMessageReader(channel), new BrowserMessageWriter(channel));
  serve(connection, {
    files: () => clientFiles(connection),
    now: () => performance.now(),
    today: () => dayOf(new Date()),
    later(milliseconds, work) {
      const timer = setTimeout(work, milliseconds);
      return () => clearTimeout(timer);
    },
  });
}
