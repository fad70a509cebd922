// The shell of the preview: tabs and buttons. The guide itself is put into a frame of its own by the page's script.

import type { GuideKind, UnitOrder } from '@baywright/server/protocol';
import { l10n, Uri, type Webview } from 'vscode';
import type { PageState } from './messages.js';

/** `nonce` must be new for each page: only the script and styles that carry it are let in. */
export function previewPage(webview: Webview, extension: Uri, state: PageState, nonce: string): string {
  const script = webview.asWebviewUri(Uri.joinPath(extension, 'dist', 'preview.js'));
  const style = webview.asWebviewUri(Uri.joinPath(extension, 'media', 'preview.css'));
  // Guides set the width of their state band by style attributes; those cannot load or run anything.
  const policy = [
    "default-src 'none'",
    `script-src 'nonce-${nonce}'`,
    `style-src ${webview.cspSource} 'nonce-${nonce}'`,
    "style-src-attr 'unsafe-inline'",
    `img-src data: ${webview.cspSource}`,
    'font-src data:',
  ].join('; ');
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<link rel="stylesheet" href="${style}">
<title>${l10n.t('Preview')}</title>
</head>
<body data-nonce="${nonce}" data-state="${attribute(JSON.stringify(state))}">
<header>
<div role="tablist" aria-label="${attribute(l10n.t('What to show'))}">${tabs(state.kind)}</div>
<label>${l10n.t('Units')} <select id="units">${unitOptions()}</select></label>
<button id="choose" type="button">${l10n.t('Side and options')}</button>
<button id="print" type="button">${l10n.t('Print')}</button>
<button id="html" type="button">${l10n.t('Save HTML')}</button>
<button id="pdf" type="button">${l10n.t('Save PDF')}</button>
<output id="findings"></output>
</header>
<main><div role="tabpanel" id="sheet" aria-label="${attribute(l10n.t('The guide'))}"><p id="sorry" role="status" hidden></p>
<iframe id="guide" sandbox="allow-same-origin" title="${attribute(l10n.t('The guide'))}"></iframe></div></main>
<script nonce="${nonce}" src="${script}"></script>
</body>
</html>`;
}

function tabs(chosen: GuideKind): string {
  const kinds: readonly (readonly [GuideKind, string])[] = [
    ['guide', l10n.t('Guide')],
    ['torque-card', l10n.t('Torque card')],
    ['pull-sheet', l10n.t('Pull sheet')],
    ['record', l10n.t('Record')],
  ];
  return kinds
    .map(([kind, title]) => {
      const selected = kind === chosen;
      return `<button role="tab" type="button" aria-controls="sheet" aria-selected="${selected}" tabindex="${selected ? 0 : -1}" data-kind="${kind}">${title}</button>`;
    })
    .join('');
}

function unitOptions(): string {
  const orders: readonly (readonly [UnitOrder, string])[] = [
    ['as written', l10n.t('as written')],
    ['metric first', l10n.t('metric first')],
    ['US first', l10n.t('US first')],
  ];
  return orders.map(([order, title]) => `<option value="${order}">${title}</option>`).join('');
}

function attribute(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');
}
