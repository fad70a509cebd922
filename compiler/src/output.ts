// The public door of the outputs: a document in, a page or a PDF out, with what could not be printed as written.
import { cleanDocument } from './document/clean.js';
import type { GuideDocument, OutputFinding } from './document/document.js';
import { pageAssets } from './html/assets.js';
import { type Library, libraryHtml } from './html/library.js';
import { pageHtml } from './html/page.js';
import { isPrintable } from './pdf/coverage.js';
import { type Engine, openEngine, type Typeset, TypesetError } from './pdf/engine.js';
import { EQUIVALENTS } from './pdf/equivalents.js';
import { damaged, refusedPictures } from './pdf/refused-pictures.js';
import { printSource } from './pdf/source.js';
import { DEFAULT_PRINT, type PrintOptions } from './print-options.js';

export interface HtmlOutput {
  readonly html: string;
  readonly findings: readonly OutputFinding[];
}

/** Makes a document one HTML file that needs no network. The same document and options give the same text. */
export function renderHtml(
  document: GuideDocument,
  options: Partial<Pick<PrintOptions, 'print' | 'safetyColours' | 'twoSided'>> = {},
): HtmlOutput {
  const { document: clean, findings } = cleanDocument(document, {});
  return { html: pageHtml(clean, { ...DEFAULT_PRINT, ...options }, pageAssets()), findings };
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
  const form = {
    standard: chosen.standard,
    timestamp: chosen.timestamp ?? revisionTime(document.identity.date),
  };
  const set = async (refused: ReadonlySet<Uint8Array> = new Set()): Promise<Typeset> => {
    const source = printSource(clean, chosen, { refused });
    const typeset = await typesetter.typeset({ ...source, ...form });
    if (source.pages === undefined || source.pages === typeset.pages) return typeset;
    // A table took more room than was worked out: the numbers of the pages are counted.
    return typesetter.typeset({ ...printSource(clean, chosen, { refused, counted: true }), ...form });
  };
  try {
    const { pdf, pages } = await set();
    return { pdf, pages, findings };
  } catch (error) {
    const { pictures } = printSource(clean, chosen);
    const refused =
      error instanceof TypesetError
        ? await refusedPictures(clean, pictures, chosen.standard, typesetter)
        : [];
    if (refused.length === 0) throw error;
    const { pdf, pages } = await set(new Set(refused.map(({ data }) => data)));
    return { pdf, pages, findings: [...findings, ...refused.map(damaged)] };
  }
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
