// Entry in the browser: the server runs in a web worker and reads files through the editor.
import { type ExtensionContext, Uri } from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { start } from './start.js';

export async function activate(context: ExtensionContext): Promise<void> {
  const script = Uri.joinPath(context.extensionUri, 'bundles', 'server', 'dist', 'worker.js').toString(true);
  await start(context, {
    onDisk: false,
    makeClient: (options) =>
      new LanguageClient('baywright', 'Baywright', async () => new Worker(script), options),
  });
}
