// Makes the guides of one procedure: lowers it and renders what was asked for. What lowers and renders is loaded when the
// first guide is made: checking alone must not pay for it.
import type { Analysis, IssuedEdition, Language } from '@baywright/language';
import { asIssued } from '../desk/as-issued.js';
import { edition, issuedRevisions, type StoreLibrary } from '../desk/issue-store.js';
import { readable } from '../desk/readable.js';
import type { OutputFinding } from '../document/document.js';
import type { GuideChoice, GuideShelf } from '../document/lower/index.js';
import type { Engine } from '../pdf/engine.js';
import type { PrintOptions } from '../print-options.js';
import { translationPath } from '../translate/po.js';
import type { Shelf } from './libraries.js';
import { join } from './paths.js';
import { CannotRun, type Shell } from './shell.js';

export const FORMATS = ['html', 'pdf'] as const;
export type Format = (typeof FORMATS)[number];

/** A guide to be made: what it is printed for and how it looks. */
export interface Wanted {
  readonly choice: GuideChoice;
  readonly print: Partial<PrintOptions>;
}

export interface MadeGuide {
  readonly html?: string;
  readonly pdf?: { readonly bytes: Uint8Array; readonly pages: number };
  /** What could not be printed as it was written. */
  readonly notes: readonly string[];
}

export async function makeGuide(
  shell: Shell,
  shelf: Shelf,
  analysis: Analysis,
  wanted: Wanted,
  formats: readonly Format[],
  engine?: Engine,
): Promise<MadeGuide> {
  const { lowerGuide } = await import('../document/lower/index.js');
  const { renderHtml, renderPdf } = await import('../output.js');
  const { document, findings, untranslated } = lowerGuide(analysis, wanted.choice, guideShelf(shell, shelf));
  const missing = [...untranslated.values()].reduce((sum, texts) => sum + texts.size, 0);
  const html = formats.includes('html') ? renderHtml(document, wanted.print) : undefined;
  const pdf = formats.includes('pdf')
    ? await renderPdf(document, wanted.print, engine).catch(stopWithoutTypesetter)
    : undefined;
  const all = [...findings, ...(pdf?.findings ?? html?.findings ?? [])];
  return {
    ...(html ? { html: html.html } : {}),
    ...(pdf ? { pdf: { bytes: pdf.pdf, pages: pdf.pages } } : {}),
    notes: [...new Set(all.map(told)), ...(missing > 0 ? [untold(missing, wanted.choice.language)] : [])],
  };
}

/** One guide that fails leaves the others; without a typesetter none can be made. */
async function stopWithoutTypesetter(error: unknown): Promise<never> {
  const { TypesetterMissing } = await import('../pdf/engine.js');
  throw error instanceof TypesetterMissing ? new CannotRun(error.message) : error;
}

/** What the lowering may read of a library. */
export function guideShelf(shell: Shell, { root, settings }: Pick<Shelf, 'root' | 'settings'>): GuideShelf {
  const known = new Map<string, ReadonlyMap<string, string> | undefined>();
  const translations = (path: string, language: Language): ReadonlyMap<string, string> | undefined => {
    const file = translationPath(path, language);
    if (!known.has(file)) {
      const reading = shell.read(join(root, file));
      known.set(file, 'text' in reading ? readable(file, reading.text) : undefined);
    }
    return known.get(file);
  };
  return {
    settings,
    bytes: (path) => shell.bytes(join(root, path)),
    translations,
    issued: (number, below) => editionAt(shell, { root, settings }, number, below),
    asIssued: (edition, now) => asIssued(shell, { root, settings }, edition, now),
  };
}

/** The edition read last, for the other prints of the same procedure. An issue never changes. */
const readLast = new WeakMap<Shell, { readonly key: string; readonly edition: IssuedEdition | undefined }>();

function editionAt(
  shell: Shell,
  library: StoreLibrary,
  number: string,
  below = Number.POSITIVE_INFINITY,
): IssuedEdition | undefined {
  const revision = issuedRevisions(shell, library, number).findLast((one) => one < below);
  if (revision === undefined) return undefined;
  const key = [library.root, library.settings.issues, number, revision].join('#');
  const last = readLast.get(shell);
  if (last?.key === key) return last.edition;
  const read = edition(shell, library, number, revision);
  readLast.set(shell, { key, edition: read });
  return read;
}

const told = ({ message, file, line }: OutputFinding): string =>
  file === undefined ? message : `${file}:${line ?? 1}: ${message}`;

const untold = (count: number, language: Language): string =>
  `${count} ${count === 1 ? 'text has' : 'texts have'} no translation into “${language}” and stand${count === 1 ? 's' : ''} as written`;
