// Entry on the desktop and on a remote machine: the server runs as a Node process of the editor's own Node.
import { type ExtensionContext, Uri } from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { start } from './start.js';

export async function activate(context: ExtensionContext): Promise<void> {
  const module = Uri.joinPath(context.extensionUri, 'bundles', 'server', 'dist', 'node.js').fsPath;
  const transport = TransportKind.ipc;
  await start(context, {
    onDisk: true,
    makeClient: (options) =>
      new LanguageClient(
        'baywright',
        'Baywright',
        {
          run: { module, transport },
          debug: { module, transport, options: { execArgv: ['--nolazy', '--inspect=6019'] } },
        },
        options,
      ),
    command: {
      node: process.execPath,
      script: Uri.joinPath(context.extensionUri, 'bundles', 'compiler', 'dist', 'baywright.js').fsPath,
    },
  });
}
