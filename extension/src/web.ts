// Entry in the browser: the server runs in a web worker and reads files through the editor.
import { type ExtensionContext, Uri } from 'vscode';
import { BrowserMessageReader, BrowserMessageWriter, LanguageClient } from 'vscode-languageclient/browser';
import { start } from './start.js';

export async function activate(context: ExtensionContext): Promise<void> {
  const script = Uri.joinPath(context.extensionUri, 'bundles', 'compiler', 'dist', 'worker.js').toString(
    true,
  );
  // The editor puts a `Worker` of its own in place of the browser's, which the client library does not know as a
  // worker: reader and writer are made here.
  const connectWorker = async () => {
    const worker = new Worker(script);
    return { reader: new BrowserMessageReader(worker), writer: new BrowserMessageWriter(worker) };
  };
  await start(context, {
    onDisk: false,
    makeClient: (options) => new LanguageClient('baywright', 'Baywright', connectWorker, options),
  });
}
