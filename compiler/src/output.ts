// The public door of the outputs: a document in, a page or a PDF out, with what could not be printed as written.
import { cleanDocument } from './document/clean.js';
import type { GuideDocument, OutputFinding } from './document/document.js';
import { pageAssets } from './html/assets.js';
import { type Library, libraryHtml } from './html/library.js';
import { pageHtml } from './html/page.js';
import { isPrintable } from './pdf/coverage.js';
import { type Engine, openEngine } from './pdf/engine.js';
import { EQUIVALENTS } from './pdf/equivalents.js';
import { printSource } from './pdf/source.js';
import { DEFAULT_PRINT, type PrintOptions } from './print-options.js';

export interface HtmlOutput {
  readonly html: string;
  readonly findings: readonly OutputFinding[];
}

/** Makes a document one HTML file that needs no network. The same document and options give the same text. */
export function renderHtml(
  document: GuideDocument,
  options: Partial<Pick<PrintOptions, 'print'>> = {},
): HtmlOutput {
  const { document: clean, findings } = cleanDocument(document, {});
  return { html: pageHtml(clean, { print: options.print ?? DEFAULT_PRINT.print }, pageAssets()), findings };
}

/** Makes the list of a shop's guides one HTML file with search that needs no network. */
export function renderLibrary(library: Library): string {
  return libraryHtml(library, pageAssets());
}

export interface PdfOutput {
  readonly pdf: Uint8Array;
  readonly pages: number;
  readonly findings: readonly OutputFinding[];
}

let shared: Engine | undefined;

/**
 * Sets a document as PDF: tagged PDF/UA-1 unless an archive standard is asked for. Characters that the shipped type
 * does not have print as an empty box and are reported. The same document and options give the same bytes.
 */
export async function renderPdf(
  document: GuideDocument,
  options: Partial<PrintOptions> = {},
  engine?: Engine,
): Promise<PdfOutput> {
  const chosen = { ...DEFAULT_PRINT, ...options };
  // It gets ready while its source is written.
  const typesetter = engine ?? sharedEngine();
  const { document: clean, findings } = cleanDocument(document, {
    has: isPrintable,
    equivalents: EQUIVALENTS,
    longestWord: 28,
  });
  const { pdf, pages } = await typesetter.typeset({
    ...printSource(clean, chosen),
    standard: chosen.standard,
    timestamp: chosen.timestamp ?? revisionTime(document.identity.date),
  });
  return { pdf, pages, findings };
}

function sharedEngine(): Engine {
  shared ??= openEngine();
  return shared;
}

/** Midnight UTC of the revision's date in seconds; 0 for a draft without a date. */
function revisionTime(date: string): number {
  const time = Date.parse(`${date}T00:00:00Z`);
  return Number.isNaN(time) ? 0 : time / 1000;
}
