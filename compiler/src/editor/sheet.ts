// What an editor asks of a guide, for a program with a disk and for a worker without one: which sheet, for what, under
// which name, and rows that can follow the cursor.
import type { GuideSource, Renderers } from '@baywright/server';
import type { GuideDocument } from '../document/document.js';
import { type GuideChoice, type GuideShelf, lowerGuide } from '../document/lower/index.js';

type Preview = NonNullable<Renderers['preview']>;
export type Kind = Parameters<Preview>[1];
export type Options = Parameters<Preview>[2];

export function sheetOf(
  { analysis, settings }: GuideSource,
  kind: Kind,
  options: Options,
  shelf: GuideShelf,
): GuideDocument {
  const choice: GuideChoice = {
    sheet: kind,
    ...(options.side === undefined ? {} : { side: options.side }),
    option: options.variant ?? {},
    units: options.unitOrder ?? settings.units,
    language: options.language ?? settings.languages[0] ?? 'en',
  };
  return lowerGuide(analysis, choice, shelf).document;
}

/**
 * The document of a sheet whose pictures are with the client: what a first try asks for is fetched, and the second has
 * it.
 */
export async function sheetByClient(
  source: GuideSource,
  kind: Kind,
  options: Options,
): Promise<GuideDocument> {
  const fetched = new Map<string, Uint8Array | undefined>();
  const wanted = new Set<string>();
  const { settings } = source;
  const ask = (path: string): undefined => void wanted.add(path);
  const first = sheetOf(source, kind, options, { settings, bytes: ask });
  if (wanted.size === 0) return first;
  for (const path of wanted) {
    const base64 = await source.readBase64(path);
    if (base64 !== undefined)
      fetched.set(
        path,
        Uint8Array.from(atob(base64), (character) => character.charCodeAt(0)),
      );
  }
  return sheetOf(source, kind, options, { settings, bytes: (path) => fetched.get(path) });
}

/** Lines count from zero in an editor, and only those of the file that is previewed can be followed. */
export function forCursor(html: string, { analysis }: GuideSource): string {
  return html.replace(/ data-line="(\d+)" data-file="([^"]*)"/g, (_all, line: string, file: string) =>
    file === analysis.path ? ` data-line="${Number(line) - 1}"` : '',
  );
}

/** The name that `baywright build` gives the same sheet. */
export function sheetName(
  { analysis, settings }: GuideSource,
  kind: Kind,
  options: Options,
  format: string,
): string {
  const file = analysis.path.slice(analysis.path.lastIndexOf('/') + 1);
  const isUsual = options.language === undefined || options.language === settings.languages[0];
  const parts = [
    file.replace(/\.bay$/, ''),
    ...(kind === 'guide' ? [] : [kind]),
    ...(options.side === undefined ? [] : [options.side]),
    ...Object.entries(options.variant ?? {}).map(([name, value]) => `${name}-${value}`),
    ...(isUsual || options.language === undefined ? [] : [options.language]),
  ];
  return `${parts.join('.')}.${format}`;
}
