// Show Tightening Order: the drawing of the fastener under the cursor, in a small panel.
import { commands, type Disposable, l10n, ViewColumn, window } from 'vscode';
import type { Connection } from '../server/connection.js';
import { documentMeant, reporting } from './ask.js';

export function registerOrder(connection: Connection): Disposable {
  return commands.registerCommand('baywright.tighteningOrder', async () => {
    const document = await documentMeant();
    const editor = window.visibleTextEditors.find((candidate) => candidate.document === document);
    if (!document || !editor) return;
    const { line, character } = editor.selection.active;
    const answer = await reporting(connection, l10n.t('The order could not be drawn.'), () =>
      connection.ask('order', { uri: document.uri.toString(), position: { line, character } }),
    );
    if (!answer) return;
    if (answer.svg === undefined) {
      await window.showInformationMessage(l10n.t('The thing on this line has no tightening order.'));
      return;
    }
    const panel = window.createWebviewPanel(
      'baywright.order',
      l10n.t('Tightening order'),
      ViewColumn.Beside,
      {},
    );
    panel.webview.html = page(answer.svg, panel.webview.cspSource);
  });
}

/** No script and no style but ours: the drawing is a picture, so nothing inside it can act. */
function page(svg: string, source: string): string {
  const data = `data:image/svg+xml,${encodeURIComponent(svg)}`;
  return `<!doctype html><html><head><meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data: ${source}; style-src 'unsafe-inline'">
<style>body{margin:0;padding:1rem;background:#fff}img{width:100%;max-height:90vh}</style></head>
<body><img alt="${l10n.t('Tightening order')}" src="${data}"></body></html>`;
}
