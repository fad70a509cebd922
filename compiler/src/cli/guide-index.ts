// The page that lists the guides of a build, written beside them, with links that work from a folder or a stick.
import { type Analysis, phrase } from '@baywright/language';
import { wordsOf } from '../document/words-of.js';
import type { LibraryGuide } from '../html/library.js';
import { renderLibrary } from '../output.js';
import type { Shelf } from './libraries.js';
import { join, relativeTo } from './paths.js';
import type { Shell } from './shell.js';

/** A procedure with the files that were made of it. */
export interface Listed {
  readonly shelf: Shelf;
  readonly analysis: Analysis;
  readonly folder: string;
  readonly statusText: string;
  readonly files: readonly { readonly path: string; readonly label: string }[];
}

/** Writes one page for each output folder that is not below another; gives the paths. */
export function indexPages(shell: Shell, guides: readonly Listed[]): string[] {
  const folders = [...new Set(guides.map(({ folder }) => folder))].sort((a, b) => a.length - b.length);
  const tops = folders.filter(
    (folder, i) => !folders.slice(0, i).some((above) => folder.startsWith(`${above}/`)),
  );
  return tops.map((top) => {
    const own = guides.filter(({ folder }) => folder === top || folder.startsWith(`${top}/`));
    const path = join(top, 'index.html');
    shell.write(path, indexHtml(top, own));
    return path;
  });
}

function indexHtml(top: string, guides: readonly Listed[]): string {
  const settings = guides[0]?.shelf.settings;
  const language = settings?.languages[0] ?? 'en';
  return renderLibrary({
    title: phrase('guides-title', language),
    shop: [...new Set(guides.map(({ shelf }) => shelf.settings.shop.name))]
      .filter((name) => name !== '')
      .join('; '),
    standing: phrase('standing-statement', language),
    language,
    words: wordsOf(language),
    guides: guides
      .map((guide) => rowOf(top, guide))
      .sort((a, b) => a.number.localeCompare(b.number, 'en', { numeric: true })),
  });
}

function rowOf(top: string, { analysis, statusText, files }: Listed): LibraryGuide {
  const { model, job } = analysis;
  const latest = model.revisions[0];
  const number = latest?.number?.value;
  const titles = (kind: string): string[] =>
    model.things.filter((thing) => thing.kind === kind).map(({ title }) => title);
  const vehicles = model.applies.map(({ vehicle }) =>
    vehicle ? (job.scope.resolve(vehicle.text)?.title ?? vehicle.text) : '',
  );
  return {
    number: model.number ?? '?',
    title: model.title,
    revision: number === undefined ? '' : String(number.n / number.d),
    date: latest?.day?.text ?? '',
    statusText,
    vehicles: [...new Set(vehicles)].filter((name) => name !== ''),
    parts: titles('part'),
    tools: titles('tool'),
    complaints: [],
    files: files.map(({ path, label }) => ({ href: relativeTo(top, path), label })),
  };
}
