// Entry on the desktop and on a remote machine: the server runs as a Node process of the editor's own Node.
import { type ExtensionContext, Uri } from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { start } from './start.js';

export async function activate(context: ExtensionContext): Promise<void> {
  // The command starts the server and lends it what makes guides: previews and prints come from the same program.
  const module = Uri.joinPath(context.extensionUri, 'bundles', 'compiler', 'dist', 'baywright.js').fsPath;
  const server = { module, transport: TransportKind.ipc, args: ['server'] };
  await start(context, {
    onDisk: true,
    makeClient: (options) =>
      new LanguageClient(
        'baywright',
        'Baywright',
        {
          run: server,
          debug: { ...server, options: { execArgv: ['--nolazy', '--inspect=6019'] } },
        },
        options,
      ),
    command: {
      node: process.execPath,
      script: module,
    },
  });
}
