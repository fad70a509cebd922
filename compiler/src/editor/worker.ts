// The language server in a web worker of a browser, with what makes HTML guides. There is no PDF engine and no disk:
// a guide is handed over for the client to save, and nothing is signed or issued.

import type { GuideSource } from '@baywright/server';
import { type Renderers, registerRenderers, startWorkerServer } from '@baywright/server/worker';
import { sha256 } from '@noble/hashes/sha2';
import { cleanDocument } from '../document/clean.js';
import type { GuideDocument } from '../document/document.js';
import { assetsFrom } from '../html/asset-files.js';
import { pageHtml } from '../html/page.js';
import { DEFAULT_PRINT } from '../print-options.js';
import { forCursor, sheetByClient, sheetName } from './sheet.js';

/** Put in by the bundler: the files of a page by name, type as base64. */
declare const BUNDLED_FILES: Readonly<Record<string, string>>;

const assets = assetsFrom(bundled, bundled, (text) => base64(sha256(new TextEncoder().encode(text))));

const renderers: Renderers = {
  canMakePdf: false,
  preview: async (source, kind, options) =>
    forCursor(html(await sheetByClient(source, kind, options), source), source),
  print: async (source, { kind, options, format }) => {
    if (format === 'pdf')
      return {
        made: false,
        reason: 'PDF guides are made on a computer, not in the browser. HTML guides are.',
      };
    const text = html(await sheetByClient(source, kind, options), source);
    const file = {
      name: sheetName(source, kind, options, format),
      base64: base64(new TextEncoder().encode(text)),
    };
    return { made: true, file };
  },
};

registerRenderers(renderers);
startWorkerServer();

function html(document: GuideDocument, { settings }: GuideSource): string {
  return pageHtml(cleanDocument(document, {}).document, { ...DEFAULT_PRINT, ...settings.print }, assets);
}

function bundled(name: string): string {
  return BUNDLED_FILES[name] ?? '';
}

function base64(bytes: Uint8Array): string {
  const chunk = 0x8000;
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; at += chunk)
    parts.push(String.fromCharCode(...bytes.subarray(at, at + chunk)));
  return btoa(parts.join(''));
}
