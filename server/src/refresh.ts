// Asks the client to ask again for what it shows beside the text, where it can: hints, lenses, findings that it pulls.
import type { Connection, InitializeParams } from 'vscode-languageserver';
import { quiet } from './quiet.js';

export function refreshViews(connection: Connection, { capabilities: can }: InitializeParams): void {
  const { inlayHint, codeLens, diagnostics } = can.workspace ?? {};
  const pulls = can.textDocument?.publishDiagnostics === undefined;
  if (inlayHint?.refreshSupport) quiet(connection.sendRequest('workspace/inlayHint/refresh'));
  if (codeLens?.refreshSupport) quiet(connection.sendRequest('workspace/codeLens/refresh'));
  if (pulls && diagnostics?.refreshSupport) quiet(connection.sendRequest('workspace/diagnostic/refresh'));
}
